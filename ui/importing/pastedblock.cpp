// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/pastedblock.h"

#include "core/exchange/shapedimport.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace slopebook::ui {

using namespace exchange;

namespace {

struct PastedWords {
    Q_DECLARE_TR_FUNCTIONS(PastedWords)
};

// Two rows of the same load below each other: two reps of a set, or two sets.
bool sameLoadTwice(const PastedBlock& block) {
    const auto& loads = block.shape.columns[TidyLoad];
    if (loads.empty() || block.shape.columns[TidyVelocity].size() != 1 ||
        !block.shape.columns[TidySet].empty() || !block.shape.columns[TidyRep].empty())
        return false;
    std::string above;
    for (const CsvRow& row : block.facts.first) {
        const std::string load =
            loads[0].at < row.fields.size() ? row.fields[loads[0].at] : std::string();
        if (!load.empty() && load == above)
            return true;
        above = load;
    }
    return false;
}

} // namespace

PastedBlock readBlock(const QString& pasted) {
    PastedBlock block;
    block.source.text = utf8(pasted);
    block.facts = lookAt(block.source,
                         {.encoding = Encoding::Utf8, .delimiter = '\t', .skip = {}, .header = {}});
    if (const auto mixed = mixedMarks(block.facts))
        throw BadInput(*mixed);
    block.shape = propose(block.facts);
    block.wholeTable =
        block.shape.has(TidyDate) || block.shape.has(TidyAthlete) || block.shape.has(TidyLift);
    for (const Question& question : openQuestions(block.shape, block.facts))
        if (question.about != Question::About::Role)
            block.open.push_back(question);
        else if (question.role == TidyLoad || question.role == TidyVelocity)
            block.wholeTable = true;
    block.asksRows = sameLoadTwice(block);
    return block;
}

std::vector<Set> setsOf(const PastedBlock& block) {
    return readSets(block.source, block.shape, block.facts.headings());
}

QStringList notRead(const PastedBlock& block) {
    QStringList names;
    for (std::size_t i = 0; i < block.facts.columns.size(); ++i) {
        const ColumnFacts& column = block.facts.columns[i];
        const bool read = std::ranges::any_of(block.shape.columns, [&](const auto& uses) {
            return std::ranges::find(uses, i, &ColumnUse::at) != uses.end();
        });
        if (read || column.said == 0)
            continue;
        names << (column.heading.empty() ? PastedWords::tr("column %1 (%2)")
                                               .arg(i + 1)
                                               .arg(text(column.samples.front()).simplified())
                                         : text(column.heading));
    }
    return names;
}

QString pastedProblem(const BadInput& bad) {
    const QString what =
        PastedWords::tr("found %1, expected %2.").arg(said(bad.found()), said(bad.expected()));
    return bad.where().line > 0 ? PastedWords::tr("Line %1 of what was pasted, %2: %3")
                                      .arg(bad.where().line)
                                      .arg(said(bad.where().column), what)
                                : PastedWords::tr("What was pasted cannot be read: %1").arg(what);
}

} // namespace slopebook::ui
