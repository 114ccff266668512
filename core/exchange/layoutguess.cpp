// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/layoutguess.h"

#include "core/exchange/headings.h"
#include "core/exchange/laidrows.h"

#include <algorithm>
#include <map>
#include <span>

namespace slopebook::exchange {

namespace {

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

bool isValue(const std::string& cell) {
    const auto number = splitUnit(cell).number;
    return readMarked(number, Decimal::Point) || readMarked(number, Decimal::Comma) ||
           std::ranges::any_of(writtenOrders,
                               [&](DateOrder o) { return readDate(cell, o).has_value(); });
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

} // namespace

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

} // namespace slopebook::exchange
