// SPDX-License-Identifier: GPL-3.0-or-later
// What a thing says, read back from its bytes (core/log/contents.h), which may come from anywhere.
#pragma once

#include "core/log/contents.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::log {

/// The key in this log of a thing by its kind and UUID; nothing where it is not here.
using KeyOf = std::function<std::optional<std::int64_t>(const char* kind, const Sixteen& uuid)>;

/// The value of those bytes, the keys of what it speaks of being this log's. Spelled again it gives
/// the same bytes. Throws BadInput for bytes that no log of this layout writes, and for what speaks
/// of what is not here. Whether the value may stand in a log is for the log to say.
Thing readContent(std::string_view bytes, const KeyOf& keyOf);

/// Something that a content speaks of.
struct Reference {
    const char* kind = "";
    Sixteen uuid{};
    friend bool operator==(const Reference& a, const Reference& b) {
        return std::string_view(a.kind) == b.kind && a.uuid == b.uuid;
    }
};
/// All of them in the order in which it does, what it belongs to first. Throws as readContent().
std::vector<Reference> referencesOf(std::string_view bytes);
/// The kind of thing, and what it belongs to: the session of a set, of conditions, an attempt or a
/// gap; the athlete of a session or a check load; the station of a roster's entry. Nothing for the
/// others. Reads no further than that; throws BadInput where it does not stand there.
std::string kindOfContent(std::string_view bytes);
std::optional<Reference> parentOf(std::string_view bytes);

/// Visits the columns of a thing as Content does.
class ContentReader {
public:
    ContentReader(std::string_view bytes, const KeyOf& keyOf) : m_rest(bytes), m_keyOf(keyOf) {
        m_kind = text();
    }
    const std::string& kind() const { return m_kind; }
    bool atEnd() const { return m_rest.empty(); }

    template <class Field>
    void operator()(const char* name, Field& field) {
        if (m_whole || next(name)) {
            passName(name);
            take(field);
        } else {
            field = Field{};
        }
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
        if (!next(first.name))
            return;
        m_whole = true;
        columns(field.emplace(), *this);
        m_whole = false;
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, std::optional<Value>& field, const Columns& columns) {
        group(field, columns);
    }
    template <class Id>
    void of(Id& id) {
        passName(kindOf<Id>);
        take(id);
    }
    template <class Field>
    void always(const char* name, Field& field) {
        passName(name);
        if (!mark())
            refuse();
        take(field);
    }
    template <class Parts, class Columns>
    void each(const char* first, Parts& parts, const Columns& columns) {
        while (next(first))
            columns(parts.emplace_back(), *this);
    }

    /// The UUID of what was read as that key.
    Sixteen uuidOf(const char* kind, std::int64_t key) const;
    /// Throws BadInput: these are not the bytes of a thing.
    [[noreturn]] void refuse() const;

private:
    struct FirstName {
        const char* name = nullptr;
        template <class Field>
        void operator()(const char* called, const Field& /*field*/) {
            if (name == nullptr)
                name = called;
        }
    };
    struct Spoken {
        Reference of{};
        std::int64_t key = 0;
    };

    bool next(std::string_view name) const;
    void passName(std::string_view name);
    std::string_view bytes(std::size_t count);
    std::uint64_t number();
    std::string text();
    bool mark(); ///< 0 or 1
    std::int64_t key(const char* kind);

    void take(std::string& field) { field = text(); }
    void take(bool& field) { field = mark(); }
    void take(int& field) { field = static_cast<int>(number()); }
    void take(std::int64_t& field) { field = static_cast<std::int64_t>(number()); }
    void take(double& field) { field = std::bit_cast<double>(number()); }
    void take(Date& field);
    void take(Mass& field) { take(field.grams); }
    void take(ExactMass& field) { take(field.units); }
    void take(Effort& field) { take(field.halves); }
    void take(Sixteen& field);
    template <class Enum>
    requires std::is_enum_v<Enum>
    void take(Enum& field) {
        if constexpr (kindOf<Enum>[0] != '\0')
            field = static_cast<Enum>(key(kindOf<Enum>));
        else
            fromWord(text(), field);
    }
    template <class Value>
    void take(std::optional<Value>& field) {
        field.reset();
        if (mark())
            take(field.emplace());
    }

    std::string_view m_rest;
    const KeyOf& m_keyOf;
    std::string m_kind;
    std::vector<Spoken> m_spoken;
    bool m_whole = false;
};

} // namespace slopebook::log
