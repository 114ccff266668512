// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squadprint.h"

#include "core/answers/squadmean.h"
#include "core/answers/squadsummary.h"
#include "core/model/daystretch.h"
#include "ui/paper/tablecells.h"
#include "ui/parts/cautions.h"
#include "ui/squad/changes/squadforest.h"
#include "ui/squad/changes/squadrows.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using page::Flow;
using page::headlineFont;
using page::pageFont;

struct SquadPaper {
    Q_DECLARE_TR_FUNCTIONS(SquadPaper)
};

constexpr double squadChartText = 7.5, squadTableText = 7.5, squadSmallText = 7;
constexpr std::size_t rowsOfAChart = 40; // so many fit a page

QString periodText(const answers::Period& period) {
    const QString days =
        SquadPaper::tr("%1 to %2").arg(dateText(period.first), dateText(period.last));
    if (period.first == period.last)
        return dateText(period.first);
    if (period.nearest)
        return SquadPaper::tr("the session nearest to %1 (%2)")
            .arg(dateText(*period.nearest), days);
    if (period.name == isoStretch({period.first, period.last}))
        return days;
    return SquadPaper::tr("%1 (%2)").arg(text(period.name), days);
}

page::Block chartBlock(const SquadForest& data, double width) {
    const double height = squadForestHeight(data, squadChartText, width);
    return {.height = height,
            .before = 4,
            .paint = [data, width, height](QPainter& painter, const QPointF& at) {
                painter.setFont(pageFont(squadChartText));
                paintSquadForest(painter, QRectF(at, QSizeF(width, height)), data,
                                 look::paperGround(), squadChartText);
            }};
}

void addTable(Flow& flow, const answers::SquadPart& part, double level, LoadUnit unit) {
    const double w = flow.width() / 523, drawn = 50 * w;
    std::vector<page::Column> columns{{66 * w},
                                      {54 * w},
                                      {54 * w},
                                      {58 * w, Qt::AlignRight},
                                      {94 * w, Qt::AlignRight},
                                      {drawn, Qt::AlignRight},
                                      {52 * w, Qt::AlignRight},
                                      {95 * w}};
    std::vector<page::Cell> heads = page::headCells(squadHeadings(part, level, unit));
    std::vector<std::vector<page::Cell>> rows = page::rowCells(squadRows(part, level, unit));
    if (!drawnApart(part, level, unit)) { // its room is the readings'
        columns.back().width += drawn;
        columns.erase(columns.begin() + squadDrawn);
        heads.erase(heads.begin() + squadDrawn);
        for (std::vector<page::Cell>& row : rows)
            row.erase(row.begin() + squadDrawn);
    }
    flow.table(columns, heads, rows, pageFont(squadTableText), 4);
    if (const QString alike = drawnAlike(part, level, unit); !alike.isEmpty())
        flow.text(alike, pageFont(squadSmallText), 2);
}

void fill(Flow& flow, const answers::Squad& squad, const QString& lift, LoadUnit unit) {
    flow.text(SquadPaper::tr("Squad: %1").arg(lift), pageFont(10, true));
    flow.text(
        SquadPaper::tr("Change from %1 to %2").arg(periodText(squad.from), periodText(squad.to)),
        pageFont(9), 1);
    for (const answers::SquadPart& part : squad.parts) {
        flow.heading(partName(part, unit));
        if (answers::squadMean(part, squad.level))
            flow.leading(squadSentence(part, squad.level, unit), headlineFont(12), 0, true);
        flow.text(squadCounts(part, unit), pageFont(8.5), 0, true);
        const SquadForest forest = squadForest(part, squad.level, unit);
        for (std::size_t i = 0; i < forest.rows.size(); i += rowsOfAChart)
            flow.add(chartBlock(squadForestRows(forest, i, i + rowsOfAChart), flow.width()));
        addTable(flow, part, squad.level, unit);
    }
    flow.heading(SquadPaper::tr("To beware of"));
    for (const QString& note : squadNotes(squad, unit))
        flow.text(note, pageFont(squadSmallText), 1);
    flow.text(fullCautions(), pageFont(squadSmallText), 3);
}

} // namespace

page::Print squadPrint(const answers::Squad& squad, const QString& lift, LoadUnit unit) {
    return {.title = SquadPaper::tr("Squad: %1").arg(lift),
            .foot = SquadPaper::tr("Squad: %1, from %2 to %3")
                        .arg(lift, text(squad.from.name), text(squad.to.name)),
            .fill = [squad, lift, unit](Flow& flow) { fill(flow, squad, lift, unit); }};
}

} // namespace slopebook::ui
