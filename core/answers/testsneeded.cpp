// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/testsneeded.h"

#include "core/model/errors.h"
#include "core/model/phrases/answers.h"
#include "core/stats/daysalike.h"
#include "core/stats/power.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

/// How the tests of a change are laid out.
struct Tests {
    int earlier = 1; ///< days that the earlier value is the mean of
    int later = 1;   ///< days of the later one
    int sameDay = 1; ///< times the later ladder is lifted on each
};

stats::ChanceQuestion chanceQuestion(const RepeatsQuestion& q, const Tests& tests) {
    const int later = tests.later * tests.sameDay;
    const double days = stats::clustering(tests.earlier) / tests.earlier +
                        stats::clustering(tests.later) / tests.later;
    // every further test brings its own residual degrees of freedom to the pooled scatter
    const double per = q.earlier.df / 2;
    // and every further day a repeat of what days do (as stats::moderated counts it)
    const double rho =
        q.day.value > 0 ? q.day.value / (q.day.value + (q.earlier.value + q.later.value) / 2) : 0;
    const double repeats = (tests.earlier - stats::clustering(tests.earlier) + tests.later -
                            stats::clustering(tests.later)) *
                           rho * rho;
    stats::ChanceQuestion chance{
        .effect = q.smallest,
        .scatter = q.earlier.value / tests.earlier + q.later.value / later,
        .scatterDf = q.earlier.df + per * (tests.earlier + later - 2),
        .prior = q.day.value * days,
        .priorDf = q.day.df + repeats,
        .expected = (q.dayExpected > 0 ? q.dayExpected : q.day.value) * days + q.standing.value,
        .span = q.span,
        .level = q.level,
        .heldLevel = equivalenceLevel(q.level)};
    // the device's part with its own quantile, as a share of the day's
    if (q.standing.value > 0 && q.day.value > 0) {
        const double t =
            stats::tCritical(q.level, q.standing.df) / stats::tCritical(q.level, chance.priorDf);
        chance.prior += q.standing.value * t * t;
    } else if (q.standing.value > 0) {
        chance.prior = q.standing.value;
        chance.priorDf = q.standing.df;
    }
    return chance;
}

/// The least that both need, where both can be had.
std::optional<int> bothOf(const std::optional<int>& change, const std::optional<int>& held) {
    if (!change || !held)
        return std::nullopt;
    return std::max(*change, *held);
}

} // namespace

Repeats repeatsToSettle(const RepeatsQuestion& q) {
    if (!(q.smallest > 0))
        throw BadInput(say("a smallest change of zero"),
                       say("a smallest change that matters above 0"));
    const auto change = [&](const Tests& tests) {
        return stats::chancesOverScatter(chanceQuestion(q, tests)).change;
    };
    const auto held = [&](const Tests& tests) {
        return stats::chancesOverScatter(chanceQuestion(q, tests)).held;
    };
    const auto later = [](int r) { return Tests{.later = r}; };
    const auto both = [](int r) { return Tests{.earlier = r, .later = r}; };
    const auto sameDay = [](int r) { return Tests{.sameDay = r}; };
    const auto fewest = [&](const auto& power, const auto& tests, int most) {
        return stats::fewestRepeats([&](int r) { return power(tests(r)); }, q.power, most);
    };
    return {.changeLater = fewest(change, later, q.most),
            .changeBoth = fewest(change, both, q.most),
            .heldLater = fewest(held, later, q.most),
            .heldBoth = fewest(held, both, q.most),
            .changeSameDay = fewest(change, sameDay, q.mostSameDay),
            .heldSameDay = fewest(held, sameDay, q.mostSameDay),
            .chanceNow = change({}),
            .chanceHeldNow = held({})};
}

Settling settling(const Repeats& r) {
    using By = Settling::By;
    if (bothOf(r.changeLater, r.heldLater) == 1)
        return {By::OneMore, 2};
    for (const auto& [by, times] : {std::pair{By::SameDay, bothOf(r.changeSameDay, r.heldSameDay)},
                                    std::pair{By::Later, bothOf(r.changeLater, r.heldLater)},
                                    std::pair{By::BothSides, bothOf(r.changeBoth, r.heldBoth)}})
        if (times)
            return {by, *times};
    return {};
}

RepeatsQuestion repeatsQuestion(const ChangeParts& parts, const DayNoise& noise, double smallest,
                                double level) {
    return {.earlier = parts.earlier,
            .later = parts.later,
            .day = parts.day,
            .dayExpected = parts.day.value * noise.expectedRatio(),
            .span = parts.bend.width(),
            .standing = parts.device,
            .smallest = smallest,
            .level = level};
}

} // namespace slopebook::answers
