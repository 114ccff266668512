// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sheet.h"

#include "core/exchange/sheetparts.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <array>
#include <fstream>

namespace slopebook::exchange {

namespace {

struct RowSeen {}; // stops reading

bool isOds(const ZipParts& zip) {
    return !zip.has("_rels/.rels") && zip.has("content.xml");
}

std::vector<SheetName> namesIn(const ZipParts& zip) {
    auto names = isOds(zip) ? odsSheets(zip) : xlsxSheets(zip);
    if (names.empty())
        throw BadInput({.file = zip.file().string(), .line = 0, .column = {}},
                       say("a workbook without a sheet of cells"), say("one with a table in it"));
    return names;
}

void readNamed(const ZipParts& zip, const std::string& sheet,
               const std::function<void(const CsvRow&)>& row, const Progress& progress) {
    SheetRows rows(zip.file().string(), row);
    (isOds(zip) ? readOds : readXlsx)(zip, sheet, rows, progress);
}

bool holdsRows(const ZipParts& zip, const std::string& sheet) {
    try {
        const std::function<void(const CsvRow&)> stop = [](const CsvRow&) { throw RowSeen{}; };
        readNamed(zip, sheet, stop, {});
    } catch (const RowSeen&) {
        return true;
    }
    return false;
}

} // namespace

bool isWorkbook(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::array<char, 8> begin{};
    in.read(begin.data(), begin.size());
    const std::string_view bytes(begin.data(), static_cast<std::size_t>(in.gcount()));
    // A compound file: how workbooks were before 2007, and how one with a password is wrapped.
    if (bytes == "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1")
        throw BadInput({.file = file.string(), .line = 0, .column = {}},
                       say("a workbook of an old kind (.xls), or one locked by a password"),
                       say("an .xlsx or .ods file without a password, or CSV"));
    return bytes.starts_with("PK\x03\x04") || bytes.starts_with("PK\x05\x06");
}

std::vector<SheetName> sheetsOf(const std::filesystem::path& file) {
    return namesIn(ZipParts(file));
}

void readSheet(const std::filesystem::path& file, const std::string& sheet,
               const std::function<void(const CsvRow&)>& row, const Progress& progress) {
    const ZipParts zip(file);
    const auto names = namesIn(zip);
    auto at = std::ranges::find(names, sheet, &SheetName::name);
    if (sheet.empty())
        at = std::ranges::find_if(names, [&](const SheetName& each) {
            return !each.hidden && holdsRows(zip, each.name);
        });
    if (at == names.end() && sheet.empty())
        return;
    if (at == names.end())
        throw BadInput({.file = file.string(), .line = 0, .column = {}},
                       say("no sheet named \"%1\"", sheet),
                       say("one of its sheets, such as \"%1\"", names.front().name));
    readNamed(zip, at->name, row, progress);
}

} // namespace slopebook::exchange
