// SPDX-License-Identifier: GPL-3.0-or-later
// A fixed load followed through the season: what was seen, what each session's line says, and its
// trend.
#pragma once

#include "core/answers/comparison.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

struct Followed {
    LiftSession session = {};
    std::vector<double> seen =
        {};              ///< m/s, points at that load (within half the smallest plate pair)
    Answer<double> line; ///< a + b L, m/s
    std::optional<double> se = {};
    std::optional<stats::Interval> interval = {}; ///< of the line's mean
    /// The device's bias against the baseline's: taken off in change and trend, not in seen and
    /// line.
    std::optional<double> bias = {};
    bool extrapolated = false;           ///< the load lies outside the session's loads
    std::optional<ChangeAt> change = {}; ///< from the baseline session
    /// Where no line can judge it: of what was seen at the load on both days, from the typical
    /// error of a point (sharedloads.h).
    std::optional<ReadChange> seenChange = {};
    Answer<OneRm> oneRm;
};

struct Trend {
    double perWeek = 0; ///< m/s per week, of the line's values
    std::optional<stats::Interval> interval = {};
    int sessions = 0;
    double start = 0; ///< m/s, what it says of the first session's day
};

struct Follow {
    Mass load = {};
    std::size_t baseline = 0;            ///< index into sessions
    std::vector<Followed> sessions = {}; ///< by date
    Answer<Trend> trend;
    /// Half-width of a reading between two tests like the baseline, m/s: no smaller change can be
    /// told.
    std::optional<double> smallestDetectable = {};
    std::vector<Note> notes = {};
};

/// sessions by date; baseline an index into them. plateStep: smallest plate pair (points within
/// half of it are at the load). biases: what a session's device reads against the
/// baseline's; a session on another device that has none here uses settings.deviceBias, where there
/// is one.
Answer<Follow> follow(const Lift& lift, const Answer<Mvt>& mvt,
                      std::span<const LiftSession> sessions, Mass load, std::size_t baseline,
                      const ComparisonSettings& settings, Mass plateStep,
                      const std::map<SessionId, DeviceBias>& biases = {});

} // namespace slopebook::answers
