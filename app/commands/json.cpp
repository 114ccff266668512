// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/json.h"

#include <array>
#include <charconv>
#include <cmath>

namespace slopebook::app {

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
    put("{");
    ++m_depth;
    m_first = true;
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
    constexpr std::string_view hex = "0123456789abcdef";
    std::string quoted = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            quoted += '\\';
            quoted += c;
        } else if (byte < 0x20) {
            quoted += "\\u00";
            quoted += hex[byte >> 4];
            quoted += hex[byte & 0xF];
        } else {
            quoted += c;
        }
    }
    put(quoted + '"');
    return *this;
}

Json& Json::ends(std::string_view low, std::string_view high,
                 const std::optional<stats::Interval>& interval) {
    if (!interval)
        return key(low).null().key(high).null();
    return field(low, interval->low).field(high, interval->high);
}

} // namespace slopebook::app
