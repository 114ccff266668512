// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/exactmass.h"

#include <charconv>

namespace slopebook {

std::string_view word(MassUnit unit) {
    return unit == MassUnit::Pound ? "lb" : "kg";
}

std::optional<MassUnit> massUnitFromWord(std::string_view word) {
    if (word == "kg")
        return MassUnit::Kilogram;
    if (word == "lb")
        return MassUnit::Pound;
    return std::nullopt;
}

ExactMass nearestExactMass(double value, MassUnit unit) noexcept {
    const auto per = unit == MassUnit::Pound ? unitsPerPound : unitsPerKilogram;
    return {std::llround(value * static_cast<double>(per))};
}

std::optional<ExactMass> parseExactMass(std::string_view text, MassUnit unit) {
    const int places = unit == MassUnit::Pound ? 3 : 11;
    const std::int64_t smallest = unit == MassUnit::Pound ? unitsPerMilliPound : 1;
    std::int64_t number = 0;
    int decimals = -1;
    int digits = 0;
    for (const char c : text) {
        if (c == '.' && decimals < 0) {
            decimals = 0;
            continue;
        }
        if (c < '0' || c > '9')
            return std::nullopt;
        if (decimals >= 0 && ++decimals > places)
            return std::nullopt;
        if (decimals < 0 && number >= 1000)
            return std::nullopt;
        number = number * 10 + (c - '0');
        ++digits;
    }
    if (digits == 0 || decimals == 0)
        return std::nullopt;
    for (int place = decimals < 0 ? 0 : decimals; place < places; ++place)
        number *= 10;
    return ExactMass{number * smallest};
}

std::string massText(ExactMass m, MassUnit unit, int decimals) {
    char text[64];
    const auto end =
        std::to_chars(text, text + sizeof text, in(unit, m), std::chars_format::fixed, decimals);
    std::string shown(text, end.ptr);
    if (shown.find('.') != std::string::npos) {
        while (shown.back() == '0')
            shown.pop_back();
        if (shown.back() == '.')
            shown.pop_back();
    }
    return shown == "-0" ? "0" : shown;
}

} // namespace slopebook
