// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/repeats.h"

#include "core/stats/infinity.h"
#include "core/stats/line.h"
#include "core/stats/means.h"

#include <algorithm>
#include <cmath>

namespace slopebook::stats {

namespace {

using Table = std::vector<std::vector<double>>;

/// Residual sum of squares of a two-way table once row and column means are taken out.
double interactionSquares(const Table& table) {
    const std::size_t columns = table.front().size();
    std::vector<double> columnMean(columns, 0.0), rowMean;
    for (const auto& row : table) {
        rowMean.push_back(meanOf(row).value);
        for (std::size_t j = 0; j < columns; ++j)
            columnMean[j] += (row[j] - rowMean.back()) / static_cast<double>(table.size());
    }
    double squares = 0;
    for (std::size_t i = 0; i < table.size(); ++i)
        for (std::size_t j = 0; j < columns; ++j) {
            const double e = table[i][j] - rowMean[i] - columnMean[j];
            squares += e * e;
        }
    return squares;
}

double grandMeanOf(const Table& table) {
    std::vector<double> rowMeans;
    for (const auto& row : table)
        rowMeans.push_back(meanOf(row).value);
    return meanOf(rowMeans).value;
}

std::optional<double> logCv(Table table, double df) {
    for (auto& row : table)
        for (double& v : row) {
            if (!(v > 0))
                return std::nullopt;
            v = std::log(v);
        }
    return 100 * std::expm1(std::sqrt(interactionSquares(table) / df));
}

} // namespace

double TypicalError::smallestDetectable() const {
    return 1.96 * std::sqrt(2.0) * value;
}

std::optional<TypicalError> typicalError(std::span<const double> first,
                                         std::span<const double> second, double level) {
    if (first.size() != second.size())
        return std::nullopt;
    Table pairs;
    for (std::size_t i = 0; i < first.size(); ++i)
        pairs.push_back({first[i], second[i]});
    return typicalError(pairs, level);
}

std::optional<TypicalError> typicalError(const Table& trials, double level) {
    if (trials.size() < 2 || trials.front().size() < 2)
        return std::nullopt;
    const std::size_t columns = trials.front().size();
    if (!std::ranges::all_of(trials, [&](const auto& row) { return row.size() == columns; }))
        return std::nullopt;
    TypicalError error;
    error.df = static_cast<double>((trials.size() - 1) * (columns - 1));
    // For pairs this is SD(differences)^2 / 2 on pairs - 1 df.
    const double squares = interactionSquares(trials);
    error.value = std::sqrt(squares / error.df);
    error.interval = {std::sqrt(squares / chiSquareQuantile((1 + level) / 2, error.df)),
                      std::sqrt(squares / chiSquareQuantile((1 - level) / 2, error.df))};
    if (columns == 2) {
        std::vector<double> differences;
        for (const auto& row : trials)
            differences.push_back(row[1] - row[0]);
        error.meanDifference = meanOf(differences).value;
    }
    error.grandMean = grandMeanOf(trials);
    if (error.grandMean != 0)
        error.cvPercent = 100 * error.value / error.grandMean;
    error.cvLogPercent = logCv(trials, error.df);
    return error;
}

namespace {

/// Least products: the slope is the ratio of the SDs with the sign of the correlation.
void fitLeastProducts(Agreement& a, std::span<const double> first, std::span<const double> second,
                      double level) {
    const std::optional<Line> line = fitLine(second, first);
    if (!line || line->syy == 0) {
        a.slope = 1;
        a.intercept = a.bias;
        a.slopeInterval = a.interceptInterval = {-infinity, infinity};
        return;
    }
    a.correlation = std::clamp(line->sxy / std::sqrt(line->sxx * line->syy), -1.0, 1.0);
    a.slope = std::copysign(std::sqrt(line->syy / line->sxx), line->sxy);
    a.intercept = line->yMean - a.slope * line->xMean;
    const double t = tCritical(level, a.n - 2);
    // 1 - r^2 from the residuals keeps its digits where r is near one.
    const double b = t * t * line->rss / line->syy / (a.n - 2);
    const double up = a.slope * (std::sqrt(b + 1) + std::sqrt(b));
    const double down = a.slope / (std::sqrt(b + 1) + std::sqrt(b));
    a.slopeInterval = {std::min(up, down), std::max(up, down)};
    const auto [low, high] = std::minmax({line->yMean - a.slopeInterval.low * line->xMean,
                                          line->yMean - a.slopeInterval.high * line->xMean});
    a.interceptInterval = {low, high};
}

} // namespace

std::optional<Agreement> agreement(std::span<const double> first, std::span<const double> second,
                                   double level) {
    if (first.size() < 3 || first.size() != second.size())
        return std::nullopt;
    std::vector<double> differences;
    for (std::size_t i = 0; i < first.size(); ++i)
        differences.push_back(first[i] - second[i]);
    Agreement a;
    a.n = static_cast<int>(first.size());
    a.bias = meanOf(differences).value;
    double squares = 0;
    for (const double d : differences)
        squares += (d - a.bias) * (d - a.bias);
    a.sd = std::sqrt(squares / (a.n - 1));
    a.biasSe = a.sd / std::sqrt(a.n);
    const double t = tCritical(level, a.n - 1);
    a.biasInterval = around(a.bias, t * a.biasSe);
    a.limits = around(a.bias, 1.96 * a.sd);
    const double limitHalf = t * std::sqrt(3.0) * a.biasSe;
    a.lowerLimitInterval = around(a.limits.low, limitHalf);
    a.upperLimitInterval = around(a.limits.high, limitHalf);
    fitLeastProducts(a, first, second, level);
    return a;
}

} // namespace slopebook::stats
