// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/planquestions.h"

#include "core/answers/fairreps.h"
#include "core/model/phrases/questions.h"

#include <algorithm>

namespace slopebook::questions {

std::optional<answers::LoadBound> blockCeiling(std::span<const Stored<BlockId, Block>> blocks,
                                               Date day) {
    const auto block = blockOn(blocks, day);
    if (!block || !block->ceiling)
        return std::nullopt;
    return answers::LoadBound{
        .kind = answers::LoadBound::Kind::Block, .load = *block->ceiling, .name = block->name};
}

PlanDay planDay(const log::Log& log, const Background& about, const LiftSession& session,
                std::optional<Date> today) {
    PlanDay day{.date = std::max(today.value_or(session.date), session.date)};
    const auto blocks = log.blocks();
    const Date known = blockOn(blocks, day.date) ? day.date : session.date;
    if (auto ceiling = blockCeiling(blocks, known))
        day.bounds.push_back(std::move(*ceiling));
    if (session.lightestNotLifted)
        day.bounds.push_back(
            {.kind = answers::LoadBound::Kind::NotLifted, .load = *session.lightestNotLifted});
    for (const auto& head : log.sessions(about.athlete.id)) {
        if (head.value.date != day.date)
            continue;
        for (const Gap& gap : log.battery(head.id).gaps)
            if (gap.lift == about.lift.id && !gap.load)
                day.notPossible = NoAnswer{
                    NoAnswer::Why::NotPossible,
                    gap.reason.empty()
                        ? say("the lift was not possible that day (%1)", day.date)
                        : say("the lift was not possible that day (%1): %2", day.date, gap.reason)};
    }
    return day;
}

answers::PlanSettings planSettings(const LiftContext& context, const Background& about,
                                   const LiftSession& session, const Equipment& equipment) {
    answers::PlanSettings settings;
    settings.equipment = equipment;
    settings.dayNoise = dayNoiseOf(context, about, session.conditions.device);
    return settings;
}

answers::NextTestSettings nextTestSettings(const LiftContext& context, const Background& about,
                                           const LiftSession& session, const Equipment& equipment) {
    answers::NextTestSettings settings;
    settings.equipment = equipment;
    settings.checkLoads = about.checkLoads;
    settings.dayNoise = dayNoiseOf(context, about, session.conditions.device);
    settings.bend = about.bend;
    if (const auto scatter = answers::pooledScatter(about.sessions))
        settings.scatter = *scatter;
    return settings;
}

std::vector<SettledAt> settledAt(const LiftContext& context, const Background& about,
                                 const answers::Profile& profile, const answers::NextTest& next,
                                 const answers::LadderForecast& ladder) {
    std::vector<SettledAt> all;
    const auto smallest =
        comparisonSettings(context, about, profile.session, profile.session).smallestVelocity;
    if (!smallest || !(smallest->value > 0))
        return all;
    for (const answers::ChangeForecast& change : ladder.changes)
        if (const auto question = answers::repeatsQuestion(profile, next.settings, ladder,
                                                           change.load, smallest->value))
            all.push_back({change.load, *smallest, answers::repeatsToSettle(*question)});
    return all;
}

std::optional<SettledMax> settledMax(const LiftContext& context, const Background& about,
                                     const answers::Profile& profile, const answers::NextTest& next,
                                     const answers::LadderForecast& ladder) {
    const auto smallest =
        comparisonSettings(context, about, profile.session, profile.session).smallestOneRm;
    if (!smallest)
        return std::nullopt;
    const auto question =
        answers::repeatsQuestionOfMax(profile, next.settings, ladder, smallest->value);
    if (!question)
        return std::nullopt;
    return SettledMax{*smallest, answers::repeatsToSettle(*question)};
}

std::optional<double> repSd(const log::Log& log, const Background& about) {
    std::vector<double> first, second;
    for (const LiftSession& session : about.sessions)
        for (const log::PlacedSet& placed : log.sets(session.session, about.lift.id))
            if (const auto reps = answers::countingReps(placed.set); reps.size() >= 2) {
                first.push_back(reps[0]);
                second.push_back(reps[1]);
            }
    if (first.size() < 3)
        return std::nullopt;
    const auto error = stats::typicalError(first, second);
    return error ? std::optional(error->value) : std::nullopt;
}

int repsOf(const log::Log& log, const LiftSession& session) {
    std::vector<std::size_t> counts;
    for (const log::PlacedSet& placed : log.sets(session.session, session.lift))
        if (const auto reps = answers::countingReps(placed.set); !reps.empty())
            counts.push_back(reps.size());
    if (counts.empty())
        return 1;
    std::nth_element(counts.begin(),
                     counts.begin() + static_cast<std::ptrdiff_t>(counts.size() / 2), counts.end());
    return static_cast<int>(counts[counts.size() / 2]);
}

namespace {

Words changeSeen(const answers::Repeats& r) {
    if (r.changeLater && *r.changeLater == 1)
        return say("one test will do");
    if (r.changeLater)
        return say("%1 tests after the block, on separate days, make it 80 %", *r.changeLater);
    if (r.changeBoth)
        return say("no number of later tests makes it 80 %, for the earlier test was done once and "
                   "cannot be done again: for the next block test %1 times before it and after it",
                   *r.changeBoth);
    return say("not even 20 tests on each side make it 80 %");
}

} // namespace

Words settledWords(const SettledMax& settled) {
    const answers::Repeats& r = settled.repeats;
    return clauses({say("estimated 1RM: a true change of %1 is read as one with a chance of %2 %, "
                        "none as held with %3 %",
                        massWords(settled.smallest.value, toTenths), figure(100 * r.chanceNow, 0),
                        figure(100 * r.chanceHeldNow, 0)),
                    !r.changeBoth        ? say("not even 20 tests on each side make it 80 %")
                    : *r.changeBoth == 1 ? say("80 % with 1 test on each side")
                                         : say("80 % with %1 tests on each side", *r.changeBoth)});
}

Words settledWords(const SettledAt& settled) {
    const answers::Repeats& r = settled.repeats;
    std::vector<Words> all{say("%1: a true change of %2 m/s is read as one with a chance of %3 %",
                               settled.load, figure(settled.smallest.value, 3),
                               figure(100 * r.chanceNow, 0)),
                           changeSeen(r)};
    if (r.heldLater && *r.heldLater == 1)
        all.push_back(say("no change would be read as held by one test"));
    else if (r.heldLater)
        all.push_back(say("no change would be read as held after %1 later tests", *r.heldLater));
    else if (r.heldBoth)
        all.push_back(say("no change would be read as held by %1 tests on each side", *r.heldBoth));
    return clauses(std::move(all));
}

} // namespace slopebook::questions
