// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/marks.h"

#include "core/model/names.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <tuple>
#include <vector>

namespace slopebook::exchange {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!text.empty() && blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && blank(text.back()))
        text.remove_suffix(1);
    return text;
}

std::size_t digitsAt(std::string_view text, std::size_t at) {
    std::size_t n = 0;
    while (at + n < text.size() && isDigit(text[at + n]))
        ++n;
    return n;
}

// What divides groups of thousands at that place; empty where nothing does.
std::string_view groupMark(std::string_view text, Decimal mark) {
    for (const std::string_view divider :
         {std::string_view(mark == Decimal::Point ? "," : "."), std::string_view(" "),
          std::string_view("'"), std::string_view("\u2019"), std::string_view("\u00a0"),
          std::string_view("\u202f")})
        if (text.starts_with(divider))
            return divider;
    return {};
}

// The digits before the decimal mark, groups put together; false where the groups are none.
bool takeWhole(std::string_view& text, Decimal mark, std::string& plain) {
    const std::size_t first = digitsAt(text, 0);
    plain += text.substr(0, first);
    text.remove_prefix(first);
    const std::string_view divider = groupMark(text, mark);
    if (divider.empty() || first == 0)
        return true;
    if (first > 3 || plain[plain.size() - first] == '0')
        return false;
    while (text.starts_with(divider)) {
        text.remove_prefix(divider.size());
        if (digitsAt(text, 0) != 3)
            return false;
        plain += text.substr(0, 3);
        text.remove_prefix(3);
    }
    return true;
}

// An exponent as programs write it: E-05.
bool takeExponent(std::string_view& text, int& shift) {
    if (text.empty() || (text[0] != 'e' && text[0] != 'E'))
        return true;
    text.remove_prefix(1);
    if (text.starts_with('+'))
        text.remove_prefix(1);
    int exponent = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), exponent);
    if (error != std::errc{} || std::abs(exponent) > 400)
        return false;
    shift += exponent;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return true;
}

// English, German, French, Spanish.
constexpr std::array<std::array<std::string_view, 5>, 12> months{
    {{"jan", "j\u00E4n", "ene", "", ""},
     {"feb", "f\u00E9v", "fev", "", ""},
     {"mar", "m\u00E4r", "mae", "", ""},
     {"apr", "avr", "abr", "", ""},
     {"may", "mai", "", "", ""},
     {"jun", "juin", "", "", ""},
     {"jul", "juil", "", "", ""},
     {"aug", "ao\u00FB", "aou", "ago", ""},
     {"sep", "set", "", "", ""},
     {"oct", "okt", "", "", ""},
     {"nov", "", "", "", ""},
     {"dec", "dez", "d\u00E9c", "dic", ""}}};

unsigned monthNamed(std::string_view word) {
    const std::string folded = foldCase(word);
    for (unsigned i = 0; i < months.size(); ++i)
        for (const std::string_view name : months[i])
            if (!name.empty() && std::string_view(folded).starts_with(name))
                return i + 1;
    return 0;
}

struct Part {
    std::string_view text;
    bool number = false;
};

// Up to three parts of a date, what divides the first two, and what follows the third.
struct Parts {
    std::vector<Part> parts;
    char divider = ' ';
    std::string_view rest;
};

bool divides(char c) {
    return c == '.' || c == '/' || c == '-' || c == ' ' || c == ',';
}

Parts partsOf(std::string_view text) {
    Parts found;
    while (!text.empty() && found.parts.size() < 3) {
        const bool number = isDigit(text.front());
        std::size_t n = 0;
        while (n < text.size() && isDigit(text[n]) == number && !divides(text[n]))
            ++n;
        if (n == 0)
            return {};
        found.parts.push_back({text.substr(0, n), number});
        text.remove_prefix(n);
        if (found.parts.size() == 3)
            break;
        if (text.empty() || !divides(text.front()))
            return {};
        if (found.parts.size() == 1)
            found.divider = text.front();
        while (!text.empty() && divides(text.front()))
            text.remove_prefix(1);
    }
    found.rest = text;
    return found;
}

// "T08:15:00Z", " 8:15 PM" or nothing.
bool isTimeOrNothing(std::string_view text) {
    if (text.empty())
        return true;
    if (text.front() != 'T' && text.front() != ' ' && text.front() != ',')
        return false;
    text.remove_prefix(1);
    text = trimmed(text);
    return !text.empty() && isDigit(text.front()) && text.find(':') != std::string_view::npos &&
           text.find_first_not_of("0123456789:.,+- AaPpMmZzUuhr") == std::string_view::npos;
}

std::optional<unsigned> small(std::string_view digits) {
    unsigned value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc{} || end != digits.data() + digits.size())
        return {};
    return value;
}

