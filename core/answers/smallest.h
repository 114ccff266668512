// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest change that matters: from the squad's own spread, else the coach's figure, else
// published (method.md section 5).
#pragma once

#include "core/answers/reading.h"
#include "core/model/lift.h"
#include "core/model/session.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace slopebook::answers {

/// So many athletes must have a test before their spread is used.
constexpr int squadNeeded = 8;

/// Spread of values that a few far-off ones do not move: Qn, the k-th smallest distance between two
/// of them, k = C(n/2 + 1, 2), times 2.2191 and its factor for n (Rousseeuw and Croux 1993, from
/// memory); as an SD where they are normal. 0 with under two values.
double robustSd(std::span<const double> values);

/// 0.2 x the SD between athletes, a robust one, where at least 8 have the test (latest: each one's
/// latest value; Hopkins 2000), with its interval by chi-square on 0.82 (n - 1) df (Qn's
/// efficiency), else the coach's own figure, else the published one, else nothing. Says which.
std::optional<Smallest>
chooseSmallest(std::span<const double> latest, const std::optional<double>& coach,
               const std::optional<std::pair<double, std::string>>& published);

/// Each athlete's latest values of one lift; fed with sessions in any order, so that a whole log
/// may be gone through one session at a time.
class SquadLatest {
public:
    void add(const LiftSession& session);
    /// As if no session of that athlete had been added.
    void forget(AthleteId athlete);

    /// Loads that somebody has lifted, ascending.
    std::vector<Mass> loads() const;
    /// Each athlete's latest velocity seen at exactly that load (mean of its points), m/s.
    std::vector<double> atLoad(Mass load) const;
    /// Each athlete's latest estimated 1RM (latest session with a line of three points or more; own
    /// MVT where known), kg. Sessions whose line gives none are left out, and those whose estimate
    /// is not bounded or extrapolated far: one athlete's empty-bar sets are no spread of a squad.
    std::vector<double> oneRms(const Lift& lift) const;
    /// What chooseSmallest() makes of those values alone; worked out anew only where one of them
    /// has changed.
    std::optional<Smallest> ownAt(Mass load) const;
    std::optional<Smallest> ownOneRm(const Lift& lift) const;

private:
    struct Kept {
        std::vector<double> values;
        std::optional<Smallest> found;
    };
    struct Dated {
        std::pair<Date, int> when;
        double velocity = 0;
    };
    struct OfOne {
        std::optional<LiftSession> latest; ///< with a line
        std::vector<Point> maxima;
        /// What oneRms() found last: an added set changes one athlete's of thousands.
        mutable std::optional<std::optional<double>> oneRm;
    };
    std::map<Mass, std::map<AthleteId, Dated>> m_seen;
    std::map<AthleteId, OfOne> m_athletes;
    mutable Lift m_asked; ///< of which lift oneRms() was asked last
    mutable std::map<Mass, Kept> m_keptAt;
    mutable Kept m_keptOneRm;
};

/// What a comparison of one lift uses: ComparisonSettings::smallestAt, smallestVelocity,
/// smallestOneRm.
struct SmallestChanges {
    std::map<Mass, Smallest> at = {}; ///< m/s, loads that 8 athletes or more have lifted
    std::optional<Smallest> velocity = {};
    std::optional<Smallest> oneRm = {};
};

/// earlierOneRm: the earlier session's estimate, which a published percentage is taken of.
SmallestChanges smallestChanges(const Lift& lift, const SquadLatest& squad,
                                const std::optional<double>& earlierOneRm);

} // namespace slopebook::answers
