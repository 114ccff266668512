// SPDX-License-Identifier: GPL-3.0-or-later
// The two kinds of workbooks behind sheet.h.
#pragma once

#include "core/exchange/sheet.h"
#include "core/exchange/sheetcells.h"
#include "core/exchange/xmlwalk.h"
#include "core/exchange/zipparts.h"
#include "core/model/phrases/exchange.h"

#include <memory>

namespace slopebook::exchange {

/// Walks through a part of the package.
inline void walkPart(const ZipParts& zip, const std::string& part, XmlVisitor& visitor,
                     const Progress& progress = {}) {
    XmlWalk walk(zip.file().string(), visitor);
    zip.read(
        part, [&](std::string_view piece) { walk.take(piece); }, progress);
    walk.finish();
}

/// A workbook of one kind; zip outlives it.
class BookReader {
public:
    virtual ~BookReader() = default;
    virtual std::vector<SheetName> sheets() const = 0;
    virtual void read(const std::string& sheet, SheetRows& rows, const Progress& progress) = 0;
};
std::unique_ptr<BookReader> xlsxReader(const ZipParts& zip);
std::unique_ptr<BookReader> odsReader(const ZipParts& zip);

/// What a cell holds that is not to be taken: of an error, and of a formula without its value.
inline Words errorFound(const std::string& text) {
    return say("the error %1", text);
}
inline Words formulaFound() {
    return say("a formula whose value is not in the file (open and save it where it was made)");
}

} // namespace slopebook::exchange
