// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/departing.h"

#include "core/log/atoms.h"
#include "core/log/neighbours.h"
#include "core/log/storerows.h"
#include "core/meetings/going.h"

#include <algorithm>

namespace slopebook::meetings {

namespace {
using Uuids = std::vector<Sixteen>;

void add(Uuids& all, const Uuids& more) {
    all.insert(all.end(), more.begin(), more.end());
}

/// The athlete, and all that is his.
Uuids allOf(const log::Log& log, const Sixteen& uuid, AthleteId athlete) {
    log::Connection& db = log::connectionOf(log);
    Uuids all{uuid};
    add(all, log::uuidsOfCheckLoads(db, athlete));
    std::optional<Date> last;
    for (const auto& session : log.sessions(athlete))
        if (last != session.value.date) {
            last = session.value.date;
            add(all, log::uuidsOfDay(db, athlete, *last));
        }
    return all;
}

/// Out of the rosters, which are of the squad that he leaves.
void leaveRosters(log::Log& log, AthleteId athlete, Uuids& his) {
    for (Roster roster : log.rosters()) {
        if (std::erase(roster.athletes, athlete) == 0)
            continue;
        const auto place = log::atomOf(log::connectionOf(log), {.kind = "roster",
                                                                .one = raw(roster.station),
                                                                .two = log::dayNumber(roster.day),
                                                                .three = raw(athlete)});
        if (place)
            his.push_back(place->uuid);
        log.setRoster(roster);
    }
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

std::optional<Departing> letGo(log::Log& log, const store::Departed& departed) {
    std::optional<Departing> gone;
    log.together([&] {
        log::Connection& db = log::connectionOf(log);
        const auto atom = log::atomOf(db, departed.athlete);
        const auto sent = log::sentOf(db, departed.athlete);
        if (!atom || atom->key.kind != "athlete" || !sent || sent->squad != departed.squad)
            return;
        const AthleteId athlete{atom->key.one};
        gone = Departing{.name = log.athlete(athlete).value.name};
        Uuids his = allOf(log, departed.athlete, athlete);
        gone->stayed =
            std::ranges::any_of(his, [&](const Sixteen& uuid) { return log::isUnsent(db, uuid); });
        if (gone->stayed) {
            keepHere(log, his);
            return;
        }
        leaveRosters(log, athlete, his);
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
