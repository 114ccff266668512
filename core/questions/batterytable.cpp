// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/batterytable.h"

#include "core/answers/figures.h"
#include "core/answers/sidefigures.h"
#include "core/exchange/cells.h"
#include "core/log/durable.h"

#include <cmath>

namespace slopebook::questions {

namespace {

class Row {
public:
    Row& text(std::string_view value) { return put(exchange::csvText(value)); }
    Row& number(const std::optional<double>& value) {
        return put(value && std::isfinite(*value) ? exchange::writeNumber(*value) : std::string());
    }
    std::string line() const { return m_line + "\n"; }

private:
    Row& put(const std::string& cell) {
        if (!m_first)
            m_line += ',';
        m_first = false;
        m_line += cell;
        return *this;
    }
    std::string m_line;
    bool m_first = true;
};

std::string dateOf(const answers::SeenTest& seen) {
    return seen.date ? isoDate(*seen.date) : std::string();
}

std::optional<double> valueOf(const answers::SeenTest& seen) {
    return seen.value ? std::optional(seen.value->value) : std::nullopt;
}

void addRead(Row& row, const answers::ReadChange& read, double level) {
    const bool figure = read.reading != answers::Reading::NoFigure;
    row.number(figure ? std::optional(read.interval.low) : std::nullopt)
        .number(figure ? std::optional(read.interval.high) : std::nullopt)
        .number(level);
}

void addSmallest(Row& row, const answers::ReadChange& read) {
    row.number(read.smallest ? std::optional(read.smallest->value) : std::nullopt)
        .text(read.smallest ? read.smallest->source : std::string());
    row.text(answers::word(read.reading));
}

std::string testLine(const answers::TestChange& test, double level) {
    Row row;
    row.text(test.kind.value.name)
        .text(test.side == BodySide::Both ? std::string_view() : word(test.side))
        .text(test.kind.value.unit)
        .number(valueOf(test.before))
        .text(dateOf(test.before))
        .number(valueOf(test.after))
        .text(dateOf(test.after))
        .number(test.change)
        .number(test.percent);
    addRead(row, test.read, level);
    row.number(test.noise ? std::optional(test.noise->te) : std::nullopt)
        .number(test.noise ? std::optional(test.noise->df) : std::nullopt)
        .text(test.noise ? english(test.noise->source) : std::string());
    addSmallest(row, test.read);
    std::string remark = english(test.noReading);
    for (const auto& change : test.conditions)
        remark += (remark.empty() ? "" : "; ") + english(answers::changeWords(change));
    row.text(remark);
    for (const answers::SeenTest* seen : {&test.before, &test.after}) {
        const auto end = [&](double stats::Interval::*which) {
            return seen->interval ? std::optional((*seen->interval).*which) : std::nullopt;
        };
        row.number(seen->sessions)
            .number(end(&stats::Interval::low))
            .number(end(&stats::Interval::high));
    }
    return row.line();
}

/// The last day of each side, and how many sessions stand for it.
struct SideEnd {
    Date last{};
    int sessions = 1;
};
SideEnd endOf(const answers::Comparison& c, bool later) {
    if (!c.ofSeveral())
        return {(later ? c.to : c.from).session.date, 1};
    const auto& sessions = (later ? c.blocks->second : c.blocks->first).sessions;
    return {sessions.back().date, static_cast<int>(sessions.size())};
}

std::string liftLine(const std::string& what, const char* unit, const answers::TwoFigures& values,
                     const answers::Comparison& comparison, const answers::ReadChange& read,
                     const std::string& remark) {
    const auto [before, after] = values;
    const SideEnd from = endOf(comparison, false), to = endOf(comparison, true);
    Row row;
    row.text(what)
        .text("")
        .text(unit)
        .number(before)
        .text(isoDate(from.last))
        .number(after)
        .text(isoDate(to.last))
        .number(after - before)
        .number(100 * (after - before) / before);
    addRead(row, read, comparison.settings.level);
    row.number(std::nullopt).number(std::nullopt).text("");
    addSmallest(row, read);
    row.text(remark);
    for (const int sessions : {from.sessions, to.sessions})
        row.number(sessions).number(std::nullopt).number(std::nullopt);
    return row.line();
}

std::string liftLines(const BatteryLift& lift) {
    if (!lift.comparison)
        return {};
    const answers::Comparison& c = *lift.comparison;
    std::string lines;
    for (const answers::ChangeAt& at : c.at) {
        const double load = kilograms(at.load);
        if (at.checkLoad)
            lines +=
                liftLine(lift.lift.value.name + ", speed at " + answers::loadText(load) + " kg",
                         "m/s", answers::speedsOf(c, load), c, at.read,
                         at.extrapolated ? "beyond the loads of both sessions" : "");
    }
    if (const auto maxima = answers::maximaOf(c); c.oneRm && maxima)
        lines += liftLine(lift.lift.value.name + ", estimated 1RM", "kg", *maxima, c, c.oneRm->read,
                          "reach " + answers::fixed(c.from.oneRm->reach, 2) + " and " +
                              answers::fixed(c.to.oneRm->reach, 2));
    return lines;
}

} // namespace

std::string batteryCsv(const BatteryAnswer& answer) {
    std::string text =
        "test,side,unit,before,before_date,after,after_date,change,change_percent,"
        "low,high,level,typical_error,typical_error_df,typical_error_source,"
        "smallest,smallest_source,reading,remark,before_sessions,before_low,before_high,"
        "after_sessions,after_low,after_high\n";
    for (const auto& test : answer.battery.tests)
        text += testLine(test, answer.battery.level);
    for (const BatteryLift& lift : answer.lifts)
        text += liftLines(lift);
    for (const Words& what : answer.unread) {
        Row row;
        row.text("left out, for it cannot be read").text("").text("");
        for (int blank = 0; blank < 14; ++blank)
            row.text("");
        row.text(word(answers::Reading::NoFigure)).text(english(what));
        for (int blank = 0; blank < 6; ++blank)
            row.text("");
        text += row.line();
    }
    return text;
}

void writeBatteryCsv(const BatteryAnswer& answer, const log::Destination& to) {
    log::writeWhole(to, batteryCsv(answer));
}

} // namespace slopebook::questions
