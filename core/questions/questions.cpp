// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/questions.h"

#include "core/answers/batterycomparison.h"
#include "core/answers/fairreps.h"
#include "core/answers/published.h"
#include "core/answers/threshold.h"
#include "core/log/history.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "core/questions/blockquestions.h"
#include "core/questions/liftcontext.h"
#include "core/questions/repeats.h"
#include "core/questions/setsonce.h"

#include <algorithm>
#include <map>
#include <memory>

namespace slopebook::questions {

namespace {

std::string keysOf(std::span<const LiftSession> sessions) {
    std::string keys;
    for (const LiftSession& session : sessions)
        keys += (keys.empty() ? "" : ", ") + dateKey(session.date, session.ordinal);
    return keys;
}

/// Threshold and bend from the athlete's sessions: once, for every question after.
void complete(Background& about) {
    const Lift& lift = about.lift.value;
    about.mvt = answers::mvtOf(lift, about.sessions);
    about.bend = answers::bendOf(lift, about.mvt, about.sessions);
}

stats::RepeatSums ownRepeats(const Background& about) {
    return answers::repeatSums(answers::repeatPairs(about.sessions));
}

/// And noise, from all athletes' repeat tests.
void addNoise(Background& about, const stats::RepeatSums& own, const stats::RepeatSums& all) {
    about.dayNoise =
        answers::chooseDayNoise(own, all.without(own), publishedDayNoise(about.lift.value));
}

} // namespace

answers::PublishedNoise publishedDayNoise(const Lift& lift) {
    const auto row = answers::published(lift.name, lift.kind);
    if (!row || !row->dayNoise)
        return std::nullopt;
    return std::pair{*row->dayNoise, row->dayNoiseSource};
}

Background withoutNoise(const log::Log& log, AthleteId athlete, LiftId lift) {
    Background about{.athlete = log.athlete(athlete),
                     .lift = log.lift(lift),
                     .sessions = log.liftSessions({.athlete = athlete, .lift = lift}),
                     .checkLoads = log.checkLoads(athlete, lift)};
    complete(about);
    return about;
}

void addDayNoise(const log::Log& log, Background& about) {
    const auto own = ownRepeats(about);
    addNoise(about, own, repeatsOfAll(log, about.lift));
}

Background background(const log::Log& log, AthleteId athlete, LiftId lift) {
    const log::Moment moment(log); // what is handed on as read is of that moment
    Background about = withoutNoise(log, athlete, lift);
    const auto own = ownRepeats(about);
    addNoise(about, own, repeatsOfAll(log, about.lift, OwnRepeats{athlete, own}));
    return about;
}

void eachBackground(const log::Log& log, const log::Filter& filter,
                    const std::function<void(const Background&)>& visit) {
    const auto lifts = log.lifts();
    std::map<LiftId, stats::RepeatSums> repeats;
    for (const auto& lift : lifts)
        if (!filter.lift || *filter.lift == lift.id)
            repeats.emplace(lift.id, repeatsOfAll(log, lift));
    for (const auto& athlete : log.athletes()) {
        if (filter.athlete && *filter.athlete != athlete.id)
            continue;
        std::map<LiftId, std::vector<LiftSession>> byLift;
        log.scan({.athlete = athlete.id, .lift = filter.lift},
                 [&](const LiftSession& session) { byLift[session.lift].push_back(session); });
        for (const auto& lift : lifts) {
            const auto found = byLift.find(lift.id);
            if (found == byLift.end())
                continue;
            Background about{.athlete = athlete,
                             .lift = lift,
                             .sessions = std::move(found->second),
                             .checkLoads = log.checkLoads(athlete.id, lift.id)};
            complete(about);
            addNoise(about, ownRepeats(about), repeats[lift.id]);
            visit(about);
        }
    }
}

Answer<LiftSession> sessionAt(std::span<const LiftSession> sessions, std::string_view key) {
    auto named = parseDaySession(key);
    if (const auto date = parseIsoDate(key))
        named = DaySession{*date, 1};
    if (!named)
        throw BadInput(
            say("\"%1\"", key),
            say("a date such as 2026-03-14, or 2026-03-14#2 for the second of that day"));
    for (const LiftSession& session : sessions)
        if (session.date == named->day && session.ordinal == named->number)
            return session;
    return NoAnswer{NoAnswer::Why::NoSuchSession,
                    sessions.empty() ? say("No session of this lift is in the log.")
                                     : say("There is no session on %1. Sessions of this lift: %2.",
                                           key, keysOf(sessions))};
}

Answer<LiftSession> sessionOf(std::span<const LiftSession> sessions, SessionId id) {
    for (const LiftSession& session : sessions)
        if (session.session == id)
            return session;
    return NoAnswer{NoAnswer::Why::NoSuchSession, say("That session does not hold this lift.")};
}

answers::DayNoise dayNoiseOf(const log::Log& log, const Background& about,
                             std::optional<DeviceId> device) {
    return dayNoiseOf(liftContext(log, about.lift.id), about, device);
}

Answer<answers::Profile> profileOf(const Background& about, const LiftSession& session,
                                   const AskSettings& settings) {
    return answers::profile(about.lift.value, about.mvt, session, settings.level, about.beyond());
}

Answer<answers::Profile> profileOf(const log::Log& log, AthleteId athlete, LiftId lift,
                                   SessionId session, const AskSettings& settings) {
    const Background about = background(log, athlete, lift);
    const auto found = sessionOf(about.sessions, session);
    if (!found)
        return found.why();
    return profileOf(about, *found, settings);
}

std::vector<Set> setsOf(const log::Log& log, const LiftSession& session) {
    std::vector<Set> sets;
    for (log::PlacedSet& placed : log.sets(session.session, session.lift))
        sets.push_back(std::move(placed.set));
    return sets;
}

answers::AsManyReps asManyReps(const log::Log& log, const Lift& lift) {
    if (lift.rule != PointRule::Fastest)
        return {};
    // A season asks for its baseline's with every session.
    return [once = std::make_shared<SetsOnce>(log), lift](const LiftSession& from,
                                                          const LiftSession& to) {
        return answers::fairReps(lift, from, once->of(from), to, once->of(to));
    };
}

answers::ComparisonSettings comparisonSettings(const log::Log& log, const Background& about,
                                               const LiftSession& from, const LiftSession& to,
                                               const AskSettings& settings) {
    return comparisonSettings(liftContext(log, about.lift.id), about, from, to, settings);
}

Answer<answers::Comparison> comparisonOf(const log::Log& log, const Background& about,
                                         const LiftSession& from, const LiftSession& to,
                                         const AskSettings& settings) {
    return comparisonOf(log, liftContext(log, about.lift.id), about, from, to, settings);
}

Answer<answers::Comparison> comparisonOf(const log::Log& log, const LiftContext& context,
                                         const Background& about, const LiftSession& from,
                                         const LiftSession& to, const AskSettings& settings) {
    auto with = comparisonSettings(context, about, from, to, settings);
    with.asManyReps = asManyReps(log, about.lift.value);
    auto made = answers::compare(about.lift.value, about.mvt, from, to, with);
    if (made)
        made->mean = meanOfTests(log.blocks(), about.sessions, from, to);
    return made;
}

Answer<answers::Comparison> comparisonOf(const log::Log& log, AthleteId athlete, LiftId lift,
                                         SessionId from, SessionId to,
                                         const AskSettings& settings) {
    const Background about = background(log, athlete, lift);
    const auto first = sessionOf(about.sessions, from);
    if (!first)
        return first.why();
    const auto second = sessionOf(about.sessions, to);
    if (!second)
        return second.why();
    return comparisonOf(log, about, *first, *second, settings);
}

Answer<answers::Follow> followOf(const log::Log& log, const Background& about, Mass load,
                                 std::optional<SessionId> baseline, const AskSettings& settings) {
    return followOf(log, liftContext(log, about.lift.id), about, load, baseline, settings);
}

Answer<answers::Follow> followOf(const log::Log& log, AthleteId athlete, LiftId lift, Mass load,
                                 std::optional<SessionId> baseline, const AskSettings& settings) {
    return followOf(log, background(log, athlete, lift), load, baseline, settings);
}

std::optional<Block> blockOn(std::span<const Stored<BlockId, Block>> blocks, Date date) {
    std::optional<Block> found;
    for (const auto& stored : blocks) {
        const Block& block = stored.value;
        if (block.holds(date) && (!found || found->first <= block.first))
            found = block;
    }
    return found;
}

} // namespace slopebook::questions
