// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/ladderforecast.h"

#include "core/answers/planbounds.h"
#include "core/stats/allowance.h"
#include "core/stats/infinity.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

std::vector<double> inKilograms(std::span<const BuiltLoad> loads) {
    std::vector<double> kg;
    for (const BuiltLoad& load : loads)
        kg.push_back(kilograms(load.exact));
    return kg;
}

int distinctLoads(std::span<const BuiltLoad> loads) {
    int count = loads.empty() ? 0 : 1;
    for (std::size_t i = 1; i < loads.size(); ++i)
        count += loads[i].exact != loads[i - 1].exact ? 1 : 0;
    return count;
}

/// The loads as a line through them would be asked, by the profile's line.
std::optional<Ladder> asLadder(const Profile& profile, std::vector<double> kg) {
    const auto max = profile.referenceMax();
    if (!max || kg.empty())
        return std::nullopt;
    const double heaviest = *std::max_element(kg.begin(), kg.end());
    return Ladder{
        .loads = std::move(kg), .slope = profile.line.slope, .max = *max, .heaviest = heaviest};
}

/// The profile's line again, through points that lie at these loads.
stats::Line expectedLine(const stats::Line& line, const stats::Spread& x) {
    stats::Line again = line;
    again.n = x.n;
    again.xMean = x.mean;
    again.yMean = line.at(x.mean);
    again.sxx = x.sxx;
    again.sxy = line.slope * x.sxx;
    again.syy = line.slope * again.sxy;
    again.rss = 0;
    return again;
}

/// What will not be known of a change from the profile's session to a test at these loads.
ChangeUncertainty changeTo(const Profile& profile, const NextTestSettings& settings,
                           std::span<const BuiltLoad> loads, const stats::Spread& x,
                           const stats::Scatter& scatter) {
    stats::Line later = expectedLine(profile.line, x);
    later.xMin = kilograms(loads.front().exact);
    later.xMax = kilograms(loads.back().exact);
    return {.lines = stats::TwoLines(profile.line, later),
            .day = dayOf(settings.dayNoise, profile.line, later, profile.referenceMax()),
            .bend = bendErrors(profile, settings, {loads.begin(), loads.end()}),
            .expected = scatter};
}

/// With the scatter that chances are worked out from; nothing where it tells of no change.
std::optional<ChangeUncertainty> changeForChances(const Profile& profile,
                                                  const NextTestSettings& settings,
                                                  const LadderForecast& ladder, double smallest) {
    const double df = profile.line.df() + std::max(0, static_cast<int>(ladder.loads.size()) - 2);
    if (!(smallest > 0) || !(settings.scatter.df > 0) || ladder.distinct < 2 || !(df > 0))
        return std::nullopt;
    return changeTo(profile, settings, ladder.loads, spreadOf(ladder.loads),
                    {settings.scatter.s * settings.scatter.s, df});
}

} // namespace

stats::Spread spreadOf(std::span<const BuiltLoad> loads) {
    return stats::spread(inKilograms(loads));
}

double LadderForecast::worstChange() const {
    double worst = changes.empty() ? stats::infinity : 0;
    for (const ChangeForecast& change : changes)
        worst = std::max(worst, change.halfWidth);
    return worst;
}

double LadderJudge::knownDf() const {
    switch (settings.known) {
    case ScatterKnown::Pooled:
        return settings.scatter.df;
    case ScatterKnown::Known:
        return stats::infinity;
    case ScatterKnown::Own:
        break;
    }
    return 0;
}

std::optional<stats::ExpectedScatter> LadderJudge::ownScatter(int n) const {
    return stats::expectedScatter(settings.scatter.s, knownDf(), n - 2, profile.level);
}

std::optional<stats::ExpectedScatter> LadderJudge::changeScatter(int n) const {
    return stats::expectedScatter(settings.scatter.s, std::max(knownDf(), profile.line.df()), n - 2,
                                  profile.level);
}

double LadderJudge::oneRm(const stats::Spread& x, const stats::ExpectedScatter& scatter) const {
    // what moves from day to day has a quantile of its own: as a share of the scatter's
    const stats::Moving day = dayOf(settings.dayNoise, profile.line, profile.referenceMax());
    const double t = stats::tCritical(profile.level, day.df) / scatter.t;
    return stats::inverseHalfWidth(profile.line.slope, profile.oneRm->estimate,
                                   mvtVariance + day.at(profile.oneRm->estimate) * t * t, x,
                                   scatter);
}

