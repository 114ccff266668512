// SPDX-License-Identifier: GPL-3.0-or-later
// Visit the columns of a thing (core/log/contentcolumns.h) to write them as JSON and to read them.
#pragma once

#include "core/log/contentcolumns.h"
#include "core/log/contents.h"
#include "core/log/uuid.h"
#include "core/store/jsonvalue.h"
#include "core/store/rows.h"

#include <charconv>
#include <cmath>
#include <functional>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace slopebook::store {

/// Throws BadInput: a value of JSON that cannot stand there.
[[noreturn]] void refuseJson(std::string_view name);
/// Under which name a list stands, by the first column of its parts.
std::string_view listName(std::string_view first);
/// The bytes of log::hexOf(), which stands for what is no text. Throws as refuseJson().
std::string bytesOfHex(std::string_view hex);

/// Whether a kind belongs to something, which an atom says beside its content.
inline bool hasParent(std::string_view kind) {
    return kind == "session" || kind == "set" || kind == "attempt" || kind == "gap" ||
           kind == "roster" || kind == "check load" || kind.ends_with(" conditions");
}

class JsonWriter {
public:
    JsonWriter(const log::UuidOf& uuids, bool belongs) : m_uuids(uuids), m_belongs(belongs) {}

    template <class Field>
    void operator()(const char* name, const Field& field) {
        if (m_whole || field != Field{})
            put(name, field);
    }
    template <class Field>
    void later(const char* name, const Field& field) {
        (*this)(name, field);
    }
    template <class Value, class Columns>
    void group(const std::optional<Value>& field, const Columns& columns) {
        if (!field)
            return;
        m_whole = true; // that it is there is said by its columns
        columns(*field, *this);
        m_whole = false;
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, const std::optional<Value>& field,
                    const Columns& columns) {
        group(field, columns);
    }
    template <class Id>
    void of(Id id) {
        if (!std::exchange(m_belongs, false))
            put(log::kindOf<Id>, id);
    }
    template <class Field>
    void always(const char* name, const Field& field) {
        put(name, field);
    }
    template <class Parts, class Columns>
    void each(const char* first, const Parts& parts, const Columns& columns) {
        if (parts.empty())
            return;
        std::string list;
        for (const auto& part : parts) {
            JsonWriter one(m_uuids, false);
            columns(part, one);
            list += list.empty() ? "[" : ",";
            const bool alone = one.m_members.size() == 1 && one.m_members[0].first == first;
            list += alone ? one.m_members[0].second : one.json();
        }
        m_members.emplace_back(listName(first), list + "]");
    }
    std::string json() const {
        std::string text;
        for (const auto& [name, value] : m_members) {
            text += text.empty() ? "{" : ",";
            writeQuoted(text, name);
            text += ":" + value;
        }
        return text.empty() ? "{}" : text + "}";
    }

private:
    template <class Field>
    void put(const char* name, const Field& field) {
        if (auto value = valueOf(field); !value.empty())
            m_members.emplace_back(name, std::move(value));
    }
    static std::string text(std::string_view value) {
        std::string quoted;
        writeQuoted(quoted, value);
        return quoted;
    }
    template <class Enum>
    static std::string_view named(Enum value) {
        using log::word; // beside those of core/model
        return word(value);
    }
    std::string valueOf(const std::string& value) const { return text(value); }
    std::string valueOf(bool value) const { return value ? "true" : "false"; }
    std::string valueOf(int value) const { return std::to_string(value); }
    std::string valueOf(std::int64_t value) const { return std::to_string(value); }
    std::string valueOf(double value) const {
        char digits[32];
        const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
        return {digits, end};
    }
    std::string valueOf(Date value) const { return text(isoDate(value)); }
    std::string valueOf(Mass value) const { return valueOf(value.grams); }
    std::string valueOf(ExactMass value) const { return valueOf(value.units); }
    std::string valueOf(Effort value) const { return valueOf(value.value()); }
    std::string valueOf(const Sixteen& value) const { return text(uuidText(value)); }
    template <class Enum>
    requires std::is_enum_v<Enum> std::string valueOf(Enum value)
    const {
        if constexpr (log::kindOf<Enum>[0] != '\0')
            return valueOf(m_uuids(log::kindOf<Enum>, raw(value)));
        else
            return text(named(value));
    }
    template <class Value>
    std::string valueOf(const std::optional<Value>& value) const {
        return value ? valueOf(*value) : std::string();
    }

    const log::UuidOf& m_uuids;
    std::vector<std::pair<std::string, std::string>> m_members;
    bool m_belongs; ///< the next that it speaks of is what it belongs to
    bool m_whole = false;
};

/// The key in this reading of what is spoken of.
using KeyFor = std::function<std::int64_t(const char* kind, const Sixteen& uuid)>;

