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

} // namespace slopebook::stats
