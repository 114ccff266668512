// SPDX-License-Identifier: GPL-3.0-or-later
// UUIDs and hashes as text.
#include "core/log/uuid.h"

#include <algorithm>

namespace slopebook::log {

namespace {
constexpr std::string_view hexDigits = "0123456789abcdef";
constexpr std::array<std::size_t, 4> dashes{8, 13, 18, 23}; // RFC 9562, 4

std::optional<unsigned> digitOf(char c) {
    const char lower = c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c;
    const std::size_t at = hexDigits.find(lower);
    return at == std::string_view::npos ? std::nullopt : std::optional(static_cast<unsigned>(at));
}
} // namespace

std::string hexOf(std::string_view bytes) {
    std::string text;
    text.reserve(2 * bytes.size());
    for (const char byte : bytes) {
        const auto value = static_cast<unsigned char>(byte);
        text.push_back(hexDigits[value >> 4]);
        text.push_back(hexDigits[value & 0x0FU]);
    }
    return text;
}

std::optional<std::string> parseHex(std::string_view text) {
    if (text.size() % 2 != 0)
        return std::nullopt;
    std::string bytes;
    for (std::size_t i = 0; i < text.size(); i += 2) {
        const auto high = digitOf(text[i]), low = digitOf(text[i + 1]);
        if (!high || !low)
            return std::nullopt;
        bytes.push_back(static_cast<char>(*high << 4 | *low));
    }
    return bytes;
}

std::string uuidText(const Sixteen& uuid) {
    std::string text = hexOf(viewOf(uuid));
    for (const std::size_t at : dashes)
        text.insert(at, 1, '-');
    return text;
}

std::optional<Sixteen> parseUuid(std::string_view text) {
    constexpr std::size_t length = 36;
    if (text.size() != length)
        return std::nullopt;
    Sixteen uuid{};
    std::size_t at = 0;
    for (unsigned char& byte : uuid) {
        if (std::ranges::find(dashes, at) != dashes.end() && text[at++] != '-')
            return std::nullopt;
        const auto high = digitOf(text[at]), low = digitOf(text[at + 1]);
        if (!high || !low)
            return std::nullopt;
        byte = static_cast<unsigned char>(*high << 4 | *low);
        at += 2;
    }
    return uuid;
}

} // namespace slopebook::log
