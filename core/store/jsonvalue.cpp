// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/jsonvalue.h"

#include "core/model/errors.h"
#include "core/model/phrases/store.h"

#include <algorithm>
#include <charconv>

namespace slopebook::store {

namespace {
class JsonReading {
public:
    explicit JsonReading(std::string_view text) : m_rest(text) {}

    JsonValue whole() {
        JsonValue value = next(0);
        blanks();
        if (!m_rest.empty())
            refuse();
        return value;
    }

private:
    static constexpr int deepest = 16;

    [[noreturn]] void refuse() const {
        throw BadInput(say("'%1', which is no JSON", std::string(m_rest.substr(0, 20))),
                       say("what a store of this version holds"));
    }
    void blanks() {
        const auto end = m_rest.find_first_not_of(" \t\n\r");
        m_rest.remove_prefix(end == std::string_view::npos ? m_rest.size() : end);
    }
    bool passed(std::string_view what) {
        if (!m_rest.starts_with(what))
            return false;
        m_rest.remove_prefix(what.size());
        return true;
    }
    void pass(std::string_view what) {
        blanks();
        if (!passed(what))
            refuse();
    }

    JsonValue next(int depth) {
        blanks();
        if (m_rest.empty() || depth > deepest)
            refuse();
        for (const auto& [word, kind] : {std::pair{"null", JsonValue::Kind::Null},
                                         {"true", JsonValue::Kind::Yes},
                                         {"false", JsonValue::Kind::No}})
            if (passed(word))
                return {.kind = kind};
        switch (m_rest.front()) {
        case '"':
            return {.kind = JsonValue::Kind::Text, .text = quoted()};
        case '[':
            return list(depth);
        case '{':
            return object(depth);
        default:
            return {.kind = JsonValue::Kind::Number, .text = number()};
        }
    }

    JsonValue list(int depth) {
        JsonValue value{.kind = JsonValue::Kind::List};
        pass("[");
        blanks();
        if (passed("]"))
            return value;
        do {
            value.list.push_back(next(depth + 1));
            blanks();
        } while (passed(","));
        pass("]");
        return value;
    }

    JsonValue object(int depth) {
        JsonValue value{.kind = JsonValue::Kind::Object};
        pass("{");
        blanks();
        if (passed("}"))
            return value;
        do {
            blanks();
            std::string name = quoted();
            pass(":");
            value.members.emplace_back(std::move(name), next(depth + 1));
            blanks();
        } while (passed(","));
        pass("}");
        return value;
    }

    std::string number() {
        const auto end = std::min(m_rest.find_first_not_of("+-.0123456789eE"), m_rest.size());
        if (end == 0)
            refuse();
        const std::string digits(m_rest.substr(0, end));
        m_rest.remove_prefix(end);
        return digits;
    }

    unsigned sixteenBits() {
        if (m_rest.size() < 4)
            refuse();
        unsigned code = 0;
        const auto [end, error] = std::from_chars(m_rest.data(), m_rest.data() + 4, code, 16);
        if (error != std::errc{} || end != m_rest.data() + 4)
            refuse();
        m_rest.remove_prefix(4);
        return code;
    }

    void utf8(std::string& text, unsigned code) const {
        const auto byte = [&](unsigned value) { text += static_cast<char>(value); };
        if (code < 0x80) {
            byte(code);
        } else if (code < 0x800) {
            byte(0xC0 | code >> 6);
            byte(0x80 | (code & 0x3F));
        } else if (code < 0x10000) {
            byte(0xE0 | code >> 12);
            byte(0x80 | (code >> 6 & 0x3F));
            byte(0x80 | (code & 0x3F));
        } else {
            byte(0xF0 | code >> 18);
            byte(0x80 | (code >> 12 & 0x3F));
            byte(0x80 | (code >> 6 & 0x3F));
            byte(0x80 | (code & 0x3F));
        }
    }

    void escape(std::string& text) {
        static constexpr std::string_view signs = "\"\\/bfnrt", meant = "\"\\/\b\f\n\r\t";
        if (m_rest.empty())
            refuse();
        const char sign = m_rest.front();
        m_rest.remove_prefix(1);
        if (const auto at = signs.find(sign); at != std::string_view::npos) {
            text += meant[at];
            return;
        }
        if (sign != 'u')
            refuse();
        unsigned code = sixteenBits();
        if (code >= 0xD800 && code < 0xDC00) { // the first of a pair
            if (!passed("\\u"))
                refuse();
            const unsigned second = sixteenBits();
            if (second < 0xDC00 || second > 0xDFFF)
                refuse();
            code = 0x10000 + ((code - 0xD800) << 10) + (second - 0xDC00);
        } else if (code >= 0xDC00 && code <= 0xDFFF) {
            refuse();
        }
        utf8(text, code);
    }

    std::string quoted() {
        if (!passed("\""))
            refuse();
        std::string text;
        for (;;) {
            const auto end = m_rest.find_first_of("\"\\");
            if (end == std::string_view::npos)
                refuse();
            text += m_rest.substr(0, end);
            const bool ends = m_rest[end] == '"';
            m_rest.remove_prefix(end + 1);
            if (ends)
                return text;
            escape(text);
        }
    }

    std::string_view m_rest;
};
} // namespace

const JsonValue* JsonValue::member(std::string_view name) const {
    for (const auto& [called, value] : members)
        if (called == name)
            return &value;
    return nullptr;
}

JsonValue readJson(std::string_view text) {
    return JsonReading(text).whole();
}

void writeQuoted(std::string& json, std::string_view text) {
    constexpr char digits[] = "0123456789abcdef";
    json += '"';
    for (const char c : text) {
        const auto code = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            json += '\\';
            json += c;
        } else if (code < 0x20) {
            json += "\\u00";
            json += digits[code >> 4];
            json += digits[code & 15];
        } else {
            json += c;
        }
    }
    json += '"';
}

} // namespace slopebook::store
