// SPDX-License-Identifier: GPL-3.0-or-later
// How noisy a lift, a device and an athlete are from day to day: from the log's own repeat tests,
// else published.
#pragma once

#include "core/answers/reading.h"
#include "core/model/answer.h"
#include "core/model/session.h"
#include "core/stats/moderation.h"
#include "core/stats/repeats.h"

#include <span>
#include <vector>

namespace slopebook::answers {

/// Two sessions of one athlete and lift, the second marked as a repeat test of the first.
struct RepeatPair {
    LiftSession first = {}, second = {};
};

/// The sessions that say they repeat another of the same list, oldest first. Pairs on different
/// devices left out.
std::vector<RepeatPair> repeatPairs(std::span<const LiftSession> sessions);

struct NoiseAtLoad {
    Mass load = {};
    stats::TypicalError error; ///< m/s, of velocities seen at that load
};

/// Whether the error, shown with so many decimals, is one: repeat tests that all differ alike, to
/// the resolution that was logged, show no spread, and no spread is no error of zero.
bool spreads(const stats::TypicalError& error, int decimals);

struct LiftNoise {
    std::vector<RepeatPair> used = {};
    std::vector<NoiseAtLoad> atLoads = {};         ///< loads with two pairs or more
    std::optional<stats::TypicalError> oneRm = {}; ///< kg, of estimated 1RM (mvt exact)
    DayNoise day = {}; ///< day-to-day part alone, within-day scatter taken off
};

/// From repeat tests of one lift and device. NoRepeatTests with fewer than two pairs.
Answer<LiftNoise> liftNoise(const Lift& lift, const Answer<Mvt>& mvt,
                            std::span<const RepeatPair> pairs, double level = 0.95);

/// What the pairs say of how far lines move from day to day; pairs without scatter to judge by left
/// out.
stats::RepeatSums repeatSums(std::span<const RepeatPair> pairs);

/// Without a published figure to start from, so many repeat tests must stand behind a day-to-day SD
/// before readings use it.
constexpr int pairsNeeded = 3;

/// A published SD, m/s, and its source.
using PublishedNoise = std::optional<std::pair<double, std::string>>;

/// The published figure as a prior that other athletes' pairs move and the athlete's own take the
/// place of (stats::moderated); its origin is what has the largest share. Without a published
/// figure: the own pairs' (pairsNeeded or more), else all pairs', else none.
/// spreads: of the athlete's own blocks, repeats as well; a pair is then counted for each of K - 1.
DayNoise chooseDayNoise(const stats::RepeatSums& own, const stats::RepeatSums& others,
                        const PublishedNoise& published,
                        std::span<const stats::DaySpread> spreads = {});

} // namespace slopebook::answers
