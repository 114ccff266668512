// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of days that bears no name in the log: "2026-03-01..2026-03-14".
#pragma once

#include "core/model/date.h"

#include <optional>
#include <string>
#include <string_view>

namespace slopebook {

/// From the first day to the last, both in it.
struct DayStretch {
    Date first{}, last{};
    constexpr bool holds(Date day) const { return first <= day && day <= last; }
    friend bool operator==(const DayStretch&, const DayStretch&) = default;
};

/// "2026-03-01..2026-03-14", as it is typed.
std::string isoStretch(const DayStretch& days);
/// Two dates with two points between; nothing where the text is not that. BadInput where the later
/// day stands first.
std::optional<DayStretch> parseStretch(std::string_view text);

} // namespace slopebook
