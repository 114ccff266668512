// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/sharedloads.h"

#include "core/answers/nexttest.h"
#include "core/model/phrases/answers.h"

#include <cmath>
#include <map>

namespace slopebook::answers {

namespace {

constexpr double generalScatter = 0.015, generalDf = 8; // m/s

struct Seen {
    double sum = 0;
    int count = 0;
    double mean() const { return sum / count; }
};

std::map<Mass, Seen> seenByLoad(const LiftSession& session) {
    std::map<Mass, Seen> seen;
    for (const Point& p : session.points) {
        Seen& at = seen[massFromKilograms(p.load)];
        at.sum += p.velocity;
        ++at.count;
    }
    return seen;
}

} // namespace

PointNoise pointNoise(const DayNoise& noise, const std::optional<stats::Scatter>& scatter) {
    const stats::Variance ofPoint =
        scatter && scatter->df > 0 ? stats::Variance{scatter->s2, scatter->df}
                                   : stats::Variance{generalScatter * generalScatter, generalDf};
    const bool known = noise.origin != DayNoise::Origin::None;
    return {.day = known ? noise.variance : stats::Variance{}, .scatter = ofPoint};
}

PointNoise pointNoiseFrom(const DayNoise& noise, std::span<const LiftSession> sessions) {
    const auto scatter = pooledScatter(sessions);
    return pointNoise(noise,
                      scatter ? std::optional(stats::Scatter{scatter->s * scatter->s, scatter->df})
                              : std::nullopt);
}

Answer<std::vector<SharedLoadChange>> sharedLoadChanges(const LiftSession& from,
                                                        const LiftSession& to,
                                                        const ComparisonSettings& settings,
                                                        const PointNoise& noise) {
    if (from.session == to.session)
        return NoAnswer{NoAnswer::Why::Other, say("one session is not compared with itself")};
    if (settings.asManyReps)
        if (const auto fair = settings.asManyReps(from, to)) {
            ComparisonSettings asTheyAre = settings;
            asTheyAre.asManyReps = {};
            return sharedLoadChanges(fair->first, fair->second, asTheyAre, noise);
        }
    const double bias = settings.deviceBias ? settings.deviceBias->first : 0;
    const stats::Variance ofBias =
        settings.deviceBias ? settings.deviceBias->second : stats::Variance{};
    const auto after = seenByLoad(to);
    const Under under =
        underOf(from.conditions, to.conditions, settings.devices, settings.deviceBias.has_value());
    std::vector<SharedLoadChange> changes;
    for (const auto& [load, before] : seenByLoad(from)) {
        const auto again = after.find(load);
        if (again == after.end())
            continue;
        const double change = again->second.mean() - bias - before.mean();
        const auto mean = [&](const Seen& seen) {
            return stats::Variance{noise.scatter.value / seen.count, noise.scatter.df};
        };
        const ChangeParts parts{.earlier = mean(before),
                                .later = mean(again->second),
                                .day = noise.day,
                                .device = ofBias};
        const auto straight = [&](double level) -> std::optional<stats::Interval> {
            const double half = std::sqrt(squaredHalfWidth(parts, settings.critical(level)));
            return stats::Interval{change - half, change + half};
        };
        const auto own = settings.smallestAt.find(load);
        changes.push_back(
            {.load = load,
             .seenFrom = before.mean(),
             .seenTo = again->second.mean(),
             .read = readWithBend(change, straight, {}, settings.level,
                                  own != settings.smallestAt.end() ? own->second
                                                                   : settings.smallestVelocity)});
        setUnder(changes.back().read, under);
    }
    if (changes.empty())
        return NoAnswer{NoAnswer::Why::BeyondLoads, say("the two days share no load")};
    return changes;
}

} // namespace slopebook::answers
