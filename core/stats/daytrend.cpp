// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/daytrend.h"

#include "core/stats/daysalike.h"
#include "core/stats/means.h"

#include <cmath>
#include <limits>
#include <vector>

namespace slopebook::stats {

namespace {

/// What is left of a column that days before do not foretell, each in units of its own SD.
std::vector<double> whitened(std::span<const double> column, std::span<const double> relative) {
    std::vector<double> left;
    double before = 0;
    for (std::size_t i = 0; i < column.size(); ++i) {
        const double own = column[i] / (relative.empty() ? 1 : std::sqrt(relative[i]));
        left.push_back(i == 0 ? own
                              : (own - daysAlike * before) / std::sqrt(1 - daysAlike * daysAlike));
        before = own;
    }
    return left;
}

double product(std::span<const double> a, std::span<const double> b) {
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        sum += a[i] * b[i];
    return sum;
}

/// Less the share of one that is of another: what is left stands at a right angle to it.
double takeOff(std::vector<double>& of, std::span<const double> one) {
    const double share = product(of, one) / product(one, one);
    for (std::size_t i = 0; i < of.size(); ++i)
        of[i] -= share * one[i];
    return share;
}

} // namespace

std::optional<Interval> DayTrend::interval(double level) const {
    if (!(df > 0))
        return std::nullopt;
    return around(slope, tCritical(level, df) * slopeSe);
}

std::optional<DayTrend> dayTrend(std::span<const double> x, std::span<const double> y,
                                 std::span<const double> relative) {
    if (x.size() < 2)
        return std::nullopt;
    const double xMean = meanOf(x).value, yMean = meanOf(y).value;
    std::vector<double> ofX, ofY;
    bool apart = false;
    for (std::size_t i = 0; i < x.size(); ++i) {
        ofX.push_back(x[i] - xMean);
        ofY.push_back(y[i] - yMean);
        apart = apart || x[i] != x[0];
    }
    if (!apart)
        return std::nullopt;
    const std::vector<double> one = whitened(std::vector<double>(x.size(), 1.0), relative);
    ofX = whitened(ofX, relative);
    ofY = whitened(ofY, relative);
    const double levelOfX = takeOff(ofX, one), levelOfY = takeOff(ofY, one);
    const double square = product(ofX, ofX);
    DayTrend trend{.n = static_cast<int>(x.size()), .slope = takeOff(ofY, ofX)};
    trend.at0 = yMean + levelOfY - trend.slope * (levelOfX + xMean);
    trend.df = trend.n - 2;
    trend.slopeSe = trend.df > 0 ? std::sqrt(product(ofY, ofY) / trend.df / square)
                                 : std::numeric_limits<double>::quiet_NaN();
    return trend;
}

} // namespace slopebook::stats
