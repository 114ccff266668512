// SPDX-License-Identifier: GPL-3.0-or-later
// Which sheet of a workbook is the table.
#pragma once

#include "core/exchange/facts.h"

#include <functional>

namespace slopebook::exchange {

/// The facts of a table's first rows alone, of those that read hands over (facts.cpp).
using RowReader = std::function<void(const std::function<void(const CsvRow&)>& row)>;
FileFacts factsOfBeginning(const RowReader& read);

/// Fills in the sheets of the workbook and which of them is looked at: the one told, else of those
/// that are shown the first whose columns leave least to be said; a guess where others leave as
/// little. BadInput where none that is shown holds anything, or there is none of that name.
void guessSheet(FileFacts& facts, const Source& workbook, const std::optional<std::string>& told);

} // namespace slopebook::exchange
