// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/side.h"

#include "core/stats/daysalike.h"
#include "core/stats/infinity.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

constexpr double nearness = 0.1;    // of the load: as near as the nearest
constexpr double sameLoad = 0.0005; // kg: half a gram
constexpr int daysForATrend = 3;
constexpr int rootSteps = 6;

double outside(const stats::Line& line, double x) {
    return std::max({0.0, line.xMin - x, x - line.xMax});
}

/// Which sessions take part at x, in their order. ofLines: those that make a line alone.
std::vector<std::size_t> takingPart(const SideSessions& side, double x, bool ofLines) {
    double nearest = stats::infinity;
    const auto off = [&](const stats::Line& line) {
        if (isOneLoad(line))
            return !ofLines && std::abs(x - line.xMean) < sameLoad ? 0.0 : stats::infinity;
        return outside(line, x);
    };
    for (const stats::Line& line : side.lines)
        nearest = std::min(nearest, off(line));
    std::vector<std::size_t> chosen;
    if (std::isinf(nearest))
        return chosen;
    const double most = nearest > 0 ? nearest + nearness * std::abs(x) : 0;
    for (std::size_t j = 0; j < side.lines.size(); ++j)
        if (off(side.lines[j]) <= most)
            chosen.push_back(j);
    return chosen;
}

/// Weights to shares of a mean; of no weights at all alike.
void shareOut(std::vector<double>& weights) {
    double all = 0;
    for (const double w : weights)
        all += w;
    if (!(all > 0) || std::isinf(all))
        weights.assign(weights.size(), 1.0 / static_cast<double>(weights.size()));
    else
        for (double& w : weights)
            w /= all;
}

/// The share of each in the value at the last day of a straight trend, by weighted least squares;
/// as they are where all was on one day.
std::vector<double> atEnd(const std::vector<double>& weights, const std::vector<double>& days) {
    double mean = 0, square = 0;
    for (std::size_t j = 0; j < days.size(); ++j)
        mean += weights[j] * days[j];
    for (std::size_t j = 0; j < days.size(); ++j)
        square += weights[j] * (days[j] - mean) * (days[j] - mean);
    if (!(square > 0))
        return weights;
    std::vector<double> shares = weights;
    for (std::size_t j = 0; j < days.size(); ++j)
        shares[j] *= 1 + (days.back() - mean) * (days[j] - mean) / square;
    return shares;
}

Mixed mixedOf(const SideSessions& side, const std::vector<std::size_t>& chosen, double x,
              const stats::Moving& day) {
    Mixed mixed{.shares = std::vector<double>(side.lines.size(), 0.0),
                .sessions = static_cast<int>(chosen.size()),
                .extrapolated = true};
    const double ofDay = day.at(x) * stats::clustering(mixed.sessions);
    std::vector<double> weights, days;
    for (const std::size_t j : chosen) {
        const stats::Line& line = side.lines[j];
        weights.push_back(1 / (side.scatterOf(line).s2 * leverageAt(line, x) + ofDay));
        days.push_back(side.days[j]);
        mixed.extrapolated = mixed.extrapolated && outside(line, x) > sameLoad;
    }
    shareOut(weights);
    if (side.readAs == ReadAs::End && mixed.sessions >= daysForATrend)
        weights = atEnd(weights, days);
    mixed.days = stats::varianceOfDays(weights);
    for (std::size_t i = 0; i < chosen.size(); ++i)
        mixed.shares[chosen[i]] = weights[i];
    return mixed;
}

} // namespace

double leverageAt(const stats::Line& line, double x) {
    const double off = x - line.xMean;
    return 1.0 / line.n + off * off / line.sxx;
}

bool isOneLoad(const stats::Line& line) {
    return line.distinct == 1;
}

std::optional<stats::Line> sideLine(const LiftSession& session) {
    std::vector<double> x, y;
    for (const Point& p : session.points) {
        x.push_back(p.load);
        y.push_back(p.velocity);
    }
    if (x.empty())
        return std::nullopt;
    if (const auto line = stats::fitLine(x, y))
        return line;
    double sum = 0;
    for (const double v : y)
        sum += v;
    const double mean = sum / static_cast<double>(y.size());
    stats::Line level{.n = static_cast<int>(x.size()), .distinct = 1, .xMean = x[0], .yMean = mean};
    level.sxx = 1;
    level.xMin = level.xMax = x[0];
    level.intercept = mean;
    return level;
}

