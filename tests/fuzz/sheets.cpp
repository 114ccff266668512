// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a workbook, or as a part of one that is well otherwise (what is packed hides from
// the fuzzer what it does): rows handed over, or refused in words. The first byte says which part:
// x the rows of a sheet, t shared texts, f number formats, s styles, w the list of sheets, o tables
// of an .ods; any other, the file itself.
#include "core/exchange/proposal.h"
#include "core/exchange/sheet.h"
#include "tests/exchange/workbooks.h"
#include "tests/fuzz/workfile.h"

using namespace slopebook;
using namespace slopebook::exchange;

namespace {

const std::string dayStyles = "<xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"164\"/>";
const std::string oneRow = "<row><c t=\"s\"><v>0</v></c><c s=\"1\"><v>46095.5</v></c>"
                           "<c s=\"2\"><v>1.5</v></c></row>";

void writeBook(const fuzz::WorkFile& file, char part, const std::string& text) {
    tests::XlsxText book{.sheetData = oneRow,
                         .sharedTexts = "<si><t>Ann</t></si>",
                         .formats = "<numFmt numFmtId=\"164\" formatCode=\"[h]:mm\"/>",
                         .styles = dayStyles};
    switch (part) {
    case 'x':
        book.sheetData = text;
        break;
    case 't':
        book.sharedTexts = text;
        break;
    case 'f':
        book.formats = text;
        break;
    case 's':
        book.styles = text;
        break;
    case 'w':
        book.sheets = text;
        break;
    default:
        tests::writeZip(file.path(), tests::odsParts(text));
        return;
    }
    tests::writeZip(file.path(), tests::xlsxParts(book));
}

void read(const fuzz::WorkFile& file) {
    for (const SheetName& sheet : sheetsOf(file.path())) {
        long before = 0;
        readSheet(file.path(), sheet.name, [&](const CsvRow& row) {
            if (row.line <= before)
                fuzz::broken("rows that do not rise");
            before = row.line;
        });
    }
    const Source source{.file = file.path(), .text = {}, .sheet = {}};
    const FileFacts facts = lookAt(source);
    const Shape shape = propose(facts);
    openQuestions(shape, facts);
    const std::string text = shapeText(shape, facts.headings());
    if (text.find('\n') == std::string::npos)
        fuzz::broken("a map without a line");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const fuzz::WorkFile file("input.book");
    if (size == 0)
        return 0;
    const auto bytes = fuzz::bytesOf(data, size);
    const std::string rest(bytes.begin() + 1, bytes.end());
    try {
        if (std::string_view("xtfswo").find(bytes[0]) == std::string_view::npos)
            file.write(bytes);
        else
            writeBook(file, bytes[0], rest);
        if (isWorkbook(file.path()))
            read(file);
    } catch (const BadInput& error) {
        if (std::string(error.what()).empty())
            fuzz::broken("refused without a word");
    } catch (const LogError& error) {
        if (std::string(error.what()).empty())
            fuzz::broken("refused without a word");
    }
    return 0;
}
