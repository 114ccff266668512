// SPDX-License-Identifier: GPL-3.0-or-later
// A typed line cut into pieces at blanks, tabs and ';', the note after '#' apart, and what the
// pieces of every line are read by.
#pragma once

#include "core/model/battery.h"
#include "ui/typed/lineproblem.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace slopebook::ui {

struct Piece {
    std::u16string_view text;
    std::size_t start = 0; ///< in UTF-16 units
};

/// Also the blanks that languages write between digits.
constexpr bool separates(char16_t c) {
    return c == u' ' || c == u'\t' || c == u';' || c == u'\u00a0' || c == u'\u2009' ||
           c == u'\u202f';
}

/// The pieces of a line, none empty; they live as long as what line looks at.
std::vector<Piece> pieces(std::u16string_view line);

/// A line's pieces, and what follows '#' without the blanks around it.
struct CutLine {
    std::vector<Piece> pieces;
    std::u16string_view note;
};
CutLine cutLine(std::u16string_view line);

std::u16string_view trimmed(std::u16string_view text);
Span spanOf(const Piece& piece);

/// '-' as it is typed, or as a program that mends it writes it.
bool isDash(std::u16string_view text);
/// Takes the suffix off, unless nothing were left.
bool takeSuffix(std::u16string_view& text, std::u16string_view suffix);

/// The side that a piece names or begins with: "l", "R1.75", "b-". l, r and b are always sides.
std::optional<BodySide> sideOf(std::u16string_view piece);

/// Digits with at most one decimal mark, and digits on its right side; else what is wrong.
std::variant<double, LineProblem::Kind> readNumber(std::u16string_view text);

/// Letters, and no digit among them.
bool isWord(std::u16string_view text);

/// Pieces as a line again, with the note where there is one.
std::u16string joined(const std::vector<std::u16string>& pieces, std::u16string_view note);

} // namespace slopebook::ui