double Mixed::at(const SideSessions& side, double x) const {
    double sum = 0;
    for (std::size_t j = 0; j < shares.size(); ++j)
        if (shares[j] != 0)
            sum += shares[j] * side.lines[j].at(x);
    return sum;
}

double Mixed::slope(const SideSessions& side) const {
    double sum = 0;
    for (std::size_t j = 0; j < shares.size(); ++j)
        sum += shares[j] * side.lines[j].slope;
    return sum;
}

double Mixed::root(const SideSessions& side, double y) const {
    double xMean = 0;
    for (std::size_t j = 0; j < shares.size(); ++j)
        xMean += shares[j] * side.lines[j].xMean;
    return xMean + (y - at(side, xMean)) / slope(side);
}

double Mixed::ofScatter(const SideSessions& side, double x) const {
    double sum = 0;
    for (std::size_t j = 0; j < shares.size(); ++j)
        if (shares[j] != 0)
            sum += shares[j] * shares[j] *
                   (side.scatterOf(side.lines[j]).s2 * leverageAt(side.lines[j], x));
    return sum;
}

double Mixed::ofPooledScatter(const SideSessions& side, double x) const {
    double sum = 0;
    for (std::size_t j = 0; j < shares.size(); ++j)
        if (shares[j] != 0)
            sum += shares[j] * shares[j] * (side.scatter.s2 * leverageAt(side.lines[j], x));
    return sum;
}

Mixed mixedAt(const SideSessions& side, double x, const stats::Moving& day) {
    return mixedOf(side, takingPart(side, x, false), x, day);
}

std::optional<Mixed> mixedAtMax(const SideSessions& side, double y, const stats::Moving& day) {
    const stats::Line& lead = side.lines[side.lead];
    if (!(lead.slope < 0))
        return std::nullopt;
    double x = lead.xMean + (y - lead.yMean) / lead.slope;
    Mixed mixed;
    for (int i = 0; i < rootSteps; ++i) {
        mixed = mixedOf(side, takingPart(side, x, true), x, day);
        if (!(mixed.slope(side) < 0) || !(mixed.at(side, 0) > y))
            return std::nullopt;
        const double next = mixed.root(side, y);
        if (next == x)
            break;
        x = next;
    }
    return mixed;
}

std::optional<SideFigure> figureAt(const SideSessions& side, double x, const stats::Moving& day) {
    const Mixed mixed = mixedAt(side, x, day);
    if (mixed.sessions == 0)
        return std::nullopt;
    return SideFigure{.value = mixed.at(side, x),
                      .scatter = {mixed.ofScatter(side, x), side.scatter.df},
                      .day = {day.at(x) * mixed.days, day.df},
                      .sessions = mixed.sessions,
                      .extrapolated = mixed.extrapolated};
}

std::optional<SideFigure> figureOfMax(const SideSessions& side, double y,
                                      const stats::Moving& day) {
    const auto mixed = mixedAtMax(side, y, day);
    if (!mixed)
        return std::nullopt;
    const double x = mixed->root(side, y), perSpeed = 1 / (mixed->slope(side) * mixed->slope(side));
    return SideFigure{.value = x,
                      .scatter = {mixed->ofScatter(side, x) * perSpeed, side.scatter.df},
                      .day = {day.at(x) * mixed->days * perSpeed, day.df},
                      .sessions = mixed->sessions,
                      .extrapolated = mixed->extrapolated};
}

std::optional<stats::DaySpread> spreadOf(const SideSessions& side) {
    // The sum of h_j(x) over the lines is least at this x.
    double weight = 0, x = 0;
    std::vector<const stats::Line*> lines;
    for (const stats::Line& line : side.lines)
        if (!isOneLoad(line)) {
            lines.push_back(&line);
            weight += 1 / line.sxx;
            x += line.xMean / line.sxx;
        }
    if (lines.size() < 2 || !(side.scatter.df > 0))
        return std::nullopt;
    x /= weight;
    const auto count = static_cast<double>(lines.size());
    stats::DaySpread spread{.days = static_cast<int>(lines.size())};
    double mean = 0;
    for (const stats::Line* line : lines)
        mean += line->at(x) / count;
    for (const stats::Line* line : lines) {
        spread.square += (line->at(x) - mean) * (line->at(x) - mean) / (count - 1);
        spread.within += side.scatter.s2 * leverageAt(*line, x) / count;
    }
    return spread;
}

} // namespace slopebook::answers
