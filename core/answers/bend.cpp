// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/bend.h"

#include <Eigen/Core>

#include <algorithm>
#include <array>
#include <cmath>

namespace slopebook::answers {

namespace {

// Leaves 0.03 kg of the 1RM where a ladder comes near it, 3 % of the error where it ends at half.
constexpr int fixedPointSteps = 3;
constexpr int sideBySide = 6; // curves: the shipped ones at once
constexpr double kappaLevel = 0.95;
constexpr double fullReach = 0.80;

double rootOf(const stats::Line& line, double y) {
    return line.xMean + (y - line.yMean) / line.slope;
}

/// The line through the curve at these loads of an athlete whose 1RM is max: velocityAt's falling
/// branch as (-c1 - sqrt(c1^2 - 4 c2 (c0 - p))) / 2 c2, one root a load and no division; no curve
/// here is near a straight one, where that would cancel.
std::optional<CurveLine> throughCurve(const PublishedRelation& relation,
                                      std::span<const double> loads, double max) {
    const auto n = static_cast<double>(loads.size());
    const double constant = relation.c1 * relation.c1 - 4 * relation.c2 * relation.c0;
    const double perKilogram = 4 * relation.c2 * 100 / max;
    CurveLine line;
    for (const double load : loads)
        line.xMean += load;
    line.xMean /= n;
    double sxx = 0, roots = 0, sxRoot = 0;
    for (const double load : loads) {
        const double root = std::sqrt(std::max(0.0, constant + perKilogram * load));
        const double off = load - line.xMean;
        roots += root;
        sxx += off * off;
        sxRoot += off * root;
    }
    line.yMean = (-relation.c1 - roots / n) / (2 * relation.c2);
    line.slope = -sxRoot / (2 * relation.c2 * sxx);
    return line.slope < 0 ? std::optional(line) : std::nullopt; // one load: no number
}

/// Up to N curves worked out side by side, four times a session: as throughCurve, but only for
/// where the lines reach the curves' own speeds of 100 %. Places beyond the last curve repeat it.
template <int N>
class Curves {
public:
    using Row = Eigen::Array<double, N, 1>;
    Curves(std::span<const PublishedRelation> relations, std::span<const double> loads)
        : m_loads(loads), m_n(static_cast<double>(loads.size())) {
        for (int i = 0; i < N; ++i) {
            const auto& r = relations[std::min(static_cast<std::size_t>(i), relations.size() - 1)];
            m_constant[i] = r.c1 * r.c1 - 4 * r.c2 * r.c0;
            m_steep[i] = 4 * r.c2 * 100;
        }
        m_atMax = (m_constant + m_steep).max(0.0).sqrt();
        for (const double load : loads)
            m_mean += load / m_n;
        for (const double load : loads)
            m_sxx += (load - m_mean) * (load - m_mean);
    }
    /// 1 over the 1RM whose line over the loads would say max, were the athlete bent by kappa: max
    /// / (1 + kappa (reach / 1RM - 1)), by steps. A line that does not fall, or is none, takes
    /// falls to 0 or below.
    Row unbent(double max, double kappa, Row& falls) const {
        Row share = Row::Constant(1 / max);
        for (int i = 0; i < fixedPointSteps; ++i)
            share = nearer(share, max, kappa, falls);
        return share;
    }
    /// The same by two steps and what they tend to (Aitken): as near at half of the work.
    Row unbentSoon(double max, double kappa, Row& falls) const {
        const Row start = Row::Constant(1 / max);
        const Row once = nearer(start, max, kappa, falls);
        const Row twice = nearer(once, max, kappa, falls);
        const Row last = twice - once, slowing = once - start - last;
        return (slowing == 0).select(twice, twice + last * last / slowing);
    }

private:
    Row nearer(const Row& share, double max, double kappa, Row& falls) const {
        const Row next = ((1 - kappa) + kappa * share * reach(share, falls)) / max;
        falls = falls.min(next);
        return next;
    }
    /// kg, for athletes whose 1RM is 1 / share.
    Row reach(const Row& share, Row& falls) const {
        Row roots = Row::Zero(), sxRoot = Row::Zero();
        const Row perKilogram = m_steep * share;
        for (const double load : m_loads) {
            const Row root = (m_constant + perKilogram * load).max(0.0).sqrt();
            roots += root;
            sxRoot += (load - m_mean) * root;
        }
        falls = falls.min(sxRoot * m_steep); // slope is -sxRoot / (2 c2 sxx)
        return m_mean + (m_atMax - roots / m_n) * m_sxx / sxRoot;
    }

