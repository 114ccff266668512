// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/daysalike.h"

#include <cmath>

namespace slopebook::stats {

double clustering(int days) {
    double c = 1;
    for (int i = 1; i < days; ++i)
        c += 2 * (1 - static_cast<double>(i) / days) * std::pow(daysAlike, i);
    return c;
}

double varianceOfDays(std::span<const double> weights) {
    double sum = 0, carried = 0; // carried: sum of the weights before, each times phi^distance
    for (const double weight : weights) {
        sum += weight * weight + 2 * weight * carried;
        carried = (carried + weight) * daysAlike;
    }
    return sum;
}

double spreadShare(int days) {
    return (days - clustering(days)) / (days - 1);
}

SpreadTraces spreadTraces(int days) {
    // With r the sums of R's rows: tr A^2 = tr R^2 - 2 r'r / K + (sum r)^2 / K^2.
    double square = days, rows = 0, all = 0;
    for (int i = 0; i < days; ++i) {
        const double before = 1 - std::pow(daysAlike, i);
        const double after = 1 - std::pow(daysAlike, days - 1 - i);
        const double row = 1 + daysAlike * (before + after) / (1 - daysAlike);
        rows += row * row;
        all += row;
        if (i > 0)
            square += 2 * (days - i) * std::pow(daysAlike, 2 * i);
    }
    const double count = days;
    return {count - all / count, square - 2 * rows / count + all * all / (count * count), days};
}

namespace {

double halfVariance(const SpreadTraces& traces, double within) {
    return traces.second + within * (2 * traces.first + within * (traces.days - 1));
}

} // namespace

double SpreadTraces::df(double within) const {
    return first * first / halfVariance(*this, within);
}

double SpreadTraces::dfOfSquares(double within) const {
    const double mean = first + within * (days - 1);
    return mean * mean / halfVariance(*this, within);
}

} // namespace slopebook::stats
