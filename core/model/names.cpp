// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/names.h"

#include <algorithm>

namespace slopebook {

namespace {

// Simple case folding of two-byte UTF-8 characters (Unicode's CaseFolding.txt, status C), for the
// blocks that foldCase names.
unsigned folded(unsigned c) {
    if (c >= 0xC0 && c <= 0xDE && c != 0xD7)
        return c + 0x20;
    const bool evenIsUpper = (c >= 0x100 && c <= 0x137 && c != 0x130 && c != 0x131) ||
                             (c >= 0x14A && c <= 0x177) || (c >= 0x460 && c <= 0x481);
    if (evenIsUpper)
        return c | 1u;
    const bool oddIsUpper = (c >= 0x139 && c <= 0x148) || (c >= 0x179 && c <= 0x17E);
    if (oddIsUpper)
        return (c & 1u) ? c + 1 : c;
    if (c == 0x178)
        return 0xFF;
    if (c >= 0x391 && c <= 0x3AB)
        return c + 0x20;
    if (c >= 0x410 && c <= 0x42F)
        return c + 0x20;
    if (c >= 0x400 && c <= 0x40F)
        return c + 0x50;
    return c;
}

} // namespace

std::string foldCase(std::string_view utf8) {
    std::string out;
    out.reserve(utf8.size());
    for (std::size_t i = 0; i < utf8.size(); ++i) {
        const auto byte = static_cast<unsigned char>(utf8[i]);
        if (byte >= 'A' && byte <= 'Z') {
            out += static_cast<char>(byte + ('a' - 'A'));
        } else if ((byte & 0xE0) == 0xC0 && i + 1 < utf8.size()) {
            const auto next = static_cast<unsigned char>(utf8[++i]);
            const unsigned c = folded(((byte & 0x1Fu) << 6) | (next & 0x3Fu));
            out += static_cast<char>(0xC0u | (c >> 6));
            out += static_cast<char>(0x80u | (c & 0x3Fu));
        } else {
            out += utf8[i];
        }
    }
    return out;
}

std::optional<std::size_t> findName(std::span<const std::string> names, std::string_view wanted) {
    if (const auto it = std::ranges::find(names, wanted); it != names.end())
        return static_cast<std::size_t>(it - names.begin());
    const std::string key = foldCase(wanted);
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (foldCase(names[i]) != key)
            continue;
        if (found)
            return std::nullopt; // two differ in letter case alone: only the exact name will do
        found = i;
    }
    return found;
}

} // namespace slopebook
