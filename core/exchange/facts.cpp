// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/facts.h"

#include "core/exchange/headings.h"
#include "core/exchange/laidrows.h"
#include "core/exchange/layoutguess.h"
#include "core/exchange/sheetguess.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <utility>

namespace slopebook::exchange {

namespace {

constexpr std::size_t beginning = 60; // rows that tell how a table is divided
constexpr std::size_t mostColumns = 500;
constexpr std::size_t samplesKept = 3;
struct Enough {}; // stops reading

std::size_t at(Decimal mark) {
    return static_cast<std::size_t>(mark);
}

bool saysNothing(const CsvRow& row) {
    return std::ranges::all_of(row.fields, [](const auto& cell) { return cell.empty(); });
}

std::vector<CsvRow> firstRows(const RowReader& read, std::size_t most) {
    std::vector<CsvRow> rows;
    try {
        read([&](const CsvRow& row) {
            rows.push_back(row);
            if (rows.size() == most)
                throw Enough{};
        });
    } catch (const Enough&) { // NOLINT(bugprone-empty-catch): that is what it is for
    }
    return rows;
}

std::vector<CsvRow> firstRows(const Source& source, Encoding encoding, char delimiter,
                              std::size_t most) {
    return firstRows(
        [&](const std::function<void(const CsvRow&)>& row) {
            readCsv(source, encoding, delimiter, row);
        },
        most);
}

// A tab or a semicolon that divides nearly every row is no accident; commas may be decimal marks.
char findDelimiter(const Source& source, Encoding encoding) {
    for (const char delimiter : {'\t', ';', ','}) {
        std::vector<CsvRow> rows;
        try {
            rows = firstRows(source, encoding, delimiter, beginning);
        } catch (const BadInput&) {
            continue; // quotes that are none under this delimiter
        }
        const auto divided =
            std::ranges::count_if(rows, [](const CsvRow& row) { return row.fields.size() > 1; });
        if (divided > 0 && divided * 10 >= static_cast<std::ptrdiff_t>(rows.size()) * 7)
            return delimiter;
    }
    return ',';
}

class Looker {
public:
    /// everyTotal: rows of totals are looked for, not told.
    Looker(FileFacts& facts, bool everyTotal)
        : m_facts(facts),
          m_laid(
              facts.layout,
              {.above = [this](const CsvRow& row) { keep(m_facts.above, row); },
               .header = [this](const CsvRow& row) { header(row); },
               .units = [this](const CsvRow& row) { units(row); },
               .leftOut = [this](const CsvRow& row, const std::string& word) { total(row, word); },
               .noLoad = [this](const CsvRow&) { ++m_facts.rowsWithoutLoad; },
               .row = [this](const CsvRow& row) { plain(row); }},
              everyTotal) {}

    void take(const CsvRow& row) { m_laid.take(row); }

    /// A few cells too many are no column, but rows that do not fit the table.
    void finish() {
        auto& columns = m_facts.columns;
        while (m_facts.layout.header && columns.size() > m_named &&
               columns.back().said * 2 <= m_facts.rows)
            columns.pop_back();
    }

private:
    static void keep(std::vector<CsvRow>& rows, const CsvRow& row) {
        if (rows.size() < firstShown)
            rows.push_back(row);
    }

    void header(const CsvRow& row) {
        widen(row);
        for (std::size_t i = 0; i < row.fields.size(); ++i)
            m_facts.columns[i].heading = row.fields[i];
        m_named = row.fields.size();
    }

    void units(const CsvRow& row) {
        widen(row);
        for (std::size_t i = 0; i < row.fields.size(); ++i)
            if (massUnitOf(row.fields[i]) || speedUnitOf(row.fields[i]))
                m_facts.columns[i].unit = row.fields[i];
    }

    void total(const CsvRow& row, const std::string& word) {
        keep(m_facts.totals, row);
        ++m_facts.totalsRows;
        auto& words = m_facts.layout.leftOut;
        if (std::ranges::none_of(words, [&](const auto& each) { return sameTotals(each, word); }))
            words.push_back(word);
    }

    void plain(const CsvRow& row) {
        widen(row);
        if (saysNothing(row))
            return;
        ++m_facts.rows;
        keep(m_facts.first, row);
        for (std::size_t i = 0; i < row.fields.size(); ++i)
            if (!row.fields[i].empty())
                cell(m_facts.columns[i], row.fields[i]);
        takeTimes(row);
    }

    // Of one day are rows that say the same in the first column of days.
    void takeTimes(const CsvRow& row) {
        std::optional<bool> sameDay;
        for (std::size_t i = 0; i < row.fields.size(); ++i) {
            const auto time = timeOfDay(row.fields[i]);
            if (!time)
                continue;
            if (!sameDay)
                sameDay = dayOf(row) == std::exchange(m_day, dayOf(row));
            ColumnFacts& column = m_facts.columns[i];
            column.timesRise =
                column.timesRise && (column.times == 0 || !*sameDay || *time >= column.lastTime);
            ++column.times;
            column.lastTime = *time;
        }
    }

    std::string dayOf(const CsvRow& row) const {
        const auto days = std::ranges::find_if(m_facts.columns, &ColumnFacts::isDates);
        const auto at = static_cast<std::size_t>(days - m_facts.columns.begin());
        return at < row.fields.size() ? row.fields[at] : std::string();
    }

    void widen(const CsvRow& row) {
        if (row.fields.size() > mostColumns)
            throw BadInput({.file = {}, .line = row.line, .column = {}},
                           say("%1 columns", row.fields.size()), say("at most 500"));
        if (m_facts.columns.size() < row.fields.size())
            m_facts.columns.resize(row.fields.size());
    }

