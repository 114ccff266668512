// SPDX-License-Identifier: GPL-3.0-or-later
// --lb: the unit in which a command takes and shows masses, alike in every command. JSON and CSV
// stay in kilograms, which they name.
#pragma once

#include "core/model/exactmass.h"
#include "core/model/mass.h"
#include "core/model/words.h"
#include "core/stats/quantiles.h"

#include <CLI/CLI.hpp>

#include <optional>
#include <string>

namespace slopebook::app {

class Masses {
public:
    explicit Masses(MassUnit unit = MassUnit::Kilogram) : m_unit(unit) {}

    MassUnit unit() const { return m_unit; }
    std::string name() const { return std::string(word(m_unit)); } ///< "kg", "lb"
    /// Kilograms as a number of this unit; of a change as well as of a load.
    double of(double kilograms) const;
    /// What is said of each kilogram, such as a slope, of each of this unit.
    double per(double ofKilogram) const { return ofKilogram / of(1); }

    /// "40", "62.5"; pounds to a hundredth.
    std::string load(double kilograms) const;
    std::string load(Mass mass) const { return load(kilograms(mass)); }
    std::string withName(Mass mass) const { return load(mass) + " " + name(); }
    /// "40 to 90"
    std::string range(double lightest, double heaviest) const;
    std::string fixed(double kilograms, int decimals) const;
    std::string signedFixed(double kilograms, int decimals) const;
    std::string interval(const stats::Interval& kilograms, int decimals) const;
    std::string signedInterval(const stats::Interval& kilograms, int decimals) const;
    /// The interval, or "-".
    std::string intervalOrDash(const std::optional<stats::Interval>& kilograms, int decimals) const;
    std::string say(const Words& words) const { return english(words, m_unit); }

private:
    MassUnit m_unit;
};

/// --lb.
void addPounds(CLI::App& command, bool& pounds);
inline MassUnit unitOf(bool pounds) {
    return pounds ? MassUnit::Pound : MassUnit::Kilogram;
}

} // namespace slopebook::app
