// SPDX-License-Identifier: GPL-3.0-or-later
// What can be found out about a table by reading it: how it is divided, what its columns hold, and
// what of that could be read in two ways.
#pragma once

#include "core/exchange/csvreader.h"
#include "core/exchange/shape.h"
#include "core/exchange/sheet.h"

#include <array>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// The numbers of a column under one decimal mark.
struct NumberFacts {
    long read = 0; ///< cells that are numbers under this mark
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    /// Largest of the cells that are another number under the other mark.
    double highOfTwofold = -std::numeric_limits<double>::infinity();
};

/// What the numbers of a column are under both marks.
struct NumbersSeen {
    std::array<NumberFacts, 2> numbers; ///< by Decimal
    std::array<std::string, 2> only;    ///< the first cell that is a number under that mark alone
    long twofold = 0;                   ///< cells that are two different numbers
    std::string twofoldSample;
};

struct ColumnFacts : NumbersSeen {
    std::string heading;              ///< "" where the table has no header row
    std::vector<std::string> samples; ///< the first three different cells
    long said = 0;                    ///< cells that are not blank
    NumbersSeen parts;                ///< the same of the parts of cells that hold several
    long lists = 0;                   ///< cells that hold several
    long numbersAndLists = 0;         ///< cells that hold one or several
    long serials = 0;                 ///< cells that may count days
    long moments = 0;                 ///< days with a time of day behind them
    bool rises = true;                ///< none of these is before the one above it
    double lastMoment = 0;
    long times = 0;        ///< cells that are a time of day alone
    bool timesRise = true; ///< of rows of one day none is before the one above it
    double lastTime = 0;
    std::array<long, 3> dates{}; ///< cells that are days, by DateOrder
    std::string dateSample;      ///< a cell that is two different days
    std::string unit;            ///< behind the first number that has one
    bool
    isNumbers() const; ///< at least half of what is said are numbers under one mark or the other
    bool isDates() const;
    bool isTimes() const { return times > 0 && 2 * times >= said; }
    /// The largest number, under the mark that fits more cells; where both fit, the smaller
    /// reading.
    double high() const;
    /// Numbers that may count days, and nothing else.
    bool isSerialDays() const { return said > 0 && serials == said; }
    /// Most cells are one number or several, and some are several.
    bool isLists() const { return lists > 0 && 2 * numbersAndLists >= said; }
    /// The column as its cells' parts.
    ColumnFacts asLists() const {
        ColumnFacts all = *this;
        static_cast<NumbersSeen&>(all) = parts;
        return all;
    }
};

struct FileFacts {
    TextLayout layout;
    std::vector<ColumnFacts> columns;
    std::vector<CsvRow> first;       ///< rows after the header, at most firstShown
    long rows = 0;                   ///< with something in them, without the header
    std::vector<SheetName> sheets{}; ///< of a workbook, all; layout.sheet is the one looked at
    bool sheetIsGuess = false;       ///< another of them would do as well
    std::vector<CsvRow> above{};     ///< passed over at the beginning, at most firstShown
    std::vector<CsvRow> totals{};    ///< left out as rows of totals, at most firstShown
    long totalsRows = 0;
    long rowsWithoutLoad = 0; ///< of loads as columns, with nothing under any
    std::vector<std::string> headings() const;
    /// "Gewicht", or "column 3".
    Words columnName(std::size_t at) const;
};
constexpr std::size_t firstShown = 50;

/// What is told, the rest is found.
struct LayoutTold {
    std::optional<Encoding> encoding{};
    std::optional<char> delimiter{};
    std::optional<long> skip{};
    std::optional<bool> header{};
    std::optional<std::string> sheet{};
    std::optional<bool> unitsRow{};
    std::optional<std::vector<std::string>> leftOut{};
    std::optional<bool> loadsAsColumns{};
    std::optional<bool> byTime{};
};
/// All of a layout.
LayoutTold toldOf(const TextLayout& layout);

/// Reads the whole table once; of a workbook the sheet that looks most like a table of sets, of
/// those that are shown. BadInput for what is no table (as readCsv, readSheet) or has more than 500
/// columns; LogError where it cannot be read.
FileFacts lookAt(const Source& source, const LayoutTold& told = {}, const Progress& progress = {});

} // namespace slopebook::exchange
