// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/coming.h"

#include "core/desks/part.h"
#include "core/desks/taking.h"
#include "core/desks/writing.h"
#include "core/log/snapshot.h"
#include "core/log/storerows.h"
#include "core/meetings/going.h"
#include "core/meetings/joining.h"
#include "core/meetings/units.h"
#include "core/model/errors.h"
#include "core/model/phrases/meetings.h"
#include "core/store/thingjson.h"

#include <algorithm>
#include <chrono>
#include <map>
#include <thread>

namespace slopebook::meetings {

void add(desks::MergeReport& all, desks::MergeReport&& more) {
    const auto move = [](auto& to, auto& from) {
        to.insert(to.end(), std::make_move_iterator(from.begin()),
                  std::make_move_iterator(from.end()));
    };
    all.nothingNew = all.nothingNew && more.nothingNew;
    all.added += more.added;
    all.changed += more.changed;
    all.removed += more.removed;
    all.becameOne += more.becameOne;
    move(all.joined, more.joined);
    move(all.revived, more.revived);
    move(all.renamed, more.renamed);
    move(all.listed, more.listed);
}

namespace {
using desks::Desk;
using desks::Slot;
using desks::Slots;
using store::Atom;
using store::Sixteen;
using Places = std::vector<std::size_t>;

/// What came, in the words of a meeting.
Desk deskOf(Slots& known, const std::vector<Atom>& atoms, const Places& places) {
    Desk desk;
    for (const std::size_t i : places) {
        const log::Carried carried = store::carriedOf(atoms[i]);
        const Slot slot = known.of(carried.kind, carried.uuid);
        desk.insert_or_assign(slot, desks::atomOf(known, carried));
    }
    return desk;
}

/// A choice that this log has already, open or settled, is not listed once more.
void keepKnownChoices(log::Connection& db, const Slots& known, const Desk& before, Desk& after,
                      desks::Taken& taken) {
    std::erase_if(taken.touched, [&](Slot slot) {
        if (before.contains(slot) ||
            !std::holds_alternative<log::ConflictThing>(*after.at(slot).thing) ||
            !log::carried(db, known.uuid(slot)))
            return false;
        after.erase(slot);
        std::erase_if(taken.told, [&](const desks::Told& told) { return told.about == slot; });
        return true;
    });
}

/// What the store has, and whether it has it as it is here.
void noteHeld(log::Connection& db, const Slots& known, const Desk& after,
              const std::vector<Atom>& atoms, const Places& places) {
    std::vector<log::Sent> sent;
    std::vector<Sixteen> same;
    std::vector<log::Unsent> other;
    for (const std::size_t i : places) {
        const Atom& atom = atoms[i];
        const auto held = after.find(known.find(atom.uuid));
        if (held == after.end())
            continue;
        const log::Sent now{.uuid = atom.uuid,
                            .squad = atom.squad,
                            .version = atom.version,
                            .revision = atom.trail.back().revision};
        if (log::sentOf(db, atom.uuid) != now)
            sent.push_back(now);
        if (log::revisionOf(held->second.trail) == atom.trail.back().revision)
            same.push_back(atom.uuid);
        else
            other.push_back({.uuid = atom.uuid, .squad = {}});
    }
    // what was only written anew with it says what the store has
    for (const auto& [slot, atom] : after) {
        const Sixteen& uuid = known.uuid(slot);
        const auto held = log::isUnsent(db, uuid) ? log::sentOf(db, uuid) : std::nullopt;
        if (held && held->revision == log::revisionOf(atom.trail))
            same.push_back(uuid);
    }
    log::putSent(db, sent);
    log::noteUnsent(db, other);
    log::eraseUnsent(db, same);
}

/// What the store has of it, and what of that is not this login's to write.
desks::MetBefore metBefore(log::Connection& db, const Slots& known, const Desk& before,
                           const std::vector<Atom>& atoms, const Places& places) {
    const std::set<Sixteen> ours = writableSquads(db);
    desks::MetBefore met;
    for (const auto& [slot, atom] : before) {
        const auto sent = log::sentOf(db, known.uuid(slot));
        if (!sent || isKeptHere(*sent))
            continue;
        met.things.insert(slot);
        if (!ours.contains(sent->squad))
            met.notOurs.insert(slot);
    }
    for (const std::size_t i : places)
        if (!ours.contains(atoms[i].squad))
            met.notOurs.insert(known.find(atoms[i].uuid));
    return met;
}

/// In one transaction.
desks::MergeReport takeOne(log::Log& log, const Sixteen& store, const std::vector<Atom>& atoms,
                           const Places& places, Reads reads) {
    desks::MergeReport report;
    log.together([&] {
        log::Connection& db = log::connectionOf(log);
        requireMeets(log, store);
        Slots known;
        const Desk coming = deskOf(known, atoms, places);
        const desks::ReadDesk before = reads == Reads::Around
                                           ? desks::readAround(known, log, coming)
                                           : desks::readDesk(known, log);
        const desks::MetBefore met = metBefore(db, known, before.desk, atoms, places);
        Desk after = before.desk;
        desks::Taken taken = desks::take(known, after, coming, {}, &met);
        keepKnownChoices(db, known, before.desk, after, taken);
        report = desks::reportOf(known, before.desk, after, taken);
        if (!taken.touched.empty())
            desks::writePart(log, known, before, after, taken.touched);
        noteHeld(db, known, after, atoms, places);
    });
    return report;
}

void leaveOut(Came& came, const Atom& atom, const Words& why) {
    came.leftOut.push_back(why);
    const auto [at, isNew] = came.leftOutFrom.emplace(atom.squad, atom.version);
    at->second = std::min(at->second, atom.version);
}

/// Piece by piece where one of them may not stand in a log: the others are taken.
void takePieces(log::Log& log, const Sixteen& store, const std::vector<Atom>& atoms,
                const Places& places, Reads reads, Came& came) {
    try {
        add(came.report, takeOne(log, store, atoms, places, reads));
        return;
    } catch (const BadInput& error) {
        if (places.size() == 1) {
            leaveOut(came, atoms[places.front()], error.words());
            return;
        }
    }
    const auto middle = places.begin() + static_cast<std::ptrdiff_t>(places.size() / 2);
    takePieces(log, store, atoms, Places(places.begin(), middle), reads, came);
    takePieces(log, store, atoms, Places(middle, places.end()), reads, came);
}

/// What can be taken: what says what it was sent as, and speaks of what comes or is known here.
std::vector<Atom> sensible(log::Connection& db, const std::vector<Atom>& atoms, Came& came) {
    std::vector<Atom> good;
    std::map<Sixteen, std::vector<log::Reference>> spokenOf;
    for (const Atom& atom : atoms)
        try {
            const log::Carried carried = store::carriedOf(atom);
            spokenOf[atom.uuid] = carried.content.empty() ? std::vector<log::Reference>()
                                                          : log::referencesOf(carried.content);
            good.push_back(atom);
        } catch (const BadInput& error) {
            leaveOut(came, atom, error.words());
        }
    const auto isThere = [&](const log::Reference& of) {
        return spokenOf.contains(of.uuid) || log::atomOf(db, of.uuid) ||
               log::removedAtomOf(db, of.uuid);
    };
    // of no use to who never had it: a turn of somebody in another squad, say
    std::erase_if(good, [&](const Atom& atom) {
        return !atom.alive && !log::carried(db, atom.uuid) &&
               !std::ranges::all_of(spokenOf.at(atom.uuid), isThere);
    });
    for (std::size_t before = 0; before != good.size();) {
        before = good.size();
        std::erase_if(good, [&](const Atom& atom) {
            if (std::ranges::all_of(spokenOf.at(atom.uuid), isThere))
                return false;
            spokenOf.erase(atom.uuid);
            leaveOut(came, atom,
                     BadInput(say("a %1 of the store that speaks of what is not there", atom.kind),
                              say("what it speaks of in the same store"))
                         .words());
            return true;
        });
    }
    return good;
}
} // namespace

Came takeIn(log::Log& log, const Sixteen& store, const std::vector<Atom>& all,
            const Progress& progress, Reads reads) {
    using Clock = std::chrono::steady_clock;
    Came came;
    std::int64_t done = 0;
    std::vector<Atom> atoms;
    std::vector<Places> units;
    {
        const log::Moment moment(log);
        log::Connection& db = log::connectionOf(log);
        atoms = sensible(db, all, came);
        units = unitsOf(db, atoms);
    }
    for (const Places& unit : units) {
        tell(progress, done, static_cast<std::int64_t>(atoms.size()));
        const auto begin = Clock::now();
        takePieces(log, store, atoms, unit, reads, came);
        done += static_cast<std::int64_t>(unit.size());
        // who waits to write comes in between: SQLite lets in whoever asks first
        if (&unit != &units.back())
            std::this_thread::sleep_for(
                std::min<Clock::duration>(Clock::now() - begin, std::chrono::milliseconds(12)));
    }
    return came;
}

} // namespace slopebook::meetings
