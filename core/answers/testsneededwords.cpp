// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

bool alike(const Unsettled& a, const Unsettled& b) {
    return a.smallest == b.smallest && a.settling == b.settling;
}

/// "40, 50 kg": the unit once.
Words subject(const std::vector<Mass>& loads) {
    std::vector<Words> all;
    for (const Mass load : loads)
        all.push_back(massWords(kilograms(load), load == loads.back() ? MassForm{} : bareLoad));
    return listed(std::move(all));
}

Words percent(const stats::Interval& chance) {
    const Words low = figure(100 * chance.low, 0), high = figure(100 * chance.high, 0);
    return low == high ? say("%1 %", low) : say("%1 to %2 %", low, high);
}

Words chances(const Unsettled& u) {
    if (u.loads.empty())
        return say("estimated 1RM: a true change of %1 is seen with a chance of %2, no change "
                   "with %3",
                   massWords(u.smallest, asEstimate), percent(u.chance), percent(u.chanceHeld));
    return say("%1: a true change of %2 m/s is seen with a chance of %3, no change with "
               "%4",
               subject(u.loads), figure(u.smallest, 3), percent(u.chance), percent(u.chanceHeld));
}

Words remedy(const Unsettled& u) {
    const int times = u.settling.times;
    switch (u.settling.by) {
    case Settling::By::SameDay:
        return say("the later ladder lifted %1 times on one day would settle it", times);
    case Settling::By::Later:
        return say("the mean of %1 later tests on separate days would settle it", times);
    case Settling::By::BothSides:
        return say("the earlier test was done once and cannot be done again: %1 tests before and "
                   "%1 after would have settled it, and in the next block so many at its start "
                   "and at its end would settle such a change",
                   times);
    case Settling::By::OneMore:
        return say("the change may lie between none and that: do one more later test");
    case Settling::By::Nothing:
        break;
    }
    return say("not even %1 tests on each side would settle it", u.most);
}

bool byLaterTests(const Settling& settling) {
    return settling.by == Settling::By::Later || settling.by == Settling::By::OneMore;
}

} // namespace

Words meanWords(const MeanOfTests& mean) {
    if (mean.tests > 1)
        return say("%1 tests lie in %2: compare %3 with it", mean.tests, periodWords(mean.to),
                   periodWords(mean.from));
    return mean.block ? say("then compare %1 with %2, of which all tests are made one",
                            periodWords(mean.from), periodWords(mean.to))
                      : say("then compare %1 with the days from %2 to the last of them, which are "
                            "made one",
                            periodWords(mean.from), periodWords(mean.to));
}

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
    if (comparison.ofSeveral()) // asked of one test a side: blocks are more already
        return groups;
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
        same->chance = stats::hull(same->chance, one.chance);
        same->chanceHeld = stats::hull(same->chanceHeld, one.chanceHeld);
    }
    if (comparison.oneRm && comparison.oneRm->read.reading == Reading::Unclear)
        groups.push_back(unsettled({}, comparison.oneRm->unsettled));
    for (Unsettled& group : groups)
        group.mean = comparison.mean;
    return groups;
}

Words settlingWords(const Unsettled& u) {
    if (u.smallest > 0)
        return u.mean && byLaterTests(u.settling)
                   ? clauses({chances(u), remedy(u), meanWords(*u.mean)})
                   : clauses({chances(u), remedy(u)});
    return u.loads.empty()
               ? say("estimated 1RM: no smallest change that matters is known, so nothing can be "
                     "called held: set one with the lift")
               : say("%1: no smallest change that matters is known, so nothing can be called held: "
                     "set one with the lift",
                     subject(u.loads));
}

} // namespace slopebook::answers
