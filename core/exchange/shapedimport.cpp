// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/shapedimport.h"

#include "core/exchange/asread.h"
#include "core/exchange/importnames.h"
#include "core/exchange/laidrows.h"
#include "core/exchange/merge.h"
#include "core/exchange/shaperows.h"
#include "core/exchange/staging.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {

// Keeps what is refused, under the table's own names of its columns.
class Refusals {
public:
    Refusals(ShapedReport& report, const ShapeRows& rows) : m_report(report), m_rows(rows) {}

    void add(const BadInput& bad) {
        Where where = bad.where();
        for (std::size_t role = 0; role < TidyCount; ++role)
            if (where.column == inWords(tidyColumns[role]))
                where.column = m_rows.columnName(static_cast<Tidy>(role));
        if (where.line == 0 || where.line != m_lastLine)
            ++m_report.rowsRefused;
        m_lastLine = where.line;
        if (m_report.refused.size() < refusalsKept)
            m_report.refused.emplace_back(where, bad.found(), bad.expected());
    }

private:
    ShapedReport& m_report;
    const ShapeRows& m_rows;
    long m_lastLine = -1;
};

// Rows in order of the moments in one of their columns, or of their days and times of day; one
// without any follows the one above.
class InOrderOfTime {
public:
    InOrderOfTime(const Shape& shape) : m_shape(shape) {}

    void take(const CsvRow& row) {
        const auto& dates = m_shape.columns[TidyDate];
        const std::string_view day = cell(row, dates.empty() ? row.fields.size() : dates[0].at);
        const DateOrder order = m_shape.dates.value_or(DateOrder::YearMonthDay);
        if (m_shape.timeOfDay) {
            if (const auto date = readDate(day, order))
                m_day =
                    static_cast<double>(std::chrono::sys_days{*date}.time_since_epoch().count());
            if (const auto time = timeOfDay(cell(row, *m_shape.timeOfDay)))
                m_last = m_day * secondsADay + *time;
        } else {
            m_last = momentOf(day, order).value_or(m_last);
        }
        m_rows.emplace_back(m_last, row);
    }
    void visit(const std::function<void(const CsvRow&)>& visit) {
        std::ranges::stable_sort(m_rows, {}, &std::pair<double, CsvRow>::first);
        for (const auto& [moment, row] : m_rows)
            visit(row);
    }

private:
    static std::string_view cell(const CsvRow& row, std::size_t at) {
        return at < row.fields.size() ? std::string_view(row.fields[at]) : std::string_view{};
    }

    const Shape& m_shape;
    double m_last = 0, m_day = 0;
    std::vector<std::pair<double, CsvRow>> m_rows;
};

// Goes through the rows of a table below its header.
struct PassedOver {
    long totals = 0, withoutLoad = 0;
};
PassedOver readRows(const Source& source, const Shape& shape,
                    const std::function<void(const CsvRow&)>& visit, const Progress& progress) {
    Source table = source;
    table.sheet = shape.layout.sheet;
    if (shape.layout.byTime && shape.blankAsAbove) // the row above would be another
        throw BadInput({.file = source.name(), .line = {}, .column = {}},
                       say("rows in order of time whose blank cells are as above"),
                       say("one of the two: no blank cells, or rows in their order"));
    InOrderOfTime inOrder(shape);
    PassedOver passed;
    LaidRows laid(
        shape.layout,
        {.leftOut = [&](const CsvRow&, const std::string&) { ++passed.totals; },
         .noLoad = [&](const CsvRow&) { ++passed.withoutLoad; },
         .row =
             [&](const CsvRow& row) {
                 if (std::ranges::all_of(row.fields, [](const auto& cell) { return cell.empty(); }))
                     return;
                 if (shape.layout.byTime)
                     inOrder.take(row);
                 else
                     visit(row);
             }});
    readCsv(
        table, shape.layout.encoding, shape.layout.delimiter,
        [&](const CsvRow& row) { laid.take(row); }, progress);
    inOrder.visit(visit);
    return passed;
}

void tell(const PassedOver& passed, ImportReport& report) {
    report.rowsLeftOut = passed.totals;
    report.rowsWithoutLoad = passed.withoutLoad;
}

void stage(Staging& staging, ShapeRows& rows, const Source& source, const Shape& shape,
           ShapedReport& report, Refusals& refusals, const Progress& progress) {
    const Table table(source.name(), ShapeRows::header(), tidyColumns, tidyRequired, ColumnMap{});
    staging.begin(source.name());
    const std::function<void(const CsvRow&)> takeTidy = [&](const CsvRow& tidy) {
        staging.take(Cells(table, tidy));
    };
    try {
        tell(readRows(
                 source, shape,
                 [&](const CsvRow& row) {
                     ++report.rowsRead;
                     try {
                         rows.take(row, takeTidy);
                     } catch (const BadInput& bad) {
                         refusals.add(bad);
                     }
                 },
                 progress),
             report.report);
    } catch (const BadInput& bad) { // of the text itself
        refusals.add(bad);
        report.wholeRead = false;
    }
    staging.refused = [&](const BadInput& bad) { refusals.add(bad); };
    staging.finish();
}

std::vector<std::string> notUsed(const Shape& shape, const std::vector<std::string>& headings) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < headings.size(); ++i) {
        const bool used =
            std::ranges::any_of(shape.columns,
                                [&](const auto& uses) {
                                    return std::ranges::find(uses, i, &ColumnUse::at) != uses.end();
                                }) ||
            (shape.layout.byTime && shape.timeOfDay == i);
        if (!used && !headings[i].empty())
            names.push_back(headings[i]);
    }
    return names;
}

