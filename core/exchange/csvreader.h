// SPDX-License-Identifier: GPL-3.0-or-later
// Reads CSV rows through libcsv: quotes, line breaks inside quotes, CRLF, BOM; knows the line each
// row began on. A workbook is read by its sheet instead, and its rows are alike.
#pragma once

#include "core/exchange/source.h"
#include "core/model/errors.h"

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// A cell of a workbook that holds no value: an error, a formula that was never worked out.
struct CellFault {
    std::size_t at = 0;
    Words found;
};

struct CsvRow {
    long line = 0; ///< the line of the file that the row begins on, from 1
    std::vector<std::string> fields;
    std::vector<CellFault> faults{}; ///< only of workbooks
};

/// Hands over the rows of a UTF-8 text, empty lines left out. Throws BadInput (file, line) for NUL,
/// UTF-16, text that is not UTF-8, a quote that never closes, a field over 1,000,000 bytes;
/// LogError::Unavailable where the file cannot be read.
void readCsv(const std::filesystem::path& file, char delimiter,
             const std::function<void(const CsvRow&)>& row, const Progress& progress = {});

/// The same of any source in an encoding that was found or told. Of a workbook (sheet.h) the rows
/// of source.sheet, whatever encoding and delimiter.
void readCsv(const Source& source, Encoding encoding, char delimiter,
             const std::function<void(const CsvRow&)>& row, const Progress& progress = {});

} // namespace slopebook::exchange
