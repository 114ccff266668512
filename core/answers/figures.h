// SPDX-License-Identifier: GPL-3.0-or-later
// Figures as plain English shows them.
#pragma once

#include "core/model/figures.h"

#include <optional>
#include <string>

namespace slopebook::answers {

using slopebook::fixed;
using slopebook::signedFixed;
/// Less of a mass (kg) is shown as 0.0, less of a speed (m/s) as 0.000.
constexpr double leastShownMass = 0.05, leastShownSpeed = 0.0005;
/// Kilograms with the decimals that they need, three at most: "60", "62.5".
std::string loadText(double kilograms);
/// A source as a sentence names it: without "from memory", which stands where sources are listed.
std::string cited(std::string source);
/// The decimals with which a figure does not read as a bound that it falls short of: so many, or
/// one more where both would be written alike (0.046 beside 0.05).
int decimalsBeside(double value, std::optional<double> bound, int decimals);
/// "p = 0.043"; never "p = 0.000" but "p < 0.001".
std::string pText(double p);
/// "1 repeat test", "2 repeat tests": the noun in the singular.
std::string counted(int count, const std::string& noun);

} // namespace slopebook::answers
