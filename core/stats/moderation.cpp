// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/moderation.h"

#include "core/stats/daysalike.h"

#include <algorithm>

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
    const double count = spread.days - 1;
    return {count * spreadShare(spread.days), count * spread.square, count * spread.within};
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
        const double rho = centre / (centre + spread.within);
        const double df = (spread.days - 1) * rho * rho * spreadShare(spread.days);
        effective += df;
        found += df * spread.excess();
    }
    const double left = priorLeft(effective), df = left + effective;
    const double least = leastOfCentre * std::max(left / publishedDf, leastOfCentre) * centre;
    const auto withOwn = [&](double prior) { return std::max(least, (left * prior + found) / df); };
    const double ownShare = effective / df;
    return {.variance = {withOwn(centre), df},
            .expected = withOwn(expected),
            .ownShare = ownShare,
            .othersShare = (1 - ownShare) * others.pairs / weights};
}

} // namespace slopebook::stats