    std::span<const double> m_loads;
    double m_n, m_mean = 0, m_sxx = 0;
    Row m_constant, m_steep, m_atMax;
};

bool ladderOfOneLoad(const Ladder& ladder) {
    return std::ranges::all_of(ladder.loads, [&](double l) { return l == ladder.loads.front(); });
}

/// What the curve itself says at a day's one load.
CurveLine atOneLoad(const PublishedRelation& relation, const Ladder& ladder, double max) {
    const double load = ladder.loads.front();
    return {.xMean = load, .yMean = velocityAt(relation, 100 * load / max)};
}

/// The weighted mean of lines; of one of weight 1 that line.
CurveLine meanOf(std::span<const CurveLine> lines, std::span<const double> weights) {
    if (lines.size() == 1)
        return lines[0];
    CurveLine mean;
    for (std::size_t j = 0; j < lines.size(); ++j) {
        mean.xMean += weights[j] * lines[j].xMean;
        mean.slope += weights[j] * lines[j].slope;
    }
    for (std::size_t j = 0; j < lines.size(); ++j)
        mean.yMean += weights[j] * lines[j].at(mean.xMean);
    return mean;
}

/// What an error comes to over the bends.
stats::Interval overBends(const stats::Interval& kappa, double error) {
    return {std::min(kappa.low * error, kappa.high * error),
            std::max(kappa.low * error, kappa.high * error)};
}

/// Sums of one regression over several ladders, each with a line of its own.
struct KappaSums {
    double qy = 0, qq = 0, yy = 0, df = 0;
    int ladders = 0;
    void add(const PublishedRelation& relation, double mvt, const LiftSession& session);
    std::vector<double> loads = {}, speeds = {}, bends = {}; ///< of the session at hand
};

void KappaSums::add(const PublishedRelation& relation, double mvt, const LiftSession& session) {
    if (session.points.size() < loadsOfAFullLadder)
        return;
    loads.clear();
    speeds.clear();
    bends.clear();
    for (const Point& p : session.points) {
        loads.push_back(p.load);
        speeds.push_back(p.velocity);
    }
    const auto line = stats::fitLine(loads, speeds);
    if (!line || line->distinct < loadsOfAFullLadder || !(line->slope < 0) ||
        !(line->intercept > mvt))
        return;
    const double max = rootOf(*line, mvt);
    if (line->xMax < fullReach * max)
        return;
    // What a line leaves of the curve less its chord is what it leaves of the curve.
    double mean = 0, sxq = 0;
    for (const double load : loads) {
        bends.push_back(velocityAt(relation, 100 * load / max));
        mean += bends.back() / line->n;
    }
    for (std::size_t i = 0; i < loads.size(); ++i)
        sxq += (loads[i] - line->xMean) * (bends[i] - mean);
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const double y = speeds[i] - line->at(loads[i]);
        const double q = bends[i] - mean - sxq / line->sxx * (loads[i] - line->xMean);
        qy += q * y;
        qq += q * q;
        yy += y * y;
    }
    df += line->n - 2;
    ++ladders;
}

/// Where the steps stand still, max = (1 - kappa) 1RM + kappa reach: the error of all of the bend,
/// reach - 1RM, is (max - 1RM) / kappa.
template <int N>
stats::Interval bendOfMaxBy(const Bend& bend, std::span<const double> loads, double max) {
    stats::Interval ofMax{0, 0};
    const double most = bend.kappa.high;
    if (!(max > 0) || !(most > 0))
        return ofMax;
    std::span<const PublishedRelation> relations = bend.relations;
    bool first = !bend.envelope;
    while (!relations.empty()) {
        const std::size_t count = std::min<std::size_t>(N, relations.size());
        using Row = typename Curves<N>::Row;
        Row falls = Row::Ones();
        const Row share = Curves<N>(relations.first(count), loads).unbentSoon(max, most, falls);
        const Row errors = (max - 1 / share) / most;
        for (Eigen::Index i = 0; i < static_cast<Eigen::Index>(count); ++i) {
            if (!(falls[i] > 0) || !std::isfinite(errors[i]))
                continue;
            const stats::Interval each = overBends(bend.kappa, errors[i]);
            ofMax = first ? each : stats::hull(ofMax, each);
            first = false;
        }
        relations = relations.subspan(count);
    }
    return ofMax;
}

} // namespace

std::string Bend::source() const {
    if (relations.empty())
        return "";
    return envelope ? "the shipped relations together" : std::string(relations.front().source);
}

Bend bendOf(const Lift& lift) {
    if (const auto own = publishedRelation(lift.name, lift.kind))
        return {.relations = {*own}};
    const auto shipped = publishedRelations();
    return {.relations = {shipped.begin(), shipped.end()}, .envelope = true};
}

Bend bendOf(const Lift& lift, const Answer<Mvt>& mvt, std::span<const LiftSession> sessions) {
    Bend bend = bendOf(lift);
    if (bend.envelope || !mvt)
        return bend;
    KappaSums sums;
    for (const LiftSession& session : sessions)
        sums.add(bend.relations.front(), mvt->value, session);
    const double df = sums.df - 1;
    if (sums.ladders < laddersNeeded || !(df > 0) || !(sums.qq > 0))
        return bend;
    const double kappa = sums.qy / sums.qq;
    const double s2 = std::max(0.0, sums.yy - sums.qy * kappa) / df;
    const double half = stats::tCritical(kappaLevel, df) * std::sqrt(s2 / sums.qq);
    bend.kappa = {std::clamp(kappa - half, 0.0, 1.0), std::clamp(kappa + half, 0.0, 1.0)};
    bend.ladders = sums.ladders;
    return bend;
}

