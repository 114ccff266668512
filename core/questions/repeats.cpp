// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/repeats.h"

#include "core/answers/noise.h"
#include "core/log/snapshot.h"
#include "core/questions/besidelog.h"

#include <algorithm>
#include <map>
#include <span>
#include <vector>

namespace slopebook::questions {

namespace {

struct KeptSums {
    AthleteId athlete{};
    log::Tally sessions{}; ///< the athlete's, as they were
    stats::RepeatSums sums{};
};

struct KeptOfLift {
    Lift lift{}; ///< as it was
    log::SeenChanges seen{};
    std::vector<KeptSums> all{}; ///< by athlete
};

using KeptRepeats = std::map<LiftId, KeptOfLift>;

/// Reads those of the rows that are given.
void readSums(const log::Log& log, LiftId lift, std::span<KeptSums* const> rows,
              const std::optional<OwnRepeats>& own) {
    std::vector<AthleteId> wanted;
    for (const KeptSums* row : rows)
        if (!own || own->athlete != row->athlete)
            wanted.push_back(row->athlete);
    std::map<AthleteId, std::vector<LiftSession>> read;
    if (!wanted.empty())
        log::scanRepeats(log, lift, wanted,
                         [&](const LiftSession& one) { read[one.athlete].push_back(one); });
    for (KeptSums* row : rows)
        row->sums = own && own->athlete == row->athlete
                        ? own->sums
                        : answers::repeatSums(answers::repeatPairs(read[row->athlete]));
}

/// Holds every athlete with a repeat test against what is kept.
void lookAtAll(const log::Log& log, LiftId lift, std::vector<KeptSums>& all,
               const std::optional<OwnRepeats>& own) {
    std::vector<KeptSums> now;
    std::vector<std::size_t> changed;
    for (const auto& [athlete, sessions] : log::repeatingAthletes(log)) {
        const auto before = std::ranges::lower_bound(all, athlete, {}, &KeptSums::athlete);
        if (before != all.end() && before->athlete == athlete && before->sessions == sessions) {
            now.push_back(*before);
            continue;
        }
        changed.push_back(now.size());
        now.push_back({.athlete = athlete, .sessions = sessions});
    }
    std::vector<KeptSums*> rows;
    for (const std::size_t i : changed)
        rows.push_back(&now[i]);
    readSums(log, lift, rows, own);
    all = std::move(now);
}

/// The same of those alone, who may be without a repeat test.
void lookAt(const log::Log& log, LiftId lift, std::span<const AthleteId> athletes,
            std::vector<KeptSums>& all, const std::optional<OwnRepeats>& own) {
    for (const AthleteId athlete : athletes) {
        auto place = std::ranges::lower_bound(all, athlete, {}, &KeptSums::athlete);
        const bool known = place != all.end() && place->athlete == athlete;
        const auto sessions = log::tallyOf(log, athlete);
        if (!sessions) {
            if (known)
                all.erase(place);
            continue;
        }
        if (known && place->sessions == *sessions)
            continue;
        if (!known)
            place = all.insert(place, {.athlete = athlete});
        place->sessions = *sessions;
        KeptSums* const row = &*place;
        readSums(log, lift, {&row, 1}, own);
    }
}

} // namespace

stats::RepeatSums repeatsOfAll(const log::Log& log, const Stored<LiftId, Lift>& lift,
                               const std::optional<OwnRepeats>& own) {
    const log::Moment moment(log);
    KeptOfLift& kept = besideLog<KeptRepeats>(log)[lift.id];
    if (!(kept.lift == lift.value))
        kept = {.lift = lift.value};
    const auto changed = log::changedSince(log, kept.seen);
    try {
        if (changed)
            lookAt(log, lift.id, *changed, kept.all, own);
        else
            lookAtAll(log, lift.id, kept.all, own);
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
