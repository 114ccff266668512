// SPDX-License-Identifier: GPL-3.0-or-later
// The squad's own relation of %1RM to velocity for a lift, over sessions whose 1RM was measured;
// used only when the coach asks, and named in every figure made from it.
#pragma once

#include "core/answers/plan.h"
#include "core/answers/publishedrelations.h"
#include "core/model/answer.h"
#include "core/model/session.h"
#include "core/stats/parabola.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::answers {

struct RelationPoint {
    AthleteId athlete{};
    double velocity = 0; ///< m/s
    double percent = 0;  ///< of the 1RM measured in that session
};

struct SquadRelation {
    std::vector<RelationPoint> points = {};
    int athletes = 0, sessions = 0;
    stats::Parabola linear = {};
    std::optional<stats::Parabola> quadratic = {}; ///< three distinct velocities and a df to spare
    double level = 0.95;
    /// Points of one athlete are not independent: the interval is that of a new point, not of a new
    /// athlete's mean.
    stats::Interval predicted(double velocity) const;
    const stats::Parabola& used() const { return quadratic ? *quadratic : linear; }
    /// "the squad's own relation (6 athletes, 38 points)".
    Words name() const;
};

/// From the sessions of one lift with a measured 1RM. Refused with under 3 athletes or under 6
/// points, and for a ballistic lift.
Answer<SquadRelation> squadRelation(const Lift& lift, std::span<const LiftSession> sessions,
                                    double level = 0.95);

/// What a relation of other people says of a planned load.
struct RelatedLoad {
    double percent = 0;
    std::optional<stats::Interval> interval = {}; ///< squad's relation only
};
/// Of the plan's loads in their order, by each one's expected velocity.
std::vector<RelatedLoad> relatedLoads(const Plan& plan, const SquadRelation& relation);
std::vector<RelatedLoad> relatedLoads(const Plan& plan, const PublishedRelation& relation);
/// The caution that goes with them, naming the relation.
Caution relationCaution(const Words& name);

} // namespace slopebook::answers
