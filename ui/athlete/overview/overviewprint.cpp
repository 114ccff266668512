// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/overviewprint.h"

#include "ui/athlete/overview/overviewtable.h"
#include "ui/athlete/overview/stepcharts.h"
#include "ui/athlete/overview/wholeseasonprint.h"
#include "ui/paper/tablecells.h"
#include "ui/parts/cautions.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>

namespace slopebook::ui {

namespace {

using page::Flow;
using page::pageFont;

struct OverviewPaper {
    Q_DECLARE_TR_FUNCTIONS(OverviewPaper)
};

constexpr double chartsHeight = 150, chartsText = 8, rowsText = 8, underText = 7.5;
// Shares of the page's width: measure, from, to, change, its interval as figures; the reading takes
// the rest.
constexpr std::array shares{0.28, 0.09, 0.09, 0.11, 0.17};

void addCharts(Flow& flow, const StepChartsData& data) {
    if (data.charts.empty())
        return;
    const double width = flow.width();
    flow.add({.height = chartsHeight,
              .before = 8,
              .paint = [data, width](QPainter& painter, const QPointF& at) {
                  paintStepCharts(painter, QRectF(at, QSizeF(width, chartsHeight)), data,
                                  matrixPen(look::paperGround(), pageFont(chartsText)));
              }});
}

void addRows(Flow& flow, const OverviewTable& table, double share) {
    std::vector<page::Column> columns;
    double rest = flow.width();
    for (std::size_t i = 0; i < shares.size(); ++i) {
        columns.push_back({.width = shares[i] * flow.width(),
                           .alignment = i == 0 ? Qt::AlignLeft : Qt::AlignRight});
        rest -= columns.back().width;
    }
    columns.push_back({.width = rest});
    std::vector<std::vector<page::Cell>> rows;
    for (const OverviewLine& line : table.lines) {
        const bool settled = line.mark == CellMark::Better || line.mark == CellMark::Worse;
        std::vector<page::Cell>& cells = rows.emplace_back();
        for (const QString& cell : line.cells)
            cells.push_back({.text = cell, .bold = settled});
    }
    flow.table(columns, page::headCells(table.headings), rows,
               pageFont(std::max(6.0, rowsText * share)), 8);
}

void addList(Flow& flow, const QString& title, const QStringList& lines, double share) {
    if (lines.isEmpty())
        return;
    flow.text(title, pageFont(9 * share, true), 5, true);
    for (const QString& line : lines)
        flow.text(line, pageFont(std::max(6.0, underText * share)), 1);
}

void fillOverview(Flow& flow, const AskedSeason& asked, const answers::Overview& overview,
                  LoadUnit unit, double share) {
    flow.text(OverviewPaper::tr("%1: overview").arg(asked.athlete), pageFont(9 * share));
    flow.text(said(asked.matrix.sentence, unit), page::headlineFont(14 * share), 4);
    addCharts(flow, stepCharts(asked.matrix, overview, unit));
    addRows(flow, overviewTable(asked.matrix, overview, unit), share);
    addList(flow, OverviewPaper::tr("Due"), said(overview.due, unit), share);
    addList(flow, OverviewPaper::tr("Was not possible"), said(overview.missing, unit), share);
    const SeasonNotes notes = seasonNotes(asked, unit);
    if (!notes.intervals.isEmpty())
        flow.text(notes.intervals, pageFont(std::max(6.0, underText * share)), 5);
    for (const QString& line : notes.chance)
        flow.text(line, pageFont(std::max(6.0, underText * share)), 5);
    addList(flow, OverviewPaper::tr("What was done in the blocks"), notes.story, share);
    addList(flow, OverviewPaper::tr("To beware of"), notes.beware, share);
    flow.text(fullCautions(), pageFont(std::max(6.0, 7 * share)), 5);
}

} // namespace

page::Print overviewPrint(const AskedSeason& asked, const answers::Overview& overview,
                          LoadUnit unit) {
    const QString title = OverviewPaper::tr("%1: overview").arg(asked.athlete);
    const std::size_t most = overview.rows.size() > measuresAPage ? 2 : 1;
    return {.title = title, .foot = title, .fill = [asked, overview, unit, most](Flow& flow) {
                fillWithin(flow, most, [&](Flow& tried, double share) {
                    fillOverview(tried, asked, overview, unit, share);
                });
            }};
}

} // namespace slopebook::ui
