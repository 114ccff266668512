// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers and days as people and programs write them: decimal comma or point, thousands in groups,
// units behind the number, day and month in either order.
#pragma once

#include "core/model/date.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::exchange {

enum class Decimal { Point, Comma };

/// The whole cell as a number with that decimal mark, times ten to the power of shift (the result
/// is the double nearest to what is written). Thousands may stand in groups of three, divided
/// alike by the other mark, a blank (a hard one too) or an apostrophe. Nothing for other text, or a
/// number that is not finite.
std::optional<double> readMarked(std::string_view cell, Decimal mark, int shift = 0);

/// A number's digits and the unit behind it ("72,5 kg"), blanks around both taken off.
struct WithUnit {
    std::string_view number, unit;
};
WithUnit splitUnit(std::string_view cell);

/// The last two count days as a spreadsheet does: day 1 is 1900-01-01 (with the 29 February 1900
/// that never was), or day 0 is 1904-01-01 (ECMA-376 part 1, 18.17.4.1).
enum class DateOrder { YearMonthDay, DayMonthYear, MonthDayYear, DaysFrom1900, DaysFrom1904 };
/// Those in which a day is written out.
inline constexpr std::array writtenOrders{DateOrder::YearMonthDay, DateOrder::DayMonthYear,
                                          DateOrder::MonthDayYear};

/// A day of the calendar, with a time of day behind it passed over: 2026-03-14, 20260314,
/// 14.3.2026, 14/03/26 (a year of two digits is one of 2000 to 2099), 14 Mar 2026, March 14, 2026;
/// months by name in English, German, French or Spanish. Points divide no month-day-year. Nothing
/// for other text.
std::optional<Date> readDate(std::string_view cell, DateOrder order);

/// A number that is a day of the years 1954 to 2119 where it counts days from 1900.
bool mayCountDays(std::string_view cell);

/// The parts of a cell that holds several numbers, divided by blanks, semicolons, slashes, bars or
/// commas with a blank behind them; one part, the whole cell, where it holds none or one.
std::vector<std::string_view> listParts(std::string_view cell);

} // namespace slopebook::exchange
