// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table.h"

#include "core/exchange/cells.h"
#include "core/exchange/columnspec.h"
#include "core/exchange/faults.h"
#include "core/model/few.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

namespace slopebook::exchange {

std::optional<std::size_t> columnOf(std::span<const std::string> header, std::string_view name) {
    if (const auto it = std::ranges::find(header, name); it != header.end())
        return static_cast<std::size_t>(it - header.begin());
    if (const auto at = findName(header, name))
        return at;
    const std::string withUnit = std::string(name) + std::string(speedSuffix);
    const auto it = std::ranges::find(header, withUnit);
    return it == header.end() ? std::nullopt
                              : std::optional(static_cast<std::size_t>(it - header.begin()));
}

bool hasColumns(std::span<const std::string> header,
                std::initializer_list<std::string_view> names) {
    return std::ranges::all_of(names,
                               [&](auto name) { return columnOf(header, name).has_value(); });
}

namespace {

constexpr std::size_t textLimit = 100'000; // what the log keeps, and its guard

} // namespace

Table::Table(std::filesystem::path file, const CsvRow& header,
             std::span<const std::string_view> known, std::size_t required,
             const ColumnMap& columns)
    : m_file(std::move(file)), m_width(header.fields.size()) {
    std::vector<bool> used(m_width);
    FaultList faults;
    for (std::size_t i = 0; i < known.size(); ++i) {
        m_at.emplace_back();
        m_names.emplace_back();
        if (known[i].empty())
            continue; // a place kept free
        const auto mapped = columns.find(std::string(known[i]));
        m_names.back() = mapped == columns.end() ? std::string(known[i]) : mapped->second;
        faults.collect([&] {
            m_at.back() =
                place(header, m_names.back(), i < required || mapped != columns.end(), used);
        });
    }
    faults.throwIfAny();
    for (std::size_t i = 0; i < m_width; ++i)
        if (!used[i])
            m_notUsed.push_back(header.fields[i]);
}

std::optional<std::size_t> Table::place(const CsvRow& header, const std::string& name, bool needed,
                                        std::vector<bool>& used) const {
    const auto at = columnOf(header.fields, name);
    const Where where{.file = m_file.string(), .line = header.line, .column = asIs(name)};
    if (!at && needed) {
        const bool semicolons =
            header.fields.size() == 1 && header.fields[0].find(';') != std::string::npos;
        throw BadInput(where,
                       semicolons ? say("a header row with semicolons")
                                  : say("the columns %1", few(header.fields)),
                       semicolons ? say("cells separated by commas, numbers with a decimal point")
                                  : say("a column named %1", name));
    }
    if (at && std::ranges::count(header.fields, header.fields[*at]) > 1)
        throw BadInput(where, say("two columns of that name"), say("one"));
    if (at && used[*at])
        throw BadInput(where, say("a column that is used for another already"),
                       say("each column of the file used once"));
    if (at)
        used[*at] = true;
    return at;
}

std::vector<std::string> headerOf(const std::filesystem::path& file) {
    struct FirstRow {}; // stops reading once it is there
    std::vector<std::string> header;
    try {
        readCsv(file, ',', [&](const CsvRow& row) {
            header = row.fields;
            throw FirstRow{};
        });
    } catch (const FirstRow&) {
        return header;
    }
    throw BadInput({.file = file.string(), .line = 1, .column = {}}, say("an empty file"),
                   say("a header row such as date,athlete,lift,set,load_kg,rep,velocity"));
}

std::vector<std::string> readTable(const std::filesystem::path& file,
                                   std::span<const std::string_view> known, std::size_t required,
                                   const std::function<void(const Cells&, const Where&)>& take) {
    std::optional<Table> table;
    FaultList faults;
    faults.collect([&] {
        readCsv(file, ',', [&](const CsvRow& row) {
            if (!table) {
                table.emplace(file, row, known, required, ColumnMap{});
                return;
            }
            faults.collect([&] {
                const Cells cells(*table, row);
                if (!cells.blankRow())
                    take(cells, Where{.file = file.string(), .line = row.line, .column = {}});
            });
        });
    });
    faults.throwIfAny();
    return table ? table->notUsed() : std::vector<std::string>{};
}

Cells::Cells(const Table& table, const CsvRow& row) : m_table(table), m_row(row) {
    if (row.fields.size() != table.m_width && !blankRow())
        throw BadInput({.file = table.m_file.string(), .line = row.line, .column = {}},
                       say("%1 cells", row.fields.size()),
                       say("%1 as in the header row (a decimal comma, or a comma in a name that is "
                           "not in quotes, makes one more)",
                           table.m_width));
    for (const CellFault& fault : row.faults)
        if (const auto used = std::ranges::find(table.m_at, std::optional(fault.at));
            used != table.m_at.end()) {
            const auto column = static_cast<std::size_t>(used - table.m_at.begin());
            throw BadInput({.file = table.m_file.string(),
                            .line = row.line,
                            .column = asIs(table.m_names[column])},
                           fault.found, say("a value, or nothing"));
        }
}

bool Cells::blankRow() const {
    return std::ranges::all_of(m_row.fields, [](const auto& cell) { return cell.empty(); });
}

std::string_view Cells::raw(std::size_t column) const {
    const auto at = m_table.m_at[column];
    return at ? std::string_view(m_row.fields[*at]) : std::string_view{};
}

std::string Cells::text(std::size_t column) const {
    if (raw(column).size() > textLimit)
        refuse(column, "text of at most 100,000 bytes");
    return unguarded(raw(column));
}

std::string Cells::name(std::size_t column) const {
    std::string value = text(column);
    if (!tidyName(value))
        refuse(column, "a name");
    return value;
}

std::optional<double> Cells::number(std::size_t column, double low, double high, bool open,
                                    Phrase expected) const {
    if (!said(column))
        return std::nullopt;
    const auto value = readNumber(raw(column));
    const bool inside =
        value && (open ? *value > low && *value < high : *value >= low && *value <= high);
    if (!inside)
        refuse(column, expected);
    return value;
}

std::optional<Mass> Cells::mass(std::size_t column, Mass most, Phrase expected) const {
    const auto kg = number(column, 0, kilograms(most), false, expected);
    return kg ? std::optional(massFromKilograms(*kg)) : std::nullopt;
}

std::optional<int> Cells::count(std::size_t column) const {
    if (!said(column))
        return std::nullopt;
    const auto value = readCount(raw(column));
    if (!value)
        refuse(column, "a whole number from 1 on");
    return value;
}

std::optional<Date> Cells::date(std::size_t column) const {
    if (!said(column))
        return std::nullopt;
    const auto value = parseIsoDate(raw(column));
    if (!value)
        refuse(column, "a date written year-month-day, such as 2026-03-14");
    return value;
}

std::optional<bool> Cells::flag(std::size_t column) const {
    if (!said(column))
        return std::nullopt;
    if (raw(column) != "1" && raw(column) != "0")
        refuse(column, "1, 0 or nothing");
    return raw(column) == "1";
}

void Cells::refuse(std::size_t column, const Words& expected) const {
    throw BadInput({.file = m_table.m_file.string(),
                    .line = m_row.line,
                    .column = asIs(m_table.m_names[column])},
                   found(raw(column)), expected);
}

} // namespace slopebook::exchange
