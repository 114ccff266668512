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

std::unique_ptr<BookReader> readerOf(const ZipParts& zip) {
    return !zip.has("_rels/.rels") && zip.has("content.xml") ? odsReader(zip) : xlsxReader(zip);
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

struct OpenWorkbook::Held {
    explicit Held(const std::filesystem::path& file)
        : zip(file), reader(readerOf(zip)), sheets(reader->sheets()) {
        if (sheets.empty())
            throw BadInput({.file = file.string(), .line = 0, .column = {}},
                           say("a workbook without a sheet of cells"),
                           say("one with a table in it"));
    }

    void read(const std::string& sheet, const std::function<void(const CsvRow&)>& row,
              const Progress& progress) {
        SheetRows rows(zip.file().string(), row);
        reader->read(sheet, rows, progress);
    }

    bool holdsRows(const std::string& sheet) {
        try {
            read(sheet, [](const CsvRow&) { throw RowSeen{}; }, {});
        } catch (const RowSeen&) {
            return true;
        }
        return false;
    }

    ZipParts zip;
    std::unique_ptr<BookReader> reader;
    std::vector<SheetName> sheets;
};

OpenWorkbook::OpenWorkbook(const std::filesystem::path& file)
    : m_held(std::make_unique<Held>(file)) {}

OpenWorkbook::~OpenWorkbook() = default;

const std::vector<SheetName>& OpenWorkbook::sheets() const {
    return m_held->sheets;
}

void OpenWorkbook::read(const std::string& sheet, const std::function<void(const CsvRow&)>& row,
                        const Progress& progress) {
    const auto& names = m_held->sheets;
    auto at = std::ranges::find(names, sheet, &SheetName::name);
    if (sheet.empty())
        at = std::ranges::find_if(names, [&](const SheetName& each) {
            return !each.hidden && m_held->holdsRows(each.name);
        });
    if (at != names.end())
        m_held->read(at->name, row, progress);
    else if (!sheet.empty())
        throw BadInput({.file = m_held->zip.file().string(), .line = 0, .column = {}},
                       say("no sheet named \"%1\"", sheet),
                       say("one of its sheets, such as \"%1\"", names.front().name));
}

std::vector<SheetName> sheetsOf(const std::filesystem::path& file) {
    return OpenWorkbook(file).sheets();
}

void readSheet(const std::filesystem::path& file, const std::string& sheet,
               const std::function<void(const CsvRow&)>& row, const Progress& progress) {
    OpenWorkbook(file).read(sheet, row, progress);
}

} // namespace slopebook::exchange
