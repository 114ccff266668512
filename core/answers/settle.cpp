// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/nexttest.h"
#include "core/model/errors.h"
#include "core/stats/design.h"
#include "core/stats/power.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

/// One later test value is averaged over `later` days, the earlier one over `earlier` days.
stats::Variance changeVariance(const RepeatsQuestion& q, int earlier, int later) {
    const double lines = q.earlier.value / earlier + q.later.value / later;
    const stats::Variance days{q.day.value / earlier + q.day.value / later, q.day.df};
    // every further test brings its own residual degrees of freedom to the pooled scatter
    const double per = q.earlier.df / 2;
    return stats::sum({lines, q.earlier.df + per * (earlier + later - 2)}, days);
}

} // namespace

Repeats repeatsToSettle(const RepeatsQuestion& q) {
    if (!(q.smallest > 0))
        throw BadInput("a smallest change of zero", "a smallest change that matters above 0");
    const auto change = [&](int earlier, int later) {
        const auto v = changeVariance(q, earlier, later);
        return v.value > 0 ? stats::tTestPower(q.smallest, std::sqrt(v.value), v.df, q.level) : 1.0;
    };
    const auto held = [&](int earlier, int later) {
        const auto v = changeVariance(q, earlier, later);
        return v.value > 0 ? stats::equivalencePower(0, q.smallest, std::sqrt(v.value), v.df,
                                                     equivalenceLevel(q.level))
                           : 1.0;
    };
    Repeats repeats;
    repeats.chanceNow = change(1, 1);
    repeats.chanceHeldNow = held(1, 1);
    const auto fewest = [&](const auto& power, bool both) {
        return stats::fewestRepeats([&](int r) { return power(both ? r : 1, r); }, q.power, q.most);
    };
    repeats.changeLater = fewest(change, false);
    repeats.changeBoth = fewest(change, true);
    repeats.heldLater = fewest(held, false);
    repeats.heldBoth = fewest(held, true);
    return repeats;
}

std::optional<RepeatsQuestion> repeatsQuestion(const Comparison& comparison, Mass load) {
    const auto& smallest = comparison.settings.smallestVelocity;
    if (!smallest || !(smallest->value > 0))
        return std::nullopt;
    const auto at = [&](const stats::Line& line) {
        const double off = kilograms(load) - line.xMean;
        return stats::Variance{comparison.lines.s2() * (1.0 / line.n + off * off / line.sxx),
                               comparison.lines.df()};
    };
    return RepeatsQuestion{.earlier = at(comparison.lines.first()),
                           .later = at(comparison.lines.second()),
                           .day = comparison.settings.dayNoise.variance,
                           .smallest = smallest->value,
                           .level = comparison.settings.level};
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
