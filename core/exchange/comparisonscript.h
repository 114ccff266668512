// SPDX-License-Identifier: GPL-3.0-or-later
// The R script that works a comparison out anew from an export.
#pragma once

#include <string>

namespace slopebook::exchange {

/// All but its first lines, which say what is compared: athlete, lift, from and to (date and
/// session), loads, level, mvt, device_bias, fastest, moves_body.
std::string comparisonScript();
/// A text as R reads it, in quotes.
std::string textForR(const std::string& text);

} // namespace slopebook::exchange
