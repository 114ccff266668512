// SPDX-License-Identifier: GPL-3.0-or-later
// A session's battery: read whole and verified, written whole.
#include "core/log/batteryatoms.h"
#include "core/log/impl.h"
#include "core/log/sessionrows.h"
#include "core/log/testedsessions.h"
#include "core/log/validity.h"
#include "core/model/phrases/log.h"

#include <algorithm>

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

bool sound(SessionId session, const Battery& battery, const Query& row, int column) {
    return battery.empty() ? row.null(column)
                           : !row.null(column) && row.integer(column) == checksum(session, battery);
}

constexpr char testedRows[] = "SELECT id, athlete, day, ordinal, body_mass_g, repeat_of, "
                              "battery_checksum FROM sessions ";
constexpr auto testedOfAll = joined(testedRows, "ORDER BY athlete, day, ordinal");
constexpr auto testedOfAthlete = joined(testedRows, "WHERE athlete = ? ORDER BY day, ordinal");

/// Such a row without its battery.
BatterySession headOf(const Query& row) {
    return {.session = row.id<SessionId>(0),
            .athlete = row.id<AthleteId>(1),
            .date = row.date(2),
            .ordinal = row.small(3),
            .bodyMass = row.optionalMass(4),
            .repeatOf = row.optionalId<SessionId>(5),
            .battery = {}};
}

/// And with it, verified. sum: as it was written; nothing: it has none.
void addBattery(Log::Impl& impl, BatterySession& session, std::optional<std::int64_t> sum) {
    if (!sum)
        return;
    session.battery = readBattery(impl.db, session.session);
    if (session.battery.empty() || checksum(session.session, session.battery) != *sum)
        impl.damaged(say("the battery of %1 is not as it was written",
                         impl.called(impl.head(session.session).value)));
}

BatterySession sessionOf(Log::Impl& impl, const Query& row) {
    BatterySession session = headOf(row);
    addBattery(impl, session, row.optionalInteger(6));
    return session;
}

/// "[1,2,3]".
std::string listed(std::span<const TestKindId> kinds) {
    std::string all = "[";
    for (const TestKindId kind : kinds)
        all += (all.size() == 1 ? "" : ",") + std::to_string(raw(kind));
    return all + "]";
}

constexpr char testedIn[] = "SELECT session FROM attempts WHERE test IN "
                            "(SELECT value FROM json_each(?1))";
constexpr auto testedOfKinds =
    joined(testedRows, "WHERE id IN (", testedIn, ") ORDER BY athlete, day, ordinal");
constexpr auto testedGone = joined(testedIn, " EXCEPT SELECT id FROM sessions");

void requireValidBattery(Log::Impl& impl, const Battery& battery,
                         const std::vector<Stored<TestKindId, TestKind>>& kinds) {
    validate(battery);
    for (const TestAttempts& test : battery.tests) {
        const auto kind = std::ranges::find(kinds, test.kind, &Stored<TestKindId, TestKind>::id);
        if (kind == kinds.end())
            throw LogError(Kind::Conflict,
                           say("That test is not in the log any more. Nothing was changed."));
        impl.requireConditions(test.conditions);
        for (const Attempt& attempt : test.attempts) {
            validate(attempt, kind->value);
            if (!storableText(attempt.note) || !storableText(attempt.excluded))
                throw BadInput(say("a text that cannot be stored"), say("a shorter text in UTF-8"));
        }
    }
    for (const Gap& gap : battery.gaps) {
        if (gap.load)
            requireStorableLoad(*gap.load);
        if (!storableText(gap.reason))
            throw BadInput(say("a text that cannot be stored"), say("a shorter text in UTF-8"));
    }
}

void write(Log::Impl& impl, SessionId session, const Battery& battery) {
    insertBattery(impl.db, session, battery);
    std::optional<std::int64_t> sum;
    if (!battery.empty())
        sum = checksum(session, battery);
    Query(impl.db, "UPDATE sessions SET battery_checksum = ? WHERE id = ?", sum, session).run();
}

} // namespace

Battery Log::Impl::verifiedBattery(SessionId session) {
    Query row(db, "SELECT battery_checksum FROM sessions WHERE id = ?", session);
    if (!row.next())
        throw LogError(Kind::Conflict, say("That session is not in the log any more."));
    Battery battery = readBattery(db, session);
    if (!sound(session, battery, row, 0))
        damaged(say("the battery of %1 is not as it was written", called(head(session).value)));
    return battery;
}

void Log::Impl::eraseBattery(SessionId session) {
    Query(db, "DELETE FROM test_conditions WHERE session = ?", session).run();
    Query(db, "DELETE FROM attempts WHERE session = ?", session).run();
    Query(db, "DELETE FROM gaps WHERE session = ?", session).run();
}

Battery Log::battery(SessionId session) const {
    const ReadScope moment(m_impl->db);
    return m_impl->verifiedBattery(session);
}

void Log::scanBatteries(std::optional<AthleteId> athlete,
                        const std::function<void(const BatterySession&)>& visit) const {
    const ReadScope moment(m_impl->db);
    Query rows(m_impl->db, athlete ? testedOfAthlete.data() : testedOfAll.data());
    if (athlete)
        rows.bind(1, *athlete);
    while (rows.next())
        visit(sessionOf(*m_impl, rows));
}

void scanTested(const Log& log, std::span<const TestKindId> kinds,
                const std::function<void(const BatterySession&)>& visit) {
    Log::Impl& impl = log.impl();
    const ReadScope moment(impl.db);
    const std::string wanted = listed(kinds);
    for (Query gone(impl.db, testedGone.data(), wanted); gone.next();)
        impl.head(gone.id<SessionId>(0)); // says so
    struct Tested {
        BatterySession session;
        std::optional<std::int64_t> sum;
    };
    std::vector<Tested> inOrder;
    for (Query rows(impl.db, testedOfKinds.data(), wanted); rows.next();)
        inOrder.push_back({headOf(rows), rows.optionalInteger(6)});
    for (Tested& one : inOrder) {
        addBattery(impl, one.session, one.sum);
        visit(one.session);
        one.session.battery = {};
    }
}

std::vector<BatterySession> Log::batteries(AthleteId athlete) const {
    std::vector<BatterySession> all;
    scanBatteries(athlete, [&](const BatterySession& session) { all.push_back(session); });
    return all;
}

void Log::setBattery(SessionId session, const Battery& battery) {
    const Battery kept = asKept(battery);
    m_impl->write([&] {
        requireValidBattery(*m_impl, kept, testKinds());
        const Battery before = m_impl->verifiedBattery(session); // lest a new sum hide damage
        m_impl->mark(session);
        m_impl->eraseBattery(session);
        log::write(*m_impl, session, kept);
        keepBattery(m_impl->db, session, before, kept);
    });
}

void Log::Impl::checkBatteries(Findings& findings) {
    Query rows(db, "SELECT id, battery_checksum FROM sessions ORDER BY id");
    while (rows.next()) {
        const auto session = rows.id<SessionId>(0);
        if (!sound(session, readBattery(db, session), rows, 1))
            findings.push_back(
                say("The battery of %1 is not as it was written.", called(head(session).value)));
    }
}

} // namespace slopebook::log
