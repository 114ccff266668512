// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/facts.h"

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

// Titles above a table are narrower than its rows.
long findSkip(const std::vector<CsvRow>& rows) {
    const std::size_t width = commonWidth(rows);
    if (width < 2)
        return 0;
    std::size_t skip = 0;
    while (skip < rows.size() && saidIn(rows[skip]) < std::min<std::size_t>(2, width))
        ++skip;
    return skip == rows.size() ? 0 : static_cast<long>(skip);
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
    explicit Looker(FileFacts& facts) : m_facts(facts) {}

    void take(const CsvRow& row) {
        if (m_passed < m_facts.layout.skip) {
            ++m_passed;
            return;
        }
        widen(row);
        if (m_facts.layout.header && !std::exchange(m_headerRead, true)) {
            for (std::size_t i = 0; i < row.fields.size(); ++i)
                m_facts.columns[i].heading = row.fields[i];
            m_named = row.fields.size();
            return;
        }
        if (saidIn(row) == 0)
            return;
        ++m_facts.rows;
        if (m_facts.first.size() < firstShown)
            m_facts.first.push_back(row);
        for (std::size_t i = 0; i < row.fields.size(); ++i)
            if (!row.fields[i].empty())
                cell(m_facts.columns[i], row.fields[i]);
    }

    /// A few cells too many are no column, but rows that do not fit the table.
    void finish() {
        auto& columns = m_facts.columns;
        while (m_facts.layout.header && columns.size() > m_named &&
               columns.back().said * 2 <= m_facts.rows)
            columns.pop_back();
    }

private:
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
        const auto point = readMarked(parts.number, Decimal::Point);
        const auto comma = readMarked(parts.number, Decimal::Comma);
        if ((point || comma) && column.unit.empty())
            column.unit = parts.unit;
        const bool twofold = point && comma && *point != *comma;
        if (twofold && column.twofold++ == 0)
            column.twofoldSample = cell;
        for (const Decimal mark : {Decimal::Point, Decimal::Comma})
            if ((mark == Decimal::Point ? point : comma).has_value() && !(point && comma) &&
                column.only[at(mark)].empty())
                column.only[at(mark)] = cell;
        const auto count = [twofold](NumberFacts& facts, const std::optional<double>& value) {
            if (!value)
                return;
            ++facts.read;
            facts.low = std::min(facts.low, *value);
            facts.high = std::max(facts.high, *value);
            if (twofold)
                facts.highOfTwofold = std::max(facts.highOfTwofold, *value);
        };
        count(column.numbers[at(Decimal::Point)], point);
        count(column.numbers[at(Decimal::Comma)], comma);
    }

    static void date(ColumnFacts& column, const std::string& cell) {
        std::optional<Date> first;
        for (const DateOrder order : orders)
            if (const auto day = readDate(cell, order)) {
                ++column.dates[static_cast<std::size_t>(order)];
                if (first && *first != *day && column.dateSample.empty())
                    column.dateSample = cell;
                first = day;
            }
    }

    FileFacts& m_facts;
    long m_passed = 0;
    std::size_t m_named = 0;
    bool m_headerRead = false;
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
    layout.header = told.header ? *told.header : findHeader(std::span(rows).subspan(passed));
}

} // namespace

FileFacts factsOfBeginning(const RowReader& read) {
    FileFacts facts;
    const auto rows = firstRows(read, beginning);
    layRows(facts, rows, {});
    Looker looker(facts);
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
    Looker looker(facts);
    readCsv(
        source, layout.encoding, layout.delimiter, [&](const CsvRow& row) { looker.take(row); },
        partOf(progress, 200, 1000));
    looker.finish();
    return facts;
}

} // namespace slopebook::exchange
