// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/overviewprint.h"

#include "ui/athlete/overview/overviewtable.h"
#include "ui/athlete/overview/seasonpaper.h"
#include "ui/athlete/overview/stepcharts.h"
#include "ui/athlete/overview/wholeseasonprint.h"
#include "ui/paper/tablecells.h"
#include "ui/parts/cautions.h"
#include "ui/words/said.h"

#include <QCoreApplication>

#include <array>

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
    const QSizeF size(flow.width(), chartsHeight * flow.closeness().picture);
    flow.add({.height = size.height(),
              .before = 8,
              .paint = [data, size](QPainter& painter, const QPointF& at) {
                  paintStepCharts(painter, QRectF(at, size), data,
                                  matrixPen(look::paperGround(), pageFont(chartsText)));
              }});
}

void addRows(Flow& flow, const OverviewTable& table) {
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
    flow.table(columns, page::headCells(table.headings), rows, sized(flow, rowsText), 8);
}

void addOverviewNotes(Flow& flow, const AskedSeason& asked, LoadUnit unit) {
    const SeasonNotes notes = seasonNotes(asked, unit);
    const QString name = OverviewPaper::tr("%1: notes on the overview").arg(asked.athlete);
    beginNotes(flow, 2, name);
    if (!notes.intervals.isEmpty())
        flow.text(notes.intervals, sized(flow, underText), 5);
    for (const QString& line : notes.chance)
        flow.text(line, sized(flow, underText), 5);
    beginNotes(flow, 1, name);
    addList(flow, OverviewPaper::tr("What was done in the blocks"), notes.story);
    addList(flow, OverviewPaper::tr("To beware of"), notes.beware);
    flow.text(fullCautions(), sized(flow, 7), 5);
}

void fillOverview(Flow& flow, const AskedSeason& asked, const answers::Overview& overview,
                  LoadUnit unit) {
    flow.text(OverviewPaper::tr("%1: overview").arg(asked.athlete), sized(flow, 9));
    flow.leading(said(asked.matrix.sentence, unit), sizedHeadline(flow), 4);
    addCharts(flow, stepCharts(asked.matrix, overview, unit));
    addRows(flow, overviewTable(asked.matrix, overview, unit));
    addList(flow, OverviewPaper::tr("Due"), said(overview.due, unit));
    addList(flow, OverviewPaper::tr("Was not possible"), said(overview.missing, unit));
    addOverviewNotes(flow, asked, unit);
}

} // namespace

page::Print overviewPrint(const AskedSeason& asked, const answers::Overview& overview,
                          LoadUnit unit) {
    const QString title = OverviewPaper::tr("%1: overview").arg(asked.athlete);
    return {
        .title = title,
        .foot = title,
        .fill = [asked, overview, unit](Flow& flow) { fillOverview(flow, asked, overview, unit); },
        .fitting = seasonFitting(overview.rows.size())};
}

} // namespace slopebook::ui
