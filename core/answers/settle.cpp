// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/settle.h"

#include "core/answers/figures.h"
#include "core/answers/nexttest.h"
#include "core/model/errors.h"
#include "core/stats/design.h"
#include "core/stats/power.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

/// How the tests of a change are laid out.
struct Layout {
    int earlier = 1; ///< days that the earlier value is the mean of
    int later = 1;   ///< days of the later one
    int sameDay = 1; ///< times the later ladder is lifted on each
};

stats::Variance changeVariance(const RepeatsQuestion& q, const Layout& layout) {
    const int later = layout.later * layout.sameDay;
    const double lines = q.earlier.value / layout.earlier + q.later.value / later;
    const stats::Variance days{q.day.value / layout.earlier + q.day.value / layout.later, q.day.df};
    // every further test brings its own residual degrees of freedom to the pooled scatter
    const double per = q.earlier.df / 2;
    return stats::sum(stats::sum({lines, q.earlier.df + per * (layout.earlier + later - 2)}, days),
                      q.standing);
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
    const auto change = [&](const Layout& layout) {
        const auto v = changeVariance(q, layout);
        return v.value > 0 ? stats::tTestPower(q.smallest, std::sqrt(v.value), v.df, q.level) : 1.0;
    };
    const auto held = [&](const Layout& layout) {
        const auto v = changeVariance(q, layout);
        return v.value > 0 ? stats::equivalencePower(0, q.smallest, std::sqrt(v.value), v.df,
                                                     equivalenceLevel(q.level))
                           : 1.0;
    };
    const auto later = [](int r) { return Layout{.later = r}; };
    const auto both = [](int r) { return Layout{.earlier = r, .later = r}; };
    const auto sameDay = [](int r) { return Layout{.sameDay = r}; };
    const auto fewest = [&](const auto& power, const auto& layout, int most) {
        return stats::fewestRepeats([&](int r) { return power(layout(r)); }, q.power, most);
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
    const auto at = [&](double n, double mean, double sxx) {
        const double off = kilograms(load) - mean;
        return stats::Variance{s2 * (1 / n + off * off / sxx), df};
    };
    return RepeatsQuestion{.earlier = at(profile.line.n, profile.line.xMean, profile.line.sxx),
                           .later = at(x.n, x.mean, x.sxx),
                           .day = settings.dayNoise.variance,
                           .smallest = smallest,
                           .level = profile.level};
}

} // namespace slopebook::answers
