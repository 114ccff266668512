// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/scale.h"

#include <algorithm>
#include <cmath>

namespace slopebook::ui::charts {

int Scale::decimals() const {
    int n = 0;
    double s = step;
    while (n < 6 && std::abs(s - std::round(s)) > 1e-6 * s) {
        s *= 10;
        ++n;
    }
    return n;
}

double niceStep(double span, int most) {
    if (!(span > 0) || !std::isfinite(span))
        return 1;
    const double least = span / std::max(1, most);
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const double m : {1.0, 2.0, 2.5, 5.0})
        if (m * power >= least * (1 - 1e-9))
            return m * power;
    return 10 * power;
}

std::vector<double> ticksOf(const Scale& scale) {
    const double tolerance = scale.step * 1e-6;
    std::vector<double> ticks;
    if (!(scale.step > 0) || !std::isfinite(scale.from) || !std::isfinite(scale.to))
        return ticks;
    const double first = std::ceil((scale.from - tolerance) / scale.step);
    for (double i = first; i * scale.step <= scale.to + tolerance; ++i)
        ticks.push_back(i * scale.step);
    return ticks;
}

double stepWithTwo(double from, double to, double step) {
    if (!(to > from) || !std::isfinite(to - from) || !(step > 0))
        return step;
    // However they lie, two multiples of half the span are within it.
    for (int most = 1; ticksOf({.from = from, .to = to, .step = step}).size() < 2; ++most)
        step = std::min(step, niceStep(to - from, most));
    return step;
}

Scale niceScale(double low, double high, int most) {
    if (!std::isfinite(low) || !std::isfinite(high))
        return {};
    if (high < low)
        std::swap(low, high);
    if (high - low < 1e-9 * std::max(1.0, std::abs(high))) {
        const double room = std::max(0.1, std::abs(high) * 0.1);
        low -= room;
        high += room;
    }
    Scale s;
    s.step = niceStep(high - low, most);
    s.from = std::floor(low / s.step + 1e-9) * s.step;
    s.to = std::ceil(high / s.step - 1e-9) * s.step;
    return s;
}

} // namespace slopebook::ui::charts
