// SPDX-License-Identifier: GPL-3.0-or-later
// What a weights room holds: bars, plates in pairs, masses that are used or not, and a ceiling.
#pragma once

#include "core/model/exactmass.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook {

/// A bar with whatever is always on it (collars).
struct Bar {
    std::string name{};
    ExactMass mass{};
    MassUnit unit = MassUnit::Kilogram; ///< as the coach typed it, for showing
    friend bool operator==(const Bar&, const Bar&) = default;
};

/// Plates of one mass. They go on in pairs: one on each side of the bar.
struct Plate {
    ExactMass mass{}; ///< of one plate
    int pairs = 1;
    MassUnit unit = MassUnit::Kilogram;
    friend bool operator==(const Plate&, const Plate&) = default;
};

/// A mass that is used or not, once.
struct FixedMass {
    enum class Use {
        Alone, ///< is a load without a bar: a dumbbell, a kettlebell, a loaded machine
        Added  ///< goes on top of any load: a vest, a belt, a band at its measured pull
    };
    std::string name{};
    ExactMass mass{};
    Use use = Use::Alone;
    MassUnit unit = MassUnit::Kilogram;
    friend bool operator==(const FixedMass&, const FixedMass&) = default;
};

/// "alone", "added".
std::string_view word(FixedMass::Use use);
std::optional<FixedMass::Use> fixedMassUseFromWord(std::string_view word);

/// A named set of equipment (home, gym, travel).
struct Equipment {
    std::string name{};
    std::vector<Bar> bars{};
    std::vector<Plate> plates{};
    std::vector<FixedMass> fixed{};
    std::optional<ExactMass> ceiling{}; ///< the heaviest load that may be used
    std::string note{};
    friend bool operator==(const Equipment&, const Equipment&) = default;
};

constexpr int mostPairs = 50;

/// Throws BadInput for what cannot stand: no name, a mass of zero or of a tonne and more, pairs
/// outside 1..mostPairs, the same plate listed twice, a ceiling of zero, nothing to lift.
void validate(const Equipment& equipment);

/// Reads "20x2,10x2,2.5x1": mass x pairs, in the unit, or with its own ("45lbx2"). "20" is one
/// pair. Throws BadInput.
std::vector<Plate> parsePlates(std::string_view text, MassUnit unit);

/// The smallest step between loads that the plates alone make: twice the lightest plate. Nothing
/// without plates.
std::optional<ExactMass> plateStep(const Equipment& equipment);

} // namespace slopebook
