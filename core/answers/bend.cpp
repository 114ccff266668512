// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/bend.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace slopebook::answers {

namespace {

constexpr int fixedPointSteps = 3; // leaves 1e-5 kg of the 1RM
constexpr double kappaLevel = 0.95;
constexpr double fullReach = 0.80;

double rootOf(const stats::Line& line, double y) {
    return line.xMean + (y - line.yMean) / line.slope;
}

/// The line through the curve at these loads of an athlete whose 1RM is max. It is asked four times
/// a curve and session: velocityAt's falling branch as (-c1 - sqrt(c1^2 - 4 c2 (c0 - p))) / 2 c2,
/// one root a load and no division; no curve here is near a straight one, where that would cancel.
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

/// The 1RM whose line over the ladder's loads would say what the ladder's line says, were the
/// athlete bent by kappa.
std::optional<double> unbentMax(const PublishedRelation& relation, const Ladder& ladder,
                                double kappa) {
    const double atMax = velocityAt(relation, 100);
    double max = ladder.max;
    for (int i = 0; i < fixedPointSteps; ++i) {
        const auto line = throughCurve(relation, ladder.loads, max);
        if (!line)
            return std::nullopt;
        max = ladder.max / (1 + kappa * (line->root(atMax) / max - 1));
        if (!(max > 0) || !std::isfinite(max))
            return std::nullopt;
    }
    return max;
}

stats::Interval over(const stats::Interval& kappa, double error) {
    return {std::min(kappa.low * error, kappa.high * error),
            std::max(kappa.low * error, kappa.high * error)};
}

stats::Interval hull(const stats::Interval& a, const stats::Interval& b) {
    return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

std::size_t distinct(const LiftSession& session) {
    std::set<double> loads;
    for (const Point& p : session.points)
        loads.insert(p.load);
    return loads.size();
}

/// Sums of one regression over several ladders, each with a line of its own.
struct KappaSums {
    double qy = 0, qq = 0, yy = 0, df = 0;
    int ladders = 0;
    void add(const PublishedRelation& relation, double mvt, const LiftSession& session);
};

void KappaSums::add(const PublishedRelation& relation, double mvt, const LiftSession& session) {
    if (distinct(session) < loadsOfAFullLadder)
        return;
    std::vector<double> loads, speeds, bends;
    for (const Point& p : session.points) {
        loads.push_back(p.load);
        speeds.push_back(p.velocity);
    }
    const auto line = stats::fitLine(loads, speeds);
    if (!line || !(line->slope < 0) || !(line->intercept > mvt))
        return;
    const double max = rootOf(*line, mvt);
    if (line->xMax < fullReach * max)
        return;
    const double light = velocityAt(relation, 30), heavy = velocityAt(relation, 100);
    for (const double load : loads) {
        const double percent = 100 * load / max;
        bends.push_back(velocityAt(relation, percent) -
                        (light + (heavy - light) * (percent - 30) / 70));
    }
    const auto bent = stats::fitLine(loads, bends);
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const double y = speeds[i] - line->at(loads[i]);
        const double q = bends[i] - bent->at(loads[i]);
        qy += q * y;
        qq += q * q;
        yy += y * y;
    }
    df += line->n - 2;
    ++ladders;
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

BendErrors::BendErrors(const Bend& bend, const Ladder& one)
    : m_kappa(bend.kappa), m_envelope(bend.envelope) {
    for (const PublishedRelation& relation : bend.relations)
        add(relation, one, nullptr);
}

BendErrors::BendErrors(const Bend& bend, const Ladder& earlier, const Ladder& later)
    : m_kappa(bend.kappa), m_envelope(bend.envelope) {
    for (const PublishedRelation& relation : bend.relations)
        add(relation, earlier, &later);
}

void BendErrors::add(const PublishedRelation& relation, const Ladder& earlier,
                     const Ladder* later) {
    if (!(earlier.max > 0) || (later && !(later->max > 0)))
        return;
    const bool byLater = later && later->heaviest / later->max > earlier.heaviest / earlier.max;
    const auto max = unbentMax(relation, byLater ? *later : earlier, m_kappa.high);
    if (!max)
        return;
    const auto first = throughCurve(relation, earlier.loads, *max);
    const auto second = later ? throughCurve(relation, later->loads, *max) : std::nullopt;
    if (!first || (later && !second))
        return;
    const double atMax = velocityAt(relation, 100);
    const double error =
        later ? second->root(atMax) - first->root(atMax) : first->root(atMax) - *max;
    const stats::Interval ofMax = over(m_kappa, error);
    m_ofMax = m_envelope || !m_fits.empty() ? hull(m_ofMax, ofMax) : ofMax;
    if (m_fits.empty())
        m_fits.reserve(m_envelope ? publishedRelations().size() : 1);
    if (!later) {
        m_fits.push_back({.earlier = *first, .later = *first});
        return;
    }
    // A lift that is none of the published: their shape, its own speeds.
    const double scale =
        m_envelope ? std::abs((earlier.slope + later->slope) / (first->slope + second->slope)) : 1;
    m_fits.push_back({.earlier = *first, .later = *second, .scale = scale});
}

stats::Interval BendErrors::at(double load) const {
    stats::Interval error{0, 0};
    for (const Fit& fit : m_fits) {
        const stats::Interval each =
            over(m_kappa, fit.scale * (fit.later.at(load) - fit.earlier.at(load)));
        error = m_envelope ? hull(error, each) : each;
    }
    return error;
}

} // namespace slopebook::answers
