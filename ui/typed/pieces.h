// SPDX-License-Identifier: GPL-3.0-or-later
// A typed line cut into pieces at blanks, tabs and ';'.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace slopebook::ui {

struct Piece {
    std::u16string_view text;
    std::size_t start = 0; ///< in UTF-16 units
};

/// Also the blanks that languages write between digits.
constexpr bool separates(char16_t c) {
    return c == u' ' || c == u'\t' || c == u';' || c == u'\u00a0' || c == u'\u202f';
}

/// The pieces of a line, none empty; they live as long as what line looks at.
std::vector<Piece> pieces(std::u16string_view line);

} // namespace slopebook::ui
