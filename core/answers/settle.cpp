// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/settle.h"

#include "core/answers/figures.h"
#include "core/answers/nexttest.h"
#include "core/model/errors.h"
#include "core/model/phrases/answers.h"
#include "core/stats/design.h"
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

constexpr double daysAlike = 0.5; // correlation of one test's day with the next one's

/// By how much the mean of K days near each other varies more than were they independent.
double clustering(int days) {
    double c = 1;
    for (int i = 1; i < days; ++i)
        c += 2 * (1 - static_cast<double>(i) / days) * std::pow(daysAlike, i);
    return c;
}

stats::ChanceQuestion chanceQuestion(const RepeatsQuestion& q, const Tests& tests) {
    const int later = tests.later * tests.sameDay;
    const double days =
        clustering(tests.earlier) / tests.earlier + clustering(tests.later) / tests.later;
    // every further test brings its own residual degrees of freedom to the pooled scatter
    const double per = q.earlier.df / 2;
    // and every further day a repeat of what days do (as stats::moderated counts it)
    const double rho =
        q.day.value > 0 ? q.day.value / (q.day.value + (q.earlier.value + q.later.value) / 2) : 0;
    const double repeats =
        (tests.earlier - clustering(tests.earlier) + tests.later - clustering(tests.later)) * rho *
        rho;
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

std::optional<RepeatsQuestion> repeatsQuestion(const Profile& profile,
                                               const NextTestSettings& settings,
                                               const LadderForecast& ladder, Mass load,
                                               double smallest) {
    if (!(smallest > 0) || !(settings.scatter.df > 0) || ladder.distinct < 2)
        return std::nullopt;
    std::vector<double> kg;
    for (const BuiltLoad& each : ladder.loads)
        kg.push_back(kilograms(each.exact));
    const stats::Spread x = stats::spread(kg);
    const double s2 = settings.scatter.s * settings.scatter.s;
    const double df = profile.line.df() + std::max(0, x.n - 2);
    if (!(df > 0))
        return std::nullopt;
    const stats::Moving day = dayOf(settings.dayNoise, profile.line, profile.referenceMax());
    const auto at = [&](double n, double mean, double sxx) {
        const double off = kilograms(load) - mean;
        return stats::Variance{s2 * (1 / n + off * off / sxx), df};
    };
    const stats::Interval bend = bendErrors(profile, settings, ladder.loads).at(kilograms(load));
    return RepeatsQuestion{.earlier = at(profile.line.n, profile.line.xMean, profile.line.sxx),
                           .later = at(x.n, x.mean, x.sxx),
                           .day = {day.at(kilograms(load)), day.df},
                           .dayExpected =
                               day.at(kilograms(load)) * settings.dayNoise.expectedRatio(),
                           .span = bend.high - bend.low,
                           .smallest = smallest,
                           .level = profile.level};
}

std::optional<RepeatsQuestion> repeatsQuestionOfMax(const Profile& profile,
                                                    const NextTestSettings& settings,
                                                    const LadderForecast& ladder, double smallest) {
    const double df = profile.line.df() + std::max(0, static_cast<int>(ladder.loads.size()) - 2);
    if (!(smallest > 0) || !(settings.scatter.df > 0) || ladder.distinct < 2 || !profile.oneRm ||
        !(df > 0))
        return std::nullopt;
    std::vector<double> kg;
    for (const BuiltLoad& each : ladder.loads)
        kg.push_back(kilograms(each.exact));
    const stats::Spread x = stats::spread(kg);
    const stats::Moving day = dayOf(settings.dayNoise, profile.line, profile.referenceMax());
    const double max = profile.oneRm->estimate;
    const double perKilogram = profile.line.slope * profile.line.slope;
    const auto at = [&](double n, double mean, double sxx) {
        const double off = max - mean;
        return stats::Variance{
            settings.scatter.s * settings.scatter.s * (1 / n + off * off / sxx) / perKilogram, df};
    };
    const double ofDay = day.at(max) / perKilogram;
    return RepeatsQuestion{.earlier = at(profile.line.n, profile.line.xMean, profile.line.sxx),
                           .later = at(x.n, x.mean, x.sxx),
                           .day = {ofDay, day.df},
                           .dayExpected = ofDay * settings.dayNoise.expectedRatio(),
                           .span = ladder.bendChange.high - ladder.bendChange.low,
                           .smallest = smallest,
                           .level = profile.level};
}

} // namespace slopebook::answers
