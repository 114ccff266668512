// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/seasonasking.h"

#include "ui/athlete/overview/blockcolumns.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace slopebook::ui {

namespace {

using Place = TaskPage::Place;

struct SeasonAskingText {
    Q_DECLARE_TR_FUNCTIONS(SeasonAskingText)
};

NothingThere noSession(const QString& athlete) {
    return {.title = SeasonAskingText::tr("Nothing of %1 yet.").arg(athlete),
            .why = SeasonAskingText::tr(
                "Type the first set under Floor. After two tests this page says "
                "what changed."),
            .way = Place::Session,
            .wayText = SeasonAskingText::tr("&Type the first set")};
}

NothingThere oneTest(const QString& athlete) {
    return {
        .title =
            SeasonAskingText::tr("One test of %1: nothing to compare it with yet.").arg(athlete),
        .why = SeasonAskingText::tr("After a test on a second day this page says what changed."),
        .way = Place::Session,
        .wayText = SeasonAskingText::tr("&Type the next test")};
}

std::vector<Stored<BlockId, Block>> columnsOf(const log::Log& log,
                                              const std::vector<questions::BlockSession>& all) {
    auto blocks = blocksWith(log.blocks(), all);
    return blocks.size() >= 2 ? blocks : lastTwoDays(all);
}

BlockId chosenOf(const std::vector<Stored<BlockId, Block>>& columns, std::optional<BlockId> chosen,
                 bool lastStep) {
    const bool last = chosen == columns.back().id; // of it there is no last step
    if (chosen && !(lastStep && last) &&
        std::ranges::count(columns, *chosen, &Stored<BlockId, Block>::id) > 0)
        return *chosen;
    return lastStep ? columns[columns.size() - 2].id : columns.front().id;
}

} // namespace

SeasonAsking askSeason(const Logbook& logbook, std::optional<AthleteId> athlete,
                       std::optional<BlockId> chosen, bool lastStep) {
    if (!athlete && logbook.log().athletes().empty())
        return {.nothing = {.title = SeasonAskingText::tr("No athlete yet."),
                            .why = SeasonAskingText::tr(
                                "Add the first, then type a set under Floor. After two tests this "
                                "page says what changed."),
                            .way = Place::Athletes,
                            .wayText = SeasonAskingText::tr("Add an athlete…")}};
    if (!athlete)
        return {.nothing = {
                    .title = SeasonAskingText::tr("Choose an athlete."),
                    .why = SeasonAskingText::tr("The list at the left has them all; F9 shows it "
                                                "where it is folded away.")}};
    const log::Log& log = logbook.log();
    const QString name = text(log.athlete(*athlete).value.name);
    std::vector<questions::BlockSession> sessions = questions::seasonOf(log, *athlete);
    if (sessions.empty())
        return {.nothing = noSession(name)};
    const auto columns = columnsOf(log, sessions);
    if (columns.size() < 2)
        return {.nothing = oneTest(name)};
    const questions::SeasonQuestion question{.given = columns,
                                             .chosen = chosenOf(columns, chosen, lastStep)};
    auto answer = questions::seasonMatrixOf(
        log, [&](LiftId lift) -> const questions::LiftContext& { return logbook.context(lift); },
        *athlete, question);
    if (!answer)
        return {.nothing = {.title = name, .why = noAnswerText(answer.why(), logbook.loadUnit())}};
    return {.answer = AskedSeason{.athlete = name,
                                  .matrix = std::move(answer->matrix),
                                  .sessions = std::move(sessions),
                                  .unread = std::move(answer->unread)}};
}

} // namespace slopebook::ui
