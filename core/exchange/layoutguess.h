// SPDX-License-Identifier: GPL-3.0-or-later
// Where a table begins within its first rows, and how it is laid out.
#pragma once

#include "core/exchange/facts.h"

#include <vector>

namespace slopebook::exchange {

/// What is told stands, the rest is found: rows passed over at the beginning, a row of names, one
/// of units, loads as columns.
void layRows(FileFacts& facts, const std::vector<CsvRow>& rows, const LayoutTold& told);

} // namespace slopebook::exchange
