// SPDX-License-Identifier: GPL-3.0-or-later
// What a ladder must be besides narrow in its interval: climbed in steps that an athlete can warm
// up by, and able to show a bend.
#pragma once

#include "core/answers/plates.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::answers {

struct LadderFlaws {
    double largestStep = 0;  ///< kg, between neighbouring loads
    double stepPercent = 0;  ///< of the reference
    bool greatStep = false;  ///< stepPercent over mostStepPercent
    bool cannotBend = false; ///< under four distinct loads, or a step over half of their span
    bool any() const { return greatStep || cannotBend; }
    friend bool operator==(const LadderFlaws&, const LadderFlaws&) = default;
};
/// Of the estimated 1RM, or of the heaviest load lifted. Five even steps from an empty bar to 90 %
/// take 12 to 20 (common practice).
constexpr double mostStepPercent = 25;

/// loads ascending; reference: kg that steps are measured against.
LadderFlaws flawsOf(std::span<const BuiltLoad> loads, double reference);

/// "a step of 69 % of the 1RM; too few spread loads to show a bend"; empty without flaws. ofOneRm:
/// else of the heaviest load lifted.
Words flawsWords(const LadderFlaws& flaws, bool ofOneRm);

/// A ladder of n of the candidates without flaws whose figure is small: from a start of even or of
/// the greatest allowed steps, one load is exchanged for a better one until none is. A local
/// search: exact it is not. Empty where no start without flaws is found. candidates ascending;
/// figure: less is better.
std::vector<BuiltLoad>
bestWithoutFlaws(std::span<const BuiltLoad> candidates, int n, double reference,
                 const std::function<double(std::span<const double> kg)>& figure);

} // namespace slopebook::answers
