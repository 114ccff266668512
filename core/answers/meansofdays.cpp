// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/meansofdays.h"

#include "core/stats/daysalike.h"

#include <cmath>
#include <numeric>

namespace slopebook::answers {

namespace {
constexpr std::size_t leastDf = 2;
}

bool daysRepeat(std::span<const std::vector<double>> columns) {
    std::size_t repeats = 0;
    for (const auto& days : columns)
        repeats += days.empty() ? 0 : days.size() - 1;
    return repeats >= leastDf;
}

std::optional<MeanOfDays> meanOf(std::span<const double> days) {
    if (days.empty())
        return std::nullopt;
    const double sum = std::accumulate(days.begin(), days.end(), 0.0);
    return MeanOfDays{.value = sum / static_cast<double>(days.size()),
                      .days = static_cast<int>(days.size())};
}

double shareOfADay(int days) {
    return stats::clustering(days) / days;
}

double varianceOfMeans(double sd, int earlier, int later) {
    return sd * sd * (shareOfADay(earlier) + shareOfADay(later)) / 2;
}

stats::Interval meanInterval(const MeanOfDays& mean, const NoiseOfADay& noise, double level) {
    const double half =
        stats::tCritical(level, noise.df) * (noise.sd * std::sqrt(shareOfADay(mean.days)));
    return {mean.value - half, mean.value + half};
}

std::optional<NoiseOfADay> spreadOfDays(std::span<const std::vector<double>> columns) {
    double squares = 0;
    stats::SpreadTraces all;
    for (const auto& days : columns) {
        const auto count = static_cast<double>(days.size());
        if (days.size() < 2)
            continue;
        double mean = 0;
        for (const double value : days)
            mean += value / count;
        for (const double value : days)
            squares += (value - mean) * (value - mean);
        const stats::SpreadTraces own = stats::spreadTraces(static_cast<int>(days.size()));
        all.first += own.first;
        all.second += own.second;
    }
    if (!daysRepeat(columns) || !(squares > 0))
        return std::nullopt;
    return NoiseOfADay{std::sqrt(squares / all.first), all.df(0)};
}

} // namespace slopebook::answers
