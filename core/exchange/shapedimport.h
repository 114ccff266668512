// SPDX-License-Identifier: GPL-3.0-or-later
// Any table into a log, read as a shape says: whole or not at all, with every refusal listed; the
// same table twice adds nothing.
#pragma once

#include "core/exchange/shape.h"
#include "core/exchange/tidyimport.h"

#include <string>
#include <vector>

namespace slopebook::exchange {

struct ShapedReport {
    ImportReport report; ///< of what was read; of what was written where nothing is refused
    std::vector<BadInput> refused; ///< in the order of the table, at most refusalsKept
    long rowsRead = 0;             ///< of the table, blank ones aside
    long rowsRefused = 0;
    bool wholeRead = true; ///< false: the last refusal hid what stands after it (an open quote)
    bool intoLog = false;  ///< what the log holds was looked at too: only where the table is sound
};
constexpr std::size_t refusalsKept = 5000;

/// Reads the table, and where nothing in it is refused brings it into the log in one transaction;
/// what contradicts the log is refused likewise, and then nothing is written. headings: of all the
/// table's columns, as FileFacts has them. settings: its columns are not looked at. The shape must
/// have no open question. Throws LogError; Cancelled, with nothing written; BadInput for a value
/// that the shape says is the same in all rows and that may not stand.
ShapedReport importShaped(log::Log& log, const Source& source, const Shape& shape,
                          const std::vector<std::string>& headings, const ImportSettings& settings);

/// A row of a table and what it is read as: tidy rows (in the order of Tidy), or why it is refused.
/// What other rows or the log say against it is not looked at.
struct ReadRow {
    CsvRow found;
    std::vector<CsvRow> tidy;
    std::optional<BadInput> refused;
};
/// The given first rows of a table. Throws as ShapeRows does for values that are for all rows.
std::vector<ReadRow> readFirst(const std::vector<CsvRow>& first, const Shape& shape,
                               const std::vector<std::string>& headings, const std::string& name);

/// The sets of a table that knows no athlete, lift or day (a block pasted into a session), in its
/// order. Throws BadInput at the first cell that is refused.
std::vector<Set> readSets(const Source& source, Shape shape,
                          const std::vector<std::string>& headings);

} // namespace slopebook::exchange
