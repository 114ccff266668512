// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/nexttest.h"

#include "core/answers/figures.h"
#include "core/answers/ladderforecast.h"
#include "core/answers/planbounds.h"
#include "core/model/errors.h"
#include "core/model/phrases/answers.h"
#include "core/stats/design.h"
#include "core/stats/infinity.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace slopebook::answers {

namespace {

constexpr double oneUnit = 1.0 / static_cast<double>(unitsPerKilogram);
constexpr std::size_t mostLadders = 12;
constexpr std::size_t mostCeilings = 30;
constexpr std::size_t mostCandidates = 200;

using Loads = std::vector<BuiltLoad>;
using LadderKind = LadderForecast::Kind;

/// Where hundreds of loads can be built, the one of fewest pieces in each stretch of the range.
Loads thinned(Loads loads, std::size_t most) {
    if (loads.size() <= most)
        return loads;
    const std::int64_t first = loads.front().exact.units;
    const double stretch =
        static_cast<double>(loads.back().exact.units - first) / static_cast<double>(most - 1);
    Loads kept;
    std::int64_t last = -1;
    for (const BuiltLoad& load : loads) {
        const auto at = std::llround(static_cast<double>(load.exact.units - first) / stretch);
        if (at != last)
            kept.push_back(load);
        else if (load.pieces() < kept.back().pieces() && kept.size() > 1)
            kept.back() = load;
        last = at;
    }
    kept.back() = loads.back();
    return kept;
}

Loads best(const LadderJudge& judge, const Loads& candidates, int n, bool forOneRm) {
    const auto criterion = judge.criterion(n, forOneRm);
    if (!criterion)
        return {};
    std::vector<std::int64_t> x;
    for (const BuiltLoad& load : candidates)
        x.push_back(load.exact.units);
    const auto design = stats::bestDesign(x, oneUnit, n, *criterion, 1000);
    Loads loads;
    if (design)
        for (const std::int64_t value : design->x)
            loads.push_back(candidates[*find(candidates, ExactMass{value}, Side::Nearest)]);
    return loads;
}

/// n loads as evenly spaced as can be built between two of them; empty where two would coincide.
Loads even(const Loads& candidates, std::size_t from, std::size_t to, int n) {
    const double low = static_cast<double>(candidates[from].exact.units);
    const double step = (static_cast<double>(candidates[to].exact.units) - low) / (n - 1);
    Loads loads;
    for (int i = 0; i < n; ++i) {
        const ExactMass target{std::llround(low + step * i)};
        const BuiltLoad& load = candidates[*find(candidates, target, Side::Nearest)];
        if (!loads.empty() && loads.back().exact == load.exact)
            return {};
        loads.push_back(load);
    }
    return loads;
}

Loads twoExtremes(const Loads& candidates, int n) {
    Loads loads(static_cast<std::size_t>(n), candidates.back());
    std::fill_n(loads.begin(), n / 2, candidates.front());
    return loads;
}

/// The session's own loads again, where each can still be built.
Loads sameAsLast(const LiftSession& session, const Loads& candidates) {
    Loads loads;
    for (const Point& point : session.points) {
        const Mass load = massFromKilograms(point.load);
        const auto at = std::find_if(candidates.begin(), candidates.end(),
                                     [&](const BuiltLoad& each) { return each.load == load; });
        if (at == candidates.end())
            return {};
        loads.push_back(*at);
    }
    std::sort(loads.begin(), loads.end(),
              [](const BuiltLoad& a, const BuiltLoad& b) { return a.exact < b.exact; });
    return loads;
}

std::vector<LadderForecast> evenLadders(const LadderJudge& judge, const Loads& candidates, int n) {
    std::vector<LadderForecast> ladders;
    const auto last = static_cast<double>(candidates.size() - 1);
    for (const double from : {0.0, 0.15, 0.30, 0.45})
        for (const double to : {1.0, 0.85, 0.70}) {
            const auto low = static_cast<std::size_t>(std::lround(from * last));
            const auto high = static_cast<std::size_t>(std::lround(to * last));
            if (low >= high)
                continue;
            Loads loads = even(candidates, low, high, n);
            const bool known =
                std::any_of(ladders.begin(), ladders.end(),
                            [&](const LadderForecast& each) { return each.loads == loads; });
            if (!loads.empty() && !known)
                ladders.push_back(judge.forecast(LadderKind::Even, std::move(loads)));
        }
    return ladders;
}

double rankOf(const LadderForecast& ladder, bool byOneRm) {
    return byOneRm ? ladder.oneRm.value_or(stats::infinity) : ladder.worstChange();
}

Loads bestInSteps(const LadderJudge& judge, const Loads& candidates, int n) {
    const auto criterion = judge.criterion(n, judge.byOneRm);
    if (!criterion)
        return {};
    return bestWithoutFlaws(candidates, n, judge.reference(), [&](std::span<const double> kg) {
        return (*criterion)(stats::spread(kg));
    });
}

std::vector<LadderForecast> rankedLadders(const LadderJudge& judge, const Loads& candidates) {
    const int n = judge.settings.steps;
    std::vector<LadderForecast> ladders = evenLadders(judge, candidates, n);
    for (const bool forOneRm : {true, false})
        if (Loads loads = best(judge, candidates, n, forOneRm); !loads.empty())
            ladders.push_back(judge.forecast(
                forOneRm ? LadderKind::BestForOneRm : LadderKind::BestForChange, std::move(loads)));
    if (Loads loads = bestInSteps(judge, candidates, n); !loads.empty())
        ladders.push_back(judge.forecast(LadderKind::BestInSteps, std::move(loads)));
    ladders.push_back(judge.forecast(LadderKind::TwoExtremes, twoExtremes(candidates, n)));
    if (Loads loads = sameAsLast(judge.profile.session, candidates); loads.size() >= 2)
        ladders.push_back(judge.forecast(LadderKind::SameAsLast, std::move(loads)));
    std::stable_sort(ladders.begin(), ladders.end(),
                     [&](const LadderForecast& a, const LadderForecast& b) {
                         const auto key = [&](const LadderForecast& each) {
                             const double rank = rankOf(each, judge.byOneRm);
                             return std::tuple{std::isinf(rank), each.flaws.any(), rank, each.kind};
                         };
                         return key(a) < key(b);
                     });
    // what was asked for by name stays, however it ranks
    while (ladders.size() > mostLadders) {
        const auto weakest = std::find_if(ladders.rbegin(), ladders.rend(), [](const auto& each) {
            return each.kind == LadderKind::Even;
        });
        if (weakest == ladders.rend())
            break;
        ladders.erase(std::next(weakest).base());
    }
    return ladders;
}

std::vector<CeilingPoint> ceilingCurve(const LadderJudge& judge, const Loads& all, double ceiling) {
    std::vector<CeilingPoint> curve;
    const int n = judge.settings.steps;
    const Loads loads = thinned(all, 60);
    const std::size_t points = std::min(mostCeilings, loads.size() - 1);
    for (std::size_t i = 1; i <= points; ++i) {
        const std::size_t top = i * (loads.size() - 1) / points;
        const Loads under(loads.begin(), loads.begin() + static_cast<std::ptrdiff_t>(top) + 1);
        CeilingPoint point{.ceiling = under.back()};
        const double kg = kilograms(point.ceiling.exact);
        point.withinCeiling = kg <= ceiling;
        if (judge.profile.oneRm)
            point.percent = 100 * kg / estimateToPlanWith(*judge.profile.oneRm);
        const auto width = [&](Loads ladder) -> std::optional<double> {
            if (ladder.empty())
                return std::nullopt;
            const double value =
                rankOf(judge.forecast(LadderKind::Even, std::move(ladder)), judge.byOneRm);
            return std::isfinite(value) ? std::optional(value) : std::nullopt;
        };
        point.best = width(best(judge, under, n, judge.byOneRm));
        point.even = width(even(under, 0, under.size() - 1, n));
        curve.push_back(std::move(point));
    }
    return curve;
}

double capOf(const Profile& profile, const NextTestSettings& settings) {
    if (!profile.oneRm)
        return profile.heaviest;
    const double share = estimateToPlanWith(*profile.oneRm) * settings.heaviestPercent / 100;
    if (!profile.oneRm->interval)
        return std::min(share, profile.heaviest);
    return std::min(share, std::max(profile.oneRm->interval->low, profile.heaviest));
}

NextTest::NowHolds nowHolds(const Profile& profile, const NextTestSettings& settings) {
    const OneRm& oneRm = *profile.oneRm;
    if (plansCalibrated(oneRm) || !oneRm.toPlan || oneRm.bend == stats::Interval{})
        return NextTest::NowHolds::Unlike;
    return profile.mvt->sd && !settings.withMvt ? NextTest::NowHolds::MvtAndBend
                                                : NextTest::NowHolds::Bend;
}

void validate(const NextTestSettings& settings) {
    if (settings.steps < 2 || settings.steps > 8)
        throw BadInput(say("%1 steps", settings.steps), say("2 to 8 steps of a ladder"));
    if (!(settings.heaviestPercent >= 20 && settings.heaviestPercent <= 100))
        throw BadInput(say("%1 %", figure(fixed(settings.heaviestPercent, 0))),
                       say("a heaviest load of 20 to 100 % of the estimated 1RM"));
}

} // namespace

