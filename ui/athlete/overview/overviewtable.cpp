// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/overviewtable.h"

#include "core/answers/method.h"
#include "ui/athlete/overview/matrixheads.h"
#include "ui/athlete/overview/steppaint.h"
#include "ui/parts/rowtable.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QApplication>
#include <QCoreApplication>
#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

// Of a column, in heights of a line: a reading with its size in two lines, a name in two or three.
constexpr int leastBar = 6, leastName = 9, readingWords = 13;

struct OverviewText {
    Q_DECLARE_TR_FUNCTIONS(OverviewText)
};

QString valueText(const answers::MatrixRow& row, std::optional<std::size_t> block, LoadUnit unit) {
    if (!block || !row.cells[*block].value)
        return {};
    return cellNumber(row.measure, row.cells[*block], unit);
}

/// "better", "not comparable: concrete, then rubber", "no figure: rig under water".
QString lastWords(const answers::SeasonMatrix& matrix, const answers::OverviewRow& row,
                  LoadUnit unit) {
    const answers::Measure& measure = matrix.rows[row.row].measure;
    const QString standing = said(answers::standingWords(row.standing), unit);
    using answers::Standing;
    QString words;
    if (row.standing == Standing::NoFigure && !measure.judged() && row.step)
        words = OverviewText::tr("no reading is made of it");
    else if (row.standing == Standing::NoFigure || row.standing == Standing::NotComparable)
        words = row.why.empty() ? standing
                                : OverviewText::tr("%1: %2").arg(standing, said(row.why, unit));
    else
        words = changeWords(measure, *row.step, unit);
    if (row.step && row.step->why.empty() && row.step->from != matrix.chosen)
        words = OverviewText::tr("%1, against %2", "a reading, its block")
                    .arg(words, periodText(matrix.blocks[row.step->from].block.name));
    return words;
}

OverviewLine lineOf(const answers::SeasonMatrix& matrix, const answers::Overview& overview,
                    const answers::OverviewRow& row, LoadUnit unit) {
    const answers::MatrixRow& whole = matrix.rows[row.row];
    const answers::Measure& measure = whole.measure;
    OverviewLine line;
    const QString name = asSentence(said(answers::measureWords(measure), unit));
    const QString unitText = measureUnit(measure, unit);
    line.cells << (unitText.isEmpty() ? name : OverviewText::tr("%1, %2").arg(name, unitText));
    QString from = valueText(whole, row.from, unit);
    const bool elsewhere = row.from && *row.from != matrix.chosen; // than under the heading
    if (elsewhere && !from.isEmpty())
        from = OverviewText::tr("%1 (%2)", "a figure, its block")
                   .arg(from, periodText(matrix.blocks[*row.from].block.name));
    line.cells << from << valueText(whole, overview.to, unit);
    const bool told = row.step && row.step->why.empty() && whole.cells[overview.to].value;
    if (told) {
        line.cells << measureChange(measure, row.step->read.besideInterval(), unit)
                   << measureRange(measure, row.step->read.interval, unit);
        line.mark = markOf(measure, *row.step);
        line.tip = OverviewText::tr("%1: %2 interval (%3)", "a change, its level, held against")
                       .arg(line.cells.front(), levelText(matrix.level),
                            said(elsewhere && matrix.allAtOnce()
                                     ? answers::allStepsAtOnce()
                                     : answers::heldAgainst(matrix.allAtOnce())));
        line.step = stepOf(measure, *row.step);
    } else {
        line.cells << QString() << QString();
        line.mark = CellMark::NoFigure;
    }
    line.cells << lastWords(matrix, row, unit);
    return line;
}

