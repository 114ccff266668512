// SPDX-License-Identifier: GPL-3.0-or-later
// How often an athlete trains: sessions a week, one number or from one to another.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace slopebook {

struct Words;

/// The fewest and the most, alike where one number was said; in halves from 0.5 to 21.
struct SessionsAWeek {
    double fewest{};
    double most{};
    friend bool operator==(const SessionsAWeek&, const SessionsAWeek&) = default;
};

inline constexpr double fewestAWeek = 0.5, mostAWeek = 21;

/// Nothing for what is no half from 0.5 to 21, and for a most below the fewest.
std::optional<SessionsAWeek> sessionsAWeek(double fewest, double most);
/// As it is typed: "3", "2-3", "2.5", "2,5 – 3". Nothing for other text.
std::optional<SessionsAWeek> sessionsAWeek(std::string_view typed);

/// As it is typed, with decimal points: "2-3", "2.5".
std::string typedText(const SessionsAWeek& planned);
/// "3 sessions a week", "2 to 3 sessions a week".
Words sayAWeek(const SessionsAWeek& planned);

} // namespace slopebook
