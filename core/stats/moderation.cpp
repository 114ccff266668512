// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/moderation.h"

#include "core/stats/daysalike.h"
#include "core/stats/infinity.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace slopebook::stats {

namespace {
constexpr double priorShrink = publishedShrink * publishedShrink;
constexpr double othersWeight = 0.7;
constexpr double leastOfCentre = 0.25;
// The published figure is let go while one's own pairs come to count so many df.
constexpr double lettingGoFrom = 6, lettingGoTo = 14;

/// df that the prior keeps beside one's own.
double priorLeft(double effective) {
    const double kept = (lettingGoTo - effective) / (lettingGoTo - lettingGoFrom);
    return publishedDf * std::clamp(kept, 0.0, 1.0);
}
} // namespace

RepeatSums& RepeatSums::operator+=(const RepeatSums& other) {
    pairs += other.pairs;
    halfSquares += other.halfSquares;
    within += other.within;
    return *this;
}

RepeatSums RepeatSums::without(const RepeatSums& others) const {
    if (!(pairs > others.pairs))
        return {};
    return {pairs - others.pairs, std::max(0.0, halfSquares - others.halfSquares),
            std::max(0.0, within - others.within)};
}

double DaySpread::excess() const {
    return (square - within) / spreadShare(days);
}

RepeatSums asRepeats(const DaySpread& spread) {
    const double df = spreadTraces(spread.days).df(0), share = spreadShare(spread.days);
    return {df, df * spread.square / share, df * spread.within / share};
}

namespace {

constexpr double gridEnd = 7, gridStep = 0.1; // of athletesDiffer

/// Log density, but for what no SD changes, of a sum of squares that is mean chi^2(df) / df.
double logDensity(double sum, double mean, double df) {
    const double x = std::max(sum * df / mean, 1e-12);
    return std::log(df / mean) + (df / 2 - 1) * std::log(x) - x / 2 - df / 2 * std::numbers::ln2 -
           std::lgamma(df / 2);
}

} // namespace

LogNormal likelySd(double mean, const RepeatSums& own, std::span<const DaySpread> spreads) {
    const double centre = std::log(mean) - athletesDiffer * athletesDiffer / 2;
    if (!(own.pairs > 0) && spreads.empty())
        return {std::exp(centre), athletesDiffer};
    std::vector<SpreadTraces> traces;
    for (const DaySpread& spread : spreads)
        traces.push_back(spreadTraces(spread.days));
    const auto logLikely = [&](double z) {
        const double variance = std::exp(2 * (centre + athletesDiffer * z));
        double sum = -z * z / 2;
        if (own.pairs > 0)
            sum += logDensity(own.halfSquares, own.pairs * variance + own.within, own.pairs);
        for (std::size_t i = 0; i < spreads.size(); ++i) {
            const double count = spreads[i].days - 1;
            const double within = spreads[i].within;
            sum +=
                logDensity(count * spreads[i].square, variance * traces[i].first + count * within,
                           traces[i].dfOfSquares(within / variance));
        }
        return sum;
    };
    std::vector<std::pair<double, double>> nodes;
    double most = -infinity;
    for (double z = -gridEnd; z < gridEnd + gridStep / 2; z += gridStep) {
        nodes.emplace_back(z, logLikely(z));
        most = std::max(most, nodes.back().second);
    }
    double all = 0, first = 0, second = 0;
    for (const auto& [z, height] : nodes) {
        const double weight = std::exp(height - most);
        all += weight;
        first += weight * z;
        second += weight * z * z;
    }
    const double at = first / all;
    return {std::exp(centre + athletesDiffer * at),
            athletesDiffer * std::sqrt(std::max(0.0, second / all - at * at))};
}

Moderated moderated(double published, const RepeatSums& others, const RepeatSums& own,
                    std::span<const DaySpread> spreads) {
    const double known = published * published;
    const double ofOthers = std::max(0.0, others.excess());
    const double weights = publishedDf + others.pairs;
    const double centre =
        (publishedDf * priorShrink * known + othersWeight * others.pairs * ofOthers) / weights;
    const double expected = (publishedDf * known + others.pairs * ofOthers) / weights;
    double effective = 0, found = 0; // one's own df, and what they found times those
    if (own.pairs > 0) {
        const double rho = centre / (centre + own.within / own.pairs);
        effective = own.pairs * rho * rho;
        found = effective * own.excess();
    }
    for (const DaySpread& spread : spreads) {
        const double df = spreadTraces(spread.days).df(spread.within / centre);
        effective += df;
        found += df * spread.excess();
    }
    const double left = priorLeft(effective), df = left + effective;
    const double least = leastOfCentre * std::max(left / publishedDf, leastOfCentre) * centre;
    const auto withOwn = [&](double prior) { return std::max(least, (left * prior + found) / df); };
    const double ownShare = effective / df;
    // Others' pairs say the mean of athletes' variances, which lies above the square of their mean.
    const double meanSquare = std::exp(-athletesDiffer * athletesDiffer) * others.pairs * ofOthers;
    return {.variance = {withOwn(centre), df},
            .expected = withOwn(expected),
            .ownShare = ownShare,
            .othersShare = (1 - ownShare) * others.pairs / weights,
            .likely =
                likelySd(std::sqrt((publishedDf * known + meanSquare) / weights), own, spreads)};
}

} // namespace slopebook::stats
