// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/calibration.h"

#include "core/answers/profile.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace slopebook::answers {

namespace {

bool holds(const LiftSession& session, double load) {
    return std::ranges::any_of(session.points, [&](const Point& p) { return p.load >= load; });
}

} // namespace

std::vector<EstimatePair> estimatePairs(const Lift& lift, const Answer<Mvt>& mvt,
                                        std::span<const LiftSession> sessions) {
    std::vector<EstimatePair> pairs;
    for (const LiftSession& measured : sessions) {
        if (!measured.measuredOneRm)
            continue;
        const double lifted = kilograms(*measured.measuredOneRm);
        std::optional<double> nearest;
        int days = calibrationDays + 1;
        for (const LiftSession& session : sessions) {
            const int apart = static_cast<int>(std::abs(daysBetween(measured.date, session.date)));
            if (apart >= days || holds(session, lifted))
                continue;
            const auto found = profile(lift, mvt, session);
            if (!found || !found->oneRm || !found->oneRm->interval ||
                found->oneRm->extrapolatedFar())
                continue;
            nearest = found->oneRm->estimate;
            days = apart;
        }
        if (nearest)
            pairs.push_back({.athlete = measured.athlete, .estimate = *nearest, .lifted = lifted});
    }
    return pairs;
}

double Calibration::calibrated(double estimate) const {
    return estimate * std::exp(-bias);
}

stats::Interval Calibration::calibrated(const stats::Interval& toPlan, double estimate,
                                        double level) const {
    const double centre = calibrated(estimate);
    const double moved = centre / estimate;
    const double own = stats::tCritical(level, df) * se * centre;
    return {centre - std::hypot(moved * (estimate - toPlan.low), own),
            centre + std::hypot(moved * (toPlan.high - estimate), own)};
}

Answer<Calibration> calibrate(std::span<const EstimatePair> pairs, AthleteId athlete) {
    if (pairs.size() < calibrationPairsNeeded)
        return NoAnswer{NoAnswer::Why::Other,
                        say("calibration needs three maxima lifted within days of an estimate")};
    Calibration made{.pairs = static_cast<int>(pairs.size())};
    double all = 0, own = 0;
    std::vector<double> logs;
    for (const EstimatePair& pair : pairs) {
        logs.push_back(std::log(pair.estimate / pair.lifted));
        all += logs.back();
        if (pair.athlete == athlete) {
            own += logs.back();
            ++made.ownPairs;
        }
    }
    const double mean = all / made.pairs;
    double squares = 0;
    for (const double each : logs)
        squares += (each - mean) * (each - mean);
    made.df = made.pairs - 1;
    made.spread = std::sqrt(squares / made.df);
    const double share = static_cast<double>(made.ownPairs) / (made.ownPairs + 1);
    made.bias = made.ownPairs > 0 ? share * own / made.ownPairs + (1 - share) * mean : mean;
    // The athlete's own bias about the mean of all, or what is left of it with own pairs.
    made.se = made.spread * std::sqrt((1 - share) + 1.0 / made.pairs);
    return made;
}

} // namespace slopebook::answers
