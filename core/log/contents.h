// SPDX-License-Identifier: GPL-3.0-or-later
// What a thing of the log says, as bytes that are the same in every log that says it: columns by
// their names, what they hold by default left out (so that a column that comes later changes
// nothing of what was written before), other things by their UUIDs and not by a log's own keys.
#pragma once

#include "core/log/checksum.h"
#include "core/log/columns.h"
#include "core/log/things.h"
#include "core/log/uuid.h"

#include <bit>
#include <functional>
#include <string>
#include <type_traits>

namespace slopebook::log {

/// The UUID of a thing by its kind (core/log/atoms.h) and its key in this log.
using UuidOf = std::function<Sixteen(const char* kind, std::int64_t key)>;

template <class Id>
constexpr const char* kindOf = "";
template <>
inline constexpr const char* kindOf<AthleteId> = "athlete";
template <>
inline constexpr const char* kindOf<LiftId> = "lift";
template <>
inline constexpr const char* kindOf<DeviceId> = "device";
template <>
inline constexpr const char* kindOf<TestKindId> = "test";
template <>
inline constexpr const char* kindOf<SessionId> = "session";
template <>
inline constexpr const char* kindOf<StationId> = "station";

/// Collects them. Visits the columns of a table (core/log/columns.h).
class Content {
public:
    Content(const UuidOf& uuidOf, const char* kind) : m_uuidOf(&uuidOf) {
        m_bytes.reserve(256); // most things need no more
        put(kind);
    }

    template <class Field>
    void operator()(const char* name, const Field& field) {
        if (m_whole || field != Field{})
            add(name, field);
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
    /// The UUID of what it belongs to or speaks of.
    template <class Id>
    void of(Id id) {
        add(kindOf<Id>, id);
    }
    /// What stands there whatever it holds.
    template <class Field>
    void always(const char* name, const Field& field) {
        put(name);
        number(1);
        put(field);
    }
    template <class Parts, class Columns>
    void each(const char* /*first*/, const Parts& parts, const Columns& columns) {
        for (const auto& part : parts)
            columns(part, *this);
    }
    Sixteen hash() const { return hashOf(m_bytes); }
    const std::string& bytes() const { return m_bytes; }

private:
    void put(std::string_view text) {
        number(static_cast<std::int64_t>(text.size()));
        m_bytes.append(text);
    }
    void number(std::int64_t value) {
        const auto bits = static_cast<std::uint64_t>(value);
        for (int i = 0; i < 8; ++i)
            m_bytes.push_back(static_cast<char>(bits >> (8 * i)));
    }
    template <class Field>
    void add(const char* name, const Field& field) {
        put(name);
        put(field);
    }
    void put(const char* text) { put(std::string_view(text)); }
    void put(const std::string& text) { put(std::string_view(text)); }
    void put(bool value) { number(value ? 1 : 0); }
    void put(int value) { number(value); }
    void put(std::int64_t value) { number(value); }
    void put(double value) { number(std::bit_cast<std::int64_t>(value + 0.0)); } // -0 is 0
    void put(Date value) { put(isoDate(value)); }
    void put(Mass value) { number(value.grams); }
    void put(ExactMass value) { number(value.units); }
    void put(Effort value) { number(value.halves); }
    void put(const Sixteen& value) { m_bytes.append(viewOf(value)); }
    template <class Enum>
    requires std::is_enum_v<Enum>
    void put(Enum value) {
        if constexpr (kindOf<Enum>[0] != '\0') {
            put((*m_uuidOf)(kindOf<Enum>, raw(value)));
        } else {
            put(std::string_view(word(value)));
        }
    }
    template <class Value>
    void put(const std::optional<Value>& value) {
        number(value ? 1 : 0);
        if (value)
            put(*value);
    }

    const UuidOf* m_uuidOf; ///< asked while the columns are visited, and not later
    std::string m_bytes;
    bool m_whole = false;
};

// What each says. uuids is asked here and not later.
Content contentOf(const UuidOf& uuids, const Athlete& athlete);
Content contentOf(const UuidOf& uuids, const Lift& lift);
Content contentOf(const UuidOf& uuids, const Device& device);
Content contentOf(const UuidOf& uuids, const Block& block);
Content contentOf(const UuidOf& uuids, const TestKind& kind);
Content contentOf(const UuidOf& uuids, const Equipment& equipment);
Content contentOf(const UuidOf& uuids, const Station& station);
Content contentOf(const UuidOf& uuids, const SessionHead& head);
Content contentOf(const UuidOf& uuids, SessionId session, LiftId lift, const Conditions& held);
Content contentOf(const UuidOf& uuids, SessionId session, TestKindId test, const Conditions& held);
Content contentOf(const UuidOf& uuids, const PlacedSet& placed);
Content contentOf(const UuidOf& uuids, SessionId session, TestKindId test, int ordinal,
                  const Attempt& attempt);
Content contentOf(const UuidOf& uuids, SessionId session, int ordinal, const Gap& gap);
Content contentOf(const UuidOf& uuids, AthleteId athlete, LiftId lift, Mass checkLoad);
Content contentOf(const UuidOf& uuids, const Roster& roster, int ordinal);
Content contentOf(const UuidOf& uuids, const Thing& thing);

/// The hash of what a thing says.
template <class... Said>
Sixteen contentHash(const UuidOf& uuids, const Said&... said) {
    return contentOf(uuids, said...).hash();
}

} // namespace slopebook::log
