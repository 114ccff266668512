// SPDX-License-Identifier: GPL-3.0-or-later
// Which bars of a set of equipment go with a lift, by their names: a set does not say what it was
// lifted with.
#pragma once

#include "core/model/equipment.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::answers {

struct BarFit {
    enum class Fit {
        Named,   ///< for this lift: "hex bar" for "Hex-bar deadlift"
        Plain,   ///< for any
        OfOthers ///< for another lift of the log, or by the trade's use not for this one
    };
    std::size_t bar = 0; ///< of equipment.bars
    Fit fit = Fit::Plain;
    std::string lift{}; ///< whose it is, where another lift of the log names it
};

/// Those that go with the lift first, in the set's own order within each. A bar whose name has a
/// word of its own ("hex", not "long" or "bar") belongs to the lifts of the log that have it in
/// their names; where none has, a hex or trap bar to deadlifts, shrugs and carries, a curl bar to
/// curls and extensions, a safety bar to squats, lunges and good mornings.
std::vector<BarFit> barsFor(const Equipment& equipment, std::string_view lift,
                            std::span<const std::string> liftsOfLog);

/// The set with the bars that go with the lift: its named ones, else the plain ones; all where
/// there are neither. leftOut: which were not kept.
Equipment onFittingBars(Equipment equipment, std::string_view lift,
                        std::span<const std::string> liftsOfLog,
                        std::vector<BarFit>* leftOut = nullptr);

} // namespace slopebook::answers
