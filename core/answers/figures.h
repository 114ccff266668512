// SPDX-License-Identifier: GPL-3.0-or-later
// Figures as plain English shows them.
#pragma once

#include <string>

namespace slopebook::answers {

/// Fixed decimals, no locale, a proper minus as '-', never "-0.00".
std::string fixed(double value, int decimals);
/// The same with its sign always: "+2.3", "-0.8", "0.0".
std::string signedFixed(double value, int decimals);
/// Kilograms with the decimals that they need, three at most: "60", "62.5".
std::string loadText(double kilograms);
/// "1 repeat test", "2 repeat tests": the noun in the singular.
std::string counted(int count, const std::string& noun);

} // namespace slopebook::answers
