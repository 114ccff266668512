// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/proposal.h"
#include "core/model/few.h"
#include "core/model/phrases/exchange.h"

namespace slopebook::exchange {

namespace {

Words roleQuestion(Tidy role) {
    switch (role) {
    case TidyDate:
        return say("Which column is the date, or which day is it for all rows?");
    case TidyAthlete:
        return say("Which column names the athlete, or who is it in all rows?");
    case TidyLift:
        return say("Which column names the lift, or which lift is it in all rows?");
    case TidyLoad:
        return say("Which column is the load?");
    default:
        return say("Which column is the velocity (or which are, side by side)?");
    }
}

} // namespace

Words questionWords(const Question& question, const FileFacts& facts) {
    if (question.about == Question::About::Role)
        return roleQuestion(question.role);
    const Words column = question.column ? facts.columnName(*question.column) : Words();
    switch (question.about) {
    case Question::About::DateOrder:
        if (question.column && facts.columns[*question.column].isSerialDays())
            return say("In \"%1\", is %2 a day that a spreadsheet counts from 1900 (%3) or from "
                       "1904 (%4)?",
                       column, question.sample,
                       readDate(question.sample, DateOrder::DaysFrom1900).value_or(Date{}),
                       readDate(question.sample, DateOrder::DaysFrom1904).value_or(Date{}));
        return say("In \"%1\", does %2 begin with the day, the month or the year?", column,
                   question.sample);
    case Question::About::Decimal:
        return say("In \"%1\", is the mark in %2 a decimal mark or one of thousands?", column,
                   question.sample);
    case Question::About::SpeedUnit:
        return say("In \"%1\", is %2 in cm/s (or in hundredths of m/s), or in m/s?", column,
                   question.sample);
    case Question::About::Sheet:
        return say("Which sheet of the workbook is it? \"%1\" is shown.", question.sample);
    case Question::About::Role:
        break;
    }
    return {};
}

Words sheetWords(const FileFacts& facts) {
    std::vector<std::string> hidden;
    for (const SheetName& sheet : facts.sheets)
        if (sheet.hidden)
            hidden.push_back(sheet.name);
    if (hidden.empty())
        return {};
    return say("Hidden sheets are not looked at by themselves: %1.", few(hidden));
}

std::vector<Words> layoutWords(const FileFacts& facts) {
    std::vector<Words> told;
    const TextLayout& layout = facts.layout;
    if (layout.unitsRow)
        told.push_back(say("The row under the names is read as their units."));
    if (layout.loadsAsColumns)
        told.push_back(say("Columns that are named by a load are read as a set each."));
    if (facts.totalsRows > 0)
        told.push_back(
            say("Left out as totals, %1 rows: %2.", facts.totalsRows, few(layout.leftOut)));
    if (facts.rowsWithoutLoad > 0)
        told.push_back(
            say("Passed over, %1 rows with nothing under any load.", facts.rowsWithoutLoad));
    return told;
}

Words orderWords(const Shape& shape, const FileFacts& facts) {
    const auto& dates = shape.columns[TidyDate];
    if (!shape.layout.byTime || (dates.empty() && !shape.timeOfDay))
        return {};
    return say("Rows follow one another by the time in \"%1\", not as they stand.",
               facts.columnName(shape.timeOfDay ? *shape.timeOfDay : dates[0].at));
}

Words letterCaution(const FileFacts& facts) {
    return facts.layout.encoding == Encoding::Latin1
               ? say("The letters are not UTF-8: they are read as Latin-1. Look at the names.")
               : Words();
}

} // namespace slopebook::exchange
