// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/figures.h"

#include <array>
#include <charconv>
#include <cmath>

namespace slopebook {

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

std::string shortFixed(double value, int most) {
    std::string shown = fixed(value, most);
    if (shown.find('.') == std::string::npos)
        return shown;
    shown.erase(shown.find_last_not_of('0') + 1);
    if (shown.back() == '.')
        shown.pop_back();
    return shown;
}

} // namespace slopebook
