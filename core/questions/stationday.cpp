// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/stationday.h"

#include "core/answers/battery.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "core/questions/planquestions.h"

#include <algorithm>
#include <functional>

namespace slopebook::questions {

namespace {

/// The athlete's sessions of a day, in order.
std::vector<SessionId> sessionsOn(const log::Log& log, AthleteId athlete, Date day) {
    std::vector<SessionId> ids;
    for (const auto& session : log.sessions(athlete))
        if (session.value.date == day)
            ids.push_back(session.id);
    return ids;
}

/// Whether what is measured under these conditions may stand in that session.
bool takes(const log::Log& log, const StationWork& work, SessionId session,
           const Battery& battery) {
    const Conditions& here = work.station.value.conditions;
    if (here == Conditions{})
        return true; // nothing is said of it
    if (work.lift) {
        const Conditions held = log.conditions(session, work.lift->id);
        return held == here || (held == Conditions{} && log.sets(session, work.lift->id).empty());
    }
    return std::ranges::all_of(work.tests, [&](const auto& test) {
        const TestAttempts* held = battery.test(test.id);
        return !held || held->conditions == here ||
               (held->conditions == Conditions{} && held->attempts.empty());
    });
}

std::string reasonOut(const StationWork& work, const Battery& battery) {
    for (const Gap& gap : battery.gaps) {
        const bool ofLift = work.lift && gap.lift == work.lift->id && !gap.load;
        const bool ofTest = gap.kind && std::ranges::any_of(work.tests, [&](const auto& test) {
                                return gap.kind == test.id;
                            });
        if (ofLift || ofTest)
            return gap.reason;
    }
    return {};
}

/// What of all batteries of the day is about the station's tests.
void addBattery(Battery& all, const Battery& more) {
    for (const TestAttempts& test : more.tests) {
        const auto held = std::ranges::find(all.tests, test.kind, &TestAttempts::kind);
        if (held == all.tests.end())
            all.tests.push_back(test);
        else
            held->attempts.insert(held->attempts.end(), test.attempts.begin(), test.attempts.end());
    }
    all.gaps.insert(all.gaps.end(), more.gaps.begin(), more.gaps.end());
}

void readLift(AtStation& at, const log::Log& log, const StationWork& work, const Battery& battery,
              Date day, MassUnit unit) {
    const Background about = withoutNoise(log, at.athlete.id, work.lift->id);
    const LiftSession *last = nullptr, *today = nullptr;
    for (const LiftSession& one : about.sessions) {
        if (one.date < day)
            last = &one;
        if (one.date == day)
            today = &one;
    }
    answers::AtLift how = liftDay(log, about, at.sets, today, last, day);
    how.unit = unit;
    NotToday gaps = notToday(battery, work.lift->id);
    how.notPossible = std::move(gaps.loads);
    how.out = gaps.out;
    at.lift = answers::dueAt(work.station.value, how);
}

} // namespace

StationWork stationWork(const log::Log& log, StationId id) {
    StationWork work;
    for (auto& station : log.stations())
        if (station.id == id)
            work.station = std::move(station);
    if (work.station.id != id)
        throw LogError(LogError::Kind::Conflict, say("That station is not in the log any more."));
    if (work.station.value.lift)
        work.lift = log.lift(*work.station.value.lift);
    const auto kinds = log.testKinds();
    for (const TestKindId test : work.station.value.tests)
        for (const auto& kind : kinds)
            if (kind.id == test)
                work.tests.push_back(kind);
    return work;
}

AtStation atStation(const log::Log& log, const StationWork& work, AthleteId athlete, Date day,
                    MassUnit unit) {
    AtStation at;
    at.athlete = log.athlete(athlete);
    at.atLift = work.lift.has_value();
    Battery all;
    for (const SessionId session : sessionsOn(log, athlete, day)) {
        const Battery battery = log.battery(session);
        if (takes(log, work, session, battery))
            at.session = session;
        addBattery(all, battery);
        if (work.lift)
            for (const log::PlacedSet& set : log.sets(session, work.lift->id))
                at.sets.push_back(set);
    }
    std::ranges::sort(at.sets, {}, &log::PlacedSet::id);
    for (std::size_t i = 0; i < work.tests.size(); ++i)
        if (const TestAttempts* held = all.test(work.tests[i].id)) {
            at.attempts.insert(at.attempts.end(), held->attempts.begin(), held->attempts.end());
            at.testOf.resize(at.attempts.size(), i);
        }
    if (work.lift)
        readLift(at, log, work, all, day, unit);
    else
        at.tests = answers::dueAt(work.station.value, work.tests, all);
    if (at.atLift ? at.lift.why == answers::NoLoad::Out : at.tests.out)
        at.notPossible = reasonOut(work, all);
    return at;
}

std::vector<EarlierTest> earlierTests(const log::Log& log, const StationWork& work,
                                      AthleteId athlete, Date day, std::size_t days) {
    std::vector<EarlierTest> tests;
    std::vector<BatterySession> sessions = log.batteries(athlete);
    std::ranges::stable_sort(sessions, std::ranges::greater{}, &BatterySession::date);
    std::optional<Date> last;
    for (const BatterySession& session : sessions) {
        if (session.date >= day)
            continue;
        std::vector<EarlierTest> found;
        for (std::size_t i = 0; i < work.tests.size(); ++i)
            for (const BodySide side : answers::sidesOf(work.tests[i].value))
                if (const auto value = answers::testValue(work.tests[i], session, side))
                    found.push_back(
                        {.date = session.date, .test = i, .side = side, .value = value->value});
        if (found.empty())
            continue;
        if (last != session.date && days-- == 0)
            break;
        last = session.date;
        tests.insert(tests.end(), found.begin(), found.end());
    }
    return tests;
}

std::optional<std::size_t> lastToStepUp(const std::vector<AtStation>& athletes) {
    std::optional<std::size_t> last;
    SetId newest{};
    for (std::size_t i = 0; i < athletes.size(); ++i)
        if (!athletes[i].sets.empty() && athletes[i].sets.back().id > newest) {
            newest = athletes[i].sets.back().id;
            last = i;
        }
    return last;
}

std::optional<Mass> estimatedMaximum(const Answer<answers::Profile>& profile) {
    if (!profile || !profile->oneRm || !profile->oneRm->interval)
        return std::nullopt;
    return massFromKilograms(profile->oneRm->estimate);
}

// Today's estimate where it has an interval, else last time's: the first two sets of a day make a
// line that a warm-up tilts.
Mass bodyMoved(const Lift& lift, const LiftSession* known) {
    return lift.movesBody && known ? known->bodyMass.value_or(Mass{}) : Mass{};
}

std::optional<Mass> addedOf(std::optional<Mass> estimate, const Lift& lift,
                            const LiftSession* known) {
    if (estimate)
        estimate->grams = std::max<std::int64_t>(0, estimate->grams - bodyMoved(lift, known).grams);
    return estimate;
}

NotToday notToday(const Battery& battery, LiftId lift) {
    NotToday gaps;
    for (const Gap& gap : battery.gaps)
        if (gap.lift == lift && gap.load)
            gaps.loads.push_back(*gap.load);
        else if (gap.lift == lift)
            gaps.out = true;
    return gaps;
}

answers::AtLift liftDay(const log::Log& log, const Background& about,
                        const std::vector<log::PlacedSet>& today, const LiftSession* session,
                        const LiftSession* last, Date day) {
    answers::AtLift at;
    for (const log::PlacedSet& placed : today)
        at.today.push_back({placed.set.load, placed.set.outcome == Outcome::Lifted});
    if (last)
        for (const log::PlacedSet& placed : log.sets(last->session, about.lift.id)) {
            if (placed.set.outcome != Outcome::Lifted)
                continue;
            at.lastTime.push_back(placed.set.load);
            if (placed.set.trueMaximum)
                at.lastMaxima.push_back(placed.set.load);
        }
    if (session)
        at.estimate = estimatedMaximum(profileOf(about, *session));
    if (!at.estimate && last)
        at.estimate = estimatedMaximum(profileOf(about, *last));
    at.estimate = addedOf(at.estimate, about.lift.value, session ? session : last);
    if (const auto bound = blockCeiling(log.blocks(), day))
        at.ceiling = bound->load;
    return at;
}

} // namespace slopebook::questions
