// SPDX-License-Identifier: GPL-3.0-or-later
// UTF-8 as single characters and back, what kind of character each is, and Unicode's own mappings
// of whole texts: the one door to libutf8proc.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace slopebook {

/// The first character of a text that is not empty, and how many bytes it takes; no character, and
/// one byte, where they are not UTF-8.
struct FirstCharacter {
    std::optional<char32_t> c{};
    std::size_t bytes = 1;
};
FirstCharacter firstCharacter(std::string_view utf8);

/// Nothing where the bytes are not UTF-8.
std::optional<std::u32string> decoded(std::string_view utf8);
std::string encoded(std::u32string_view text);

// By Unicode's general categories.
bool isLetter(char32_t c);
bool isDigit(char32_t c); ///< any number
bool isMark(char32_t c);
bool isSeparator(char32_t c); ///< of words, lines, paragraphs
bool isControl(char32_t c);
bool isFormat(char32_t c);
/// Meant to be shown as nothing at all (Default_Ignorable_Code_Point).
bool isIgnorable(char32_t c);
/// Takes the vowel off the letter before it, in the scripts of India and around.
bool isVirama(char32_t c);

// Each of text that is not UTF-8: nothing.
std::optional<std::string> composed(std::string_view utf8); ///< NFC
/// NFC with full case folding, what is ignorable left out where that is wanted.
std::optional<std::string> caseFolded(std::string_view utf8, bool withoutIgnorable);
/// Compatible letters as one, without their marks, folded.
std::optional<std::string> withoutMarks(std::string_view utf8);

} // namespace slopebook
