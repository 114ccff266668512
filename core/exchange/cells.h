// SPDX-License-Identifier: GPL-3.0-or-later
// Single cells of CSV: numbers with a decimal point and no locale, and text that a spreadsheet must
// not run as a formula.
#pragma once

#include "core/model/mass.h"
#include "core/model/words.h"

#include <optional>
#include <string>
#include <string_view>

namespace slopebook::exchange {

/// Text as it goes into a file: one that begins, after blanks, with = + - @ TAB CR LF gets a
/// leading '. So does one that unguarded() would take for such a text.
std::string guarded(std::string_view text);
/// Takes exactly that ' off again: unguarded(guarded(text)) == text for any text.
std::string unguarded(std::string_view cell);

/// A finite decimal number, whole cell, decimal point; nothing for a comma, blanks, hex, nan, inf.
std::optional<double> readNumber(std::string_view cell);
/// A whole number from 1 to 1,000,000.
std::optional<int> readCount(std::string_view cell);

/// The shortest digits that read back the same, without an exponent.
std::string writeNumber(double value);
/// Kilograms of a mass, exact: "72.5".
std::string writeKilograms(Mass mass);

/// A text cell of a CSV row, guarded, in quotes where it needs them.
std::string csvText(std::string_view text);

/// What was found, for a message: the cell in quotes, cut where it is long; "nothing" when empty.
Words found(std::string_view cell);

} // namespace slopebook::exchange
