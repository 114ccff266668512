// SPDX-License-Identifier: GPL-3.0-or-later
// One way to read, add, change and remove whatever has a name, an entry and a checksum of its own:
// athletes, lifts, devices, blocks, tests, sets of equipment, stations. A value that holds more
// than its row (Table<Id>::hasParts) has readParts(), writeParts() and eraseParts().
#pragma once

#include "core/log/atoms.h"
#include "core/log/equipmenttable.h"
#include "core/log/impl.h"
#include "core/log/stationtable.h"
#include "core/log/tables.h"
#include "core/log/testtable.h"
#include "core/log/validity.h"
#include "core/model/names.h"
#include "core/model/phrases/log.h"

namespace slopebook::log {

/// Adds to the value what stands of it in other tables; whether that is as it is written where the
/// checksum does not look.
bool readParts(Connection& db, EquipmentId id, Equipment& equipment);
bool readParts(Connection& db, StationId id, Station& station);
void writeParts(Connection& db, EquipmentId id, const Equipment& equipment);
void writeParts(Connection& db, StationId id, const Station& station);
void eraseParts(Connection& db, EquipmentId id);
void eraseParts(Connection& db, StationId id);

/// The namespace is named so that Log's own add() and change() are not taken for these.
namespace named {

/// A row of TableSql::rows with its parts, unverified; whether the parts are as they are written.
template <class Id>
bool readRow(Connection& db, const Query& row, Stored<Id, typename Table<Id>::Value>& into) {
    into = {row.id<Id>(0), readValue<Id>(row)};
    if constexpr (Table<Id>::hasParts)
        return readParts(db, into.id, into.value);
    return true;
}

/// Notes it among the atoms as it is now.
template <class Id>
void keep(Connection& db, Id id, const typename Table<Id>::Value& value) {
    keepAtom(db, {.kind = Table<Id>::one, .one = raw(id)}, contentHash(uuidsIn(db), value));
}

/// A row with its parts; whether it is as it was written.
template <class Id>
bool readWhole(Log::Impl& impl, const Query& row, Stored<Id, typename Table<Id>::Value>& into) {
    const bool asWritten = readRow(impl.db, row, into);
    return asWritten && checksum(into.id, into.value) == row.integer(1);
}

/// Every row in order; wrong is told of each that is not as it was written, which is left out.
template <class Id, class Wrong>
std::vector<Stored<Id, typename Table<Id>::Value>> list(Log::Impl& impl, const Wrong& wrong) {
    std::vector<Stored<Id, typename Table<Id>::Value>> all;
    Query rows(impl.db, sqlOf<Id>().inOrder.c_str());
    const auto take = [&] {
        Stored<Id, typename Table<Id>::Value> one;
        if (readWhole(impl, rows, one))
            all.push_back(std::move(one));
        else
            wrong(notAsWritten<Id>(one.value));
    };
    while (impl.next(rows))
        impl.salvaging(take);
    return all;
}

template <class Id>
std::vector<Stored<Id, typename Table<Id>::Value>> list(Log::Impl& impl) {
    return list<Id>(impl, [&](const Words& what) { impl.leaveOut(what); });
}

/// One row by its key; throws where it is not there or not as it was written.
template <class Id>
Stored<Id, typename Table<Id>::Value> oneOf(Log::Impl& impl, Id id) {
    Query row(impl.db, sqlOf<Id>().one.c_str(), id);
    if (!row.next())
        throw LogError(LogError::Kind::Conflict, say(Table<Id>::says.gone));
    Stored<Id, typename Table<Id>::Value> one;
    if (!readWhole(impl, row, one))
        impl.damaged(notAsWritten<Id>(one.value));
    return one;
}

/// Throws where it is gone; gives what it weighs in its tally.
template <class Id>
std::uint64_t requireThere(Log::Impl& impl, Id id) {
    Query row(impl.db, sqlOf<Id>().weighed.c_str(), id);
    if (!row.next())
        throw LogError(LogError::Kind::Conflict, say(Table<Id>::says.goneUnchanged));
    if constexpr (std::is_same_v<Id, AthleteId>)
        return weight(row.integer(1), row.integer(2));
    else
        return weight(row.integer(1));
}

template <class Id>
Words nameOf(Log::Impl& impl, Id id) {
    Query row(impl.db, sqlOf<Id>().weighed.c_str(), id);
    return row.next() ? asIs(row.text(0)) : say(Table<Id>::says.numbered, raw(id));
}

template <class Id>
void requireFreeName(Log::Impl& impl, std::optional<Id> id,
                     const typename Table<Id>::Value& value) {
    Query same(impl.db, sqlOf<Id>().taken.c_str(), id.value_or(Id{}), value.name);
    if constexpr (std::is_same_v<Id, BlockId>)
        same.bind(3, value.first);
    if (same.next())
        throw BadInput(say("'%1' a second time", value.name), say(Table<Id>::says.freeName));
}

/// The day that a name is taken from, where the same name may stand for several.
template <class Value>
std::optional<Date> dayOf(const Value& value) {
    if constexpr (std::is_same_v<Value, Block>)
        return value.first;
    else
        return std::nullopt;
}

/// A name that is new here: brought to its one spelling by whoever took it from the coach, and no
/// other spelling of one that is there.
template <class Id>
void requireNewName(Log::Impl& impl, std::optional<Id> id, const typename Table<Id>::Value& value) {
    requireTidy(value.name);
    const std::string key = nameKey(value.name);
    const char* const every = sqlOf<Id>().inOrder.c_str();
    for (const auto row : impl.names[Table<Id>::one].withKey(impl.db, every, key)) {
        if (row == static_cast<std::int64_t>(id.value_or(Id{})))
            continue;
        for (Query other(impl.db, every); other.next();)
            if (other.integer(0) == row && nameKey(other.text(2)) == key &&
                dayOf(readValue<Id>(other)) == dayOf(value))
                throw BadInput(say("'%1', the same name as '%2'", value.name, other.text(2)),
                               say(Table<Id>::says.freeName));
    }
}

template <class Id>
Id add(Log::Impl& impl, const typename Table<Id>::Value& value, std::optional<Id> id) {
    requireValid(value);
    return impl.write([&] {
        if (id && Query(impl.db, sqlOf<Id>().weighed.c_str(), *id).next())
            throw LogError(LogError::Kind::Conflict, say(Table<Id>::says.there));
        requireFreeName(impl, id, value);
        if (!id) // what is put back stands as it stood
            requireNewName(impl, id, value);
        const Id given = impl.key(Table<Id>::one, id);
        Query insert(impl.db, sqlOf<Id>().insert.c_str());
        bindValue(insert, given, value);
        insert.run();
        if constexpr (Table<Id>::hasParts)
            writeParts(impl.db, given, value);
        keep(impl.db, given, value);
        Tally change;
        change.add(requireThere(impl, given));
        impl.tally(Table<Id>::one, 0, change);
        impl.names[Table<Id>::one].note(value.name, raw(given));
        return given;
    });
}

template <class Id>
void change(Log::Impl& impl, Id id, const typename Table<Id>::Value& value) {
    Tally change;
    change.take(requireThere(impl, id));
    requireFreeName(impl, std::optional(id), value);
    if (Query held(impl.db, sqlOf<Id>().weighed.c_str(), id);
        held.next() && held.text(0) != value.name)
        requireNewName(impl, std::optional(id), value);
    Query update(impl.db, sqlOf<Id>().update.c_str());
    bindValue(update, id, value);
    update.run();
    if constexpr (Table<Id>::hasParts) {
        eraseParts(impl.db, id);
        writeParts(impl.db, id, value);
    }
    keep(impl.db, id, value);
    change.add(requireThere(impl, id));
    impl.tally(Table<Id>::one, 0, change);
    impl.names[Table<Id>::one].note(value.name, raw(id));
}

/// What still refers to a thing, one of it and several.
struct Use {
    Phrase one, several;
};

template <class Id>
void requireUnused(Log::Impl& impl, Id id, const char* countSql, const Use& use) {
    Query count(impl.db, countSql, id);
    count.next();
    const auto uses = count.integer(0);
    if (uses > 0)
        throw LogError(LogError::Kind::Conflict,
                       say(uses == 1 ? use.one : use.several, nameOf(impl, id), uses));
}

template <class Id>
void erase(Log::Impl& impl, Id id) {
    Tally change;
    change.take(requireThere(impl, id));
    dropAtom(impl.db, {.kind = Table<Id>::one, .one = raw(id)});
    if constexpr (Table<Id>::hasParts)
        eraseParts(impl.db, id);
    Query(impl.db, sqlOf<Id>().erase.c_str(), id).run();
    impl.tally(Table<Id>::one, 0, change);
}

} // namespace named

} // namespace slopebook::log
