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
    facts.sheets = sheetsOf(workbook.file);
    if (told && !told->empty()) {
        facts.layout.sheet = *told;
        return;
    }
    long least = noTable + 1, alike = 0;
    for (const SheetName& sheet : facts.sheets) {
        if (sheet.hidden)
            continue;
        Source source = workbook;
        source.sheet = sheet.name;
        const long open = missing(factsOfBeginning(source));
        alike = open < least ? 1 : alike + (open == least);
        if (open < least) {
            least = open;
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