std::optional<Date> dayOf(const Part& year, const Part& month, const Part& day, bool shortYear) {
    if (!year.number || !day.number || day.text.size() > 2 ||
        (year.text.size() != 4 && !(shortYear && year.text.size() == 2)))
        return {};
    if (month.number && month.text.size() > 2)
        return {};
    const auto y = small(year.text), d = small(day.text);
    const auto m = month.number ? small(month.text) : std::optional(monthNamed(month.text));
    if (!y || !m || !d)
        return {};
    const Date date{std::chrono::year{static_cast<int>(*y) + (year.text.size() == 2 ? 2000 : 0)},
                    std::chrono::month{*m}, std::chrono::day{*d}};
    return date.ok() && *y + (year.text.size() == 2 ? 1U : 0U) > 0 ? std::optional(date)
                                                                   : std::nullopt;
}

} // namespace

std::optional<double> readMarked(std::string_view cell, Decimal mark, int shift) {
    std::string_view text = trimmed(cell);
    std::string plain;
    if (text.starts_with('-') || text.starts_with('+')) {
        if (text.front() == '-')
            plain = "-";
        text.remove_prefix(1);
    }
    const std::size_t sign = plain.size();
    if (!takeWhole(text, mark, plain))
        return {};
    if (text.starts_with(mark == Decimal::Point ? '.' : ',')) {
        const std::size_t decimals = digitsAt(text, 1);
        if (decimals == 0)
            return {};
        if (plain.size() == sign)
            plain += '0';
        plain += '.';
        plain += text.substr(1, decimals);
        text.remove_prefix(1 + decimals);
    }
    if (plain.size() == sign || !takeExponent(text, shift) || !text.empty())
        return {};
    if (shift != 0)
        plain += "e" + std::to_string(shift);
    double value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc{} || end != plain.data() + plain.size() || !std::isfinite(value))
        return {};
    return value;
}

WithUnit splitUnit(std::string_view cell) {
    cell = trimmed(cell);
    const auto last = cell.find_last_of("0123456789");
    if (last == std::string_view::npos ||
        cell.substr(0, last).find_first_of("abcdfghijklmnopqrstuvwxyzABCDFGHIJKLMNOPQRSTUVWXYZ") !=
            std::string_view::npos)
        return {cell, {}};
    return {cell.substr(0, last + 1), trimmed(cell.substr(last + 1))};
}

namespace {
std::optional<double> daysOf(std::string_view cell) {
    auto days = readMarked(cell, Decimal::Point);
    if (!days)
        days = readMarked(cell, Decimal::Comma);
    constexpr double first = 20'000, last = 80'000; // 1954-10-03 to 2119-01-10
    const bool grouped = trimmed(cell).find(' ') != std::string_view::npos;
    return days && *days >= first && *days < last && !grouped ? days : std::nullopt;
}
} // namespace

bool mayCountDays(std::string_view cell) {
    return daysOf(cell).has_value();
}

std::vector<std::string_view> listParts(std::string_view cell) {
    const std::string_view whole = trimmed(cell);
    std::vector<std::string_view> parts;
    std::string_view rest = whole;
    while (!rest.empty()) {
        std::size_t end = 0;
        const auto isComma = [&](std::size_t at) {
            return rest[at] == ',' && at + 1 < rest.size() && rest[at + 1] == ' ';
        };
        while (end < rest.size() &&
               std::string_view(" \t;/|\n").find(rest[end]) == std::string_view::npos &&
               !isComma(end))
            ++end;
        if (end > 0)
            parts.push_back(rest.substr(0, end));
        rest.remove_prefix(std::min(rest.size(), end + 1));
    }
    const bool all = std::ranges::all_of(parts, [](std::string_view part) {
        return readMarked(part, Decimal::Point) || readMarked(part, Decimal::Comma);
    });
    return parts.size() > 1 && all ? parts : std::vector<std::string_view>{whole};
}

std::optional<Date> readDate(std::string_view cell, DateOrder order) {
    const std::string_view text = trimmed(cell);
    if (order == DateOrder::DaysFrom1900 || order == DateOrder::DaysFrom1904) {
        const auto days = daysOf(text);
        if (!days)
            return {};
        const std::chrono::sys_days zero =
            order == DateOrder::DaysFrom1904
                ? std::chrono::sys_days(std::chrono::year(1904) / 1 / 1)
                : std::chrono::sys_days(std::chrono::year(1899) / 12 / 30);
        return Date(zero + std::chrono::days(static_cast<int>(*days)));
    }
    if (order == DateOrder::YearMonthDay && text.size() >= 8 && digitsAt(text, 0) == 8 &&
        isTimeOrNothing(text.substr(8)))
        return dayOf({text.substr(0, 4), true}, {text.substr(4, 2), true},
                     {text.substr(6, 2), true}, false);
    const Parts found = partsOf(text);
    if (found.parts.size() != 3 || !isTimeOrNothing(found.rest))
        return {};
    const auto& [a, b, c] = std::tie(found.parts[0], found.parts[1], found.parts[2]);
    switch (order) {
    case DateOrder::YearMonthDay:
        return dayOf(a, b, c, false);
    case DateOrder::DayMonthYear:
        return dayOf(c, b, a, true);
    case DateOrder::MonthDayYear:
        return found.divider == '.' && a.number ? std::nullopt : dayOf(c, a, b, true);
    case DateOrder::DaysFrom1900:
    case DateOrder::DaysFrom1904:
        break;
    }
    return {};
}

} // namespace slopebook::exchange
