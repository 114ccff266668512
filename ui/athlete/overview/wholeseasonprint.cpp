// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/wholeseasonprint.h"

#include "core/answers/method.h"
#include "core/model/periodwords.h"
#include "ui/parts/cautions.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <memory>

namespace slopebook::ui {

namespace {

using page::Flow;
using page::pageFont;

struct WholeSeasonText {
    Q_DECLARE_TR_FUNCTIONS(WholeSeasonText)
};

constexpr std::array steps{1.0, 0.94, 0.88, 0.82, 0.76}; // of the type, until it fits
constexpr double matrixText = 8.5, noteText = 7.5, leastText = 6;

double least(double size) {
    return std::max(leastText, size);
}

void addLines(Flow& flow, const QString& title, const QStringList& lines, double share) {
    if (lines.isEmpty())
        return;
    flow.text(title, pageFont(least(9 * share), true), 5 * share, true);
    for (const QString& line : lines)
        flow.text(line, pageFont(least(noteText * share)), 1);
}

void fillSeason(Flow& flow, const AskedSeason& asked, const MatrixFigure& figure, LoadUnit unit,
                double share) {
    const answers::SeasonMatrix& matrix = asked.matrix;
    flow.text(WholeSeasonText::tr("%1: whole season, %2 to %3")
                  .arg(asked.athlete, dateText(matrix.blocks.front().block.first),
                       dateText(matrix.blocks.back().block.last)),
              pageFont(9 * share));
    flow.text(figure.sentence, page::headlineFont(14 * share), 4 * share);
    flow.space(6 * share);
    addMatrix(flow, figure, least(matrixText * share));
    flow.text(matrixKey(figure.level), pageFont(least(noteText * share)), 4 * share);
    const SeasonNotes notes = seasonNotes(asked, unit);
    if (!notes.intervals.isEmpty())
        flow.text(notes.intervals, pageFont(least(noteText * share)), 2);
    for (const QString& line : notes.chance)
        flow.text(line, pageFont(least(noteText * share)), 2);
    addLines(flow, WholeSeasonText::tr("What was done in the blocks"), notes.story, share);
    addLines(flow, WholeSeasonText::tr("To beware of"), notes.beware, share);
    addLines(flow, WholeSeasonText::tr("What such a season can show, and what it cannot"),
             notes.design, share);
    flow.text(fullCautions(), pageFont(least(7 * share)), 5 * share);
}

} // namespace

SeasonNotes seasonNotes(const AskedSeason& asked, LoadUnit unit) {
    const answers::SeasonMatrix& matrix = asked.matrix;
    SeasonNotes notes;
    notes.beware = said(asked.unread, unit);
    for (const answers::Note& note : matrix.notes)
        notes.beware << said(asSentence(note.words), unit);
    for (const Words& each : matrix.story)
        notes.story << said(asSentence(each), unit);
    if (matrix.allAtOnce())
        notes.intervals = said(answers::intervalsOfBlocks());
    if (!matrix.chance.empty())
        notes.chance << said(asSentence(matrix.chance), unit);
    for (const Words& each : matrix.design)
        notes.design << said(asSentence(each), unit);
    return notes;
}

void addMatrix(Flow& flow, const MatrixFigure& figure, double text) {
    const MatrixPen pen = matrixPen(look::paperGround(), pageFont(text));
    const MatrixColumns columns = matrixColumns(figure, flow.width(), pen);
    const auto whole = std::make_shared<const MatrixFigure>(figure);
    page::Block head{.height = matrixHeadHeight(pen),
                     .keepWithNext = true,
                     .paint = [whole, columns, pen](QPainter& painter, const QPointF& at) {
                         paintMatrixHead(painter, at, *whole, columns, pen);
                     }};
    const auto again = std::make_shared<const page::Block>(head);
    flow.add(std::move(head));
    const double height = matrixRowHeight(pen);
    for (std::size_t row = 0; row < figure.measures.size(); ++row)
        flow.add({.height = height,
                  .paint =
                      [whole, columns, pen, row, height](QPainter& painter, const QPointF& at) {
                          paintMatrixRow(painter, at, height, *whole, row, columns, pen);
                      },
                  .onNextPage = again});
}

void fillWithin(Flow& flow, std::size_t most, const std::function<void(Flow&, double)>& fill) {
    for (const double share : steps) {
        Flow tried = flow;
        fill(tried, share);
        if (tried.pages().size() <= most || share == steps.back()) {
            flow = std::move(tried);
            return;
        }
    }
}

page::Print wholeSeasonPrint(const AskedSeason& asked, LoadUnit unit) {
    const MatrixFigure figure = matrixFigure(asked.matrix, unit);
    const QString title = WholeSeasonText::tr("%1: whole season").arg(asked.athlete);
    const std::size_t most = figure.measures.size() > measuresAPage ? 2 : 1;
    return {.title = title, .foot = title, .fill = [asked, figure, unit, most](Flow& flow) {
                fillWithin(flow, most, [&](Flow& tried, double share) {
                    fillSeason(tried, asked, figure, unit, share);
                });
            }};
}

} // namespace slopebook::ui
