// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/testnoise.h"

#include "core/answers/figures.h"
#include "core/answers/sources.h"
#include "core/model/phrases/answers.h"
#include "core/stats/infinity.h"
#include "core/stats/repeats.h"

#include <cmath>
#include <numbers>
#include <vector>

namespace slopebook::answers {

namespace {

/// Whose repeat tests a typical error comes from: of one, of several.
struct Whose {
    TestNoiseUsed::Origin origin;
    Phrase one, several;
};
constexpr Whose athletesOwn{TestNoiseUsed::Origin::Athlete, "the athlete's own, 1 repeat test",
                            "the athlete's own, %1 repeat tests"};
constexpr Whose thisLogs{TestNoiseUsed::Origin::Log, "this log's, 1 repeat test",
                         "this log's, %1 repeat tests"};

std::optional<TestNoiseUsed> noiseOf(const std::vector<RepeatedTest>& pairs, const Whose& whose) {
    std::vector<double> first;
    std::vector<double> second;
    for (const RepeatedTest& pair : pairs) {
        first.push_back(pair.first);
        second.push_back(pair.second);
    }
    const auto error = stats::typicalError(first, second);
    if (!error || !(error->value > 0))
        return std::nullopt;
    return TestNoiseUsed{.te = error->value,
                         .df = error->df,
                         .origin = whose.origin,
                         .source =
                             say(pairs.size() == 1 ? whose.one : whose.several, pairs.size())};
}

/// Two short sessions, the second marked as a repeat, where a test has no other noise: what the one
/// pair, or that of each side, comes to, no change of the mean taken off.
std::optional<TestNoiseUsed> noiseOfFew(const Stored<TestKindId, TestKind>& kind, AthleteId athlete,
                                        const SquadTests& squad) {
    double squares = 0;
    int count = 0;
    for (const BodySide each : sidesOf(kind.value))
        for (const RepeatedTest& pair : squad.repeats(kind.id, each, athlete)) {
            squares += (pair.second - pair.first) * (pair.second - pair.first) / 2;
            ++count;
        }
    if (count == 0 || !(squares > 0))
        return std::nullopt;
    return TestNoiseUsed{.te = std::sqrt(squares / count),
                         .df = static_cast<double>(count),
                         .origin = athletesOwn.origin,
                         .source = say(count == 1 ? athletesOwn.one : athletesOwn.several, count)};
}

} // namespace

stats::Interval changeInterval(double change, double te, double df, double level) {
    const double half = stats::tCritical(level, df) * std::numbers::sqrt2 * te;
    return {change - half, change + half};
}

std::optional<TestNoiseUsed> testNoise(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                       AthleteId athlete, const SquadTests& squad, double value) {
    using Origin = TestNoiseUsed::Origin;
    if (auto own = noiseOf(squad.repeats(kind.id, side, athlete), athletesOwn))
        return own;
    if (auto log = noiseOf(squad.repeats(kind.id, side), thisLogs))
        return log;
    const auto& given = kind.value.noise;
    if (!given)
        return noiseOfFew(kind, athlete, squad);
    return TestNoiseUsed{.te = given->percent ? given->value / 100 * value : given->value,
                         .df = stats::infinity,
                         .origin = Origin::Kind,
                         .source = sourceWords(cited(given->source))};
}

std::optional<double> attemptNoise(const TestValue& before, const TestValue& after) {
    double squares = 0;
    int df = 0;
    for (const TestValue* value : {&before, &after})
        if (value->sd) {
            squares += *value->sd * *value->sd * (value->counted - 1);
            df += value->counted - 1;
        }
    if (df == 0 || !(squares > 0))
        return std::nullopt;
    const double each = 2.0 / (1.0 / before.counted + 1.0 / after.counted);
    return std::sqrt(squares / df / each);
}

} // namespace slopebook::answers