void merge(log::Log& log, const Staging& staging, const ImportSettings& settings,
           ShapedReport& report, Refusals& refusals) {
    try {
        log.together([&] {
            Merge merging(log, settings, report.report);
            merging.refused = [&](const BadInput& bad) { refusals.add(bad); };
            merging.rows(staging);
            merging.finishRows(staging);
            merging.gaps();
            merging.thresholds();
            report.intoLog = true;
            if (settings.dryRun || !report.refused.empty())
                throw DryRunDone{};
        });
    } catch (const DryRunDone&) {   // NOLINT(bugprone-empty-catch): that is what it is for
    } catch (const BadInput& bad) { // what hides everything after it: a lift of another kind
        refusals.add(bad);
    }
}

void tellRead(const std::vector<std::string>& ofLog, const Source& source, const Staging& staging,
              const ImportSettings& settings, ShapedReport& report) {
    report.report.rows = staging.rows;
    if (report.rowsRead == 0)
        report.report.withoutRows.push_back(source.file.filename().string());
    tellFlagged(staging, report.report);
    report.report.nearly = nearlyKnown(ofLog, staging.athletes.names(), {}, settings.who);
    if (!settings.dryRun && report.refused.empty() && !report.report.nearly.empty())
        throw Undecided(report.report.nearly);
}

AsRead mergeAsRead(log::Log& log, const Source& source, const Shape& shape, ShapeRows rows,
                   Staging staging, const ImportSettings& settings, ShapedReport& report,
                   bool sorted) {
    const std::vector<std::string> ofLog = athleteNames(log);
    const Table table(source.name(), ShapeRows::header(), tidyColumns, tidyRequired, ColumnMap{});
    const std::function<void(const CsvRow&)> takeTidy = [&](const CsvRow& tidy) {
        staging.take(Cells(table, tidy));
    };
    return asRead(log, report, [&](ShapedReport& made) {
        Merge merge(log, settings, made.report);
        handOver(staging, merge, settings);
        staging.begin(source.name());
        if (sorted)
            staging.sortFirst();
        tell(readRows(
                 source, shape,
                 [&](const CsvRow& row) {
                     ++made.rowsRead;
                     rows.take(row, takeTidy);
                 },
                 partOf(settings.progress, 0, sorted ? 300 : 900)),
             made.report);
        if (sorted)
            staging.takeSorted(partOf(settings.progress, 300, 900));
        staging.finish();
        tellRead(ofLog, source, staging, settings, made);
        merge.rows(staging);
        merge.finishRows(staging);
        merge.gaps();
        merge.thresholds();
        made.intoLog = true;
    });
}

} // namespace

ShapedReport importShaped(log::Log& log, const Source& source, const Shape& shape,
                          const std::vector<std::string>& headings, const ImportSettings& given) {
    const Progress progress = onward(given.progress);
    ImportSettings settings = given;
    settings.progress = progress;
    ShapedReport report;
    report.report.filesRead = 1;
    report.report.columnsNotUsed = notUsed(shape, headings);
    ShapeRows rows(shape, headings, source.name());
    Staging staging;
    tellNames(log, staging);
    staging.who = settings.who;
    if (writesAsRead(settings) && asReadOrSorted([&](bool sorted) {
            return mergeAsRead(log, source, shape, rows, staging, settings, report, sorted);
        }))
        return report;
    Refusals refusals(report, rows);
    ImportSettings merging = settings;
    merging.progress = partOf(settings.progress, 300, 1000);
    stage(staging, rows, source, shape, report, refusals, partOf(settings.progress, 0, 300));
    tellRead(athleteNames(log), source, staging, settings, report);
    if (report.refused.empty())
        merge(log, staging, merging, report, refusals);
    std::ranges::stable_sort(report.refused, {},
                             [](const BadInput& bad) { return bad.where().line; });
    return report;
}

std::vector<ReadRow> readFirst(const std::vector<CsvRow>& first, const Shape& shape,
                               const std::vector<std::string>& headings, const std::string& name) {
    ShapeRows rows(shape, headings, name);
    std::vector<ReadRow> read;
    for (const CsvRow& row : first) {
        read.push_back({.found = row, .tidy = {}, .refused = {}});
        try {
            rows.take(row, [&](const CsvRow& tidy) { read.back().tidy.push_back(tidy); });
        } catch (const BadInput& bad) {
            read.back().refused = bad;
        }
    }
    return read;
}

std::vector<Set> readSets(const Source& source, Shape shape,
                          const std::vector<std::string>& headings) {
    shape.fixed[TidyDate] = "2000-01-01"; // of no consequence: only sets are handed back
    shape.fixed[TidyAthlete] = shape.fixed[TidyLift] = "-";
    for (const Tidy role : {TidyDate, TidyAthlete, TidyLift})
        shape.columns[role].clear();
    ShapeRows rows(shape, headings, source.name());
    Staging staging;
    staging.begin(source.name());
    const Table table(source.name(), ShapeRows::header(), tidyColumns, tidyRequired, ColumnMap{});
    readRows(source, shape,
             [&](const CsvRow& row) {
                 rows.take(row, [&](const CsvRow& tidy) { staging.take(Cells(table, tidy)); });
             },
             {});
    staging.finish();
    std::vector<StagedSet> inOrder = staging.sets;
    std::ranges::stable_sort(inOrder, {}, &StagedSet::number);
    std::vector<Set> sets;
    for (const StagedSet& staged : inOrder)
        sets.push_back(asSet(staging, staged));
    return sets;
}

} // namespace slopebook::exchange
