// SPDX-License-Identifier: GPL-3.0-or-later
// What bears no name in the log: a stretch of days, "2026-03-01..2026-03-14", and one session of a
// day, "2026-03-14#2".
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

/// One of an athlete's sessions of a day, by its number there, from 1 on.
struct DaySession {
    Date day{};
    int number = 1;
    friend bool operator==(const DaySession&, const DaySession&) = default;
};

/// "2026-03-14#2", and of the first "2026-03-14#1", as it is typed.
std::string isoSession(const DaySession& session);
/// A date, a # and a whole number from 1 on; nothing where the text is not that.
std::optional<DaySession> parseDaySession(std::string_view text);

} // namespace slopebook
