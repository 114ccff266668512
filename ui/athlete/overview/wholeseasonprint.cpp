// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/wholeseasonprint.h"

#include "core/answers/method.h"
#include "ui/athlete/overview/seasonpaper.h"
#include "ui/parts/cautions.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCoreApplication>

#include <algorithm>
#include <memory>

namespace slopebook::ui {

namespace {

using page::Flow;

struct WholeSeasonText {
    Q_DECLARE_TR_FUNCTIONS(WholeSeasonText)
};

constexpr double matrixText = 8.5, noteText = 7.5, cautionText = 7;

void addWholeSeasonNotes(Flow& flow, const AskedSeason& asked, LoadUnit unit) {
    const SeasonNotes notes = seasonNotes(asked, unit);
    const QString name = WholeSeasonText::tr("%1: notes on the whole season").arg(asked.athlete);
    beginNotes(flow, 2, name);
    if (!notes.intervals.isEmpty())
        flow.text(notes.intervals, sized(flow, noteText), 2);
    for (const QString& line : notes.chance)
        flow.text(line, sized(flow, noteText), 2);
    beginNotes(flow, 1, name);
    addList(flow, WholeSeasonText::tr("What was done in the blocks"), notes.story);
    addList(flow, WholeSeasonText::tr("To beware of"), notes.beware);
    addList(flow, WholeSeasonText::tr("What such a season can show, and what it cannot"),
            notes.design);
    flow.text(fullCautions(), sized(flow, cautionText), 5);
}

void fillSeason(Flow& flow, const AskedSeason& asked, const MatrixFigure& figure, LoadUnit unit) {
    const answers::SeasonMatrix& matrix = asked.matrix;
    flow.text(WholeSeasonText::tr("%1: whole season, %2 to %3")
                  .arg(asked.athlete, dateText(matrix.blocks.front().block.first),
                       dateText(matrix.blocks.back().block.last)),
              sized(flow, 9));
    flow.leading(figure.sentence, sizedHeadline(flow), 4);
    flow.space(6);
    addMatrix(flow, figure, sized(flow, matrixText));
    const MatrixPen pen = matrixPen(look::paperGround(), sized(flow, matrixText));
    const bool bars = anyBars(figure, matrixColumns(figure, flow.width(), pen).blocks, pen);
    flow.text(matrixKey(figure.level, bars), sized(flow, noteText), 4);
    addWholeSeasonNotes(flow, asked, unit);
}

} // namespace

QString seasonIntervals(const answers::SeasonMatrix& matrix) {
    return matrix.allAtOnce() ? said(answers::intervalsOfBlocks()) : QString();
}

SeasonNotes seasonNotes(const AskedSeason& asked, LoadUnit unit) {
    const answers::SeasonMatrix& matrix = asked.matrix;
    SeasonNotes notes;
    notes.beware = said(asked.unread, unit);
    for (const answers::Note& note : matrix.notes)
        notes.beware << said(asSentence(note.words), unit);
    for (const Words& each : matrix.story)
        notes.story << said(asSentence(each), unit);
    notes.intervals = seasonIntervals(matrix);
    if (!matrix.chance.empty())
        notes.chance << said(asSentence(matrix.chance), unit);
    for (const Words& each : matrix.design)
        notes.design << said(asSentence(each), unit);
    return notes;
}

void addMatrix(Flow& flow, const MatrixFigure& figure, const QFont& font) {
    const MatrixPen pen = matrixPen(look::paperGround(), font);
    const MatrixColumns columns = matrixColumns(figure, flow.width(), pen);
    const auto whole = std::make_shared<const MatrixFigure>(figure);
    page::Block head{.height = matrixHeadHeight(figure, pen),
                     .paint = [whole, columns, pen](QPainter& painter, const QPointF& at) {
                         paintMatrixHead(painter, at, *whole, columns, pen);
                     }};
    // No closer than that a measure has its unit below it.
    const double height = std::max(matrixRowHeight(pen) * std::min(1.0, flow.closeness().picture),
                                   pen.line + pen.lower + 0.5);
    std::vector<page::Block> rows;
    for (std::size_t row = 0; row < figure.measures.size(); ++row)
        rows.push_back(
            {.height = height,
             .paint = [whole, columns, pen, row, height](QPainter& painter, const QPointF& at) {
                 paintMatrixRow(painter, at, height, *whole, row, columns, pen);
             }});
    flow.table(std::move(head), std::move(rows));
}

page::Print wholeSeasonPrint(const AskedSeason& asked, LoadUnit unit) {
    const MatrixFigure figure = matrixFigure(asked.matrix, unit);
    const QString title = WholeSeasonText::tr("%1: whole season").arg(asked.athlete);
    return {.title = title,
            .foot = title,
            .fill = [asked, figure, unit](Flow& flow) { fillSeason(flow, asked, figure, unit); },
            .fitting = seasonFitting(figure.measures.size())};
}

} // namespace slopebook::ui
