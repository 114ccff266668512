// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/noise.h"

#include "core/answers/figures.h"
#include "core/answers/profile.h"
#include "core/model/errors.h"
#include "core/model/phrases/answers.h"
#include "core/stats/twolines.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace slopebook::answers {

namespace {

using Means = std::map<Mass, double>;

Means meansByLoad(const LiftSession& session) {
    std::map<Mass, std::pair<double, int>> sums;
    for (const Point& p : session.points) {
        auto& [sum, count] = sums[massFromKilograms(p.load)];
        sum += p.velocity;
        ++count;
    }
    Means means;
    for (const auto& [load, total] : sums)
        means.emplace(load, total.first / total.second);
    return means;
}

struct Columns {
    std::vector<double> first, second;
};

std::vector<NoiseAtLoad> noiseByLoad(std::span<const RepeatPair> pairs, double level) {
    std::map<Mass, Columns> byLoad;
    for (const RepeatPair& pair : pairs) {
        const Means second = meansByLoad(pair.second);
        for (const auto& [load, velocity] : meansByLoad(pair.first))
            if (const auto again = second.find(load); again != second.end()) {
                byLoad[load].first.push_back(velocity);
                byLoad[load].second.push_back(again->second);
            }
    }
    std::vector<NoiseAtLoad> noise;
    for (const auto& [load, columns] : byLoad)
        if (const auto error = stats::typicalError(columns.first, columns.second, level))
            noise.push_back({.load = load, .error = *error});
    return noise;
}

std::optional<stats::TypicalError> noiseOfOneRm(const Lift& lift, const Answer<Mvt>& mvt,
                                                std::span<const RepeatPair> pairs, double level) {
    Columns columns;
    for (const RepeatPair& pair : pairs) {
        const auto first = profile(lift, mvt, pair.first);
        const auto second = profile(lift, mvt, pair.second);
        if (first && second && first->oneRm && second->oneRm) {
            columns.first.push_back(first->oneRm->estimate);
            columns.second.push_back(second->oneRm->estimate);
        }
    }
    return stats::typicalError(columns.first, columns.second, level);
}

std::optional<stats::Line> lineOf(const LiftSession& session) {
    std::vector<double> x;
    std::vector<double> y;
    for (const Point& p : session.points) {
        x.push_back(p.load);
        y.push_back(p.velocity);
    }
    return stats::fitLine(x, y);
}

/// How far a pair's lines lie apart where that is known best, and what of it the scatter about the
/// two lines explains.
struct Apart {
    double squared = 0;     ///< (m/s)^2
    stats::Variance within; ///< of the difference, from the scatter alone
};

std::optional<Apart> apart(const RepeatPair& pair) {
    const auto first = lineOf(pair.first);
    const auto second = lineOf(pair.second);
    if (!first || !second || first->n + second->n <= 4)
        return std::nullopt;
    const stats::TwoLines lines(*first, *second);
    // Var D = s2 (1/n1 + 1/n2 + (x-x1)^2/S1 + (x-x2)^2/S2) is least at this x.
    const double x = (first->xMean / first->sxx + second->xMean / second->sxx) /
                     (1 / first->sxx + 1 / second->sxx);
    const double d = lines.difference(x);
    return Apart{.squared = d * d, .within = lines.variance(x)};
}

/// E d^2 = 2 day variance + within; solved by moments, cut off at zero. df: Satterthwaite (1946) of
/// mean d^2 (one df a pair) less the mean of the within parts (each on its own df).
DayNoise dayPart(std::span<const RepeatPair> pairs) {
    double between = 0;
    double within = 0;
    double withinSpread = 0;
    int count = 0;
    for (const RepeatPair& pair : pairs)
        if (const auto a = apart(pair)) {
            between += a->squared;
            within += a->within.value;
            withinSpread += a->within.value * a->within.value / a->within.df;
            ++count;
        }
    DayNoise day{.pairs = count};
    if (count < 2)
        return day;
    const double excess = between - within;
    day.origin = DayNoise::Origin::LogLift;
    day.source = counted(count, "repeat test");
    day.variance = {0, static_cast<double>(count)};
    if (excess > 0)
        day.variance = {excess / 2 / count,
                        excess * excess / (between * between / count + withinSpread)};
    return day;
}

void requireOneLift(std::span<const RepeatPair> pairs) {
    for (const RepeatPair& pair : pairs)
        if (pair.first.lift != pairs.front().first.lift || pair.second.lift != pair.first.lift ||
            pair.second.athlete != pair.first.athlete)
            throw BadInput(say("repeat tests of several lifts or people"),
                           say("pairs of one lift, each of one athlete"));
}

} // namespace

