// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that can be found wrong with a log, each finding a sentence.
#include "core/log/failure.h"
#include "core/log/impl.h"
#include "core/log/sessionrows.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/Database.h>

#include <map>

namespace slopebook::log {

namespace {
constexpr std::size_t mostFindings = 200;

/// What cannot even be read is a finding too.
template <class Work>
void findIn(std::vector<Words>& findings, const Work& work) {
    try {
        work();
    } catch (const LogError& error) {
        if (error.kind() == LogError::Kind::Busy || error.kind() == LogError::Kind::Unavailable)
            throw;
        findings.push_back(error.words());
    }
}
} // namespace

std::vector<Words> Log::check() const {
    m_impl->settle();
    std::vector<Words> findings;
    const ReadScope moment(m_impl->db);
    findIn(findings, [&] { m_impl->checkStorage(findings); });
    findIn(findings, [&] { m_impl->checkRules(findings); });
    findIn(findings, [&] { m_impl->checkTallies(findings); });
    findIn(findings, [&] { m_impl->checkLists(findings); });
    findIn(findings, [&] { m_impl->checkRosters(findings); });
    findIn(findings, [&] { m_impl->checkSessions(findings); });
    findIn(findings, [&] { m_impl->checkBatteries(findings); });
    findIn(findings, [&] { m_impl->checkOrdinals(findings); });
    findIn(findings, [&] { m_impl->checkKeys(findings); });
    findIn(findings, [&] { m_impl->checkAtoms(findings); });
    findIn(findings, [&] { m_impl->checkStoreRows(findings); });
    if (findings.size() > mostFindings) {
        const auto more = findings.size() - mostFindings;
        findings.resize(mostFindings);
        findings.push_back(say("And %1 more.", more));
    }
    return findings;
}

void Log::Impl::checkStorage(Findings& findings) {
    Query whole(db, "PRAGMA integrity_check(100)");
    while (whole.next())
        // A writer's connection tests the rules too, without saying which row: see checkRules.
        if (const std::string found = whole.text(0);
            found != "ok" && !found.starts_with("CHECK constraint failed")) {
            requireReadable(db.database().getHandle(), db.file());
            findings.push_back(say("SQLite's own check finds: %1.", found));
        }
    Query references(db, "PRAGMA foreign_key_check");
    while (references.next())
        findings.push_back(say("A row of %1 refers to one of %2 that is not there.",
                               references.text(0), references.text(2)));
}

void Log::Impl::checkSessions(Findings& findings) {
    std::map<LiftId, PointRule> rules;
    constexpr static auto all = joined(headColumns, "ORDER BY athlete, day, ordinal");
    Query rows(db, all.data());
    while (rows.next())
        findIn(findings, [&] {
            const auto session = readHead(rows);
            const auto conditions = readConditions(db, session.id);
            const auto sets = readSets(db, session.id);
            if (checksum(session, conditions, sets) != rows.integer(7) ||
                lineChecksum(session, conditions, sets) != rows.integer(6))
                findings.push_back(say("%1 is not as it was written.", called(session.value)));
            for (const StoredSet& stored : sets) {
                const LiftId lift = stored.placed.lift;
                auto known = rules.find(lift);
                if (known == rules.end())
                    known = rules.emplace(lift, rule(lift)).first;
                if (withPoint(stored.placed, known->second) != stored)
                    findings.push_back(say("The point of set %1 in %2 is not that of its reps.",
                                           stored.placed.ordinal, called(session.value)));
            }
        });
}

// What is read in order is written from 1 on: another number changes no figure, but is damage.
void Log::Impl::checkOrdinals(Findings& findings) {
    const auto lacks = [&](const char* table, const char* sql) {
        Query rows(db, sql);
        while (rows.next())
            findings.push_back(
                say("The rows of %1 that belong to number %2 are not numbered from 1 "
                    "on.",
                    std::string(table), rows.integer(0)));
    };
    lacks("reps", "SELECT set_id FROM reps GROUP BY set_id HAVING max(ordinal) <> count(*)");
    lacks("attempts",
          "SELECT session FROM attempts GROUP BY session HAVING max(ordinal) <> count(*)");
    lacks("gaps", "SELECT session FROM gaps GROUP BY session HAVING max(ordinal) <> count(*)");
    lacks("equipment_pieces", "SELECT equipment FROM equipment_pieces GROUP BY equipment "
                              "HAVING max(ordinal) <> count(*)");
    lacks("station_tests", "SELECT station FROM station_tests GROUP BY station "
                           "HAVING max(ordinal) <> count(*)");
    lacks("station_loads", "SELECT station FROM station_loads GROUP BY station "
                           "HAVING max(ordinal) <> count(*)");
    lacks("roster_athletes", "SELECT station FROM roster_athletes GROUP BY station, day "
                             "HAVING max(ordinal) <> count(*)");
}

void Log::Impl::checkKeys(Findings& findings) {
    Query rows(db,
               "SELECT kind FROM keys JOIN (SELECT 'athlete' AS k, max(id) AS m FROM athletes "
               "UNION ALL SELECT 'lift', max(id) FROM lifts "
               "UNION ALL SELECT 'device', max(id) FROM devices "
               "UNION ALL SELECT 'block', max(id) FROM blocks "
               "UNION ALL SELECT 'equipment', max(id) FROM equipment "
               "UNION ALL SELECT 'test', max(id) FROM tests "
               "UNION ALL SELECT 'station', max(id) FROM stations "
               "UNION ALL SELECT 'session', max(id) FROM sessions "
               "UNION ALL SELECT 'set', max(id) FROM sets "
               "UNION ALL SELECT 'conflict', max(id) FROM conflicts) ON k = kind WHERE last < m");
    while (rows.next())
        findings.push_back(
            say("The last key given to a %1 is lower than one in use.", rows.text(0)));
    Query count(db, "SELECT count(*), total(kind IN ('athlete', 'lift', 'device', 'block', "
                    "'equipment', 'test', 'station', 'session', 'set', 'conflict')) FROM keys");
    count.next();
    if (count.integer(0) != 10 || count.integer(1) != 10)
        findings.push_back(say("The table of keys is not whole."));
}

} // namespace slopebook::log
