// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/familywise.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace slopebook::answers {

namespace {

CriticalOf ofLoads(const Family& family, std::vector<double> loads) {
    if (loads.size() < 2)
        return stats::tOf;
    return [family, loads = std::move(loads)](double level) -> stats::Critical {
        return [family, loads, level](double df) {
            return family->dunnett.critical(loads, df, level);
        };
    };
}

using Parts = std::array<stats::UnsureVariance, 4>;

/// With the days as readings take them.
Parts partsOf(const ChangeParts& parts) {
    const stats::UnsureVariance days{{2 * parts.day.value, parts.day.df}};
    if (parts.earlier.df != parts.later.df)
        return {stats::UnsureVariance{parts.earlier}, {parts.later}, days, {parts.device}};
    return {stats::UnsureVariance{{parts.earlier.value + parts.later.value, parts.later.df}},
            {},
            days,
            {parts.device}};
}

/// With days and scatter as they are likely to be.
Parts likelyPartsOf(const ChangeParts& parts) {
    Parts likely = partsOf(parts);
    for (const std::size_t scatter : {0U, 1U})
        likely[scatter].taken.value *= parts.pooledShare;
    likely[2].likely = parts.likely;
    return likely;
}

} // namespace

CriticalOf againstOne(const Family& family, std::span<const BaselineShare> shares) {
    std::vector<double> loads;
    for (const BaselineShare& each : shares) {
        const double all = each.baseline + each.other;
        loads.push_back(all > 0 ? std::sqrt(each.baseline / all) : 0);
    }
    return ofLoads(family, std::move(loads));
}

CriticalOf ofAChain(const Family& family, int changes) {
    return ofLoads(family, std::vector<double>(static_cast<std::size_t>(std::max(changes, 0)), 0));
}

double chanceOfNothing(const Family& family, const ChangeParts& parts,
                       const stats::Interval& interval) {
    const double reach = interval.width() / 2;
    return reach > 0 ? family->nothing.beyond(likelyPartsOf(parts), reach, parts.bend.width()) : 0;
}

double pOfNothing(const Family& family, const ChangeParts& parts, double change) {
    const double span = parts.bend.width(), middle = (parts.bend.low + parts.bend.high) / 2;
    return family->nothing.beyond(partsOf(parts),
                                  std::max(0.0, std::abs(change - middle) - span / 2));
}

} // namespace slopebook::answers
