// SPDX-License-Identifier: GPL-3.0-or-later
// Figures as plain English shows them.
#pragma once

#include <string>

namespace slopebook {

/// Fixed decimals, no locale, a proper minus as '-', never "-0.00"; "-" for what is not finite.
std::string fixed(double value, int decimals);
/// The same with its sign always: "+2.3", "-0.8", "0.0".
std::string signedFixed(double value, int decimals);
/// Without needless zeros: so many decimals at the most.
std::string shortFixed(double value, int most);

} // namespace slopebook
