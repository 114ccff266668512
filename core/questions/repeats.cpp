// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/repeats.h"

#include "core/answers/noise.h"
#include "core/log/snapshot.h"
#include "core/questions/besidelog.h"

#include <algorithm>
#include <map>
#include <vector>

namespace slopebook::questions {

namespace {

struct KeptSums {
    AthleteId athlete{};
    stats::RepeatSums sums{};
};

struct KeptOfLift {
    Lift lift{}; ///< as it was
    log::AthleteWatch watch{};
    std::vector<KeptSums> all{}; ///< by athlete
};

using KeptRepeats = std::map<LiftId, KeptOfLift>;

/// Those athletes' sums, by athlete, one of them perhaps known already.
std::vector<KeptSums> readSums(const log::Log& log, LiftId lift,
                               const std::vector<AthleteId>& athletes,
                               const std::optional<OwnRepeats>& own) {
    std::vector<AthleteId> wanted = athletes;
    if (own)
        std::erase(wanted, own->athlete);
    std::map<AthleteId, std::vector<LiftSession>> read;
    if (!wanted.empty())
        log::scanRepeats(log, lift, wanted,
                         [&](const LiftSession& one) { read[one.athlete].push_back(one); });
    std::vector<KeptSums> sums;
    for (const AthleteId athlete : athletes)
        sums.push_back({athlete, own && own->athlete == athlete
                                     ? own->sums
                                     : answers::repeatSums(answers::repeatPairs(read[athlete]))});
    return sums;
}

std::vector<AthleteId> repeating(const log::Log& log) {
    std::vector<AthleteId> all;
    for (const auto& one : log::repeatingAthletes(log))
        all.push_back(one.athlete);
    return all;
}

/// Brings them up to date. Who has no repeat test any more adds nothing.
void follow(const log::Log& log, LiftId lift, KeptOfLift& kept,
            const std::optional<OwnRepeats>& own) {
    const auto changed = kept.watch.changed(log);
    if (!changed) {
        kept.all = readSums(log, lift, repeating(log), own);
        return;
    }
    for (const KeptSums& now : readSums(log, lift, *changed, own)) {
        const auto place = std::ranges::lower_bound(kept.all, now.athlete, {}, &KeptSums::athlete);
        if (place != kept.all.end() && place->athlete == now.athlete)
            *place = now;
        else
            kept.all.insert(place, now);
    }
}

} // namespace

stats::RepeatSums repeatsOfAll(const log::Log& log, const Stored<LiftId, Lift>& lift,
                               const std::optional<OwnRepeats>& own) {
    const log::Moment moment(log);
    KeptOfLift& kept = besideLog<KeptRepeats>(log)[lift.id];
    if (!(kept.lift == lift.value))
        kept = {.lift = lift.value};
    try {
        follow(log, lift.id, kept, own);
    } catch (...) {
        kept = {};
        throw;
    }
    stats::RepeatSums all;
    for (const KeptSums& one : kept.all)
        all += one.sums;
    return all;
}

} // namespace slopebook::questions
