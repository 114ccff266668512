// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonprint.h"

#include "core/answers/followsummary.h"
#include "ui/athlete/season/seasonchart.h"
#include "ui/athlete/season/seasonrows.h"
#include "ui/parts/cautions.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using page::Cell;
using page::Column;
using page::Flow;
using page::headlineFont;
using page::pageFont;

struct SeasonPages {
    Q_DECLARE_TR_FUNCTIONS(SeasonPages)
};

constexpr double chartText = 7.5, tableText = 7.5, smallText = 7, chartHeight = 300;
constexpr double pageWidth = 523; // of A4, which the columns' widths are made for

page::Block chartBlock(const SeasonData& data, double width, double height) {
    return {.height = height,
            .before = 4,
            .paint = [data, width, height](QPainter& painter, const QPointF& at) {
                painter.setFont(pageFont(chartText));
                paintSeason(painter, QRectF(at, QSizeF(width, height)), data, look::paperGround(),
                            chartText);
            }};
}

/// The columns of the window's table that stand in one table on paper.
struct Part {
    std::vector<int> columns;
    std::vector<double> widths;
};

/// Rows that say something in one of those columns beside day and block.
std::vector<TextTable::Row> rowsWith(std::span<const TextTable::Row> all,
                                     const std::vector<int>& columns) {
    std::vector<TextTable::Row> some;
    for (const TextTable::Row& row : all)
        if (std::ranges::any_of(
                columns, [&](int column) { return column > 1 && !row.cells[column].isEmpty(); }))
            some.push_back(row);
    return some;
}

void addTable(Flow& flow, std::span<const TextTable::Row> sessions, const QStringList& headings,
              const Part& part) {
    std::vector<Column> columns;
    std::vector<Cell> head;
    for (std::size_t i = 0; i < part.columns.size(); ++i) {
        columns.push_back({part.widths[i] * flow.width() / pageWidth});
        head.push_back({.text = headings[part.columns[i]], .bold = true});
    }
    std::vector<std::vector<Cell>> rows;
    for (const TextTable::Row& row : rowsWith(sessions, part.columns)) {
        std::vector<Cell> cells;
        for (const int column : part.columns)
            cells.push_back({.text = row.cells[column],
                             .bold = row.strong,
                             .quiet = row.quiet.contains(column)});
        rows.push_back(std::move(cells));
    }
    flow.table(columns, head, rows, pageFont(tableText), 4);
}

void addNotes(Flow& flow, const SeasonPaper& paper) {
    flow.heading(SeasonPages::tr("To beware of, and where the figures come from"));
    for (const answers::Note& note : paper.season.follow.notes)
        flow.text(said(asSentence(note.words), paper.chart.unit), pageFont(smallText), 1);
    for (const answers::Followed& each : paper.season.follow.sessions)
        if (each.extrapolated) {
            flow.text(said(asSentence(answers::beyondLoadsWords())), pageFont(smallText), 1);
            break;
        }
    if (const QString settling = settlingOf(paper.season.follow.sessions.back(), paper.chart.unit);
        !settling.isEmpty())
        flow.text(SeasonPages::tr("The last session's change: %1").arg(settling),
                  pageFont(smallText), 1);
    for (const answers::NotLifted& day : paper.season.notLifted)
        flow.text(said(asSentence(answers::notLiftedWords(day)), paper.chart.unit),
                  pageFont(smallText), 1);
    flow.text(fullCautions(), pageFont(smallText), 3);
}

void fill(Flow& flow, const SeasonPaper& paper) {
    const answers::Follow& follow = paper.season.follow;
    flow.text(SeasonPages::tr("Season: %1, %2").arg(paper.athlete, paper.lift), pageFont(10, true));
    flow.text(SeasonPages::tr("At %1, %2 to %3")
                  .arg(loadWithUnit(kilograms(follow.load), paper.chart.unit),
                       dateText(follow.sessions.front().session.date),
                       dateText(follow.sessions.back().session.date)),
              pageFont(9), 1);
    const Words sentence = answers::followSentence(paper.season);
    const Words alone = answers::dayAloneWords(paper.season, follow.sessions.back());
    const Words latest = alone.empty() ? answers::latestWords(paper.season) : alone;
    flow.leading(said(sentence, paper.chart.unit), headlineFont(12), 4);
    if (latest != sentence)
        flow.text(said(latest, paper.chart.unit), pageFont(9), 1);
    flow.text(said(answers::trendWords(follow, paper.level)), pageFont(9), 1);
    if (paper.trends)
        for (const answers::FollowedBlock& block : paper.season.blocks)
            flow.text(said(answers::blockTrendWords(block, paper.level), paper.chart.unit),
                      pageFont(9), 1);
    flow.add(chartBlock(paper.chart, flow.width(), chartHeight * flow.closeness().picture));
    const QStringList headings = seasonHeadings(paper.chart.unit);
    QStringList felt;
    for (const SeasonPoint& point : paper.chart.points)
        felt << point.felt;
    const auto sessions =
        seasonRows(paper.season, paper.blocks, {}, paper.chart.unit, felt, paper.trends);
    flow.heading(SeasonPages::tr("Speed at the load"));
    addTable(flow, sessions, headings,
             {{0, 1, 2, 3, 4, 5, 6, 7, 8}, {66, 58, 40, 28, 48, 74, 44, 82, 83}});
    flow.heading(SeasonPages::tr("Maximum"));
    addTable(flow, sessions, headings, {{0, 1, 9, 10, 11, 12}, {80, 103, 85, 90, 90, 75}});
    addNotes(flow, paper);
}

} // namespace

page::Print seasonPrint(const SeasonPaper& paper) {
    const QString load = loadWithUnit(kilograms(paper.season.follow.load), paper.chart.unit);
    return {.title = SeasonPages::tr("Season: %1, %2").arg(paper.athlete, paper.lift),
            .foot = SeasonPages::tr("%1, %2 at %3").arg(paper.athlete, paper.lift, load),
            .fill = [paper](Flow& flow) { fill(flow, paper); }};
}

} // namespace slopebook::ui
