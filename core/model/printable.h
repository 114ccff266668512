// SPDX-License-Identifier: GPL-3.0-or-later
// Foreign text on its way to a terminal.
#pragma once

#include <string>
#include <string_view>

namespace slopebook {

/// The text with every character that a terminal would obey instead of show (controls, also those
/// above 0x7F, format characters that turn or hide what stands beside them) written out as \u{1B},
/// and each byte that is not UTF-8 as \x9B. Lines and tabs stay; joiners between letters too.
std::string printable(std::string_view text);

} // namespace slopebook
