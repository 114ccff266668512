// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/names.h"

#include "core/model/letters.h"

#include <algorithm>
#include <map>
#include <utility>

namespace slopebook {

namespace {

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c;
}

bool isAscii(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

std::string lowered(std::string_view text) {
    std::string out(text);
    std::ranges::transform(out, out.begin(), lower);
    return out;
}

/// Printable ASCII with single spaces between its words: what most names are.
bool isPlain(std::string_view text) {
    char before = ' ';
    for (const char c : text) {
        if (c < ' ' || c > '~' || (c == ' ' && before == ' '))
            return false;
        before = c;
    }
    return before != ' ';
}

bool isBlank(char32_t c) {
    constexpr char32_t nextLine = 0x85, brailleBlank = 0x2800;
    return isSeparator(c) || (c >= U'\t' && c <= U'\r') || c == nextLine || c == brailleBlank;
}

bool isJoiner(char32_t c) {
    return c == 0x200C || c == 0x200D;
}

/// Characters that stand for nothing that is seen. A code point that this version of Unicode does
/// not know stays: it may be a letter of a later one.
bool isDropped(char32_t c) {
    const bool noCharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    const bool filler = isLetter(c) && isIgnorable(c);
    return isControl(c) || isFormat(c) || noCharacter || filler;
}

/// Letters and marks of the scripts whose spelling knows joiners (from Arabic on).
bool takesJoiners(char32_t c) {
    return c >= 0x600 && (isMark(c) || isLetter(c)) && !isIgnorable(c);
}

std::optional<std::string> tidied(std::string_view typed) {
    const auto text = decoded(typed);
    if (!text)
        return std::nullopt;
    std::u32string kept;
    bool gap = false, visible = false;
    for (std::size_t i = 0; i < text->size(); ++i) {
        const char32_t c = (*text)[i];
        if (isBlank(c)) {
            gap = !kept.empty();
            continue;
        }
        if (isJoiner(c)) {
            const char32_t before = gap || kept.empty() ? U' ' : kept.back();
            const char32_t after = i + 1 < text->size() ? (*text)[i + 1] : U' ';
            if (isVirama(before) || (takesJoiners(before) && takesJoiners(after)))
                kept += c;
            continue;
        }
        if (isDropped(c))
            continue;
        if (std::exchange(gap, false))
            kept += U' ';
        kept += c;
        visible = visible || (!isMark(c) && !isIgnorable(c));
    }
    if (!visible)
        return std::nullopt;
    return composed(encoded(kept));
}

bool sameIgnoringCase(std::string_view a, std::string_view b) {
    return std::ranges::equal(a, b, {}, lower, lower);
}

} // namespace

std::optional<std::string> tidyName(std::string_view typed) {
    if (isPlain(typed) && !typed.empty())
        return std::string(typed);
    auto tidy = tidied(typed);
    // Composing may have moved a mark between a letter and its joiner.
    while (tidy) {
        auto again = tidied(*tidy);
        if (again == tidy)
            break;
        tidy = std::move(again);
    }
    return tidy;
}

std::string nameKey(std::string_view name) {
    if (isPlain(name) && !name.empty())
        return lowered(name);
    const auto tidy = tidyName(name);
    if (!tidy)
        return '\n' + std::string(name); // no name holds a line's end
    return isAscii(*tidy) ? lowered(*tidy) : caseFolded(*tidy, true).value_or(*tidy);
}

std::string foldCase(std::string_view utf8) {
    return (isAscii(utf8) ? std::nullopt : caseFolded(utf8, false)).value_or(lowered(utf8));
}

std::optional<std::size_t> findName(std::span<const std::string> names, std::string_view wanted) {
    if (const auto it = std::ranges::find(names, wanted); it != names.end())
        return static_cast<std::size_t>(it - names.begin());
    // Of a million headings hardly one is worth a key of its own.
    const bool plain = isPlain(wanted);
    const std::string key = nameKey(wanted);
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < names.size(); ++i) {
        const bool same = plain && isPlain(names[i]) ? sameIgnoringCase(names[i], wanted)
                                                     : nameKey(names[i]) == key;
        if (!same)
            continue;
        if (found)
            return std::nullopt; // two have that key: only the exact name will do
        found = i;
    }
    return found;
}

std::vector<std::vector<std::size_t>> sameNames(std::span<const std::string> names) {
    std::map<std::string, std::vector<std::size_t>> byKey;
    for (std::size_t i = 0; i < names.size(); ++i)
        byKey[nameKey(names[i])].push_back(i);
    std::vector<std::vector<std::size_t>> same;
    for (auto& [key, indices] : byKey)
        if (indices.size() > 1)
            same.push_back(std::move(indices));
    std::ranges::sort(same);
    return same;
}

} // namespace slopebook
