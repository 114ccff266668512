// SPDX-License-Identifier: GPL-3.0-or-later
// A session's battery: read whole and verified, written whole.
#include "core/log/impl.h"
#include "core/log/testedsessions.h"
#include "core/log/validity.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

BodySide sideOf(const Query& row, int column) {
    return bodySideFromWord(row.text(column)).value_or(BodySide::Both);
}

Battery stored(Log::Impl& impl, SessionId session) {
    Battery battery;
    Query context(impl.db,
                  "SELECT surface, device, footwear, technique FROM contexts WHERE session = ?",
                  session);
    if (context.next())
        battery.context = {.surface = context.text(0),
                           .device = context.text(1),
                           .footwear = context.text(2),
                           .technique = context.text(3)};
    Query rows(impl.db,
               "SELECT test, side, value, contact, note, excluded FROM attempts WHERE session = ? "
               "ORDER BY ordinal",
               session);
    while (rows.next()) {
        const auto kind = rows.id<TestKindId>(0);
        if (battery.tests.empty() || battery.tests.back().kind != kind)
            battery.tests.push_back({.kind = kind, .attempts = {}});
        battery.tests.back().attempts.push_back({.side = sideOf(rows, 1),
                                                 .value = rows.real(2),
                                                 .contact = rows.optionalReal(3),
                                                 .note = rows.text(4),
                                                 .excluded = rows.text(5)});
    }
    Query gaps(impl.db,
               "SELECT test, lift, side, reason FROM gaps WHERE session = ? ORDER BY ordinal",
               session);
    while (gaps.next())
        battery.gaps.push_back({.kind = gaps.optionalId<TestKindId>(0),
                                .lift = gaps.optionalId<LiftId>(1),
                                .side = sideOf(gaps, 2),
                                .reason = gaps.text(3)});
    return battery;
}

bool sound(SessionId session, const Battery& battery, const Query& row, int column) {
    return battery.empty() ? row.null(column)
                           : !row.null(column) && row.integer(column) == checksum(session, battery);
}

/// A row of id, athlete, day, ordinal, body_mass_g, repeat_of, battery_checksum, with its battery,
/// verified.
BatterySession sessionOf(Log::Impl& impl, const Query& row) {
    BatterySession session{.session = row.id<SessionId>(0),
                           .athlete = row.id<AthleteId>(1),
                           .date = row.date(2),
                           .ordinal = row.small(3),
                           .bodyMass = row.optionalMass(4),
                           .repeatOf = row.optionalId<SessionId>(5),
                           .battery = {}};
    if (row.null(6))
        return session;
    session.battery = stored(impl, session.session);
    if (!sound(session.session, session.battery, row, 6))
        impl.damaged(say("the battery of %1 is not as it was written",
                         impl.called(impl.head(session.session).value)));
    return session;
}

void requireValidBattery(const Battery& battery,
                         const std::vector<Stored<TestKindId, TestKind>>& kinds) {
    validate(battery);
    const TestContext& context = battery.context;
    for (const std::string* text :
         {&context.surface, &context.device, &context.footwear, &context.technique})
        if (!storableText(*text))
            throw BadInput(say("a text that cannot be stored"), say("a shorter text in UTF-8"));
    for (const TestAttempts& test : battery.tests) {
        const auto kind = std::ranges::find(kinds, test.kind, &Stored<TestKindId, TestKind>::id);
        if (kind == kinds.end())
            throw LogError(Kind::Conflict,
                           say("That test is not in the log any more. Nothing was changed."));
        for (const Attempt& attempt : test.attempts) {
            validate(attempt, kind->value);
            if (!storableText(attempt.note) || !storableText(attempt.excluded))
                throw BadInput(say("a text that cannot be stored"), say("a shorter text in UTF-8"));
        }
    }
    for (const Gap& gap : battery.gaps)
        if (!storableText(gap.reason))
            throw BadInput(say("a text that cannot be stored"), say("a shorter text in UTF-8"));
}

void write(Log::Impl& impl, SessionId session, const Battery& battery) {
    const TestContext& context = battery.context;
    if (context != TestContext{})
        Query(impl.db,
              "INSERT INTO contexts (session, surface, device, footwear, technique) "
              "VALUES (?, ?, ?, ?, ?)",
              session, context.surface, context.device, context.footwear, context.technique)
            .run();
    int ordinal = 0;
    for (const TestAttempts& test : battery.tests)
        for (const Attempt& attempt : test.attempts)
            Query(impl.db,
                  "INSERT INTO attempts (session, ordinal, test, side, value, contact, note, "
                  "excluded) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                  session, ++ordinal, test.kind, std::string(word(attempt.side)), attempt.value,
                  attempt.contact, attempt.note, attempt.excluded)
                .run();
    ordinal = 0;
    for (const Gap& gap : battery.gaps)
        Query(impl.db,
              "INSERT INTO gaps (session, ordinal, test, lift, side, reason) "
              "VALUES (?, ?, ?, ?, ?, ?)",
              session, ++ordinal, gap.kind, gap.lift, std::string(word(gap.side)), gap.reason)
            .run();
    std::optional<std::int64_t> sum;
    if (!battery.empty())
        sum = checksum(session, battery);
    Query(impl.db, "UPDATE sessions SET battery_checksum = ? WHERE id = ?", sum, session).run();
}

} // namespace

