// SPDX-License-Identifier: GPL-3.0-or-later
// The mass of a bar, a plate or any other piece, held without rounding in kilograms and in pounds.
//
// Whole grams will not do for pieces: 45 lb is 20,411.65665 g, and a bar with six such plates would
// be off by two grams. The unit here is 10 nanograms: 1 kg is 10^11 of them, and because 1 lb is
// 0.45359237 kg exactly (agreement of 1959), a thousandth of a pound is 45,359,237 of them. So
// every mass written with up to 11 decimals in kg or 3 decimals in lb is a whole number, and sums
// are whole-number sums. Only a finished load is turned into a Mass in grams.
#pragma once

#include "core/model/mass.h"

#include <optional>
#include <string>
#include <string_view>

namespace slopebook {

enum class MassUnit { Kilogram, Pound };

/// "kg", "lb".
std::string_view word(MassUnit unit);
std::optional<MassUnit> massUnitFromWord(std::string_view word);

struct ExactMass {
    std::int64_t units = 0; ///< of 10 ng
    friend constexpr auto operator<=>(const ExactMass&, const ExactMass&) = default;
    friend constexpr ExactMass operator+(ExactMass a, ExactMass b) noexcept {
        return {a.units + b.units};
    }
    friend constexpr ExactMass operator-(ExactMass a, ExactMass b) noexcept {
        return {a.units - b.units};
    }
    friend constexpr ExactMass operator*(int count, ExactMass m) noexcept {
        return {count * m.units};
    }
};

constexpr std::int64_t unitsPerKilogram = 100'000'000'000;
constexpr std::int64_t unitsPerMilliPound = 45'359'237;
constexpr std::int64_t unitsPerPound = 1000 * unitsPerMilliPound;

constexpr double kilograms(ExactMass m) noexcept {
    return static_cast<double>(m.units) / static_cast<double>(unitsPerKilogram);
}
constexpr double pounds(ExactMass m) noexcept {
    return static_cast<double>(m.units) / static_cast<double>(unitsPerPound);
}
/// The number in a unit, for showing and for arithmetic that is not exact.
constexpr double in(MassUnit unit, ExactMass m) noexcept {
    return unit == MassUnit::Pound ? pounds(m) : kilograms(m);
}

/// Exact: a Mass is a whole number of grams.
constexpr ExactMass exactMass(Mass m) noexcept {
    return {m.grams * (unitsPerKilogram / 1000)};
}
/// The nearest whole gram (halves away from zero), as massFromPounds gives it for the same pounds.
constexpr Mass roundedToGrams(ExactMass m) noexcept {
    constexpr std::int64_t gram = unitsPerKilogram / 1000;
    return {m.units >= 0 ? (m.units + gram / 2) / gram : -((-m.units + gram / 2) / gram)};
}
/// The nearest unit to a finite number of kilograms or pounds below 10,000 t. Takes away what
/// floating point adds: 0.7 x 100 kg is 70 kg.
ExactMass nearestExactMass(double value, MassUnit unit) noexcept;

/// Reads digits with one optional decimal point ("2.5", "45", "0.125") in the unit, without
/// rounding. Nothing for a sign, an exponent, other text, more decimals than are exact, or 10,000
/// and more.
std::optional<ExactMass> parseExactMass(std::string_view text, MassUnit unit);

/// The shortest decimal text of the mass in the unit, with at most decimals places, no trailing
/// zeros: "2.5", "45", "20.412".
std::string massText(ExactMass m, MassUnit unit, int decimals = 3);

} // namespace slopebook
