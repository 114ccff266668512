// SPDX-License-Identifier: GPL-3.0-or-later
// Stations with what is done at them, and who is there on a day.
#include "core/log/named.h"

#include <algorithm>
#include <set>

namespace slopebook::log {

bool readParts(Connection& db, StationId id, Station& station) {
    Query tests(db, "SELECT test FROM station_tests WHERE station = ? ORDER BY ordinal", id);
    while (tests.next())
        station.tests.push_back(tests.id<TestKindId>(0));
    Query loads(db, "SELECT load_g FROM station_loads WHERE station = ? ORDER BY ordinal", id);
    while (loads.next())
        station.ladder.push_back(loads.mass(0));
    return true;
}

void writeParts(Connection& db, StationId id, const Station& station) {
    int ordinal = 0;
    for (const TestKindId test : station.tests)
        Query(db, "INSERT INTO station_tests (station, ordinal, test) VALUES (?, ?, ?)", id,
              ++ordinal, test)
            .run();
    ordinal = 0;
    for (const Mass load : station.ladder)
        Query(db, "INSERT INTO station_loads (station, ordinal, load_g) VALUES (?, ?, ?)", id,
              ++ordinal, load)
            .run();
}

void eraseParts(Connection& db, StationId id) {
    Query(db, "DELETE FROM station_tests WHERE station = ?", id).run();
    Query(db, "DELETE FROM station_loads WHERE station = ?", id).run();
}

namespace {
void requireWhatIsDone(Log::Impl& impl, const Station& station) {
    const auto gone = [](Phrase what) { return LogError(LogError::Kind::Conflict, say(what)); };
    impl.requireConditions(station.conditions);
    if (station.lift && !Query(impl.db, "SELECT 1 FROM lifts WHERE id = ?", *station.lift).next())
        throw gone("That lift is not in the log any more. Nothing was changed.");
    for (const TestKindId test : station.tests)
        if (!Query(impl.db, "SELECT 1 FROM tests WHERE id = ?", test).next())
            throw gone("That test is not in the log any more. Nothing was changed.");
}

Words rosterName(Log::Impl& impl, const Roster& roster) {
    return say("the roster of '%1' on %2", named::nameOf(impl, roster.station), roster.day);
}

std::vector<AthleteId> athletesOf(Log::Impl& impl, StationId station, Date day) {
    std::vector<AthleteId> all;
    Query rows(impl.db,
               "SELECT athlete FROM roster_athletes WHERE station = ? AND day = ? ORDER BY ordinal",
               station, day);
    while (rows.next())
        all.push_back(rows.id<AthleteId>(0));
    return all;
}

/// Every roster as it stands; wrong is told of each that is not as it was written.
template <class Wrong>
std::vector<Roster> rostersOfLog(Log::Impl& impl, std::optional<StationId> station,
                                 const Wrong& wrong) {
    std::vector<Roster> all;
    Query rows(impl.db,
               "SELECT station, day, checksum FROM rosters WHERE ?1 IS NULL OR station = ?1 "
               "ORDER BY station, day",
               station);
    while (impl.next(rows))
        impl.salvaging([&] {
            Roster roster{.station = rows.id<StationId>(0), .day = rows.date(1)};
            roster.athletes = athletesOf(impl, roster.station, roster.day);
            if (checksum(roster) == rows.integer(2))
                all.push_back(std::move(roster));
            else
                wrong(say("%1 is not as it was written", rosterName(impl, roster)));
        });
    return all;
}

AtomKey keyOf(StationId station, Date day, AthleteId athlete) {
    return {.kind = "roster", .one = raw(station), .two = dayNumber(day), .three = raw(athlete)};
}

/// Takes a roster out; gives what it weighed in the tally. stay: who stands on the one that comes
/// in its place.
Tally eraseRoster(Log::Impl& impl, StationId station, Date day,
                  const std::vector<AthleteId>& stay = {}) {
    Tally change;
    Query held(impl.db, "SELECT checksum FROM rosters WHERE station = ? AND day = ?", station, day);
    if (!held.next())
        return change;
    change.take(weight(held.integer(0)));
    for (const AthleteId athlete : athletesOf(impl, station, day))
        if (std::ranges::find(stay, athlete) == stay.end())
            dropAtom(impl.db, keyOf(station, day, athlete));
    Query(impl.db, "DELETE FROM roster_athletes WHERE station = ? AND day = ?", station, day).run();
    Query(impl.db, "DELETE FROM rosters WHERE station = ? AND day = ?", station, day).run();
    return change;
}

void requireRoster(Log::Impl& impl, const Roster& roster) {
    named::requireThere(impl, roster.station);
    requireValid(roster);
    for (const AthleteId athlete : roster.athletes)
        named::requireThere(impl, athlete);
}
} // namespace

std::vector<Stored<StationId, Station>> Log::stations() const {
    const ReadScope moment(m_impl->db);
    return named::list<StationId>(*m_impl);
}

StationId Log::add(const Station& station, std::optional<StationId> id) {
    requireValid(station);
    return m_impl->write([&] {
        requireWhatIsDone(*m_impl, station);
        return named::add(*m_impl, station, id);
    });
}

void Log::change(StationId id, const Station& station) {
    requireValid(station);
    m_impl->write([&] {
        requireWhatIsDone(*m_impl, station);
        named::change(*m_impl, id, station);
    });
}

void Log::remove(StationId id) {
    m_impl->write([&] {
        Tally change;
        for (const Roster& roster : rosters(id))
            if (const Tally gone = eraseRoster(*m_impl, id, roster.day); gone.things != 0) {
                change.things += gone.things;
                change.sum += gone.sum;
            }
        m_impl->tally("roster", 0, change);
        named::erase(*m_impl, id);
    });
}

Roster Log::roster(StationId station, Date day) const {
    const ReadScope moment(m_impl->db);
    Roster roster{.station = station, .day = day};
    Query row(m_impl->db, "SELECT checksum FROM rosters WHERE station = ? AND day = ?", station,
              day);
    if (!row.next())
        return roster;
    roster.athletes = athletesOf(*m_impl, station, day);
    if (checksum(roster) != row.integer(0))
        m_impl->damaged(say("%1 is not as it was written", rosterName(*m_impl, roster)));
    return roster;
}

std::vector<Roster> Log::rosters(std::optional<StationId> station) const {
    const ReadScope moment(m_impl->db);
    return rostersOfLog(*m_impl, station, [&](const Words& what) { m_impl->leaveOut(what); });
}

void Log::setRoster(const Roster& roster) {
    m_impl->write([&] {
        requireRoster(*m_impl, roster);
        this->roster(roster.station, roster.day); // lest a new checksum hide damage
        Tally change = eraseRoster(*m_impl, roster.station, roster.day, roster.athletes);
        if (!roster.athletes.empty()) {
            Query(m_impl->db, "INSERT INTO rosters (station, day, checksum) VALUES (?, ?, ?)",
                  roster.station, roster.day, checksum(roster))
                .run();
            int ordinal = 0;
            for (const AthleteId athlete : roster.athletes) {
                Query(m_impl->db,
                      "INSERT INTO roster_athletes (station, day, ordinal, athlete) "
                      "VALUES (?, ?, ?, ?)",
                      roster.station, roster.day, ++ordinal, athlete)
                    .run();
                keepAtom(m_impl->db, keyOf(roster.station, roster.day, athlete),
                         contentHash(uuidsIn(m_impl->db), roster, ordinal));
            }
            change.add(weight(checksum(roster)));
        }
        m_impl->tally("roster", 0, change);
    });
}

void Log::Impl::checkRosters(Findings& findings) {
    rostersOfLog(*this, {}, [&](const Words& what) { findings.push_back(say("%1.", what)); });
}

} // namespace slopebook::log