std::int64_t checksum(SessionId session, const Battery& battery) {
    Checksum sum('T');
    const TestContext& context = battery.context;
    sum.add(session).add(context.surface).add(context.device);
    sum.add(context.footwear).add(context.technique);
    for (const TestAttempts& test : battery.tests) {
        sum.add(test.kind).add(static_cast<std::int64_t>(test.attempts.size()));
        for (const Attempt& attempt : test.attempts)
            sum.add(attempt.side)
                .add(attempt.value)
                .add(attempt.contact)
                .add(attempt.note)
                .add(attempt.excluded);
    }
    sum.add(static_cast<std::int64_t>(battery.gaps.size()));
    for (const Gap& gap : battery.gaps)
        sum.add(gap.kind).add(gap.lift).add(gap.side).add(gap.reason);
    return sum.value();
}

Battery Log::Impl::verifiedBattery(SessionId session) {
    Query row(db, "SELECT battery_checksum FROM sessions WHERE id = ?", session);
    if (!row.next())
        throw LogError(Kind::Conflict, say("That session is not in the log any more."));
    Battery battery = stored(*this, session);
    if (!sound(session, battery, row, 0))
        damaged(say("the battery of %1 is not as it was written", called(head(session).value)));
    return battery;
}

void Log::Impl::eraseBattery(SessionId session) {
    Query(db, "DELETE FROM contexts WHERE session = ?", session).run();
    Query(db, "DELETE FROM attempts WHERE session = ?", session).run();
    Query(db, "DELETE FROM gaps WHERE session = ?", session).run();
}

Battery Log::battery(SessionId session) const {
    const Reading moment(m_impl->db);
    return m_impl->verifiedBattery(session);
}

void Log::scanBatteries(std::optional<AthleteId> athlete,
                        const std::function<void(const BatterySession&)>& visit) const {
    const Reading moment(m_impl->db);
    Query rows(m_impl->db,
               athlete ? "SELECT id, athlete, day, ordinal, body_mass_g, repeat_of, "
                         "battery_checksum FROM sessions WHERE athlete = ? ORDER BY day, ordinal"
                       : "SELECT id, athlete, day, ordinal, body_mass_g, repeat_of, "
                         "battery_checksum FROM sessions ORDER BY athlete, day, ordinal");
    if (athlete)
        rows.bind(1, *athlete);
    while (rows.next())
        visit(sessionOf(*m_impl, rows));
}

void scanTested(const Log& log, std::span<const TestKindId> kinds,
                const std::function<void(const BatterySession&)>& visit) {
    Log::Impl& impl = log.impl();
    const Reading moment(impl.db);
    std::set<SessionId> tested;
    for (const TestKindId kind : kinds) {
        Query rows(impl.db, "SELECT session FROM attempts WHERE test = ?", kind);
        while (rows.next())
            tested.insert(rows.id<SessionId>(0));
    }
    std::vector<std::tuple<AthleteId, Date, int, SessionId>> inOrder;
    for (const SessionId id : tested) {
        const SessionHead head = impl.head(id).value;
        inOrder.emplace_back(head.athlete, head.date, head.ordinal, id);
    }
    std::ranges::sort(inOrder);
    for (const auto& place : inOrder) {
        Query row(impl.db,
                  "SELECT id, athlete, day, ordinal, body_mass_g, repeat_of, battery_checksum "
                  "FROM sessions WHERE id = ?",
                  std::get<SessionId>(place));
        if (row.next())
            visit(sessionOf(impl, row));
    }
}

std::vector<BatterySession> Log::batteries(AthleteId athlete) const {
    std::vector<BatterySession> all;
    scanBatteries(athlete, [&](const BatterySession& session) { all.push_back(session); });
    return all;
}

void Log::setBattery(SessionId session, const Battery& battery) {
    Battery kept = battery;
    std::erase_if(kept.tests, [](const TestAttempts& test) { return test.attempts.empty(); });
    m_impl->write([&] {
        requireValidBattery(kept, testKinds());
        m_impl->verifiedBattery(session); // lest a new checksum hide damage
        m_impl->mark(session);
        m_impl->eraseBattery(session);
        log::write(*m_impl, session, kept);
    });
}

void Log::Impl::checkBatteries(Findings& findings) {
    Query rows(db, "SELECT id, battery_checksum FROM sessions ORDER BY id");
    while (rows.next()) {
        const auto session = rows.id<SessionId>(0);
        if (!sound(session, stored(*this, session), rows, 1))
            findings.push_back(
                say("The battery of %1 is not as it was written.", called(head(session).value)));
    }
}

} // namespace slopebook::log