    static void cell(ColumnFacts& column, const std::string& cell) {
        ++column.said;
        if (column.samples.size() < samplesKept &&
            std::ranges::find(column.samples, cell) == column.samples.end())
            column.samples.push_back(cell);
        if (cell.size() > 60)
            return; // no number and no day
        number(column, cell);
        date(column, cell);
    }

    static void number(ColumnFacts& column, const std::string& cell) {
        const WithUnit parts = splitUnit(cell);
        const bool one = count(column, cell, parts.number);
        if (one && column.unit.empty())
            column.unit = parts.unit;
        column.serials += one && mayCountDays(cell);
        const auto list = listParts(parts.number);
        column.lists += list.size() > 1;
        column.numbersAndLists += one || list.size() > 1;
        for (const std::string_view part : list)
            count(column.parts, part, part);
    }

    // Whether it is a number under one mark or the other.
    static bool count(NumbersSeen& seen, std::string_view cell, std::string_view number) {
        const auto point = readMarked(number, Decimal::Point);
        const auto comma = readMarked(number, Decimal::Comma);
        const bool twofold = point && comma && *point != *comma;
        if (twofold && seen.twofold++ == 0)
            seen.twofoldSample = cell;
        for (const Decimal mark : {Decimal::Point, Decimal::Comma})
            if ((mark == Decimal::Point ? point : comma).has_value() && !(point && comma) &&
                seen.only[at(mark)].empty())
                seen.only[at(mark)] = cell;
        const auto add = [twofold](NumberFacts& facts, const std::optional<double>& value) {
            if (!value)
                return;
            ++facts.read;
            facts.low = std::min(facts.low, *value);
            facts.high = std::max(facts.high, *value);
            if (twofold)
                facts.highOfTwofold = std::max(facts.highOfTwofold, *value);
        };
        add(seen.numbers[at(Decimal::Point)], point);
        add(seen.numbers[at(Decimal::Comma)], comma);
        return point || comma;
    }

    static void date(ColumnFacts& column, const std::string& cell) {
        std::optional<Date> first;
        for (const DateOrder order : writtenOrders)
            if (const auto day = readDate(cell, order)) {
                ++column.dates[static_cast<std::size_t>(order)];
                if (first && *first != *day && column.dateSample.empty())
                    column.dateSample = cell;
                if (!first)
                    moment(column, cell, order);
                first = day;
            }
    }

    static void moment(ColumnFacts& column, const std::string& cell, DateOrder order) {
        const auto moment = momentOf(cell, order);
        if (!moment)
            return;
        column.rises = column.rises && (column.moments == 0 || *moment >= column.lastMoment);
        ++column.moments;
        column.lastMoment = *moment;
    }

    FileFacts& m_facts;
    LaidRows m_laid;
    std::size_t m_named = 0;
    std::string m_day; // of the last row with a time
};

} // namespace

bool ColumnFacts::isNumbers() const {
    return said > 0 && 2 * std::max(numbers[0].read, numbers[1].read) >= said;
}

double ColumnFacts::high() const {
    const NumberFacts& point = numbers[at(Decimal::Point)];
    const NumberFacts& comma = numbers[at(Decimal::Comma)];
    if (point.read != comma.read)
        return point.read > comma.read ? point.high : comma.high;
    return std::min(point.high, comma.high);
}

bool ColumnFacts::isDates() const {
    return said > 0 && 2 * std::ranges::max(dates) >= said;
}

std::vector<std::string> FileFacts::headings() const {
    std::vector<std::string> names;
    for (const ColumnFacts& column : columns)
        names.push_back(column.heading);
    return names;
}

Words FileFacts::columnName(std::size_t index) const {
    return index < columns.size() && !columns[index].heading.empty() ? asIs(columns[index].heading)
                                                                     : say("column %1", index + 1);
}

LayoutTold toldOf(const TextLayout& layout) {
    return {.encoding = layout.encoding,
            .delimiter = layout.delimiter,
            .skip = layout.skip,
            .header = layout.header,
            .sheet = layout.sheet,
            .unitsRow = layout.unitsRow,
            .leftOut = layout.leftOut,
            .loadsAsColumns = layout.loadsAsColumns,
            .byTime = layout.byTime};
}

FileFacts factsOfBeginning(const RowReader& read) {
    FileFacts facts;
    const auto rows = firstRows(read, beginning);
    layRows(facts, rows, {});
    Looker looker(facts, true);
    for (const CsvRow& row : rows)
        looker.take(row);
    looker.finish();
    return facts;
}

FileFacts lookAt(const Source& given, const LayoutTold& told, const Progress& progress) {
    FileFacts facts;
    TextLayout& layout = facts.layout;
    Source source = given;
    if (!source.file.empty() && isWorkbook(source.file)) {
        guessSheet(facts, source, told.sheet);
        source.sheet = layout.sheet;
    } else {
        layout.encoding =
            told.encoding ? *told.encoding : encodingOf(source, partOf(progress, 0, 200));
        layout.delimiter =
            told.delimiter ? *told.delimiter : findDelimiter(source, layout.encoding);
    }
    layRows(facts,
            firstRows(source, layout.encoding, layout.delimiter,
                      beginning + static_cast<std::size_t>(told.skip.value_or(0))),
            told);
    Looker looker(facts, !told.leftOut);
    readCsv(
        source, layout.encoding, layout.delimiter, [&](const CsvRow& row) { looker.take(row); },
        partOf(progress, 200, 1000));
    looker.finish();
    return facts;
}

} // namespace slopebook::exchange
