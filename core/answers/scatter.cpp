// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/nexttest.h"
#include "core/model/errors.h"
#include "core/model/phrases/answers.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

/// Variance of the largest of r standard normal values.
double largestVariance(int r) {
    const boost::math::normal_distribution<double> z;
    const auto moment = [&](int power) {
        return boost::math::quadrature::gauss_kronrod<double, 61>::integrate(
            [&](double x) {
                return std::pow(x, power) * r * boost::math::pdf(z, x) *
                       std::pow(boost::math::cdf(z, x), r - 1);
            },
            -10.0, 10.0, 10, 1e-12);
    };
    const double mean = moment(1);
    return moment(2) - mean * mean;
}

} // namespace

std::optional<AthleteScatter> pooledScatter(std::span<const LiftSession> sessions) {
    AthleteScatter scatter;
    double rss = 0;
    for (const LiftSession& session : sessions) {
        std::vector<double> x, y;
        for (const Point& point : session.points) {
            x.push_back(point.load);
            y.push_back(point.velocity);
        }
        const auto line = stats::fitLine(x, y);
        if (!line || !line->hasInference())
            continue;
        rss += line->rss;
        scatter.df += line->df();
        ++scatter.sessions;
    }
    if (scatter.sessions == 0)
        return std::nullopt;
    scatter.s = std::sqrt(rss / scatter.df);
    return scatter;
}

double scatterForReps(double s, double repSd, PointRule rule, int repsNow, int repsNext) {
    for (const int reps : {repsNow, repsNext})
        if (reps < 1 || reps > 100)
            throw BadInput(say("%1 reps", reps), say("1 to 100 reps"));
    const auto share = [&](int reps) {
        return rule == PointRule::Mean ? 1.0 / reps : largestVariance(reps);
    };
    // a rep SD that says more than the whole scatter leaves nothing beside it
    const double beside = std::max(0.0, s * s - repSd * repSd * share(repsNow));
    const double within = std::min(s * s, repSd * repSd * share(repsNow)) / share(repsNow);
    return std::sqrt(beside + within * share(repsNext));
}

} // namespace slopebook::answers
