// SPDX-License-Identifier: GPL-3.0-or-later
// What the cells of a sheet hold, as text that can be read in one way only, gathered into rows.
#pragma once

#include "core/exchange/csvreader.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace slopebook::exchange {

/// A number with a decimal point; never with exactly three decimals, which could be taken for
/// thousands: 1.234 is "1.2340".
std::string sheetNumber(double value);

/// How a number is shown, as far as it says what it is.
enum class SheetFormat { Number, Moment, Elapsed };
/// Of a number format of Office Open XML (ECMA-376 part 1, 18.8.30 and 18.8.31): its code, or one
/// of the built-in ones by its number. Date and time letters outside quotes, escapes and brackets
/// make a moment; [h], [m], [s] time elapsed.
SheetFormat formatOfCode(std::string_view code);
SheetFormat builtInFormat(long number);

/// A count of days as a sheet keeps a moment: "2026-03-14", with " 10:30:00" behind it where it
/// is no midnight; below one day the time alone. from1904: day 0 is 1904-01-01, else day 1 is
/// 1900-01-01, with the 29 February 1900 that never was (ECMA-376 part 1, 18.17.4.1). A number
/// where it is no moment of the years 1900 to 9999.
std::string momentText(double days, bool from1904);
/// "36:15:00" of 1.51041667 days.
std::string elapsedText(double days);
/// A moment written by ISO 8601, as the same: "2026-03-14T00:00:00" is "2026-03-14".
std::string isoMomentText(std::string_view iso);

/// Gathers the rows of a sheet and hands them over, blank ones left out, as long as the longest so
/// far.
class SheetRows {
public:
    SheetRows(std::string file, const std::function<void(const CsvRow&)>& visit)
        : m_file(std::move(file)), m_visit(visit) {}

    /// number: the sheet's own, from 1. BadInput where it does not rise.
    void begin(long number);
    /// column: from 0. BadInput beyond 500 columns, for a text above 1,000,000 bytes, or a second
    /// one of a cell.
    void put(std::size_t column, std::string text);
    /// A cell that cannot be read: refused where its column is used.
    void putFault(std::size_t column, std::string text, const Words& found);
    bool blank() const { return m_cells.fields.empty(); }
    void end();
    /// "B7" for messages.
    [[noreturn]] void refuse(std::size_t column, const Words& found, const Words& expected) const;

private:
    std::string m_file;
    const std::function<void(const CsvRow&)>& m_visit;
    CsvRow m_cells;
    std::size_t m_width = 0;
    bool m_open = false; ///< a row that has begun
};

/// "A" for 0, "AB" for 27.
std::string columnLetters(std::size_t column);
/// The column of "AB12", from 0; nothing where no letters begin it.
std::optional<std::size_t> columnOfCell(std::string_view reference);

} // namespace slopebook::exchange
