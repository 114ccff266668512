// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/comparisontable.h"

#include "core/answers/readingwords.h"
#include "core/exchange/tableout.h"

#include <array>

namespace slopebook::questions {

namespace {

using exchange::Cell;
using exchange::figureColumn;
using exchange::textColumn;

constexpr std::array figureSpec{
    textColumn("measure", "speed at a load, or the estimated 1RM", "speed|one_rm"),
    figureColumn("load_kg", "kg", "the load"),
    textColumn("unit", "unit of what follows", "m/s|kg"),
    figureColumn("earlier", "", "by the earlier line"),
    figureColumn("later", "", "by the later line"),
    figureColumn("change", "", "later less earlier"),
    figureColumn("se", "", "standard error of the change by the lines alone"),
    figureColumn("low", "", "its interval by the lines alone"),
    figureColumn("high", "", "the upper end of that"),
    figureColumn("reading_low", "", "the interval that the reading is made from"),
    figureColumn("reading_high", "", "the upper end of that"),
    figureColumn("smallest", "", "smallest change that matters"),
    textColumn("reading", "what may be said of it")};
constexpr exchange::TableSpec figureTable{
    .name = "figures", .meaning = "a comparison", .columns = figureSpec};
using FigureRow = std::array<Cell, figureSpec.size()>;

constexpr std::array pointSpec{
    exchange::dayColumn("date", "day of the session"),
    exchange::countColumn("session", "which of that day"),
    exchange::countColumn("set", "the set's number"),
    figureColumn("load_kg", "kg", "load on the line"),
    figureColumn("velocity_m_s", "m/s", "speed, by as many reps as the other day has")};
constexpr exchange::TableSpec pointTable{
    .name = "points", .meaning = "what was compared", .columns = pointSpec};

Cell end(const std::optional<stats::Interval>& interval, bool low) {
    return interval ? Cell(low ? interval->low : interval->high) : Cell();
}

FigureRow speedRow(const answers::Comparison& comparison, const answers::ChangeAt& at) {
    const double load = kilograms(at.load);
    const auto& read = at.read;
    return {std::string("speed"),
            load,
            std::string("m/s"),
            comparison.ofSeveral() ? Cell() : Cell(comparison.from.line.at(load)),
            comparison.ofSeveral() ? Cell() : Cell(comparison.to.line.at(load)),
            read.change,
            at.se,
            at.interval.low,
            at.interval.high,
            read.interval.low,
            read.interval.high,
            read.smallest ? Cell(read.smallest->value) : Cell(),
            std::string(answers::word(read.reading))};
}

FigureRow maxRow(const answers::Comparison& comparison, const answers::OneRmChange& change) {
    const auto estimate = [&](const answers::Profile& profile) {
        return comparison.ofSeveral() || !profile.oneRm ? Cell() : Cell(profile.oneRm->estimate);
    };
    const std::optional<stats::Interval> read =
        change.interval ? std::optional(change.read.interval) : std::nullopt;
    return {std::string("one_rm"),
            Cell(),
            std::string("kg"),
            estimate(comparison.from),
            estimate(comparison.to),
            change.estimate,
            Cell(),
            end(change.interval, true),
            end(change.interval, false),
            end(read, true),
            end(read, false),
            change.read.smallest ? Cell(change.read.smallest->value) : Cell(),
            std::string(answers::word(change.read.reading))};
}

} // namespace

std::string comparisonFiguresCsv(const answers::Comparison& comparison) {
    std::string csv = exchange::csvHeader(figureTable) + "\n";
    for (const answers::ChangeAt& at : comparison.at)
        csv += exchange::csvLine(speedRow(comparison, at)) + "\n";
    if (comparison.oneRm)
        csv += exchange::csvLine(maxRow(comparison, *comparison.oneRm)) + "\n";
    return csv;
}

std::string comparisonPointsCsv(const answers::Comparison& comparison) {
    std::string csv = exchange::csvHeader(pointTable) + "\n";
    for (const answers::Profile* side : {&comparison.from, &comparison.to})
        for (const answers::ProfilePoint& each : side->points) {
            const std::array<Cell, pointSpec.size()> row{side->session.date, side->session.ordinal,
                                                         each.point.set, each.point.load,
                                                         each.point.velocity};
            csv += exchange::csvLine(row) + "\n";
        }
    return csv;
}

} // namespace slopebook::questions
