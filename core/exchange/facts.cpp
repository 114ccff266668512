// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/facts.h"

#include "core/exchange/headings.h"
#include "core/exchange/laidrows.h"
#include "core/exchange/sheetguess.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <map>
#include <span>

namespace slopebook::exchange {

namespace {

constexpr std::size_t beginning = 60; // rows that tell how a table is divided
constexpr std::size_t mostColumns = 500;
constexpr std::size_t samplesKept = 3;
struct Enough {}; // stops reading

constexpr std::array<DateOrder, 3> orders{DateOrder::YearMonthDay, DateOrder::DayMonthYear,
                                          DateOrder::MonthDayYear};

std::size_t at(Decimal mark) {
    return static_cast<std::size_t>(mark);
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

std::size_t saidIn(const CsvRow& row) {
    return static_cast<std::size_t>(
        std::ranges::count_if(row.fields, [](const auto& cell) { return !cell.empty(); }));
}

// The width that most rows have.
std::size_t commonWidth(const std::vector<CsvRow>& rows) {
    std::map<std::size_t, int> widths;
    for (const CsvRow& row : rows)
        ++widths[row.fields.size()];
    const auto most = std::ranges::max_element(
        widths, {}, [](const auto& entry) { return std::pair(entry.second, entry.first); });
    return most == widths.end() ? 0 : most->first;
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

bool isValue(const std::string& cell) {
    const auto number = splitUnit(cell).number;
    return readMarked(number, Decimal::Point) || readMarked(number, Decimal::Comma) ||
           std::ranges::any_of(orders, [&](DateOrder o) { return readDate(cell, o).has_value(); });
}

// How many cells most rows fill.
std::size_t commonlySaid(const std::vector<CsvRow>& rows) {
    std::map<std::size_t, int> counts;
    for (const CsvRow& row : rows)
        ++counts[saidIn(row)];
    const auto most = std::ranges::max_element(
        counts, {}, [](const auto& entry) { return std::pair(entry.second, entry.first); });
    return most == counts.end() ? 0 : most->first;
}

// Titles above a table are narrower than its rows, and so is what is said of all of it, a name and
// a value a row: the table begins with the first row of names that is as wide as most are.
long findSkip(const std::vector<CsvRow>& rows) {
    const std::size_t width = commonWidth(rows);
    if (width < 2)
        return 0;
    const auto firstWith = [&](std::size_t enough) {
        std::size_t skip = 0;
        while (skip < rows.size() && saidIn(rows[skip]) < enough)
            ++skip;
        return skip;
    };
    const std::size_t said = commonlySaid(rows);
    if (said >= 4)
        if (const std::size_t skip = firstWith(said - said / 4);
            skip < rows.size() && std::ranges::all_of(rows[skip].fields, [](const auto& cell) {
                return !isValue(cell) || loadOfHeading(cell);
            }))
            return static_cast<long>(skip);
    const std::size_t skip = firstWith(std::min<std::size_t>(2, width));
    return skip == rows.size() ? 0 : static_cast<long>(skip);
}

// Columns that are named by their loads, over what may be speeds, where no column is named either.
bool findLoadColumns(std::span<const CsvRow> rows) {
    if (rows.size() < 2)
        return false;
    std::map<std::string, long> loads;
    long speeds = 0, others = 0, precise = 0;
    for (std::size_t i = 0; i < rows[0].fields.size(); ++i) {
        const auto load = loadOfHeading(rows[0].fields[i]);
        if (!load) {
            const auto role = roleOfHeading(rows[0].fields[i]);
            if (role == TidyLoad || role == TidyVelocity)
                return false;
            continue;
        }
        if (++loads[load->number] > 1)
            return false;
        for (const CsvRow& row : rows.subspan(1))
            if (i < row.fields.size() && !row.fields[i].empty() && !isUnitsRow(row))
                for (const std::string_view part : listParts(row.fields[i])) {
                    auto number = readMarked(splitUnit(part).number, Decimal::Point);
                    const bool point = number.has_value();
                    if (!number)
                        number = readMarked(splitUnit(part).number, Decimal::Comma);
                    const bool speed = number && *number > 0 && *number < 1000;
                    (speed ? speeds : others) += 1;
                    precise += speed && (*number >= 20 || !point ||
                                         part.find('.') != std::string_view::npos);
                }
    }
    return loads.size() >= 2 && speeds > 9 * others && precise > 0;
}

// A row of names over columns of values; without values anywhere, a first row is taken for one.
bool findHeader(std::span<const CsvRow> rows) {
    if (rows.empty())
        return false;
    bool valuesBelow = false;
    for (std::size_t i = 0; i < rows[0].fields.size(); ++i) {
        long below = 0, values = 0;
        for (const CsvRow& row : rows.subspan(1))
            if (i < row.fields.size() && !row.fields[i].empty()) {
                ++below;
                values += isValue(row.fields[i]);
            }
        const bool isColumnOfValues = values * 2 > below;
        valuesBelow = valuesBelow || isColumnOfValues;
        if (isColumnOfValues && !rows[0].fields[i].empty() && !isValue(rows[0].fields[i]))
            return true;
    }
    return !valuesBelow && std::ranges::none_of(rows[0].fields, isValue);
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
        if (saidIn(row) == 0)
            return;
        ++m_facts.rows;
        keep(m_facts.first, row);
        for (std::size_t i = 0; i < row.fields.size(); ++i)
            if (!row.fields[i].empty())
                cell(m_facts.columns[i], row.fields[i]);
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
        for (const DateOrder order : orders)
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
};

} // namespace

bool ColumnFacts::isNumbers() const {
    return said > 0 && 2 * std::max(numbers[0].read, numbers[1].read) >= said;
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

namespace {

// Where the table begins within the rows, and whether with a header.
void layRows(FileFacts& facts, const std::vector<CsvRow>& rows, const LayoutTold& told) {
    TextLayout& layout = facts.layout;
    layout.skip = told.skip ? *told.skip : findSkip(rows);
    const auto passed = std::min(rows.size(), static_cast<std::size_t>(layout.skip));
    const auto table = std::span(rows).subspan(passed);
    layout.header = told.header ? *told.header : findHeader(table);
    layout.unitsRow = layout.header &&
                      (told.unitsRow ? *told.unitsRow : table.size() > 1 && isUnitsRow(table[1]));
    layout.loadsAsColumns =
        layout.header && (told.loadsAsColumns ? *told.loadsAsColumns : findLoadColumns(table));
    layout.leftOut = told.leftOut.value_or(std::vector<std::string>{});
    layout.byTime = told.byTime.value_or(false);
}

} // namespace

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
