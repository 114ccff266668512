// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/repeats.h"

#include "core/answers/noise.h"
#include "core/log/history.h"
#include "core/log/snapshot.h"

#include <algorithm>
#include <map>

namespace slopebook::questions {

namespace {

struct KeptSums {
    log::Tally sessions = {}; ///< the athlete's, as they were
    stats::RepeatSums sums = {};
};

struct KeptOfLift {
    Lift lift = {}; ///< as it was
    std::map<AthleteId, KeptSums> of = {};
};

using KeptRepeats = std::map<LiftId, KeptOfLift>;

KeptRepeats& keptBy(const log::Log& log) {
    std::any& kept = log::keptBeside(log);
    if (!kept.has_value())
        kept = KeptRepeats{};
    return std::any_cast<KeptRepeats&>(kept);
}

} // namespace

stats::RepeatSums repeatsOfAll(const log::Log& log, const Stored<LiftId, Lift>& lift) {
    const log::Moment moment(log);
    KeptOfLift& kept = keptBy(log)[lift.id];
    if (!(kept.lift == lift.value))
        kept = {.lift = lift.value};
    const auto repeating = log::repeatingAthletes(log);
    std::vector<AthleteId> changed;
    for (const auto& one : repeating) {
        const auto found = kept.of.find(one.athlete);
        if (found == kept.of.end() || found->second.sessions != one.sessions)
            changed.push_back(one.athlete);
    }
    std::map<AthleteId, std::vector<LiftSession>> read;
    log::scanRepeats(log, lift.id, changed,
                     [&](const LiftSession& one) { read[one.athlete].push_back(one); });
    stats::RepeatSums all;
    for (const auto& one : repeating) {
        KeptSums& sums = kept.of[one.athlete];
        if (std::ranges::binary_search(changed, one.athlete))
            sums = {.sessions = one.sessions,
                    .sums = answers::repeatSums(answers::repeatPairs(read[one.athlete]))};
        all += sums.sums;
    }
    return all;
}

} // namespace slopebook::questions
