// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json.h"

#include "core/model/letters.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace slopebook::exchange {

namespace {

std::string escapedUnit(std::uint32_t unit) {
    constexpr std::string_view hex = "0123456789abcdef";
    std::string text = "\\u";
    for (const unsigned shift : {12U, 8U, 4U, 0U})
        text += hex[(unit >> shift) & 0xFU];
    return text;
}

/// JSON's own way (RFC 8259, 7): beyond 16 bits two halves.
std::string escaped(char32_t c) {
    constexpr std::uint32_t beyond = 0x10000;
    if (c < beyond)
        return escapedUnit(c);
    return escapedUnit(0xD800 + ((c - beyond) >> 10)) +
           escapedUnit(0xDC00 + ((c - beyond) & 0x3FF));
}

} // namespace

void Json::line() {
    m_text += '\n';
    m_text.append(static_cast<std::size_t>(m_depth) * 2, ' ');
}

void Json::next() {
    if (m_afterKey) {
        m_afterKey = false;
        return;
    }
    if (!m_first)
        m_text += ',';
    if (m_depth > 0)
        line();
    m_first = false;
}

void Json::put(std::string_view text) {
    next();
    m_text += text;
}

Json& Json::object() {
    const bool outermost = m_depth == 0;
    put("{");
    ++m_depth;
    m_first = true;
    if (outermost)
        beginOutermost();
    return *this;
}

Json& Json::endObject() {
    --m_depth;
    if (!m_first)
        line();
    m_text += '}';
    m_first = false;
    return *this;
}

Json& Json::array() {
    put("[");
    ++m_depth;
    m_first = true;
    return *this;
}

Json& Json::endArray() {
    --m_depth;
    if (!m_first)
        line();
    m_text += ']';
    m_first = false;
    return *this;
}

Json& Json::key(std::string_view name) {
    value(name);
    m_text += ": ";
    m_afterKey = true;
    return *this;
}

Json& Json::null() {
    put("null");
    return *this;
}

Json& Json::value(double number) {
    if (!std::isfinite(number))
        return null();
    std::array<char, 64> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number).ptr;
    put({text.data(), end});
    return *this;
}

Json& Json::value(int number) {
    put(std::to_string(number));
    return *this;
}

Json& Json::value(bool yes) {
    put(yes ? "true" : "false");
    return *this;
}

Json& Json::value(std::string_view text) {
    std::string quoted = "\"";
    while (!text.empty()) {
        const auto [c, bytes] = firstCharacter(text);
        if (!c)
            quoted += "\\ufffd"; // a byte that is no character
        else if (*c == U'"' || *c == U'\\')
            quoted += {'\\', text.front()};
        else if (isControl(*c) || isFormat(*c) || *c == 0x2028 || *c == 0x2029)
            quoted += escaped(*c); // or a terminal would obey it
        else
            quoted += text.substr(0, bytes);
        text.remove_prefix(bytes);
    }
    put(quoted + '"');
    return *this;
}

} // namespace slopebook::exchange
