// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/date.h"

#include <charconv>

namespace slopebook {

std::string padded(unsigned value, std::size_t digits) {
    std::string text = std::to_string(value);
    if (text.size() < digits)
        text.insert(0, digits - text.size(), '0');
    return text;
}

std::string isoDate(Date date) {
    const int year = static_cast<int>(date.year());
    return (year < 0 ? "-" : "") + padded(static_cast<unsigned>(year < 0 ? -year : year), 4) + "-" +
           padded(static_cast<unsigned>(date.month()), 2) + "-" +
           padded(static_cast<unsigned>(date.day()), 2);
}

namespace {
std::optional<unsigned> digits(std::string_view text) {
    unsigned value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + static_cast<unsigned>(c - '0');
    }
    return value;
}
} // namespace

std::optional<Date> parseIsoDate(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day)
        return std::nullopt;
    const Date date{std::chrono::year{static_cast<int>(*year)}, std::chrono::month{*month},
                    std::chrono::day{*day}};
    if (!date.ok())
        return std::nullopt;
    return date;
}

long daysBetween(Date first, Date second) {
    return static_cast<long>(
        (std::chrono::sys_days{second} - std::chrono::sys_days{first}).count());
}

} // namespace slopebook
