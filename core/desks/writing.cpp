// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/writing.h"

#include "core/desks/names.h"
#include "core/desks/part.h"
#include "core/desks/writer.h"
#include "core/log/conflicts.h"
#include "core/log/failure.h"
#include "core/log/impl.h"
#include "core/log/neighbours.h"
#include "core/model/phrases/desks.h"

#include <algorithm>

namespace slopebook::desks {

namespace {
/// Said of the thing where it was not written as it is to be: a log's own numbers or texts differ.
[[noreturn]] void notAsMeant(const log::Log& log, const Desk& there, Slot slot) {
    const Atom& atom = there.at(slot);
    throw log::damagedLog(
        log.file(), say("what was to be taken does not stand as it was written (%1, %2)",
                        sayKind(atom.thing ? kindOf(*atom.thing) : "?"), nameOnDesk(there, slot)));
}

void adoptOne(log::Log& log, const Slots& known, Writer& writer, const Desk& after, Slot slot) {
    const log::AtomKey place = writer.placeOf(slot);
    const auto held = log::atomOf(log.impl().db, place);
    const Atom& atom = after.at(slot);
    if (!held || held->hash != hashOf(known, *atom.thing))
        notAsMeant(log, after, slot);
    log::adopt(log.impl().db, place, known.uuid(slot), atom.trail);
}

/// What stood removed where something is to be written: the writing may take such a one for what it
/// puts there, and leaves removed ones of its own.
std::vector<log::RemovedAtom> removedAt(log::Connection& db,
                                        const std::set<Writer::Place>& places) {
    std::vector<log::RemovedAtom> all;
    for (const Writer::Place& place : places)
        for (const Sixteen& uuid : place.two
                                       ? log::uuidsRemovedAt(db, place.kind, place.one, *place.two)
                                       : log::uuidsRemovedAt(db, place.kind, place.one))
            all.push_back(*log::removedAtomOf(db, uuid));
    return all;
}

/// What only the writing itself has put there and taken away again, and nobody else ever saw, goes;
/// what was there before and is no part of this comes back.
void forgetStrangers(log::Connection& db, const Slots& known, const Desk& after,
                     const std::set<Writer::Place>& places,
                     const std::vector<log::RemovedAtom>& before) {
    const auto isPart = [&](const Sixteen& uuid) { return after.contains(known.find(uuid)); };
    for (const log::RemovedAtom& removed : removedAt(db, places)) {
        const Sixteen& uuid = removed.atom.uuid;
        const bool wasThere = std::ranges::any_of(
            before, [&](const log::RemovedAtom& one) { return one.atom.uuid == uuid; });
        if (isPart(uuid) ? after.at(known.find(uuid)).alive : !wasThere)
            log::forgetRemoved(db, removed);
    }
    for (const log::RemovedAtom& one : before)
        if (!isPart(one.atom.uuid) && !log::removedAtomOf(db, one.atom.uuid))
            log::putRemoved(db, one);
}

/// The trails of what was written, and what is removed with what it said. Parking and writing anew
/// have left names of their own, which nobody shall see.
void nameAll(log::Log& log, const Slots& known, Writer& writer, const Desk& after,
             const std::set<Slot>& touched, const std::vector<log::RemovedAtom>& removed) {
    log.impl().settle();
    log::Connection& db = log.impl().db;
    std::set<Slot> written = touched;
    written.merge(writer.writtenAnew());
    for (const Slot slot : written)
        if (const Atom& atom = after.at(slot); atom.alive)
            adoptOne(log, known, writer, after, slot);
    forgetStrangers(db, known, after, writer.placesWritten(), removed);
    for (const auto& [slot, atom] : after) {
        if (atom.alive)
            continue;
        const auto held = log::removedAtomOf(db, known.uuid(slot));
        if (held && !touched.contains(slot))
            continue;
        log::Carried carried{.uuid = known.uuid(slot),
                             .hash = atom.hash,
                             .alive = false,
                             .trail = atom.trail,
                             .parent = {},
                             .into = {},
                             .place = writer.placeOf(slot)};
        if (atom.thing) {
            carried.kind = kindOf(*atom.thing);
            carried.content = bytesOf(known, *atom.thing);
            carried.hash = hashOf(known, *atom.thing);
        }
        log::adoptRemoved(db, carried);
    }
}

/// One that does not stand as it is to; 0: all do.
Slot amiss(const Desk& now, const Desk& after) {
    for (const Desk* desk : {&now, &after})
        for (const auto& [slot, atom] : *desk) {
            const auto one = now.find(slot);
            const auto other = after.find(slot);
            if (one == now.end() || other == after.end() ||
                one->second.alive != other->second.alive ||
                one->second.thing != other->second.thing ||
                one->second.trail != other->second.trail)
                return slot;
        }
    return 0;
}

void requireWritten(const log::Log& log, const Desk& now, const Desk& after) {
    if (const Slot slot = amiss(now, after))
        notAsMeant(log, after.contains(slot) ? after : now, slot);
}

void write(log::Log& log, const Slots& known, const ReadDesk& before, const Desk& after,
           const std::set<Slot>& touched) {
    Writer writer(log, known, before, after, touched);
    const auto removed = removedAt(log.impl().db, writer.placesWritten());
    writer.makeRoom();
    writer.writeNamed();
    writer.writeSessions();
    writer.writeHeld();
    writer.removeNamed();
    writer.writeConflicts();
    nameAll(log, known, writer, after, touched, removed);
}
} // namespace

void writeDesk(log::Log& log, Slots& known, const ReadDesk& before, const Desk& after,
               const std::set<Slot>& touched) {
    write(log, known, before, after, touched);
    requireWritten(log, readDesk(known, log).desk, after);
}

void writePart(log::Log& log, Slots& known, const ReadDesk& before, const Desk& after,
               const std::set<Slot>& touched) {
    write(log, known, before, after, touched);
    std::set<Slot> part;
    for (const auto& [slot, atom] : after)
        part.insert(slot);
    requireWritten(log, readThings(known, log, part).desk, after);
}

} // namespace slopebook::desks
