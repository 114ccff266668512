// SPDX-License-Identifier: GPL-3.0-or-later
// Made sessions whose truth is known, for the counts of how often readings and intervals are right.
#pragma once

#include "core/answers/noise.h"
#include "tests/answers/builders.h"

#include <cstdint>
#include <limits>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace slopebook::tests {

/// speed = intercept + slope load at these loads, with that scatter about the line.
struct TrueSession {
    std::vector<double> loads = {};                      ///< kg
    double intercept = 1.55, slope = -0.0125, sd = 0.03; ///< m/s, m/s a kg, m/s
    double at(double load) const { return intercept + slope * load; }
};

class MadeLog {
public:
    /// daySd: of a session's line as a whole from day to day, m/s.
    MadeLog(double daySd, std::uint64_t seed) : m_daySd(daySd), m_random(seed) {}

    double normal() { return m_normal(m_random); }

    /// A session of its own day.
    LiftSession draw(int id, const TrueSession& truth) {
        const double shift = m_daySd * normal();
        std::vector<std::pair<double, double>> points;
        for (const double load : truth.loads)
            points.emplace_back(load, truth.at(load) + shift + truth.sd * normal());
        return session(id, points);
    }

    /// As known (published) where there are no repeat tests, else from that many tests of that
    /// session, chosen as the readings choose it.
    answers::DayNoise dayNoise(int repeatTests, const TrueSession& truth) {
        using namespace answers;
        if (repeatTests == 0)
            return {.variance = {m_daySd * m_daySd, std::numeric_limits<double>::infinity()},
                    .origin = DayNoise::Origin::Published,
                    .source = "known"};
        std::vector<RepeatPair> pairs;
        for (int i = 0; i < repeatTests; ++i) {
            LiftSession first = draw(2 * i, truth);
            LiftSession second = draw(2 * i + 1, truth);
            second.repeatOf = first.session;
            pairs.push_back({.first = std::move(first), .second = std::move(second)});
        }
        return chooseDayNoise(repeatSums(pairs), {}, std::nullopt);
    }

private:
    const double m_daySd;
    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal;
};

} // namespace slopebook::tests
