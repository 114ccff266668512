// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/plansummary.h"

#include "core/answers/figures.h"
#include "core/answers/sources.h"
#include "core/model/phrases/answers.h"

#include <cmath>
#include <utility>

namespace slopebook::answers {

namespace {

constexpr int weeksFresh = 4; // common practice

Words expectation(const NextTest& next) {
    const LadderForecast& best = next.ladders.front();
    const std::optional<double>& like = next.oneRmNowLike ? next.oneRmNowLike : next.oneRmNow;
    const std::optional<Words> now =
        like ? std::optional(massWords(*like, asEstimate)) : std::nullopt;
    if (!next.byOneRm) {
        const Words change = figure(best.worstChange(), 3);
        return now ? say("The best ladder can be expected to give a change to ± %1 m/s (this "
                         "session's: ± %2).",
                         change, *now)
                   : say("The best ladder can be expected to give a change to ± %1 m/s.", change);
    }
    if (!best.oneRm)
        return now ? say("No ladder of these loads can be expected to bound the estimated 1RM "
                         "(this session's: ± %1).",
                         *now)
                   : say("No ladder of these loads can be expected to bound the estimated 1RM.");
    const Words half = massWords(*best.oneRm, asEstimate);
    return now ? say("The best ladder can be expected to give the estimated 1RM to ± %1, were "
                     "lines straight (this session's: ± %2).",
                     half, *now)
               : say("The best ladder can be expected to give the estimated 1RM to ± %1, were "
                     "lines straight.",
                     half);
}

/// The chosen loads: those within the estimated 1RM, the first of them, and those over it.
struct Chosen {
    std::vector<Words> within = {}, over = {};
    const PlannedLoad* first = nullptr;
};

Chosen chosenOf(const Plan& plan) {
    Chosen chosen;
    for (const std::size_t i : plan.chosen) {
        const PlannedLoad& load = plan.loads[i];
        const bool over = load.percent && *load.percent > 100;
        (over ? chosen.over : chosen.within).push_back(massWords(kilograms(load.built.exact)));
        if (!over && !chosen.first)
            chosen.first = &load;
    }
    return chosen;
}

} // namespace

std::vector<Words> lineAge(Date test, std::optional<Date> today) {
    if (!today || daysBetween(test, *today) < 0)
        return {say("The line is of %1.", test)};
    const int days = static_cast<int>(daysBetween(test, *today)), weeks = days / 7;
    if (weeks < 1)
        return {days == 1 ? say("The line is of %1, 1 day old.", test)
                          : say("The line is of %1, %2 days old.", test, days)};
    std::vector<Words> words{weeks == 1 ? say("The line is of %1, 1 week old.", test)
                                        : say("The line is of %1, %2 weeks old.", test, weeks)};
    if (weeks >= weeksFresh)
        words.push_back(say("That is old: over %1 weeks a line moves with training, so test again, "
                            "or go by the speeds (common practice).",
                            weeksFresh));
    return words;
}

Words aimWords(const Plan& plan) {
    if (!plan.aim)
        return say("Every load of this set of equipment.");
    const auto& [low, high] = *plan.aim;
    if (low == high)
        return say("The aim is %1.", massWords(low, toTenths));
    auto over = chosenOf(plan).over;
    return over.empty() || plan.chosen.size() == 1 // one alone is told where it would be lifted
               ? say("The aim is %1 to %2.", massWords(low, bareTenths), massWords(high, toTenths))
               : say("The aim is %1 to %2; over the estimated 1RM: %3.", massWords(low, bareTenths),
                     massWords(high, toTenths), listed(std::move(over)));
}

Words stopRule(const PlannedLoad& load, double lossPercent) {
    if (!load.stop)
        return {};
    const bool whole = std::round(lossPercent) == lossPercent;
    return say("end a set %1 % under the day's fastest rep: at %2 m/s if that is the expected %3 "
               "m/s",
               figure(lossPercent, whole ? 0 : 1), figure(*load.stop, 2), figure(load.velocity, 2));
}

Words liftWords(const Plan& plan) {
    auto [within, over, first] = chosenOf(plan);
    if (within.empty())
        return plan.chosen.size() == 1 ? say("%1 lies over the estimated 1RM.", over.front())
                                       : Words();
    if (within.size() > 1)
        return say("Lift one of %1.", listed(std::move(within)));
    Words& mass = within.front();
    if (first->stopUnderMvt)
        return say("Lift %1; no stop speed: it would lie under the MVT.", mass);
    return first->stop
               ? asSentence(say("Lift %1; %2", mass, stopRule(*first, *plan.settings.lossPercent)))
               : say("Lift %1.", mass);
}

Words drawnOnWords(const PlannedLoad& load) {
    return load.tested ? Words() : say("Outside the loads of the test: the line drawn on");
}

std::vector<Words> noShareWords() {
    return {say("A thrown or jumped lift has no 1RM to take a share of: aim at a speed."),
            say("Every load of this set of equipment.")};
}

std::vector<Words> nextTestWords(const NextTest& next) {
    std::vector<Words> words{expectation(next)};
    // Both figures of the sentence are of one estimate: why that to plan with is another.
    if (next.byOneRm && next.ladders.front().oneRm && next.oneRmNow && next.oneRmNowLike &&
        next.nowHolds != NextTest::NowHolds::Unlike) {
        const Words toPlan = massWords(*next.oneRmNow, asEstimate);
        words.push_back(
            next.nowHolds == NextTest::NowHolds::Bend
                ? say("Both are as if the line were straight. To plan with it is ± %1 now: that "
                      "also holds what a bend may add.",
                      toPlan)
                : say("Both take the MVT as exact and the line as straight. To plan with it is "
                      "± %1 now: that also holds the MVT's own spread and what a bend may add.",
                      toPlan));
    }
    if (const LadderFlaws& flaws = next.ladders.front().flaws; flaws.any())
        words.push_back(say("Beware, its loads: %1. No ladder without that was found under these "
                            "settings: more steps, a heavier load or plates between them may give "
                            "one.",
                            flawsWords(flaws, next.byOneRm)));
    if (next.twoExtremesRatio)
        words.push_back(say("Half the sets at the lightest and half at the heaviest load would "
                            "give %1 times that, and could not show a bend.",
                            figure(*next.twoExtremesRatio, 2)));
    words.push_back(say("Scatter from %1 sessions: SD %2 m/s.", next.settings.scatter.sessions,
                        figure(next.settings.scatter.s, 3)));
    return words;
}

std::vector<Words> relationWords(const Answer<SquadRelation>& squad,
                                 const std::optional<PublishedRelation>& published) {
    return {squad ? say("The squad: %1 athletes, %2 points; one point scatters by %3 % of the 1RM "
                        "about the curve.",
                        squad->athletes, squad->points.size(), figure(squad->used().s(), 1))
                  : asSentence(squad.why().reason),
            published ? say("Published: %1.", sourceWords(cited(std::string(published->source))))
                      : say("No published equation is known for this lift and kind of velocity."),
            say("People differ: such a share is of others, never of this athlete.")};
}

} // namespace slopebook::answers
