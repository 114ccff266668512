// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/threshold.h"

#include "core/answers/published.h"
#include "core/model/phrases/answers.h"

#include <cmath>

namespace slopebook::answers {

namespace {
constexpr double withinAthlete = 0.58; // of the published variance of singles: the athlete's own
constexpr double priorDf = 8;
constexpr double generalSd =
    0.045;                  // m/s, of lifts without a published SD: the middle of the others
constexpr double icc = 0.5; // of velocities at true maxima; 0.42 to 0.55 read for squats
constexpr double iccDeadlift = 0.63; // Ruf et al. 2018

double iccOf(const Lift& lift) {
    return lift.name.find("eadlift") != std::string::npos ? iccDeadlift : icc;
}

/// k maxima are k draws: their mean is moderated towards the lift's own threshold by k ICC / (1 +
/// (k
/// - 1) ICC), and u^2 = w^2 (1 + 1/k), w^2 = (8 x 0.58 S^2 + (k - 1) s^2) / (7 + k) on 7 + k df, S
/// the SD of singles of the lift.
Mvt ownMvt(const Lift& lift, std::span<const Point> maxima) {
    const auto k = static_cast<double>(maxima.size());
    double mean = 0;
    for (const Point& p : maxima)
        mean += p.velocity / k;
    double squares = 0;
    for (const Point& p : maxima)
        squares += (p.velocity - mean) * (p.velocity - mean);
    const auto row = published(lift.name, lift.kind);
    const auto ofLift = lift.mvt ? lift.mvt : row ? row->mvt : std::nullopt;
    const double sd = ofLift && ofLift->sd              ? *ofLift->sd
                      : row && row->mvt && row->mvt->sd ? *row->mvt->sd
                                                        : generalSd;
    const double share = ofLift ? k * iccOf(lift) / (1 + (k - 1) * iccOf(lift)) : 1;
    const double w2 = (priorDf * withinAthlete * sd * sd + squares) / (priorDf - 1 + k);
    return {.value = share * mean + (1 - share) * (ofLift ? ofLift->value : 0),
            .sd = std::sqrt(w2 * (1 + 1 / k)),
            .origin = Mvt::Origin::Athlete,
            .source = ofLift ? "drawn towards the lift's figure" : "", // sourceOf() says it
            .count = static_cast<int>(maxima.size()),
            .sdDf = priorDf - 1 + k};
}
} // namespace

Answer<Mvt> chooseMvt(const Lift& lift, std::span<const Point> maxima) {
    if (lift.ballistic)
        return NoAnswer{NoAnswer::Why::BallisticLift,
                        say("a thrown or jumped lift is followed by velocity at load only")};
    if (!maxima.empty())
        return ownMvt(lift, maxima);
    if (!lift.mvt)
        return NoAnswer{NoAnswer::Why::NoThreshold,
                        say("no minimal-velocity threshold (MVT) is known for this lift")};
    if (lift.kind == VelocityKind::Peak && lift.mvt->origin == Mvt::Origin::Published)
        return NoAnswer{NoAnswer::Why::NoThreshold,
                        say("no published threshold (MVT) holds for peak velocity")};
    return *lift.mvt;
}

Answer<Mvt> mvtOf(const Lift& lift, std::span<const LiftSession> sessions) {
    std::vector<Point> maxima;
    for (const LiftSession& session : sessions)
        maxima.insert(maxima.end(), session.maxima.begin(), session.maxima.end());
    return chooseMvt(lift, maxima);
}

} // namespace slopebook::answers