class StepDelegate final : public QStyledItemDelegate {
public:
    StepDelegate(const OverviewRows& rows, QObject* parent)
        : QStyledItemDelegate(parent), m_rows(rows) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const OverviewLine& line = m_rows.lines().lines[static_cast<std::size_t>(index.row())];
        const MatrixPen pen = penOf(*option.widget);
        painter->save();
        painter->setClipRect(option.rect);
        QStyleOptionViewItem plain(option);
        initStyleOption(&plain, index);
        if (index.column() == stepColumn) {
            plain.text.clear();
            QApplication::style()->drawControl(QStyle::CE_ItemViewItem, &plain, painter,
                                               option.widget);
            const QRectF box = QRectF(option.rect).adjusted(6, 2, -6, -2);
            if (line.mark == CellMark::NotComparable)
                look::hatch(*painter, box, pen.ground);
            else
                paintStepGround(*painter, QRectF(option.rect).adjusted(6, 0, -6, 0),
                                m_rows.lines().span, pen);
            if (line.step)
                paintStep(*painter, box, *line.step, line.mark, m_rows.lines().span, pen);
        } else if (index.column() > stepColumn) {
            const int room = static_cast<int>(pen.line);
            // the row's own ground and frame under the sign, too, or where one would be
            QApplication::style()->drawPrimitive(QStyle::PE_PanelItemViewItem, &plain, painter,
                                                 option.widget);
            QStyleOptionViewItem words(plain);
            words.rect.setLeft(plain.rect.left() + room);
            QApplication::style()->drawControl(QStyle::CE_ItemViewItem, &words, painter,
                                               option.widget);
            paintMark(*painter,
                      QRectF(plain.rect.left() + room * 0.35, plain.rect.top(), room,
                             plain.rect.height()),
                      line.mark, pen);
        } else {
            QStyledItemDelegate::paint(painter, option, index);
        }
        if (line.firstOfStanding)
            painter->fillRect(QRectF(option.rect.left(), option.rect.top(), option.rect.width(), 1),
                              pen.ground.quiet);
        painter->restore();
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyleOptionViewItem beside(option); // of the words, which wrap beside their sign
        if (index.column() > stepColumn && option.rect.width() > option.fontMetrics.height())
            beside.rect.adjust(0, 0, -option.fontMetrics.height(), 0);
        QSize size = QStyledItemDelegate::sizeHint(beside, index);
        if (index.column() == stepColumn)
            size.setWidth(option.fontMetrics.height() * 10);
        else if (index.column() > stepColumn)
            size.rwidth() += option.fontMetrics.height();
        return size;
    }

private:
    const OverviewRows& m_rows;
};

} // namespace

OverviewTable overviewTable(const answers::SeasonMatrix& matrix, const answers::Overview& overview,
                            LoadUnit unit) {
    OverviewTable table;
    const bool compared = matrix.chosen < matrix.blocks.size() && matrix.chosen != overview.to;
    table.headings = {OverviewText::tr("Measure"),
                      compared ? periodText(matrix.blocks[matrix.chosen].block.name)
                               : OverviewText::tr("Before"),
                      matrix.blocks.empty() ? OverviewText::tr("Now")
                                            : periodText(matrix.blocks[overview.to].block.name),
                      OverviewText::tr("Change"),
                      OverviewText::tr("%1 interval").arg(levelText(matrix.level)),
                      OverviewText::tr("Reading, or why none")};
    std::optional<answers::Standing> above;
    for (const answers::OverviewRow& row : overview.rows) {
        table.lines.push_back(lineOf(matrix, overview, row, unit));
        table.lines.back().firstOfStanding = above && *above != row.standing;
        above = row.standing;
    }
    constexpr double unsettledUnits = 5; // so that most bars are seen whole
    StepSpan span(unsettledUnits);
    for (const OverviewLine& line : table.lines)
        if (line.step)
            span.take(*line.step, line.mark == CellMark::Better || line.mark == CellMark::Worse);
    table.span = span.units();
    return table;
}

void OverviewRows::setLines(OverviewTable table) {
    std::vector<Row> rows;
    for (const OverviewLine& line : table.lines)
        rows.push_back({.cells = line.cells,
                        .strong = line.mark == CellMark::Better || line.mark == CellMark::Worse,
                        .explanation = line.tip});
    m_table = std::move(table);
    setTable(m_table.headings, std::move(rows), QList<int>{1, 2, 3});
}

QTableView* overviewView(OverviewRows* rows) {
    QTableView* view = rowTable(rows, OverviewText::tr("Every measure by reading"),
                                {.compact = true, .wraps = true, .lastTakesRest = true});
    view->setItemDelegate(new StepDelegate(*rows, view));
    view->setObjectName(u"overview"_s);
    view->setShowGrid(false);
    view->setFrameShape(QFrame::NoFrame);
    view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    return view;
}

void fitOverview(QTableView& view) {
    view.resizeColumnsToContents();
    QHeaderView* columns = view.horizontalHeader();
    const int last = columns->count() - 1;
    if (last < 0)
        return;
    // The words of a reading are what the table is for: the bars give way to them, then the names.
    const int line = view.fontMetrics().height();
    const int words = std::max(columns->sectionSizeHint(last),
                               std::min(readingWords * line, view.viewport()->width() / 4));
    int over = columns->sectionPosition(last) + words - view.viewport()->width();
    const auto give = [&](int column, int least) {
        const int now = columns->sectionSize(column);
        const int given = std::clamp(over, 0, std::max(0, now - least));
        columns->resizeSection(column, now - given);
        over -= given;
    };
    give(stepColumn, std::max(leastBar * line, columns->sectionSizeHint(stepColumn)));
    give(0, leastName * line);
    const int rest = view.viewport()->width() - columns->sectionPosition(last);
    columns->resizeSection(last, std::max(words, rest));
    view.resizeRowsToContents();
}

} // namespace slopebook::ui