class JsonReader {
public:
    JsonReader(const JsonValue& object, const KeyFor& keys, const std::optional<Sixteen>& parent)
        : m_object(object), m_keys(keys), m_parent(parent) {
        if (object.kind != JsonValue::Kind::Object)
            refuseJson("");
    }

    template <class Field>
    void operator()(const char* name, Field& field) {
        field = Field{};
        if (const JsonValue* value = m_object.member(name))
            take(name, *value, field);
    }
    template <class Field>
    void later(const char* name, Field& field) {
        (*this)(name, field);
    }
    template <class Value, class Columns>
    void group(std::optional<Value>& field, const Columns& columns) {
        FirstName first;
        const Value none{};
        columns(none, first);
        field.reset();
        if (m_object.member(first.name))
            columns(field.emplace(), *this);
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, std::optional<Value>& field, const Columns& columns) {
        group(field, columns);
    }
    template <class Id>
    void of(Id& id) {
        if (m_parent) {
            id = static_cast<Id>(m_keys(log::kindOf<Id>, *m_parent));
            m_parent.reset();
        } else {
            always(log::kindOf<Id>, id);
        }
    }
    template <class Field>
    void always(const char* name, Field& field) {
        const JsonValue* value = m_object.member(name);
        if (!value)
            refuseJson(name);
        take(name, *value, field);
    }
    template <class Parts, class Columns>
    void each(const char* first, Parts& parts, const Columns& columns) {
        parts.clear();
        const JsonValue* list = m_object.member(listName(first));
        if (!list)
            return;
        if (list->kind != JsonValue::Kind::List)
            refuseJson(first);
        for (const JsonValue& part : list->list) {
            JsonValue alone{.kind = JsonValue::Kind::Object};
            if (part.kind != JsonValue::Kind::Object)
                alone.members.emplace_back(first, part);
            JsonReader one(part.kind == JsonValue::Kind::Object ? part : alone, m_keys, {});
            columns(parts.emplace_back(), one);
        }
    }

private:
    struct FirstName {
        const char* name = nullptr;
        template <class Field>
        void operator()(const char* called, const Field& /*field*/) {
            if (name == nullptr)
                name = called;
        }
    };
    static const std::string& text(const char* name, const JsonValue& value) {
        if (value.kind != JsonValue::Kind::Text)
            refuseJson(name);
        return value.text;
    }
    template <class Number>
    static Number number(const char* name, const JsonValue& value) {
        Number read{};
        const char* const end = value.text.data() + value.text.size();
        const auto got = std::from_chars(value.text.data(), end, read);
        if (value.kind != JsonValue::Kind::Number || got.ec != std::errc{} || got.ptr != end)
            refuseJson(name);
        return read;
    }
    static Sixteen uuid(const char* name, const JsonValue& value) {
        const auto read = parseUuid(text(name, value));
        if (!read)
            refuseJson(name);
        return *read;
    }
    void take(const char* name, const JsonValue& value, std::string& field) {
        field = text(name, value);
    }
    void take(const char* name, const JsonValue& value, bool& field) {
        if (value.kind != JsonValue::Kind::Yes && value.kind != JsonValue::Kind::No)
            refuseJson(name);
        field = value.kind == JsonValue::Kind::Yes;
    }
    void take(const char* name, const JsonValue& value, int& field) {
        field = number<int>(name, value);
    }
    void take(const char* name, const JsonValue& value, std::int64_t& field) {
        field = number<std::int64_t>(name, value);
    }
    void take(const char* name, const JsonValue& value, double& field) {
        field = number<double>(name, value);
    }
    void take(const char* name, const JsonValue& value, Date& field) {
        const auto day = parseIsoDate(text(name, value));
        if (!day)
            refuseJson(name);
        field = *day;
    }
    void take(const char* name, const JsonValue& value, Mass& field) {
        take(name, value, field.grams);
    }
    void take(const char* name, const JsonValue& value, ExactMass& field) {
        take(name, value, field.units);
    }
    void take(const char* name, const JsonValue& value, Effort& field) {
        const auto read = effort(number<double>(name, value));
        if (!read)
            refuseJson(name);
        field = *read;
    }
    void take(const char* name, const JsonValue& value, Sixteen& field) {
        field = uuid(name, value);
    }
    template <class Enum>
    requires std::is_enum_v<Enum>
    void take(const char* name, const JsonValue& value, Enum& field) {
        if constexpr (log::kindOf<Enum>[0] != '\0')
            field = static_cast<Enum>(m_keys(log::kindOf<Enum>, uuid(name, value)));
        else
            log::fromWord(text(name, value), field);
    }
    template <class Value>
    void take(const char* name, const JsonValue& value, std::optional<Value>& field) {
        take(name, value, field.emplace());
    }

    const JsonValue& m_object;
    const KeyFor& m_keys;
    std::optional<Sixteen> m_parent;
};

} // namespace slopebook::store
