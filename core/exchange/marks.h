// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers and days as people and programs write them: decimal comma or point, thousands in groups,
// units behind the number, day and month in either order.
#pragma once

#include "core/model/date.h"

#include <optional>
#include <string>
#include <string_view>

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

enum class DateOrder { YearMonthDay, DayMonthYear, MonthDayYear };

/// A day of the calendar, with a time of day behind it passed over: 2026-03-14, 20260314,
/// 14.3.2026, 14/03/26 (a year of two digits is one of 2000 to 2099), 14 Mar 2026, March 14, 2026;
/// months by name in English or German. Points divide no month-day-year. Nothing for other text.
std::optional<Date> readDate(std::string_view cell, DateOrder order);

} // namespace slopebook::exchange