bool spreads(const stats::TypicalError& error, int decimals) {
    return error.value >= 0.5 * std::pow(10.0, -decimals);
}

std::vector<RepeatPair> repeatPairs(std::span<const LiftSession> sessions) {
    using Key = std::tuple<AthleteId, LiftId, SessionId>;
    std::map<Key, const LiftSession*> byKey;
    for (const LiftSession& s : sessions)
        byKey.emplace(Key{s.athlete, s.lift, s.session}, &s);
    std::vector<RepeatPair> pairs;
    for (const LiftSession& s : sessions) {
        if (!s.repeatOf || *s.repeatOf == s.session)
            continue;
        const auto first = byKey.find({s.athlete, s.lift, *s.repeatOf});
        if (first == byKey.end() || first->second->conditions.device != s.conditions.device ||
            first->second->points.empty() || s.points.empty() ||
            !notComparableWords(first->second->conditions, s.conditions).empty())
            continue;
        pairs.push_back({.first = *first->second, .second = s});
    }
    std::ranges::stable_sort(pairs, {}, [](const RepeatPair& p) {
        return std::tuple{p.first.date, p.first.ordinal, p.second.date, p.second.ordinal};
    });
    return pairs;
}

Answer<LiftNoise> liftNoise(const Lift& lift, const Answer<Mvt>& mvt,
                            std::span<const RepeatPair> pairs, double level) {
    requireOneLift(pairs);
    if (pairs.size() < 2)
        return NoAnswer{NoAnswer::Why::NoRepeatTests,
                        pairs.empty() ? say("no repeat test of this lift is marked as one")
                                      : say("one repeat test is too few: noise needs two or more")};
    return LiftNoise{.used = {pairs.begin(), pairs.end()},
                     .atLoads = noiseByLoad(pairs, level),
                     .oneRm = noiseOfOneRm(lift, mvt, pairs, level),
                     .day = dayPart(pairs)};
}

stats::RepeatSums repeatSums(std::span<const RepeatPair> pairs) {
    stats::RepeatSums sums;
    for (const RepeatPair& pair : pairs)
        if (const auto a = apart(pair))
            sums += {.pairs = 1, .halfSquares = a->squared / 2, .within = a->within.value / 2};
    return sums;
}

DayNoise chooseDayNoise(const stats::RepeatSums& own, const stats::RepeatSums& others,
                        const PublishedNoise& published,
                        std::span<const stats::DaySpread> spreads) {
    DayNoise chosen{.ownPairs = static_cast<int>(own.pairs),
                    .othersPairs = static_cast<int>(others.pairs),
                    .withBlocks = !spreads.empty()};
    for (const stats::DaySpread& spread : spreads)
        chosen.ownPairs += spread.days - 1;
    if (!published) {
        stats::RepeatSums ofOwn = own;
        for (const stats::DaySpread& spread : spreads)
            ofOwn += stats::asRepeats(spread);
        stats::RepeatSums all = ofOwn;
        all += others;
        const bool enough = ofOwn.pairs >= pairsNeeded;
        const stats::RepeatSums& from = enough ? ofOwn : all;
        if (from.pairs < pairsNeeded)
            return {};
        chosen.origin = enough ? DayNoise::Origin::Athlete : DayNoise::Origin::LogLift;
        chosen.pairs = static_cast<int>(from.pairs);
        chosen.source = counted(chosen.pairs, "repeat test");
        chosen.variance = {std::max(0.0, from.excess()), from.pairs};
        chosen.ownShare = ofOwn.pairs / from.pairs;
        chosen.othersShare = 1 - chosen.ownShare;
        return chosen;
    }
    const stats::Moderated made = stats::moderated(published->first, others, own, spreads);
    chosen.variance = made.variance;
    chosen.expected = made.expected;
    chosen.likely = made.likely;
    chosen.published = published->first;
    chosen.source = published->second;
    chosen.ownShare = made.ownShare;
    chosen.othersShare = made.othersShare;
    const double rest = 1 - made.ownShare - made.othersShare;
    if (made.ownShare >= std::max(rest, made.othersShare)) {
        chosen.origin = DayNoise::Origin::Athlete;
        chosen.pairs = chosen.ownPairs;
    } else if (made.othersShare >= rest) {
        chosen.origin = DayNoise::Origin::LogLift;
        chosen.pairs = chosen.othersPairs;
    } else {
        chosen.origin = DayNoise::Origin::Published;
    }
    return chosen;
}

} // namespace slopebook::answers
