// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/reseal.h"

#include "core/log/checksum.h"
#include "core/log/impl.h"
#include "core/log/query.h"
#include "core/log/sessionrows.h"
#include "core/log/tally.h"

#include <bit>
#include <map>
#include <vector>

namespace slopebook::log {

namespace {
constexpr auto everyHead = joined(headColumns, "ORDER BY athlete, day, ordinal");

std::optional<std::int64_t> batterySeal(Connection& db, SessionId session, const Hurt& hurt) {
    const Battery battery = readBattery(db, session);
    std::optional<std::int64_t> sum;
    if (!battery.empty())
        sum = checksum(session, battery);
    if (hurt.batteries.contains(session))
        sum = ~sum.value_or(0);
    return sum;
}
} // namespace

void resealSessions(Connection& db, const Hurt& hurt) {
    std::vector<Stored<SessionId, SessionHead>> heads;
    for (Query rows(db, everyHead.data()); rows.next();)
        heads.push_back(readHead(rows));
    std::map<AthleteId, std::uint64_t> changes;
    for (const auto& head : heads) {
        const auto conditions = readConditions(db, head.id);
        const auto sets = readSets(db, head.id);
        std::int64_t line = lineChecksum(head, conditions, sets);
        std::int64_t all = checksum(head, conditions, sets);
        if (hurt.sessions.contains(head.id)) {
            line = ~line;
            all = ~all;
        }
        const auto battery = batterySeal(db, head.id, hurt);
        Query before(db, "SELECT checksum, battery_checksum FROM sessions WHERE id = ?", head.id);
        before.next();
        changes[head.value.athlete] +=
            weight(all, battery) - weight(before.integer(0), before.optionalInteger(1));
        Query(db,
              "UPDATE sessions SET line_checksum = ?, checksum = ?, battery_checksum = ? "
              "WHERE athlete = ? AND day = ? AND ordinal = ?",
              line, all, battery, head.value.athlete, head.value.date, head.value.ordinal)
            .run();
    }
    for (const auto& [athlete, change] : changes)
        Query(db, "UPDATE tallies SET sum = plus(sum, ?) WHERE owner = ? AND kind = 'session'",
              std::bit_cast<std::int64_t>(change), athlete)
            .run();
}

} // namespace slopebook::log
