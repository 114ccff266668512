// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/batteryquestions.h"

#include "core/answers/samename.h"
#include "core/answers/testkinds.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "core/questions/blockquestions.h"
#include "core/questions/kepttests.h"
#include "core/questions/liftcontext.h"
#include "core/questions/seasonstep.h"

#include <algorithm>
#include <map>
#include <set>

namespace slopebook::questions {

Stored<BlockId, Block> blockOf(const log::Log& log, BlockId id) {
    for (auto& block : log.blocks())
        if (block.id == id)
            return block;
    throw LogError(LogError::Kind::Conflict, say("That block is not in the log any more."));
}

SideDays daysOf(const log::Log& log, const BatterySide& side) {
    if (const auto* date = std::get_if<Date>(&side))
        return {isoDate(*date), {*date, *date}};
    if (const auto* days = std::get_if<DayStretch>(&side))
        return {isoStretch(*days), *days};
    if (const auto* one = std::get_if<DaySession>(&side))
        return {isoSession(*one), {one->day, one->day}, one->number};
    const Block block = blockOf(log, std::get<BlockId>(side)).value;
    return {block.name, {block.first, block.last}};
}

namespace {

answers::TestDays testsOf(const std::vector<BatterySession>& sessions, const BatterySide& side,
                          const SideDays& named) {
    answers::TestDays days{.label = named.name,
                           .means = !std::holds_alternative<Date>(side) &&
                                    !std::holds_alternative<DaySession>(side)};
    for (const BatterySession& session : sessions)
        if (named.holds(session.date, session.ordinal))
            days.sessions.push_back(session);
    return days;
}

bool shareASession(const answers::TestDays& first, const answers::TestDays& second) {
    return std::ranges::any_of(first.sessions, [&](const BatterySession& session) {
        return std::ranges::count(second.sessions, session.session, &BatterySession::session) > 0;
    });
}

/// The tests of either side: of no others anything is asked.
std::vector<TestKindId> kindsIn(const answers::TestDays& first, const answers::TestDays& second) {
    std::set<TestKindId> kinds;
    for (const auto* days : {&first, &second})
        for (const BatterySession& session : days->sessions)
            for (const TestAttempts& test : session.battery.tests)
                kinds.insert(test.kind);
    return {kinds.begin(), kinds.end()};
}

/// Of a day the last session that holds the lift, else all.
answers::BlockSessions liftIn(std::span<const LiftSession> sessions, const BatterySide& side,
                              const SideDays& named) {
    answers::BlockSessions found = sessionsIn(named.days, named.name, sessions);
    std::erase_if(found.sessions, [&](const LiftSession& session) {
        return !named.holds(session.date, session.ordinal);
    });
    if (std::holds_alternative<Date>(side) && found.sessions.size() > 1)
        found.sessions.erase(found.sessions.begin(), found.sessions.end() - 1);
    return found;
}

void noteUnread(BatteryAnswer& answer, const Words& what) {
    if (std::ranges::find(answer.unread, what) == answer.unread.end())
        answer.unread.push_back(what);
}

/// Does work; damage that it meets is noted, and the rest goes on.
template <class Work>
void readable(BatteryAnswer& answer, const Work& work) {
    try {
        work();
    } catch (const LogError& error) {
        if (error.kind() == LogError::Kind::Conflict) // sets speak of a lift that is not there
            noteUnread(answer, say("a lift that sets of %1 belong to: the log is damaged, and the "
                                   "lift is not in it any more",
                                   answer.athlete.value.name));
        else if (error.kind() == LogError::Kind::Damaged)
            noteUnread(answer, error.words());
        else
            throw;
    }
}

/// Both sides as they were asked for.
struct Sides {
    const BatterySide &from, &to;
    SideDays before, after;
};

void addLifts(BatteryAnswer& answer, const log::Log& log, const ContextOf& contextOf,
              const Sides& sides, const AskSettings& settings) {
    std::vector<LiftId> ids;
    readable(answer, [&] { ids = log.liftsOf(answer.athlete.id); });
    for (const LiftId id : ids)
        readable(answer, [&] {
            const Background about = background(log, answer.athlete.id, id);
            const auto before = liftIn(about.sessions, sides.from, sides.before);
            const auto after = liftIn(about.sessions, sides.to, sides.after);
            if (before.sessions.empty() || after.sessions.empty())
                return;
            const LiftContext& context = contextOf(id);
            BatteryLift lift{about.lift,
                             comparisonOfSides(log, context, about, before, after, settings)};
            if (!lift.comparison)
                if (auto shared = sharedLoadsOf(log, context, about, before.sessions.back(),
                                                after.sessions.back(), settings))
                    lift.shared = std::move(*shared);
            answer.lifts.push_back(std::move(lift));
        });
}

/// Both sides where both are blocks that are to be read as the season reads them.
std::optional<std::pair<BlockId, BlockId>> stepOf(const Sides& sides, const AskSettings& settings) {
    const auto* from = std::get_if<BlockId>(&sides.from);
    const auto* to = std::get_if<BlockId>(&sides.to);
    return from && to && settings.allBlocks ? std::optional(std::pair(*from, *to)) : std::nullopt;
}

/// A test that sessions speak of and that is not there.
void noteLostTests(BatteryAnswer& answer, std::span<const Stored<TestKindId, TestKind>> kinds,
                   std::span<const TestKindId> spokenOf) {
    for (const TestKindId id : spokenOf)
        if (std::ranges::find(kinds, id, &Stored<TestKindId, TestKind>::id) == kinds.end())
            noteUnread(answer,
                       say("a test that attempts of %1 belong to: the log is damaged, and the "
                           "test is not in it any more",
                           answer.athlete.value.name));
}

} // namespace

Answer<BatteryAnswer> batteryOf(const log::Log& log, AthleteId athlete, const BatterySide& from,
                                const BatterySide& to, const AskSettings& settings) {
    LiftContext context;
    const ContextOf read = [&](LiftId lift) -> const LiftContext& {
        context = liftContext(log, lift);
        return context;
    };
    return batteryOf(log, read, athlete, from, to, settings);
}

Answer<BatteryAnswer> batteryOf(const log::Log& log, const ContextOf& contextOf, AthleteId athlete,
                                const BatterySide& from, const BatterySide& to,
                                const AskSettings& settings) {
    if (from == to)
        return NoAnswer{NoAnswer::Why::Other,
                        say("Both sides are the same: choose two dates or blocks.")};
    BatteryAnswer answer;
    answer.athlete = log.athlete(athlete);
    const Sides sides{from, to, daysOf(log, from), daysOf(log, to)};
    const auto sessions = log.batteries(athlete);
    const answers::TestDays first = testsOf(sessions, from, sides.before);
    const answers::TestDays second = testsOf(sessions, to, sides.after);
    for (const auto* days : {&first, &second})
        if (days->sessions.empty())
            return NoAnswer{
                NoAnswer::Why::NoSuchSession,
                say("%1 has no session in %2.", answer.athlete.value.name, days->label)};
    if (shareASession(first, second))
        return NoAnswer{NoAnswer::Why::Other,
                        say("A session lies on both sides: choose days or blocks apart.")};
    const auto kinds = log.testKinds();
    const auto spokenOf = kindsIn(first, second);
    noteLostTests(answer, kinds, spokenOf);
    const auto step = stepOf(sides, settings);
    const auto among =
        step
            ? std::optional(testsStep(log, contextOf, athlete, step->first, step->second, settings))
            : std::nullopt;
    answer.battery = answers::compareBattery(kinds, athlete, first, second,
                                             squadTests(log, spokenOf), log.lifts(), settings.level,
                                             log.devices(), among ? &*among : nullptr);
    addLifts(answer, log, contextOf, sides, settings);
    for (BatteryLift& lift : answer.lifts)
        if (lift.comparison) {
            if (step)
                tellSeasonStep(*lift.comparison, log, contextOf(lift.lift.id), athlete, step->first,
                               step->second, settings);
            answers::addLift(answer.battery, lift.lift.value, *lift.comparison);
        }
    return answer;
}

BatterySide batterySide(const log::Log& log, const std::string& text) {
    if (const auto date = parseIsoDate(text))
        return *date;
    if (const auto session = parseDaySession(text))
        return *session;
    if (const auto days = parseStretch(text))
        return *days;
    const auto blocks = log.blocks();
    // The latest of that name: a name may come again every season.
    for (auto block = blocks.rbegin(); block != blocks.rend(); ++block)
        if (answers::sameName(block->value.name, text))
            return block->id;
    std::string names;
    for (const auto& block : blocks)
        names += (names.empty() ? "" : ", ") + block.value.name;
    throw BadInput(say("\"%1\"", text),
                   names.empty()
                       ? say("a date such as 2026-03-14, or days such as 2026-03-01..2026-03-14")
                       : say("a date such as 2026-03-14, days such as 2026-03-01..2026-03-14, or a "
                             "block: %1",
                             names));
}

answers::Period periodOf(const log::Log& log, const std::string& text, int withinDays) {
    const BatterySide side = batterySide(log, text);
    if (const auto* date = std::get_if<Date>(&side))
        return answers::onDate(*date, withinDays);
    if (const auto* session = std::get_if<DaySession>(&side)) {
        if (withinDays > 0)
            throw BadInput(say("\"%1\"", text), say("a day, where other days may stand in for it"));
        answers::Period period = answers::onDate(session->day);
        period.session = session->number;
        period.name = isoSession(*session);
        return period;
    }
    const SideDays named = daysOf(log, side);
    return answers::inBlock(
        {.name = named.name, .first = named.days.first, .last = named.days.last});
}

std::vector<BlockSession> seasonOf(const log::Log& log, AthleteId athlete) {
    std::vector<BlockSession> season;
    for (const BatterySession& session : log.batteries(athlete)) {
        BlockSession one{.session = session.session,
                         .athlete = athlete,
                         .date = session.date,
                         .ordinal = session.ordinal,
                         .gaps = session.battery.gaps};
        for (const TestAttempts& test : session.battery.tests)
            one.tests.push_back(test.kind);
        season.push_back(std::move(one));
    }
    for (const LiftId lift : log.liftsOf(athlete))
        for (const LiftSession& session : log.liftSessions({.athlete = athlete, .lift = lift}))
            for (BlockSession& one : season)
                if (one.session == session.session)
                    one.lifts.push_back(lift);
    return season;
}

std::vector<OfferedTest> offeredTests(const log::Log& log) {
    std::vector<OfferedTest> offered;
    for (const auto& kind : log.testKinds())
        offered.push_back({kind.id, kind.value});
    const std::size_t own = offered.size();
    for (const TestKind& kind : answers::builtInTestKinds()) {
        const bool there = std::any_of(
            offered.begin(), offered.begin() + static_cast<long>(own),
            [&](const OfferedTest& test) { return answers::sameName(test.kind.name, kind.name); });
        if (!there)
            offered.push_back({std::nullopt, kind});
    }
    return offered;
}

} // namespace slopebook::questions
