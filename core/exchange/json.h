// SPDX-License-Identifier: GPL-3.0-or-later
// Writes JSON in the order it is told, numbers in the shortest form that reads back the same.
// Our own, because the libraries at hand do not keep that contract: Qt's sorts the keys,
// nlohmann/json's doubles are shortest only nearly always (Grisu2).
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace slopebook::exchange {

class Json {
public:
    Json() = default;
    virtual ~Json() = default;
    Json(const Json&) = default;
    Json& operator=(const Json&) = default;

    Json& object(); ///< begins one
    Json& endObject();
    Json& array();
    Json& endArray();
    Json& key(std::string_view name);

    Json& value(double number); ///< null where it is not finite
    Json& value(int number);
    Json& value(bool yes);
    Json& value(std::string_view text);
    Json& value(const char* text) { return value(std::string_view(text)); }
    Json& value(const std::string& text) { return value(std::string_view(text)); }
    Json& null();
    template <class T>
    Json& value(const std::optional<T>& held) {
        return held ? value(*held) : null();
    }
    template <class T>
    Json& field(std::string_view name, const T& held) {
        return key(name).value(held);
    }
    /// Both ends of an interval (what has a low and a high), or null for both.
    template <class Interval>
    Json& ends(std::string_view low, std::string_view high,
               const std::optional<Interval>& interval) {
        if (!interval)
            return key(low).null().key(high).null();
        return field(low, interval->low).field(high, interval->high);
    }

    /// The text, with a line break at its end.
    std::string text() const { return m_text + "\n"; }

protected:
    virtual void beginOutermost() {} ///< the outermost object has begun, and is empty

private:
    void next();
    void put(std::string_view text);
    void line();
    std::string m_text;
    int m_depth = 0;
    bool m_first = true;
    bool m_afterKey = false;
};

} // namespace slopebook::exchange
