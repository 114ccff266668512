// SPDX-License-Identifier: GPL-3.0-or-later
// Turns the rows of any table, read under a shape, into rows of tidy CSV.
#pragma once

#include "core/exchange/csvreader.h"
#include "core/exchange/shape.h"

#include <functional>
#include <string>
#include <unordered_map>
#include <vector>

namespace slopebook::exchange {

class ShapeRows {
public:
    /// The shape must have no open question (proposal.h). BadInput where a value for all rows may
    /// not stand. name: of the source, for messages.
    ShapeRows(const Shape& shape, std::vector<std::string> headings, std::string name);

    /// The header row of what take() hands over: all of tidyColumns.
    static CsvRow header();

    /// Hands over one tidy row, or one a rep where a row is a set; none for a blank row. Sets and
    /// reps without a column of their own are numbered in the order of the table: a set for each
    /// row, or for each change of load (or rep number that does not rise) of an athlete's lift and
    /// day; so the same table always gives the same numbers. BadInput (line, column, what was
    /// found and expected) for what cannot be read.
    void take(const CsvRow& row, const std::function<void(const CsvRow&)>& visit);

    /// What the table calls the column of a role: its heading, "column 3", or the role's own name.
    Words columnName(Tidy role) const;

private:
    struct Numbers {
        int set = 0, rep = 0;
        std::string load;
        std::unordered_map<int, int> repsOf; ///< by set, where the table numbers sets
    };
    std::string_view cell(const CsvRow& row, Tidy role) const;
    std::string headCell(const CsvRow& row, Tidy role);
    std::string athleteCells(const CsvRow& row) const;
    std::string value(const CsvRow& row, Tidy role, std::string_view cell) const;
    std::string dayText(const CsvRow& row, std::string_view cell) const;
    std::string massText(const CsvRow& row, Tidy role, std::string_view cell) const;
    static std::string_view speedCell(const CsvRow& row, const ColumnUse& use);
    std::string speedText(const CsvRow& row, const ColumnUse& use, std::string_view text) const;
    std::string yesOrNo(const CsvRow& row, std::string_view cell) const;
    std::string kindText(const CsvRow& row, std::string_view cell) const;
    void checkFixed() const;
    void requireWidth(const CsvRow& row) const;
    void requireValues(const CsvRow& row) const;
    void takeSet(const CsvRow& row, const std::function<void(const CsvRow&)>& visit);
    void takeRep(const CsvRow& row, const std::function<void(const CsvRow&)>& visit);
    Numbers& numbersOf();
    Words headingOf(std::size_t at) const;
    [[noreturn]] void refuse(const CsvRow& row, const Words& column, std::string_view cell,
                             const Words& expected) const;

    Shape m_shape;
    std::vector<std::string> m_headings;
    std::string m_name;
    CsvRow m_tidy; ///< used again from row to row
    std::array<std::string, TidyCount> m_above;
    std::unordered_map<std::string, Numbers> m_numbers;
    std::string m_spelled; ///< what m_last was found by
    Numbers* m_last = nullptr;
};

} // namespace slopebook::exchange
