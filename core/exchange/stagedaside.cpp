// SPDX-License-Identifier: GPL-3.0-or-later
// A file out of order: its rows are put aside until all are there, then taken session by session.
#include "core/exchange/cells.h"
#include "core/exchange/sortedrows.h"
#include "core/exchange/staging.h"
#include "core/exchange/tidycolumns.h"
#include "core/model/phrases/exchange.h"

#include <cstring>

namespace slopebook::exchange {

namespace {

// Each cell by its length and its bytes, after the place that it was found in.
void putNumber(std::string& bytes, std::uint32_t number) {
    char four[sizeof number];
    std::memcpy(four, &number, sizeof number);
    bytes.append(four, sizeof four);
}

std::uint32_t takeNumber(std::string_view& bytes) {
    std::uint32_t number = 0;
    std::memcpy(&number, bytes.data(), sizeof number);
    bytes.remove_prefix(sizeof number);
    return number;
}

} // namespace

void Staging::sortFirst() {
    m_aside = std::make_shared<SortedRows>();
}

// Names and blocks become known in the order of the file, whatever order the sessions come in.
void Staging::putAside(const Cells& cells) {
    const Date date = need(cells, TidyDate, cells.date(TidyDate), isoDayExpected);
    const StagedDay day{
        .athlete = athlete(cells), .date = date, .ordinal = cells.count(TidySession).value_or(1)};
    takeBlock(cells, date);
    lift(cells);
    m_asideRow.clear();
    putNumber(m_asideRow, static_cast<std::uint32_t>(here(cells).file));
    putNumber(m_asideRow, static_cast<std::uint32_t>(here(cells).line));
    std::uint32_t said = 0;
    static_assert(TidyCount <= 32);
    for (std::size_t column = 0; column < TidyCount; ++column)
        if (cells.said(column))
            said |= std::uint32_t{1} << column;
    putNumber(m_asideRow, said);
    for (std::size_t column = 0; column < TidyCount; ++column)
        if (cells.said(column)) {
            putNumber(m_asideRow, static_cast<std::uint32_t>(cells.raw(column).size()));
            m_asideRow.append(cells.raw(column));
        }
    m_aside->add(day, m_asideRow);
}

void Staging::takeSorted(const Progress& progress) {
    const auto aside = std::exchange(m_aside, nullptr);
    CsvRow row;
    for (const std::string_view name : tidyColumns)
        row.fields.emplace_back(name);
    std::vector<Table> tables;
    for (const auto& file : files)
        tables.emplace_back(file, row, tidyColumns, 0, ColumnMap{});
    std::int64_t taken = 0;
    aside->handBack([&](std::string_view bytes) {
        m_file = static_cast<int>(takeNumber(bytes));
        row.line = takeNumber(bytes);
        const std::uint32_t said = takeNumber(bytes);
        for (std::size_t column = 0; column < TidyCount; ++column) {
            row.fields[column].clear();
            if ((said >> column & 1U) == 0)
                continue;
            const std::uint32_t size = takeNumber(bytes);
            row.fields[column] = bytes.substr(0, size);
            bytes.remove_prefix(size);
        }
        takeRow(Cells(tables[static_cast<std::size_t>(m_file)], row));
        if (++taken % 4096 == 0)
            tell(progress, taken, aside->rows());
    });
}

} // namespace slopebook::exchange
