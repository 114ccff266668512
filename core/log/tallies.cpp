// SPDX-License-Identifier: GPL-3.0-or-later
// The tallies kept beside what they count, and held against it.
#include "core/log/impl.h"
#include "core/model/phrases/log.h"

#include <array>
#include <bit>

namespace slopebook::log {

namespace {
/// What belongs to nobody: how a kind is counted, and what is said where the count is not the one
/// that was written, or the same but of other things.
struct Kept {
    const char* kind;
    const char* sql;
    Phrase missing, others;
};
constexpr std::array tallied{
    Kept{"athlete", "SELECT count(*), tally(checksum, loads_checksum) FROM athletes",
         "Athletes: %1 were written, %2 are there.",
         "Athletes: as many as were written, but not the same."},
    Kept{"lift", "SELECT count(*), tally(checksum) FROM lifts",
         "Lifts: %1 were written, %2 are there.",
         "Lifts: as many as were written, but not the same."},
    Kept{"device", "SELECT count(*), tally(checksum) FROM devices",
         "Devices: %1 were written, %2 are there.",
         "Devices: as many as were written, but not the same."},
    Kept{"block", "SELECT count(*), tally(checksum) FROM blocks",
         "Blocks: %1 were written, %2 are there.",
         "Blocks: as many as were written, but not the same."},
    Kept{"equipment", "SELECT count(*), tally(checksum) FROM equipment",
         "Sets of equipment: %1 were written, %2 are there.",
         "Sets of equipment: as many as were written, but not the same."},
    Kept{"test", "SELECT count(*), tally(checksum) FROM tests",
         "Tests: %1 were written, %2 are there.",
         "Tests: as many as were written, but not the same."},
    Kept{"station", "SELECT count(*), tally(checksum) FROM stations",
         "Stations: %1 were written, %2 are there.",
         "Stations: as many as were written, but not the same."},
    Kept{"roster", "SELECT count(*), tally(checksum) FROM rosters",
         "Rosters: %1 were written, %2 are there.",
         "Rosters: as many as were written, but not the same."},
};

Tally tallyOf(const Query& row, int column) {
    return {.things = row.integer(column),
            .sum = std::bit_cast<std::uint64_t>(row.integer(column + 1))};
}
} // namespace

void Log::Impl::tally(const char* kind, std::int64_t owner, const Tally& change) {
    Query(db,
          "UPDATE tallies SET things = things + ?, sum = plus(sum, ?) WHERE owner = ? AND kind = ?",
          change.things, std::bit_cast<std::int64_t>(change.sum), owner, std::string(kind))
        .run();
}

std::int64_t Log::Impl::sessionsWritten(AthleteId athlete) {
    Query row(db, "SELECT things FROM tallies WHERE owner = ? AND kind = 'session'", athlete);
    return row.next() ? row.integer(0) : 0;
}

void Log::Impl::checkTallies(Findings& findings) {
    std::int64_t rows = 0;
    for (const Kept& one : tallied) {
        Query counted(db, one.sql);
        counted.next();
        const Tally there = tallyOf(counted, 0);
        Query row(db, "SELECT things, sum FROM tallies WHERE owner = 0 AND kind = ?",
                  std::string(one.kind));
        if (!row.next())
            continue; // counted below
        ++rows;
        const Tally written = tallyOf(row, 0);
        if (written.things != there.things)
            findings.push_back(say(one.missing, written.things, there.things));
        else if (written != there)
            findings.push_back(say(one.others));
    }
    Query athletes(db, "SELECT athletes.id, ifnull(things, 0), ifnull(sum, 0), things IS NOT NULL, "
                       "(SELECT count(*) FROM sessions WHERE athlete = athletes.id), "
                       "(SELECT tally(checksum, battery_checksum) FROM sessions "
                       "WHERE athlete = athletes.id) "
                       "FROM athletes LEFT JOIN tallies ON owner = athletes.id "
                       "AND tallies.kind = 'session' ORDER BY athletes.id");
    constexpr std::int64_t ofAtoms = 7; // held against theirs by checkAtoms and checkStoreRows
    std::int64_t expected = static_cast<std::int64_t>(tallied.size()) + ofAtoms;
    {
        Query atoms(db, "SELECT count(*) FROM tallies WHERE owner = 0 AND kind IN ('atom', "
                        "'removed atom', 'store', 'squad', 'mark', 'sent', 'unsent')");
        atoms.next();
        rows += atoms.integer(0);
    }
    while (athletes.next()) {
        ++expected;
        rows += athletes.integer(3);
        const Tally written = tallyOf(athletes, 1);
        const Tally there = tallyOf(athletes, 4);
        const auto name = [&] { return athleteName(athletes.id<AthleteId>(0)); };
        if (written.things != there.things)
            findings.push_back(say("Sessions of %1: %2 were written, %3 are there.", name(),
                                   written.things, there.things));
        else if (written != there)
            findings.push_back(
                say("Sessions of %1: as many as were written, but not the same.", name()));
    }
    Query all(db, "SELECT count(*) FROM tallies");
    all.next();
    if (rows != expected || all.integer(0) != expected)
        findings.push_back(say("The table of tallies is not whole."));
}

} // namespace slopebook::log
