// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sheetguess.h"

#include "core/exchange/proposal.h"
#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {

constexpr long noTable = 100;

// How much a coach would have to say of it: none of speeds is no table of sets.
long missing(const FileFacts& facts) {
    if (facts.rows == 0)
        return noTable + 1;
    const Shape shape = propose(facts);
    if (shape.columns[TidyVelocity].empty())
        return noTable;
    const auto open = openQuestions(shape, facts);
    return std::ranges::count(open, Question::About::Role, &Question::about);
}

} // namespace

void guessSheet(FileFacts& facts, const Source& workbook, const std::optional<std::string>& told) {
    OpenWorkbook open(workbook.file);
    facts.sheets = open.sheets();
    if (told && !told->empty()) {
        facts.layout.sheet = *told;
        return;
    }
    long least = noTable + 1, alike = 0;
    for (const SheetName& sheet : facts.sheets) {
        if (sheet.hidden)
            continue;
        const long unsaid = missing(factsOfBeginning(
            [&](const std::function<void(const CsvRow&)>& row) { open.read(sheet.name, row); }));
        alike = unsaid < least ? 1 : alike + (unsaid == least);
        if (unsaid < least) {
            least = unsaid;
            facts.layout.sheet = sheet.name;
        }
    }
    if (least > noTable)
        throw BadInput({.file = workbook.name(), .line = 0, .column = {}},
                       say("a workbook whose sheets that are shown are empty"),
                       say("one with a table in it"));
    facts.sheetIsGuess = alike > 1;
}

} // namespace slopebook::exchange
