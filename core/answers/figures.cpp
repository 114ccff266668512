// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/figures.h"

#include <array>
#include <charconv>
#include <cmath>

namespace slopebook::answers {

std::string fixed(double value, int decimals) {
    if (!std::isfinite(value))
        return "-";
    std::array<char, 400> text{}; // the longest double has 309 digits before its point
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value,
                                   std::chars_format::fixed, decimals);
    std::string shown(text.data(), end.ptr);
    if (shown.front() == '-' && shown.find_first_not_of("-0.") == std::string::npos)
        shown.erase(0, 1);
    return shown;
}

std::string signedFixed(double value, int decimals) {
    const std::string shown = fixed(value, decimals);
    const bool zero = shown.find_first_not_of("0.") == std::string::npos;
    return zero || shown.front() == '-' ? shown : "+" + shown;
}

std::string loadText(double kilograms) {
    std::string shown = fixed(kilograms, 3);
    if (shown.find('.') == std::string::npos)
        return shown;
    shown.erase(shown.find_last_not_of('0') + 1);
    if (shown.back() == '.')
        shown.pop_back();
    return shown;
}

std::string cited(std::string source) {
    constexpr std::string_view mark = "from memory";
    for (auto at = source.find(mark); at != std::string::npos; at = source.find(mark)) {
        const auto end = at + mark.size();
        const auto clause = source.find_last_of(",;(", at);
        if (clause == std::string::npos)
            source.erase(0, end);
        else if (source[clause] == '(' && end < source.size() && source[end] == ')')
            source.erase(clause > 0 ? clause - 1 : clause,
                         end + 1 - (clause > 0 ? clause - 1 : clause));
        else
            source.erase(clause, end - clause);
    }
    return source;
}

std::string pText(double p) {
    constexpr double least = 0.001;
    return p < least ? "p < " + fixed(least, 3) : "p = " + fixed(p, 3);
}

std::string counted(int count, const std::string& noun) {
    std::string many = noun;
    if (noun.ends_with("maximum"))
        many.replace(many.size() - 2, 2, "a");
    else
        many += 's';
    return std::to_string(count) + " " + (count == 1 ? noun : many);
}

} // namespace slopebook::answers
