// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squadrelation.h"

#include "core/answers/figures.h"
#include "core/model/phrases/answers.h"

#include <set>

namespace slopebook::answers {

namespace {
constexpr int fewestAthletes = 3;
constexpr std::size_t fewestPoints = 6;
} // namespace

stats::Interval SquadRelation::predicted(double velocity) const {
    return stats::predictionInterval(used(), velocity, level);
}

Words SquadRelation::name() const {
    const auto n = static_cast<int>(points.size());
    return say("the squad's own relation (%1, %2)",
               athletes == 1 ? say("1 athlete") : say("%1 athletes", athletes),
               n == 1 ? say("1 point") : say("%1 points", n));
}

Answer<SquadRelation> squadRelation(const Lift& lift, std::span<const LiftSession> sessions,
                                    double level) {
    if (lift.ballistic)
        return NoAnswer{NoAnswer::Why::BallisticLift,
                        say("a thrown or jumped lift has no 1RM to take shares of")};
    SquadRelation relation{.level = level};
    std::set<AthleteId> athletes;
    std::vector<double> velocity, percent;
    for (const LiftSession& session : sessions) {
        if (!session.measuredOneRm || session.measuredOneRm->grams <= 0 || session.points.empty())
            continue;
        athletes.insert(session.athlete);
        ++relation.sessions;
        for (const Point& point : session.points) {
            relation.points.push_back({session.athlete, point.velocity,
                                       100 * point.load / kilograms(*session.measuredOneRm)});
            velocity.push_back(point.velocity);
            percent.push_back(relation.points.back().percent);
        }
    }
    relation.athletes = static_cast<int>(athletes.size());
    const auto linear = stats::fitParabola(velocity, percent, 1);
    if (relation.athletes < fewestAthletes || relation.points.size() < fewestPoints || !linear)
        return NoAnswer{
            NoAnswer::Why::TooFewSessions,
            say("a squad's relation needs sessions with a measured 1RM of at least three athletes "
                "and six points; there are %1 and %2",
                relation.athletes == 1 ? say("1 athlete") : say("%1 athletes", relation.athletes),
                relation.points.size() == 1 ? say("1 point")
                                            : say("%1 points", relation.points.size()))};
    relation.linear = *linear;
    relation.quadratic = stats::fitParabola(velocity, percent, 2);
    return relation;
}

std::vector<RelatedLoad> relatedLoads(const Plan& plan, const SquadRelation& relation) {
    std::vector<RelatedLoad> all;
    for (const PlannedLoad& load : plan.loads)
        all.push_back({relation.used().at(load.velocity), relation.predicted(load.velocity)});
    return all;
}

std::vector<RelatedLoad> relatedLoads(const Plan& plan, const PublishedRelation& relation) {
    std::vector<RelatedLoad> all;
    for (const PlannedLoad& load : plan.loads)
        all.push_back({relation.percentAt(load.velocity), {}});
    return all;
}

Caution relationCaution(const Words& name) {
    return {Caution::Kind::GroupRelation,
            say("shares of the 1RM marked so are by %1, not by this athlete's own line: people "
                "differ",
                name)};
}

} // namespace slopebook::answers
