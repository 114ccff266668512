// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of a workbook (.xlsx: ECMA-376; .ods: ODF 1.3), read directly: values and days as the file
// means them, never as it shows them.
#pragma once

#include "core/exchange/csvreader.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// Whether the file begins as a workbook does. BadInput for an old (.xls) or locked one, which
/// begins otherwise. Nothing that cannot be read is one.
bool isWorkbook(const std::filesystem::path& file);

struct SheetName {
    std::string name;
    bool hidden = false;
    friend bool operator==(const SheetName&, const SheetName&) = default;
};
/// In the order of the workbook. BadInput where it is none, has no sheet, is damaged or locked.
std::vector<SheetName> sheetsOf(const std::filesystem::path& file);

/// A workbook that is open: what its sheets share is read once.
class OpenWorkbook {
public:
    /// Throws as sheetsOf.
    explicit OpenWorkbook(const std::filesystem::path& file);
    ~OpenWorkbook();
    const std::vector<SheetName>& sheets() const;
    /// As readSheet.
    void read(const std::string& sheet, const std::function<void(const CsvRow&)>& row,
              const Progress& progress = {});

private:
    struct Held;
    std::unique_ptr<Held> m_held;
};

/// Hands over the rows of a sheet that hold something, by their own numbers; "" is the first sheet
/// that is shown and holds something. A number is written with a decimal point (sheetNumber), a day
/// or moment as ISO, yes and no as 1 and 0; an error, or a formula whose value is not in the file,
/// is a fault of its cell. A merged cell stands at its first place. BadInput as sheetsOf, for a
/// sheet that is not there, and for what no table has; what was handed over before it counts for
/// nothing then.
void readSheet(const std::filesystem::path& file, const std::string& sheet,
               const std::function<void(const CsvRow&)>& row, const Progress& progress = {});

} // namespace slopebook::exchange