Answer<NextTest> nextTest(const Profile& profile, const NextTestSettings& settings) {
    validate(settings);
    if (!(settings.scatter.df > 0))
        return NoAnswer{NoAnswer::Why::NeedsThirdLoad,
                        say("no session shows the scatter of this athlete's points: it needs three "
                            "loads")};
    if (!(profile.line.slope < 0))
        return NoAnswer{
            NoAnswer::Why::SlopeNotNegative,
            say("speed does not fall as load rises, so no test can be planned on the line")};
    if (!profile.oneRm && settings.checkLoads.empty())
        return NoAnswer{
            NoAnswer::Why::Other,
            say("there is no 1RM and no check load to judge a test by: set a check load")};
    LadderJudge judge{.profile = profile, .settings = settings};
    judge.byOneRm = static_cast<bool>(profile.oneRm);
    if (settings.withMvt && profile.mvt && profile.mvt->sd)
        judge.mvtVariance = *profile.mvt->sd * *profile.mvt->sd;

    NextTest next{.settings = settings, .byOneRm = judge.byOneRm, .cap = capOf(profile, settings)};
    Equipment open = settings.equipment;
    open.ceiling.reset();
    const Loads all = buildableLoads(open, nearestExactMass(next.cap, MassUnit::Kilogram));
    double ceiling = stats::infinity;
    for (const auto& bound :
         {settings.equipment.ceiling, lowest(settings.ceiling, settings.bounds)})
        if (bound)
            ceiling = std::min(ceiling, kilograms(*bound));
    Loads candidates;
    for (const BuiltLoad& load : all)
        if (kilograms(load.exact) <= ceiling)
            candidates.push_back(load);
    candidates = thinned(std::move(candidates), mostCandidates);
    if (candidates.size() < 2)
        return NoAnswer{NoAnswer::Why::TooFewLoads,
                        say("fewer than two loads can be built up to %1",
                            massFromKilograms(std::round(std::min(next.cap, ceiling) * 10) / 10))};
    if (profile.oneRm)
        if (const auto& now = toPlanWith(*profile.oneRm))
            next.oneRmNow = (now->high - now->low) / 2;
    if (profile.oneRm) {
        Mvt mvt = *profile.mvt;
        if (!settings.withMvt)
            mvt.sd.reset();
        const stats::Moving day = dayOf(settings.dayNoise, profile.line, profile.referenceMax());
        if (const auto like = intervalToPlanWith(profile.line, mvt, day, {}, profile.level))
            next.oneRmNowLike = like->width() / 2;
        next.nowHolds = nowHolds(profile, settings);
    }
    next.ladders = rankedLadders(judge, candidates);
    const double bestRank = rankOf(next.ladders.front(), judge.byOneRm);
    double extremesRank = stats::infinity;
    for (const LadderForecast& ladder : next.ladders)
        if (ladder.kind == LadderKind::TwoExtremes)
            extremesRank = rankOf(ladder, judge.byOneRm);
    if (std::isfinite(bestRank) && std::isfinite(extremesRank) && bestRank > 0)
        next.twoExtremesRatio = extremesRank / bestRank;
    next.curve = ceilingCurve(judge, all, ceiling);
    return next;
}

} // namespace slopebook::answers
