// SPDX-License-Identifier: GPL-3.0-or-later
// What stands around the sheets of an .xlsx workbook: which there are, the texts that they share,
// which of their formats are moments.
#pragma once

#include "core/exchange/sheetparts.h"

#include <map>
#include <string>
#include <vector>

namespace slopebook::exchange {

struct XlsxSheet {
    SheetName name;
    std::string part; ///< within the package
};

struct XlsxBook {
    std::vector<XlsxSheet> sheets;
    bool from1904 = false;
    std::string sharedTexts, styles; ///< their parts; empty where there are none
};
/// ECMA-376 part 1, 18.2; targets by part 2, 9.3: relative to what names them, or absolute.
XlsxBook xlsxBook(const ZipParts& zip);

/// ECMA-376 part 1, 18.4, without what only tells how a text is spoken. BadInput above 256 MB.
std::vector<std::string> sharedTexts(const ZipParts& zip, const std::string& part);
/// What a cell's number is shown as, by the index of its style (ECMA-376 part 1, 18.8.10).
std::vector<SheetFormat> cellFormats(const ZipParts& zip, const std::string& part);

/// The characters that XML cannot hold stand as _x000D_ (ECMA-376 part 1, 22.9.2.19).
std::string unescapedText(std::string text);

} // namespace slopebook::exchange
