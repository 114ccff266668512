// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/printable.h"

#include "core/model/letters.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>

namespace slopebook {

namespace {

std::string hex(std::uint32_t value) {
    std::array<char, 8> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value, 16).ptr;
    std::string text(digits.data(), end);
    std::ranges::transform(text, text.begin(), [](char c) {
        return c >= 'a' && c <= 'f' ? static_cast<char>(c - ('a' - 'A')) : c;
    });
    return text;
}

bool isObeyed(char32_t c) {
    constexpr char32_t zwnj = 0x200C, zwj = 0x200D;
    if (c == U'\n' || c == U'\t' || c == zwnj || c == zwj)
        return false;
    const bool line = isSeparator(c) && (c == 0x2028 || c == 0x2029);
    return isControl(c) || isFormat(c) || line;
}

} // namespace

std::string printable(std::string_view text) {
    const auto plain = [](char c) { return (c >= ' ' && c <= '~') || c == '\n' || c == '\t'; };
    if (std::ranges::all_of(text, plain))
        return std::string(text);
    std::string shown;
    shown.reserve(text.size());
    while (!text.empty()) {
        const auto first = firstCharacter(text);
        if (!first.c)
            shown += "\\x" + hex(static_cast<unsigned char>(text.front()));
        else if (isObeyed(*first.c))
            shown += "\\u{" + hex(*first.c) + "}";
        else
            shown += text.substr(0, first.bytes);
        text.remove_prefix(first.bytes);
    }
    return shown;
}

} // namespace slopebook
