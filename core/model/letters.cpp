// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/letters.h"

#include <cstdlib>
#include <memory>
#include <utf8proc.h>

namespace slopebook {

namespace {

const utf8proc_property_t& property(char32_t c) {
    return *utf8proc_get_property(static_cast<utf8proc_int32_t>(c));
}

bool isBetween(char32_t c, utf8proc_category_t first, utf8proc_category_t last) {
    const auto of = utf8proc_category(static_cast<utf8proc_int32_t>(c));
    return of >= first && of <= last;
}

std::optional<std::string> mapped(std::string_view utf8, int options) {
    utf8proc_uint8_t* made = nullptr;
    const auto size = utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(utf8.data()),
                                   static_cast<utf8proc_ssize_t>(utf8.size()), &made,
                                   static_cast<utf8proc_option_t>(options | UTF8PROC_STABLE));
    const std::unique_ptr<utf8proc_uint8_t, decltype(&std::free)> keep(made, &std::free);
    if (size < 0)
        return std::nullopt;
    return std::string(reinterpret_cast<const char*>(made), static_cast<std::size_t>(size));
}

} // namespace

FirstCharacter firstCharacter(std::string_view utf8) {
    utf8proc_int32_t c = -1;
    const auto taken = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(utf8.data()),
                                        static_cast<utf8proc_ssize_t>(utf8.size()), &c);
    if (taken <= 0 || c < 0)
        return {};
    return {.c = static_cast<char32_t>(c), .bytes = static_cast<std::size_t>(taken)};
}

std::optional<std::u32string> decoded(std::string_view utf8) {
    std::u32string text;
    text.reserve(utf8.size());
    while (!utf8.empty()) {
        const auto first = firstCharacter(utf8);
        if (!first.c)
            return std::nullopt;
        text += *first.c;
        utf8.remove_prefix(first.bytes);
    }
    return text;
}

std::string encoded(std::u32string_view text) {
    std::string utf8;
    utf8.reserve(text.size());
    for (const char32_t c : text) {
        utf8proc_uint8_t bytes[4];
        const auto size = utf8proc_encode_char(static_cast<utf8proc_int32_t>(c), bytes);
        utf8.append(reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(size));
    }
    return utf8;
}

bool isLetter(char32_t c) {
    return isBetween(c, UTF8PROC_CATEGORY_LU, UTF8PROC_CATEGORY_LO);
}

bool isDigit(char32_t c) {
    return isBetween(c, UTF8PROC_CATEGORY_ND, UTF8PROC_CATEGORY_NO);
}

bool isMark(char32_t c) {
    return isBetween(c, UTF8PROC_CATEGORY_MN, UTF8PROC_CATEGORY_ME);
}

bool isSeparator(char32_t c) {
    return isBetween(c, UTF8PROC_CATEGORY_ZS, UTF8PROC_CATEGORY_ZP);
}

bool isControl(char32_t c) {
    return isBetween(c, UTF8PROC_CATEGORY_CC, UTF8PROC_CATEGORY_CC);
}

bool isFormat(char32_t c) {
    return isBetween(c, UTF8PROC_CATEGORY_CF, UTF8PROC_CATEGORY_CF);
}

bool isIgnorable(char32_t c) {
    return property(c).ignorable != 0;
}

bool isVirama(char32_t c) {
    constexpr int virama = 9; // its canonical combining class
    return property(c).combining_class == virama;
}

std::optional<std::string> composed(std::string_view utf8) {
    return mapped(utf8, UTF8PROC_COMPOSE);
}

std::optional<std::string> caseFolded(std::string_view utf8, bool withoutIgnorable) {
    return mapped(utf8,
                  UTF8PROC_COMPOSE | UTF8PROC_CASEFOLD | (withoutIgnorable ? UTF8PROC_IGNORE : 0));
}

std::optional<std::string> withoutMarks(std::string_view utf8) {
    return mapped(utf8, UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT | UTF8PROC_CASEFOLD | UTF8PROC_IGNORE |
                            UTF8PROC_STRIPMARK);
}

} // namespace slopebook
