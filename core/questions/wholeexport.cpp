// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/wholeexport.h"

#include "core/questions/estimates.h"

#include <array>

namespace slopebook::questions {

std::vector<std::filesystem::path> exportWhole(const log::Log& log,
                                               const std::filesystem::path& folder,
                                               const Progress& progress, log::Existing existing) {
    const std::array added{exchange::AddedTable{
        .table = estimatesTable,
        .rows = [](const log::Log& asItIs, const exchange::AddedTable::Row& row,
                   const Progress& told) {
            eachEstimate(
                asItIs, {}, {}, [&](const EstimateRow& cells) { row(cells); }, told);
        }}};
    return exchange::exportTables(log, folder, progress, existing, added);
}

} // namespace slopebook::questions
