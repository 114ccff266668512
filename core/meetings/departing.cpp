// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/departing.h"

#include "core/log/atoms.h"
#include "core/log/carried.h"
#include "core/log/conflicts.h"
#include "core/log/neighbours.h"
#include "core/log/storerows.h"
#include "core/meetings/going.h"
#include "core/meetings/joining.h"

#include <algorithm>
#include <set>

namespace slopebook::meetings {

namespace {
using Uuids = std::vector<Sixteen>;

void append(Uuids& all, const Uuids& more) {
    all.insert(all.end(), more.begin(), more.end());
}

/// What was removed of those, and the choices about any of them.
void addRemovedAndChoices(log::Connection& db, Uuids& all) {
    std::set<Sixteen> his(all.begin(), all.end());
    const auto take = [&](const log::RemovedAtom& removed) {
        if (!removed.content)
            return;
        const auto parent = log::parentOf(*removed.content);
        if (parent && his.contains(parent->uuid) && his.insert(removed.atom.uuid).second)
            all.push_back(removed.atom.uuid);
    };
    log::visitRemoved(db, "session", take);
    for (const char* kind :
         {"check load", "lift conditions", "test conditions", "set", "attempt", "gap"})
        log::visitRemoved(db, kind, take);
    Uuids choices = log::uuidsOfKind(db, "conflict");
    log::visitRemoved(db, "conflict", [&](const log::RemovedAtom& removed) {
        choices.push_back(removed.atom.uuid);
    });
    for (const Sixteen& uuid : choices) {
        const auto one = log::carried(db, uuid);
        const auto about = one ? log::aboutOf(*one) : std::nullopt;
        if (about && his.contains(*about))
            all.push_back(uuid);
    }
}

/// The athlete, and all that is his. athlete: nothing where he was removed.
Uuids allOf(const log::Log& log, const Sixteen& uuid, std::optional<AthleteId> athlete) {
    log::Connection& db = log::connectionOf(log);
    Uuids all{uuid};
    if (athlete) {
        append(all, log::uuidsOfCheckLoads(db, *athlete));
        std::optional<Date> last;
        for (const auto& session : log.sessions(*athlete))
            if (last != session.value.date) {
                last = session.value.date;
                append(all, log::uuidsOfDay(db, *athlete, *last));
            }
    }
    addRemovedAndChoices(db, all);
    return all;
}

/// Whether a station is of that squad: as the store has it, or will have it.
bool isOf(log::Connection& db, const Sixteen& station, const Sixteen& squad) {
    if (const auto sent = log::sentOf(db, station))
        return sent->squad == squad;
    const auto unsent = log::unsentOf(db, station);
    return unsent && unsent->squad.value_or(log::joinedStore(db)->squad) == squad;
}

/// His turns in that squad's rosters, there or removed.
Uuids turnsOf(log::Log& log, const Sixteen& athlete, const Sixteen& squad) {
    log::Connection& db = log::connectionOf(log);
    Uuids all = log::uuidsOfKind(db, "roster");
    log::visitRemoved(db, "roster", [&](const log::RemovedAtom& one) {
        if (one.content)
            all.push_back(one.atom.uuid);
    });
    std::erase_if(all, [&](const Sixteen& uuid) {
        const auto turn = log::carried(db, uuid);
        return !turn || !turn->parent || !isOf(db, turn->parent->uuid, squad) ||
               std::ranges::none_of(log::referencesOf(turn->content),
                                    [&](const log::Reference& of) { return of.uuid == athlete; });
    });
    return all;
}

void forget(log::Connection& db, const Uuids& his) {
    for (const Sixteen& uuid : his)
        if (const auto removed = log::removedAtomOf(db, uuid))
            log::forgetRemoved(db, *removed);
    log::eraseSent(db, his);
    log::eraseUnsent(db, his);
}

/// Out of the rosters of the squad that he leaves, without a removal: the store has none any more
/// of the turns that he had then, and tells nobody. Those that came after he was back it has.
void leaveRosters(log::Log& log, std::optional<AthleteId> athlete,
                  const store::Departed& departed) {
    log::Connection& db = log::connectionOf(log);
    Uuids turns = turnsOf(log, departed.athlete, departed.squad);
    std::erase_if(turns, [&](const Sixteen& uuid) {
        const auto sent = log::sentOf(db, uuid);
        return sent && sent->version > departed.version;
    });
    for (Roster roster : athlete ? log.rosters() : std::vector<Roster>()) {
        const auto turn = log::atomOf(db, {.kind = "roster",
                                           .one = raw(roster.station),
                                           .two = log::dayNumber(roster.day),
                                           .three = raw(*athlete)});
        if (turn && std::ranges::find(turns, turn->uuid) != turns.end()) {
            std::erase(roster.athletes, *athlete);
            log.setRoster(roster);
        }
    }
    forget(db, turns);
}

/// He went and came back before this log heard of it: what it has of his turns is told again.
void tellTurnsAgain(log::Log& log, const store::Departed& departed) {
    log::Connection& db = log::connectionOf(log);
    Uuids turns = turnsOf(log, departed.athlete, departed.squad);
    std::erase_if(turns, [&](const Sixteen& uuid) {
        const auto sent = log::sentOf(db, uuid);
        return !sent || sent->version > departed.version;
    });
    log::eraseSent(db, turns);
    for (const Sixteen& uuid : turns)
        log::noteUnsent(db, uuid);
}

void settleChoices(log::Log& log, const Uuids& his) {
    for (const Sixteen& uuid : his)
        if (const auto atom = log::atomOf(log::connectionOf(log), uuid);
            atom && atom->key.kind == "conflict")
            log::settleConflict(log, log::ConflictId{atom->key.one});
}

void takeOut(log::Log& log, AthleteId athlete) {
    const auto sessions = log.sessions(athlete);
    for (const auto& session : sessions)
        if (session.value.repeatOf) {
            SessionHead head = session.value;
            head.repeatOf.reset();
            log.change(session.id, head);
        }
    for (const auto& session : sessions)
        log.remove(session.id);
    for (const auto& lift : log.lifts())
        if (!log.checkLoads(athlete, lift.id).empty())
            log.setCheckLoads(athlete, lift.id, {});
    log.remove(athlete);
}
} // namespace

std::optional<Departing> letGo(log::Log& log, const Sixteen& store,
                               const store::Departed& departed) {
    std::optional<Departing> gone;
    log.together([&] {
        requireMeets(log, store);
        log::Connection& db = log::connectionOf(log);
        if (departed.isBack && writableSquads(db).contains(departed.squad)) {
            tellTurnsAgain(log, departed);
            return;
        }
        const auto atom = log::atomOf(db, departed.athlete);
        const auto sent = log::sentOf(db, departed.athlete);
        if ((!sent && !departed.isBack) || (atom && atom->key.kind != "athlete"))
            return;
        const auto athlete = atom ? std::optional(AthleteId{atom->key.one}) : std::nullopt;
        leaveRosters(log, athlete, departed);
        // back: who may write tells his turns; another squad: he is here by way of that one
        if (departed.isBack || sent->squad != departed.squad)
            return;
        Uuids his = allOf(log, departed.athlete, athlete);
        // a turn at another squad's station was never sent: no roster is of two squads
        const bool stays =
            std::ranges::any_of(his,
                                [&](const Sixteen& uuid) { return log::isUnsent(db, uuid); }) ||
            (athlete && std::ranges::any_of(log.rosters(), [&](const Roster& roster) {
                 return std::ranges::find(roster.athletes, *athlete) != roster.athletes.end();
             }));
        if (athlete)
            gone = Departing{.name = log.athlete(*athlete).value.name, .stayed = stays};
        if (stays) {
            keepHere(log, his);
            return;
        }
        settleChoices(log, his);
        if (athlete)
            takeOut(log, *athlete);
        forget(db, his);
    });
    return gone;
}

} // namespace slopebook::meetings