Ladder ladderOf(const LiftSession& session, const stats::Line& line, double max) {
    Ladder ladder{.slope = line.slope, .max = max, .heaviest = line.xMax};
    ladder.loads.reserve(session.points.size());
    for (const Point& p : session.points)
        ladder.loads.push_back(p.load);
    return ladder;
}

stats::Interval bendOfMax(const Bend& bend, std::span<const double> loads, double max) {
    if (bend.relations.size() == 1)
        return bendOfMaxBy<1>(bend, loads, max);
    return bendOfMaxBy<sideBySide>(bend, loads, max);
}

BendErrors::BendErrors(const Bend& bend, const Ladder& earlier, const Ladder& later)
    : BendErrors(bend, std::span(&earlier, 1), 0, std::span(&later, 1), 0) {}

BendErrors::BendErrors(const Bend& bend, std::span<const Ladder> earlier, std::size_t earlierLead,
                       std::span<const Ladder> later, std::size_t laterLead)
    : m_kappa(bend.kappa), m_envelope(bend.envelope) {
    const Sides sides{earlier, later, earlierLead, laterLead};
    if (bend.relations.size() == 1)
        addAll<1>(bend.relations, sides);
    else
        addAll<sideBySide>(bend.relations, sides);
}

template <int N>
void BendErrors::addAll(std::span<const PublishedRelation> relations, const Sides& sides) {
    const Ladder& earlier = sides.earlier[sides.earlierLead];
    const Ladder& later = sides.later[sides.laterLead];
    if (!(earlier.max > 0) || !(later.max > 0))
        return;
    const bool byLater = later.heaviest / later.max > earlier.heaviest / earlier.max;
    const Ladder& by = byLater ? later : earlier;
    while (!relations.empty()) {
        const std::size_t count = std::min<std::size_t>(N, relations.size());
        using Row = typename Curves<N>::Row;
        Row falls = Row::Ones();
        const Row max =
            1 / Curves<N>(relations.first(count), by.loads).unbent(by.max, m_kappa.high, falls);
        for (std::size_t i = 0; i < count; ++i)
            if (const auto place = static_cast<Eigen::Index>(i);
                falls[place] > 0 && std::isfinite(max[place]))
                addFit(relations[i], sides, max[place]);
        relations = relations.subspan(count);
    }
}

void BendErrors::addFit(const PublishedRelation& relation, const Sides& sides, double max) {
    Fit fit{.atMax = velocityAt(relation, 100)};
    for (const bool isLater : {false, true})
        for (const Ladder& ladder : isLater ? sides.later : sides.earlier) {
            const auto line = ladderOfOneLoad(ladder)
                                  ? std::optional(atOneLoad(relation, ladder, max))
                                  : throughCurve(relation, ladder.loads, max);
            if (!line)
                return;
            (isLater ? fit.later : fit.earlier).push_back(*line);
        }
    // A lift that is none of the published: their shape, its own speeds.
    if (m_envelope)
        fit.scale =
            std::abs((sides.earlier[sides.earlierLead].slope + sides.later[sides.laterLead].slope) /
                     (fit.earlier[sides.earlierLead].slope + fit.later[sides.laterLead].slope));
    m_fits.push_back(std::move(fit));
}

stats::Interval BendErrors::at(double load, std::span<const double> earlier,
                               std::span<const double> later) const {
    stats::Interval error{0, 0};
    for (const Fit& fit : m_fits) {
        const stats::Interval each =
            overBends(m_kappa, fit.scale * (meanOf(fit.later, later).at(load) -
                                            meanOf(fit.earlier, earlier).at(load)));
        error = m_envelope ? stats::hull(error, each) : each;
    }
    return error;
}

stats::Interval BendErrors::ofMax(std::span<const double> earlier,
                                  std::span<const double> later) const {
    stats::Interval error{0, 0};
    bool first = !m_envelope;
    for (const Fit& fit : m_fits) {
        const stats::Interval each =
            overBends(m_kappa, meanOf(fit.later, later).root(fit.atMax) -
                                   meanOf(fit.earlier, earlier).root(fit.atMax));
        error = first ? each : stats::hull(error, each);
        first = false;
    }
    return error;
}

namespace {
constexpr std::array<double, 1> whole{1.0};
}

stats::Interval BendErrors::at(double load) const {
    return at(load, whole, whole);
}

stats::Interval BendErrors::ofMax() const {
    return ofMax(whole, whole);
}

} // namespace slopebook::answers
