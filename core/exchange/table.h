// SPDX-License-Identifier: GPL-3.0-or-later
// A CSV file as a table: its header matched to the columns that we know, and the cells of a row
// read with a refusal that says file, line, column, what was found and what was expected.
#pragma once

#include "core/exchange/csvreader.h"
#include "core/model/date.h"
#include "core/model/errors.h"
#include "core/model/mass.h"
#include "core/model/phrases/exchange.h"

#include <filesystem>
#include <functional>
#include <initializer_list>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::exchange {

/// Column of the file for a known column, where the names differ.
using ColumnMap = std::map<std::string, std::string>;

/// Index in header of a name, letter case aside where it is not there exactly; else of the name
/// with its unit, as our own files write it (columnspec.h).
std::optional<std::size_t> columnOf(std::span<const std::string> header, std::string_view name);
/// Whether the header has them all.
bool hasColumns(std::span<const std::string> header, std::initializer_list<std::string_view> names);

/// The first row of a file. BadInput where it has none.
std::vector<std::string> headerOf(const std::filesystem::path& file);

class Table {
public:
    /// The first `required` of the known columns must be there. BadInput for a column that is
    /// missing or there twice.
    Table(std::filesystem::path file, const CsvRow& header, std::span<const std::string_view> known,
          std::size_t required, const ColumnMap& columns);

    const std::filesystem::path& file() const { return m_file; }
    bool has(std::size_t column) const { return m_at[column].has_value(); }
    /// Columns of the file that are none of the known ones.
    const std::vector<std::string>& notUsed() const { return m_notUsed; }

private:
    friend class Cells;
    std::optional<std::size_t> place(const CsvRow& header, const std::string& name, bool needed,
                                     std::vector<bool>& used) const;

    std::filesystem::path m_file;
    std::size_t m_width = 0;
    std::vector<std::optional<std::size_t>> m_at; // place of each known column
    std::vector<std::string> m_names;             // as the file calls them
    std::vector<std::string> m_notUsed;
};

/// The cells of one row by known column; a column that the file does not have reads as blank.
class Cells {
public:
    /// BadInput where the row has more or fewer cells than the header.
    Cells(const Table& table, const CsvRow& row);

    long line() const { return m_row.line; }
    bool blankRow() const; ///< every cell is blank
    std::string_view raw(std::size_t column) const;
    bool said(std::size_t column) const { return !raw(column).empty(); }
    std::string text(std::size_t column) const; ///< with the formula guard taken off
    /// Text that must be there and have something visible in it, as it is spelled.
    std::string name(std::size_t column) const;
    /// Nothing when blank; BadInput when it is none, or outside low..high (ends included unless
    /// open).
    std::optional<double> number(std::size_t column, double low, double high, bool open,
                                 Phrase expected) const;
    std::optional<Mass> mass(std::size_t column, Mass most, Phrase expected) const;
    std::optional<int> count(std::size_t column) const;
    std::optional<Date> date(std::size_t column) const;
    std::optional<bool> flag(std::size_t column) const; ///< 1 or 0

    [[noreturn]] void refuse(std::size_t column, const Words& expected) const;
    [[noreturn]] void refuse(std::size_t column, Phrase expected) const {
        refuse(column, say(expected));
    }

private:
    const Table& m_table;
    const CsvRow& m_row;
};

/// Goes through the rows of one table below its header, blank ones aside; returns the file's
/// columns that were not used. What take refuses of a row is kept, and thrown with all the others
/// at the end (faults.h).
std::vector<std::string> readTable(const std::filesystem::path& file,
                                   std::span<const std::string_view> known, std::size_t required,
                                   const std::function<void(const Cells&, const Where&)>& take);

/// The value of an optional cell that must be there.
template <class T>
T need(const Cells& cells, std::size_t column, std::optional<T> value, Phrase expected) {
    if (!value)
        cells.refuse(column, expected);
    return *value;
}

} // namespace slopebook::exchange
