// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"
#include "core/answers/figures.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

bool alike(const Unsettled& a, const Unsettled& b) {
    return a.smallest == b.smallest && a.settling == b.settling;
}

stats::Interval over(const stats::Interval& a, const stats::Interval& b) {
    return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

std::string subject(const std::vector<Mass>& loads) {
    if (loads.empty())
        return "estimated 1RM";
    std::string text;
    for (const Mass load : loads)
        text += (text.empty() ? "" : ", ") + loadText(kilograms(load));
    return text + " kg";
}

std::string percent(const stats::Interval& chance) {
    const std::string low = fixed(100 * chance.low, 0), high = fixed(100 * chance.high, 0);
    return (low == high ? low : low + " to " + high) + " %";
}

std::string remedy(const Unsettled& u) {
    const std::string times = std::to_string(u.settling.times);
    switch (u.settling.by) {
    case Settling::By::SameDay:
        return "the later ladder lifted " + times + " times on one day would settle it";
    case Settling::By::Later:
        return "the mean of " + times + " later tests on separate days would settle it";
    case Settling::By::BothSides:
        return "the earlier test was done once: from now on " + times + " tests before and " +
               times + " after would settle such a change";
    case Settling::By::OneMore:
        return "the change may lie between none and that: one more later test";
    case Settling::By::Nothing:
        break;
    }
    return "not even " + std::to_string(u.most) + " tests on each side would settle it";
}

} // namespace

Unsettled unsettled(const std::vector<Mass>& loads,
                    const std::optional<RepeatsQuestion>& question) {
    Unsettled u{.loads = loads};
    if (!question)
        return u;
    const Repeats repeats = repeatsToSettle(*question);
    u.smallest = question->smallest;
    u.chance = {repeats.chanceNow, repeats.chanceNow};
    u.chanceHeld = {repeats.chanceHeldNow, repeats.chanceHeldNow};
    u.settling = settling(repeats);
    u.most = question->most;
    return u;
}

std::vector<Unsettled> unsettled(const Comparison& comparison) {
    std::vector<Unsettled> groups;
    for (const ChangeAt& at : comparison.at) {
        if (at.read.reading != Reading::Unclear)
            continue;
        Unsettled one = unsettled({at.load}, at.unsettled);
        const auto same =
            std::ranges::find_if(groups, [&](const Unsettled& group) { return alike(group, one); });
        if (same == groups.end()) {
            groups.push_back(std::move(one));
            continue;
        }
        same->loads.push_back(at.load);
        same->chance = over(same->chance, one.chance);
        same->chanceHeld = over(same->chanceHeld, one.chanceHeld);
    }
    if (comparison.oneRm && comparison.oneRm->read.reading == Reading::Unclear)
        groups.push_back(unsettled({}, comparison.oneRm->unsettled));
    return groups;
}

std::string settlingText(const Unsettled& u) {
    const std::string who = subject(u.loads) + ": ";
    if (!(u.smallest > 0))
        return who + "no smallest change that matters is known, so nothing can be called held: set "
                     "one with the lift";
    const std::string change =
        u.loads.empty() ? fixed(u.smallest, 1) + " kg" : fixed(u.smallest, 3) + " m/s";
    return who + "a true change of " + change + " is seen with a chance of " + percent(u.chance) +
           ", none is called held with " + percent(u.chanceHeld) + "; " + remedy(u);
}

} // namespace slopebook::answers
