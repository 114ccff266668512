// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/masses.h"

#include "app/commands/ask.h"
#include "core/answers/figures.h"

#include <cmath>

namespace slopebook::app {

namespace {
stats::Interval inUnit(const Masses& masses, const stats::Interval& held) {
    return {masses.of(held.low), masses.of(held.high)};
}
} // namespace

double Masses::of(double kilograms) const {
    return m_unit == MassUnit::Pound ? kilograms * 1000 / gramsPerPound : kilograms;
}

std::string Masses::load(double kilograms) const {
    return answers::loadText(m_unit == MassUnit::Pound ? std::round(of(kilograms) * 100) / 100
                                                       : kilograms);
}

std::string Masses::range(double lightest, double heaviest) const {
    return load(lightest) + " to " + load(heaviest);
}

std::string Masses::fixed(double kilograms, int decimals) const {
    return answers::fixed(of(kilograms), decimals);
}

std::string Masses::signedFixed(double kilograms, int decimals) const {
    return answers::signedFixed(of(kilograms), decimals);
}

std::string Masses::interval(const stats::Interval& kilograms, int decimals) const {
    return app::interval(inUnit(*this, kilograms), decimals);
}

std::string Masses::signedInterval(const stats::Interval& kilograms, int decimals) const {
    return app::signedInterval(inUnit(*this, kilograms), decimals);
}

std::string Masses::intervalOrDash(const std::optional<stats::Interval>& kilograms,
                                   int decimals) const {
    return kilograms ? interval(*kilograms, decimals) : std::string("-");
}

void addPounds(CLI::App& command, bool& pounds) {
    command.add_flag("--lb", pounds,
                     "Masses of this command are pounds, and loads are shown in "
                     "pounds; JSON and "
                     "CSV stay in kilograms");
}

} // namespace slopebook::app
