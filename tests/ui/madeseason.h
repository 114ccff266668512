// SPDX-License-Identifier: GPL-3.0-or-later
// Seasons made up from random numbers, to paint: what is in them differs, and how dense it is.
#pragma once

#include "ui/athlete/season/seasondata.h"

#include <QString>
#include <QStringList>

#include <algorithm>
#include <random>

namespace slopebook::test {

using namespace Qt::Literals::StringLiterals;

/// Blocks in a row with their tests, light days and days not lifted; every block has a label.
inline ui::SeasonData madeSeason(std::mt19937& engine, int blocks, int sessions) {
    const auto uniform = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(engine);
    };
    const QStringList labels{u"+0.045 better"_s, u"−0.031 worse"_s, u"0.000 held"_s,
                             u"+0.020 unclear, leaning to better"_s, u"−0.012 unclear"_s};
    ui::SeasonData data{.baseline = 0, .detectable = 0.06, .velocityTitle = u"Mean velocity"_s};
    double day = 20'000;
    for (int b = 0; b < blocks; ++b) {
        const double from = day, length = uniform(20, 90), level = uniform(0.7, 0.9);
        for (int i = 0; i < sessions; ++i) {
            ui::SeasonPoint point{.day = from + (i + 0.5) * length / sessions};
            const double speed = level + uniform(-0.04, 0.04);
            if (i % 3 != 2) {
                point.line = speed;
                point.interval = stats::Interval{speed - 0.03, speed + 0.03};
            }
            point.seen = {speed + uniform(-0.02, 0.02)};
            data.points.push_back(point);
        }
        data.means.push_back(ui::SeasonMean{.from = from,
                                            .to = from + length,
                                            .value = level,
                                            .interval = stats::Interval{level - 0.02, level + 0.02},
                                            .label = labels[b % labels.size()]});
        data.spans.push_back({.from = from, .to = from + length, .name = u"Block"_s});
        if (b % 2 == 0)
            data.marks.push_back({.day = from + 3, .tried = b % 4 == 0});
        day = from + length + uniform(0, 10);
    }
    data.baselineValue = data.points.front().line;
    return data;
}

/// The same with everything that may stand in the chart: trends, what matters, days that stand
/// beside no other, and the maxima, some of their intervals endless, some estimates as good as
/// those planned with, some measured at nearly the estimate.
inline ui::SeasonData fullSeason(std::mt19937& engine, int blocks, int sessions) {
    const auto uniform = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(engine);
    };
    ui::SeasonData data = madeSeason(engine, blocks, sessions);
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        ui::SeasonPoint& p = data.points[i];
        p.hollow = i % 5 == 1;
        p.notComparable = i % 11 == 3;
        if (p.interval && i % 7 == 4)
            p.interval = stats::Interval{*p.line - uniform(0.1, 5), *p.line + uniform(0.1, 5)};
        if (i % 4 == 3)
            continue;
        const double kg = 110 + uniform(-6, 6);
        p.oneRm = kg;
        p.oneRmInterval = stats::Interval{kg - 3, kg + 3};
        p.oneRmToPlan = i % 5 == 2 ? stats::Interval{kg - uniform(20, 400), kg + uniform(20, 400)}
                                   : stats::Interval{kg - 7, kg + 20};
        p.oneRmPlanned = i % 3 == 0 ? kg : kg - uniform(0, 5);
        p.far = i % 6 == 2;
        if (i % 8 == 1)
            p.measured = kg + uniform(-1, 1);
    }
    for (std::size_t i = 0; i < data.means.size(); i += 3)
        data.means[i]->interval = stats::Interval{data.means[i]->value - uniform(0.1, 3),
                                                  data.means[i]->value + uniform(0.1, 3)};
    data.matters = 0.03;
    if (data.points.size() > 1)
        data.trend = ui::SeasonTrend{.day = data.points.front().day,
                                     .value = uniform(0.7, 0.9),
                                     .perWeek = uniform(-0.002, 0.002),
                                     .last = data.points.back().day};
    for (const ui::SeasonSpan& span : data.spans)
        data.blockTrends.push_back({.day = span.from + 1,
                                    .value = uniform(0.7, 0.9),
                                    .perWeek = uniform(-0.01, 0.01),
                                    .last = span.to - 1});
    return data;
}

} // namespace slopebook::test
