// SPDX-License-Identifier: GPL-3.0-or-later
// A reading as it stands beside its change and interval. Unclear is never a bare word: it is said
// which way the change leans and from what size on a change that way would be clear.
#pragma once

#include "core/answers/reading.h"

namespace slopebook::answers {

/// A sentence has speeds with two decimals, the tables under it have them with three.
constexpr int saidSpeedDecimals = 2;
/// A change of speed, or an end of its interval, in a sentence, m/s: "+0.16"; what is something and
/// would be written as nothing keeps a third decimal: "+0.004".
Words saidSpeed(double change);
/// "0.02 to 0.05", or the one figure where both are the same.
Words rangeOf(const std::string& a, const std::string& b);
/// From what size on a change is clear, rounded up: what is said is always enough.
Words clearFrom(double shows, int decimals);

/// Of a speed, standing alone: "unclear, leaning to better: a change is clear from 0.06 m/s up".
Words speedReading(const ReadChange& read);
/// The same of the estimated max, kg.
Words maxReading(const ReadChange& read);
/// As a cell of a table has them: "unclear, leaning to better; clear from 0.06".
Words speedCell(const ReadChange& read);
Words maxCell(const ReadChange& read);
/// Of a figure of so many decimals, its unit and the smallest change in cells of their own.
Words sizedCell(const ReadChange& read, int decimals);

} // namespace slopebook::answers
