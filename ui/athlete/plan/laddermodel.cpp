// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/laddermodel.h"

#include "core/answers/nexttestwords.h"
#include "ui/parts/rowtable.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

void PlanLadderModel::setNextTest(std::optional<answers::NextTest> next, LoadUnit unit) {
    m_next = std::move(next);
    QStringList headings{tr("#"),        tr("Ladder"),        tr("Loads (%1)").arg(unitName(unit)),
                         tr("Heaviest"), tr("Estimated 1RM"), tr("Its change")};
    QList<int> right{Rank};
    std::vector<Row> rows;
    if (m_next)
        for (const Mass load : m_next->settings.checkLoads)
            headings << tr("Change at %1").arg(loadWithUnit(kilograms(load), unit));
    headings = inTwoLines(headings); // leaves the columns after them their room
    headings << tr("Beware");
    for (int column = Heaviest; column < bewareColumn(); ++column)
        right << column;
    for (std::size_t row = 0; m_next && row < m_next->ladders.size(); ++row)
        rows.push_back({.cells = cells(row, unit), .explanation = explanation(row)});
    setTable(headings, std::move(rows), right);
}

int PlanLadderModel::bewareColumn() const {
    return FirstCheckLoad + (m_next ? static_cast<int>(m_next->settings.checkLoads.size()) : 0);
}

QStringList PlanLadderModel::cells(std::size_t row, LoadUnit unit) const {
    const answers::LadderForecast& ladder = m_next->ladders[row];
    QStringList cells{
        QString::number(row + 1),
        said(answers::ladderWords(ladder.kind)),
        planwords::ladderLoads(ladder, unit),
        ladder.heaviestPercent > 0 ? number(ladder.heaviestPercent, 0) + u" %"_s : QString(),
        ladder.oneRm ? u"± "_s + number(inUnit(*ladder.oneRm, unit), 1) + u' ' + unitName(unit)
                     : tr("not bounded"),
        ladder.oneRmChange
            ? u"± "_s + number(inUnit(*ladder.oneRmChange, unit), 1) + u' ' + unitName(unit)
            : tr("not bounded")};
    for (std::size_t at = 0; at < m_next->settings.checkLoads.size(); ++at)
        cells << (at < ladder.changes.size() ? u"± "_s + number(ladder.changes[at].reading, 3)
                                             : QString());
    cells << said(answers::flawsWords(ladder.flaws, m_next->byOneRm));
    return cells;
}

/// What of a change is the lines' own, and what few loads may hide.
QString PlanLadderModel::explanation(std::size_t row) const {
    const answers::LadderForecast& ladder = m_next->ladders[row];
    QStringList told;
    for (std::size_t at = 0; at < m_next->settings.checkLoads.size(); ++at)
        if (at < ladder.changes.size())
            told << tr("%1: ± %2 by the lines alone")
                        .arg(headerData(FirstCheckLoad + static_cast<int>(at), Qt::Horizontal)
                                 .toString(),
                             number(ladder.changes[at].halfWidth, 3));
    if (const Words few = answers::fewLoadsCaution(ladder); !few.empty())
        told << said(few);
    return told.join(u'\n');
}

} // namespace slopebook::ui
