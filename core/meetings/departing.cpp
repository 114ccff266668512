// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/departing.h"

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

/// The athlete, and all that is his.
Uuids allOf(const log::Log& log, const Sixteen& uuid, AthleteId athlete) {
    log::Connection& db = log::connectionOf(log);
    Uuids all{uuid};
    append(all, log::uuidsOfCheckLoads(db, athlete));
    std::optional<Date> last;
    for (const auto& session : log.sessions(athlete))
        if (last != session.value.date) {
            last = session.value.date;
            append(all, log::uuidsOfDay(db, athlete, *last));
        }
    addRemovedAndChoices(db, all);
    return all;
}

/// Out of the rosters of the squad that he leaves.
void leaveRosters(log::Log& log, AthleteId athlete, const Sixteen& squad, Uuids& his) {
    log::Connection& db = log::connectionOf(log);
    for (Roster roster : log.rosters()) {
        const auto station = log::atomOf(db, {.kind = "station", .one = raw(roster.station)});
        const auto sent = station ? log::sentOf(db, station->uuid) : std::nullopt;
        if (!sent || sent->squad != squad || std::erase(roster.athletes, athlete) == 0)
            continue;
        const auto place = log::atomOf(db, {.kind = "roster",
                                            .one = raw(roster.station),
                                            .two = log::dayNumber(roster.day),
                                            .three = raw(athlete)});
        if (place)
            his.push_back(place->uuid);
        log.setRoster(roster);
    }
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
        const auto atom = log::atomOf(db, departed.athlete);
        const auto sent = log::sentOf(db, departed.athlete);
        if (!atom || atom->key.kind != "athlete" || !sent)
            return;
        const AthleteId athlete{atom->key.one};
        if (sent->squad != departed.squad) { // he is here by way of the other squad
            Uuids places;
            leaveRosters(log, athlete, departed.squad, places);
            return;
        }
        gone = Departing{.name = log.athlete(athlete).value.name};
        Uuids his = allOf(log, departed.athlete, athlete);
        gone->stayed =
            std::ranges::any_of(his, [&](const Sixteen& uuid) { return log::isUnsent(db, uuid); });
        if (gone->stayed) {
            keepHere(log, his);
            return;
        }
        leaveRosters(log, athlete, departed.squad, his);
        settleChoices(log, his);
        takeOut(log, athlete);
        for (const Sixteen& uuid : his)
            if (const auto removed = log::removedAtomOf(db, uuid))
                log::forgetRemoved(db, *removed);
        log::eraseSent(db, his);
        log::eraseUnsent(db, his);
    });
    return gone;
}

} // namespace slopebook::meetings
