// SPDX-License-Identifier: GPL-3.0-or-later
// Two columns of a CSV of samples: time and what was measured, as devices write them.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// What a file of samples looks like.
struct TraceFile {
    char delimiter = ',';             ///< comma, semicolon or tab
    std::vector<std::string> columns; ///< names from the header, else "1", "2", ...
    long firstLine = 1;               ///< of the first row of numbers
};

/// Lines before the first row of numbers are a header (the last of them) and remarks. BadInput
/// where no row holds two numbers in the first 200 lines.
TraceFile traceFile(const std::filesystem::path& file);

struct TraceColumns {
    std::vector<double> times, values;
    std::vector<long> lines; ///< of the file, one a sample
};

/// The two columns by name (letter case aside) or by number from 1. A decimal comma is taken where
/// the delimiter is not the comma. BadInput (file, line, column) for a cell that is no number, or a
/// column that is not there.
TraceColumns readTrace(const std::filesystem::path& file, const TraceFile& layout,
                       const std::string& time, const std::string& value);

/// The columns that are most likely meant: by a name with "time" or "s" and the first other one.
std::pair<std::string, std::string> likelyColumns(const TraceFile& layout);

} // namespace slopebook::exchange
