// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/ladder.h"

#include <algorithm>

namespace slopebook::answers {

namespace {
std::optional<Mass> lastRise(std::span<const Mass> loads) {
    for (std::size_t i = loads.size(); i-- > 1;)
        if (loads[i] > loads[i - 1])
            return Mass{loads[i].grams - loads[i - 1].grams};
    return std::nullopt;
}
} // namespace

std::optional<Mass> loadAfter(Mass from, std::span<const Mass> today,
                              std::span<const Mass> lastTime) {
    std::optional<Mass> next;
    for (const Mass load : lastTime)
        if (load > from && (!next || load < *next))
            next = load;
    if (next)
        return next;
    auto rise = lastRise(today);
    if (!rise)
        rise = lastRise(lastTime);
    if (!rise)
        return std::nullopt;
    return Mass{from.grams + rise->grams};
}

std::optional<Mass> loadBefore(Mass from, std::span<const Mass> lastTime) {
    std::optional<Mass> before;
    for (const Mass load : lastTime)
        if (load < from && (!before || load > *before))
            before = load;
    return before;
}

std::optional<Mass> nextLoad(std::span<const Mass> today, std::span<const Mass> lastTime) {
    if (!today.empty())
        return loadAfter(today.back(), today, lastTime);
    if (lastTime.empty())
        return std::nullopt;
    return lastTime.front();
}

std::optional<Mass> notAbove(std::optional<Mass> next, std::optional<Mass> limit,
                             std::span<const Mass> maxima) {
    if (!next || !limit || *next <= *limit || std::ranges::find(maxima, *next) != maxima.end())
        return next;
    return std::nullopt;
}

} // namespace slopebook::answers
