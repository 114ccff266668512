// SPDX-License-Identifier: GPL-3.0-or-later
// Left against right of one test, and how their difference changed.
#pragma once

#include "core/answers/testchange.h"

namespace slopebook::answers {

/// SE of a change of asymmetry, percentage points, from the typical error of one value: 100 TE
/// sqrt(2 (1 + r^2)) / better, r = weaker / better.
double asymmetryChangeSe(double te, double better, double weaker);

/// Left against right of one test.
struct LeftRight {
    Stored<TestKindId, TestKind> kind = {};
    Answer<Asymmetry> before = NoAnswer{}, after = NoAnswer{};
    /// Signed change in percentage points, positive towards the left; where both are there.
    std::optional<double> change = {};
    /// Of the size of the asymmetry: less is better. From the typical errors of both sides on both
    /// days: four attempts' worth of noise.
    ReadChange read = {};
    Words noReading = {}; ///< why there is none
};

/// Of the two sides of one kind.
LeftRight leftRightOf(const TestChange& left, const TestChange& right, double level);

/// "left by 7.1 %", "even".
Words asymmetryWords(const Asymmetry& asymmetry);
/// "-3.1 points (-5.0 to -1.2): less uneven", "+1.0 points (-3.2 to +5.2): no clear change; shows
/// from 4.2", or why there is no reading; empty without a change.
Words asymmetryChangeWords(const LeftRight& row);

} // namespace slopebook::answers
