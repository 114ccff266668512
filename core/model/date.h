// SPDX-License-Identifier: GPL-3.0-or-later
// Calendar dates: std::chrono::year_month_day, written and read as ISO 8601 (2026-03-14).
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace slopebook {

using Date = std::chrono::year_month_day;

/// A whole number with leading zeros up to so many digits: "07".
std::string padded(unsigned value, std::size_t digits);
/// "2026-03-14". The date must be ok().
std::string isoDate(Date date);

/// Reads exactly YYYY-MM-DD with a day that exists; nothing else.
std::optional<Date> parseIsoDate(std::string_view text);

/// Days from the first date to the second; negative when the second is earlier.
long daysBetween(Date first, Date second);

} // namespace slopebook
