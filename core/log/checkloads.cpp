// SPDX-License-Identifier: GPL-3.0-or-later
// What hangs on an athlete beside sessions: check loads.
#include "core/log/atoms.h"
#include "core/log/impl.h"
#include "core/log/validity.h"
#include "core/model/phrases/log.h"

#include <algorithm>

namespace slopebook::log {

namespace {
LogError goneOfLoads(Phrase what) {
    return {LogError::Kind::Conflict, say(what)};
}
constexpr Phrase noAthlete = "That athlete is not in the log any more. Nothing was changed.";
constexpr Phrase noLift = "That lift is not in the log any more. Nothing was changed.";
AtomKey keyOf(AthleteId athlete, LiftId lift, Mass load) {
    return {.kind = "check load", .one = raw(athlete), .two = raw(lift), .three = load.grams};
}
} // namespace

std::vector<std::pair<LiftId, Mass>> Log::Impl::allCheckLoads(AthleteId athlete) {
    std::vector<std::pair<LiftId, Mass>> loads;
    Query rows(db, "SELECT lift, load_g FROM check_loads WHERE athlete = ? ORDER BY lift, load_g",
               athlete);
    while (rows.next())
        loads.emplace_back(rows.id<LiftId>(0), rows.mass(1));
    return loads;
}

bool Log::Impl::checkLoadsSound(AthleteId athlete) {
    Query row(db, "SELECT loads_checksum FROM athletes WHERE id = ?", athlete);
    return !row.next() || row.integer(0) == checksum(athlete, allCheckLoads(athlete));
}

void Log::Impl::sealCheckLoads(AthleteId athlete) {
    Query row(db, "SELECT checksum, loads_checksum FROM athletes WHERE id = ?", athlete);
    if (!row.next())
        throw goneOfLoads(noAthlete);
    const std::int64_t entry = row.integer(0);
    const std::int64_t before = row.integer(1);
    const std::int64_t now = checksum(athlete, allCheckLoads(athlete));
    Query(db, "UPDATE athletes SET loads_checksum = ? WHERE id = ?", now, athlete).run();
    Tally change;
    change.take(weight(entry, before));
    change.add(weight(entry, now));
    tally("athlete", 0, change);
}

std::vector<Mass> Log::checkLoads(AthleteId athlete, LiftId lift) const {
    const ReadScope moment(m_impl->db);
    std::vector<Mass> loads;
    const bool sound = m_impl->salvaging([&] {
        if (!m_impl->checkLoadsSound(athlete))
            m_impl->damaged(say("the check loads of %1 are not as they were written",
                                m_impl->athleteName(athlete)));
    });
    if (!sound)
        return loads;
    for (const auto& [of, load] : m_impl->allCheckLoads(athlete))
        if (of == lift)
            loads.push_back(load);
    return loads;
}

void Log::setCheckLoads(AthleteId athlete, LiftId lift, const std::vector<Mass>& loads) {
    std::ranges::for_each(loads, requireStorableLoad);
    m_impl->write([&] {
        Impl& impl = *m_impl;
        if (!Query(impl.db, "SELECT 1 FROM athletes WHERE id = ?", athlete).next())
            throw goneOfLoads(noAthlete);
        if (!Query(impl.db, "SELECT 1 FROM lifts WHERE id = ?", lift).next())
            throw goneOfLoads(noLift);
        if (!impl.checkLoadsSound(athlete))
            impl.damaged(say("the check loads of %1 are not as they were written",
                             impl.athleteName(athlete)));
        for (const auto& [of, load] : impl.allCheckLoads(athlete))
            if (of == lift && std::ranges::find(loads, load) == loads.end())
                dropAtom(impl.db, keyOf(athlete, lift, load));
        Query(impl.db, "DELETE FROM check_loads WHERE athlete = ? AND lift = ?", athlete, lift)
            .run();
        for (const Mass load : loads)
            Query(impl.db,
                  "INSERT OR IGNORE INTO check_loads (athlete, lift, load_g) VALUES (?, ?, ?)",
                  athlete, lift, load)
                .run();
        for (const Mass load : loads)
            keepAtom(impl.db, keyOf(athlete, lift, load),
                     contentHash(uuidsIn(impl.db), athlete, lift, load));
        impl.sealCheckLoads(athlete);
    });
}

} // namespace slopebook::log