double LadderJudge::worstChange(const stats::Spread& x,
                                const stats::ExpectedScatter& scatter) const {
    double worst = settings.checkLoads.empty() ? stats::infinity : 0;
    for (const Mass load : settings.checkLoads)
        worst = std::max(worst, scatter.t *
                                    stats::differenceSe(kilograms(load), profile.line, x, scatter));
    return worst;
}

std::optional<stats::DesignCriterion> LadderJudge::criterion(int n, bool forOneRm) const {
    const auto scatter = forOneRm ? ownScatter(n) : changeScatter(n);
    if (!scatter || (forOneRm && !profile.oneRm) || (!forOneRm && settings.checkLoads.empty()))
        return std::nullopt;
    return [this, scatter, forOneRm](const stats::Spread& x) {
        return forOneRm ? oneRm(x, *scatter) : worstChange(x, *scatter);
    };
}

void LadderJudge::forecastMax(LadderForecast& ladder, const stats::Spread& x) const {
    ladder.heaviestPercent = // of what loads are planned with, as everywhere in a plan
        100 * kilograms(ladder.loads.back().exact) / estimateToPlanWith(*profile.oneRm);
    if (const auto scatter = ownScatter(x.n))
        if (const double width = oneRm(x, *scatter); std::isfinite(width))
            ladder.oneRm = width;
    if (const auto max = profile.referenceMax())
        ladder.bend = bendOfMax(settings.bend, inKilograms(ladder.loads), *max);
}

void LadderJudge::forecastChanges(LadderForecast& ladder, const stats::Spread& x) const {
    const auto scatter = changeScatter(x.n);
    if (!scatter || !(x.sxx > 0))
        return;
    const ChangeUncertainty change =
        changeTo(profile, settings, ladder.loads, x, {scatter->s * scatter->s, scatter->df});
    const auto half = [&](const stats::Interval& straight, const stats::Interval& bend) {
        return stats::allowing(straight, bend, profile.level).width() / 2;
    };
    for (const Mass load : settings.checkLoads) {
        const double kg = kilograms(load);
        const stats::Interval bend = change.bend.at(kg);
        ladder.changes.push_back(
            {.load = load,
             .halfWidth = scatter->t * stats::differenceSe(kg, profile.line, x, *scatter),
             .reading = half(change.straight(kg, profile.level), bend),
             .bend = bend});
    }
    if (!profile.oneRm || !profile.line.hasInference())
        return;
    ladder.bendChange = change.bend.ofMax();
    if (const auto straight = change.maxStraight(profile.mvt->value, profile.level))
        ladder.oneRmChange = half(*straight, ladder.bendChange);
}

LadderForecast LadderJudge::forecast(LadderForecast::Kind kind,
                                     std::vector<BuiltLoad> loads) const {
    LadderForecast ladder{.kind = kind, .loads = std::move(loads)};
    ladder.distinct = distinctLoads(ladder.loads);
    ladder.flaws = flawsOf(ladder.loads, reference());
    const stats::Spread x = spreadOf(ladder.loads);
    if (profile.oneRm)
        forecastMax(ladder, x);
    forecastChanges(ladder, x);
    return ladder;
}

BendErrors bendErrors(const Profile& profile, const NextTestSettings& settings,
                      const std::vector<BuiltLoad>& ladder) {
    std::vector<double> kg;
    for (const Point& point : profile.session.points)
        kg.push_back(point.load);
    const auto before = asLadder(profile, std::move(kg));
    const auto after = asLadder(profile, inKilograms(ladder));
    return before && after ? BendErrors(settings.bend, *before, *after) : BendErrors();
}

std::optional<RepeatsQuestion> repeatsQuestion(const Profile& profile,
                                               const NextTestSettings& settings,
                                               const LadderForecast& ladder, Mass load,
                                               double smallest) {
    const auto change = changeForChances(profile, settings, ladder, smallest);
    return change ? std::optional(repeatsQuestion(change->at(kilograms(load)), settings.dayNoise,
                                                  smallest, profile.level))
                  : std::nullopt;
}

std::optional<RepeatsQuestion> repeatsQuestionOfMax(const Profile& profile,
                                                    const NextTestSettings& settings,
                                                    const LadderForecast& ladder, double smallest) {
    const auto change = changeForChances(profile, settings, ladder, smallest);
    return change && profile.oneRm
               ? std::optional(repeatsQuestion(change->ofMax(profile.mvt->value), settings.dayNoise,
                                               smallest, profile.level))
               : std::nullopt;
}

} // namespace slopebook::answers
