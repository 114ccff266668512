// SPDX-License-Identifier: GPL-3.0-or-later
// A load or a body mass in whole grams: exact in kilograms, within half a gram in pounds, compared
// with ==.
#pragma once

#include <cmath>
#include <compare>
#include <cstdint>

namespace slopebook {

struct Mass {
    std::int64_t grams = 0;
    friend constexpr auto operator<=>(const Mass&, const Mass&) = default;
};

constexpr double gramsPerPound = 453.59237; // exact by the international agreement of 1959

/// Kilograms, for statistics and for showing.
constexpr double kilograms(Mass m) noexcept {
    return static_cast<double>(m.grams) / 1000.0;
}
/// Pounds, for showing only: no pound is ever stored.
constexpr double pounds(Mass m) noexcept {
    return static_cast<double>(m.grams) / gramsPerPound;
}
/// The nearest whole gram to a finite number of kilograms.
inline Mass massFromKilograms(double kg) noexcept {
    return Mass{std::llround(kg * 1000.0)};
}
/// The nearest whole gram to a finite number of pounds.
inline Mass massFromPounds(double lb) noexcept {
    return Mass{std::llround(lb * gramsPerPound)};
}

namespace literals {
constexpr Mass operator""_kg(long double kg) noexcept {
    return Mass{static_cast<std::int64_t>(kg * 1000.0L + 0.5L)};
}
constexpr Mass operator""_kg(unsigned long long kg) noexcept {
    return Mass{static_cast<std::int64_t>(kg) * 1000};
}
} // namespace literals

} // namespace slopebook
