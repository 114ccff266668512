// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/whoreads.h"

#include "core/exchange/batterycsv.h"
#include "core/exchange/csvreader.h"
#include "core/exchange/equipmentcsv.h"
#include "core/exchange/identitycsv.h"
#include "core/exchange/stationcsv.h"
#include "core/exchange/table.h"
#include "core/model/errors.h"

#include <algorithm>
#include <utility>

namespace slopebook::exchange {

namespace {

struct RowFound {}; // stops reading once a row is there

/// By what no table that is read has.
bool isDerivedHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {"point_velocity"}) || hasColumns(header, {"slope_m_s_kg"}) ||
           hasColumns(header, {"table", "column", "meaning"});
}

} // namespace

ToRead readerOf(const std::vector<std::string>& header,
                const std::map<std::string, std::string>& columns) {
    if (isDerivedHeader(header))
        return {.as = ReadAs::Derived};
    if (isIdentitiesHeader(header))
        return {.as = ReadAs::Identities};
    if (isTestsHeader(header))
        return {.as = ReadAs::Tests};
    if (isAttemptsHeader(header))
        return {.as = ReadAs::Attempts};
    if (isEquipmentHeader(header))
        return {.as = ReadAs::Equipment};
    if (isStationsHeader(header))
        return {.as = ReadAs::Stations};
    if (isRostersHeader(header))
        return {.as = ReadAs::Rosters};
    // Mapped columns stand under other names; only reps are ever mapped.
    const bool mapped = std::ranges::any_of(
        columns, [&](const auto& entry) { return columnOf(header, entry.second).has_value(); });
    const FileKind kind = mapped ? FileKind::Reps : fileKind(header);
    return {.as = kind == FileKind::Reps       ? ReadAs::Reps
                  : kind == FileKind::Sessions ? ReadAs::Sessions
                                               : ReadAs::Table,
            .kind = kind};
}

ToRead readerOf(const std::filesystem::path& file,
                const std::map<std::string, std::string>& columns) {
    ToRead what = readerOf(headerOf(file), columns);
    what.file = file;
    return what;
}

bool hasRows(const std::filesystem::path& file) {
    bool header = true;
    try {
        readCsv(file, ',', [&](const CsvRow& row) {
            const bool said =
                std::ranges::any_of(row.fields, [](const auto& cell) { return !cell.empty(); });
            if (!std::exchange(header, false) && said)
                throw RowFound{};
        });
    } catch (const RowFound&) {
        return true;
    } catch (const BadInput&) {
        return true; // told when it is read
    }
    return false;
}

} // namespace slopebook::exchange
