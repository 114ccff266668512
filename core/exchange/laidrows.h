// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a table made plain, as its layout says: titles, units and totals taken out, a row of
// several loads side by side made one row a load, and put in order of time.
#pragma once

#include "core/exchange/csvreader.h"
#include "core/exchange/marks.h"
#include "core/exchange/shape.h"
#include "core/model/mass.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace slopebook::exchange {

/// A load that stands where a column is named: "40 kg", "v at 62,5 kg", or "40" alone (from 10 on,
/// below it is the number of a rep).
struct HeadingLoad {
    std::string number; ///< with a decimal point
    std::optional<MassUnit> unit{};
};
std::optional<HeadingLoad> loadOfHeading(std::string_view heading);

/// Whether each cell that says anything is a unit or a remark as stands under a name, and one at
/// least the unit of a load or a speed.
bool isUnitsRow(const CsvRow& row);
/// The word of totals ("Total", "Mittelwert") that a row begins with which holds no day and leaves
/// two cells or more blank of a table of that width; nothing for any other row.
std::optional<std::string> totalsWord(const CsvRow& row, std::size_t width);
bool sameTotals(std::string_view a, std::string_view b);

/// Where what is told goes; empty ones are not told.
struct LaidOut {
    std::function<void(const CsvRow&)> above{};  ///< passed over at the beginning
    std::function<void(const CsvRow&)> header{}; ///< plain
    std::function<void(const CsvRow&)> units{};  ///< plain
    std::function<void(const CsvRow&, const std::string&)> leftOut{}; ///< with its word
    std::function<void(const CsvRow&)> noLoad{}; ///< of loads as columns, with nothing under any
    std::function<void(const CsvRow&)> row{};    ///< plain; may be blank
};

class LaidRows {
public:
    /// every: whichever word of totals a row begins with, it is left out.
    LaidRows(TextLayout layout, LaidOut out, bool every = false)
        : m_layout(std::move(layout)), m_out(std::move(out)), m_every(every) {}

    void take(const CsvRow& row);

private:
    void takeHeader(const CsvRow& row);
    void unfold(const CsvRow& row);
    CsvRow plain(const CsvRow& row) const;

    TextLayout m_layout;
    LaidOut m_out;
    bool m_every;
    long m_passed = 0;
    bool m_headerRead = false, m_unitsRead = false;
    std::size_t m_width = 0;
    std::vector<std::size_t> m_others; ///< columns that stay
    std::vector<std::pair<std::size_t, std::string>> m_loads;
};

constexpr double secondsADay = 86400;
/// Seconds of a cell that is a time of day and nothing else: "9:05", "21:05:30", "9:05 pm".
std::optional<double> timeOfDay(std::string_view cell);
/// A moment of a cell that has a time of day behind its day: in seconds, to compare.
std::optional<double> momentOf(std::string_view cell, DateOrder order);

} // namespace slopebook::exchange
