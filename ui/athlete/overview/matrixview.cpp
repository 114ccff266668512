// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/matrixview.h"

#include "ui/athlete/overview/matrixheads.h"
#include "ui/athlete/overview/matrixpaint.h"
#include "ui/charts/chartmenu.h"
#include "ui/paper/flow.h"
#include "ui/parts/fingers.h"
#include "ui/parts/rowtable.h"

#include <QAbstractButton>
#include <QEvent>
#include <QKeyEvent>
#include <QPaintEvent>
#include <QScrollBar>
#include <QStyledItemDelegate>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace slopebook::ui {

namespace {

/// Rows in one rhythm, each cell as on paper.
class CellDelegate final : public QStyledItemDelegate {
public:
    CellDelegate(const MatrixModel& model, QObject* parent)
        : QStyledItemDelegate(parent), m_model(model) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const MatrixFigure& figure = m_model.figure();
        const auto row = static_cast<std::size_t>(index.row());
        const MatrixPen pen = penOf(*option.widget);
        painter->save();
        painter->setClipRect(option.rect);
        paintCell(*painter, option.rect, figure, row, static_cast<std::size_t>(index.column()),
                  pen);
        if (figure.measures[row].firstOfKind)
            painter->fillRect(QRectF(option.rect.left(), option.rect.top(), option.rect.width(), 1),
                              pen.ground.grid);
        // The keys' cell keeps its frame while they are elsewhere: the line under the table is its.
        const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
        if (view && view->currentIndex() == index)
            look::paintFocus(*painter, option.rect, option.palette);
        painter->restore();
    }

private:
    const MatrixModel& m_model;
};

} // namespace

MatrixView::MatrixView(QWidget* parent)
    : QTableView(parent), m_blocks(new MatrixHead(Qt::Horizontal, m_model)),
      m_measures(new MatrixHead(Qt::Vertical, m_model)) {
    setHorizontalHeader(m_blocks);
    setVerticalHeader(m_measures);
    setModel(&m_model);
    setItemDelegate(new CellDelegate(m_model, this));
    setSelectionMode(QAbstractItemView::NoSelection); // the keys' cell has a frame, no fill
    setTabKeyNavigation(false);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setCornerButtonEnabled(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerItem); // no row is cut through
    setObjectName(QStringLiteral("matrix"));
    if (auto* corner = findChild<QAbstractButton*>())
        corner->installEventFilter(this);
    m_menu = new charts::ChartMenu(this, *this);
    m_menu->leaveKeys(); // they choose a cell
    m_menu->setSpoken(tr("All measures by training blocks"));
    connect(this, &QTableView::doubleClicked, this, [this] { Q_EMIT wayWanted(Way::Comparison); });
}

void MatrixView::setFigure(MatrixFigure figure) {
    const auto before = current();
    const QString measure = before ? this->figure().measures[before->measure].name : QString();
    const QString block = before ? this->figure().blocks[before->block].name : QString();
    m_model.setFigure(std::move(figure));
    fitRows();
    fitColumns();
    const MatrixFigure& now = this->figure();
    if (now.empty()) {
        Q_EMIT cellChanged({});
        return;
    }
    const auto row = std::ranges::find(now.measures, measure, &MatrixMeasureFigure::name);
    const auto column = std::ranges::find(now.blocks, block, &MatrixBlockFigure::name);
    setCurrentIndex(
        m_model.index(row == now.measures.end() ? 0 : static_cast<int>(row - now.measures.begin()),
                      column == now.blocks.end() ? m_model.columnCount() - 1
                                                 : static_cast<int>(column - now.blocks.begin())));
    m_menu->setSpoken(now.sentence.isEmpty() ? tr("All measures by training blocks")
                                             : now.sentence);
    m_menu->dataChanged();
}

std::optional<MatrixView::At> MatrixView::current() const {
    const QModelIndex index = currentIndex();
    if (!index.isValid())
        return std::nullopt;
    return At{static_cast<std::size_t>(index.row()), static_cast<std::size_t>(index.column())};
}

void MatrixView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    for (const QModelIndex& each : {current, previous})
        update(each);
    Q_EMIT cellChanged(current.data(Qt::AccessibleTextRole).toString());
}

void MatrixView::keyPressEvent(QKeyEvent* event) {
    const bool plain = !(event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier));
    if (plain && current()) {
        switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            Q_EMIT wayWanted(Way::Comparison);
            return;
        case Qt::Key_Space:
            Q_EMIT wayWanted(Way::Session);
            return;
        case Qt::Key_Period:
            Q_EMIT wayWanted(Way::Season);
            return;
        case Qt::Key_B:
            Q_EMIT chosenWanted();
            return;
        default:
            break;
        }
    }
    QTableView::keyPressEvent(event);
}

// The corner is a part of the page, not a button.
bool MatrixView::eventFilter(QObject* watched, QEvent* event) {
    auto* corner = qobject_cast<QAbstractButton*>(watched);
    if (!corner || event->type() != QEvent::Paint)
        return QTableView::eventFilter(watched, event);
    QPainter painter(corner);
    painter.fillRect(corner->rect(), look::screenGround(palette()).paper);
    return true;
}

void MatrixView::paintEvent(QPaintEvent* event) {
    QPaintEvent whole(wholeRowsOf(*this, event->region()));
    if (!whole.region().isEmpty())
        QTableView::paintEvent(&whole);
}

void MatrixView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitColumns();
}

void MatrixView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        fitRows();
        fitColumns();
    }
}

void MatrixView::fitRows() {
    const int least = fingersFit() ? fingerSize : 0;
    m_measures->setDefaultSectionSize(
        std::max(static_cast<int>(matrixRowHeight(penOf(*this))), least));
}

// The blocks share the room; where it holds none of them whole the table is moved sideways.
void MatrixView::fitColumns() {
    const MatrixFigure& shown = figure();
    if (shown.empty())
        return;
    const MatrixPen pen = penOf(*this);
    m_measures->setMost(std::max(120, width() * 2 / 5));
    updateGeometries();
    // Reckoned, for a scroll bar that comes or goes is not there yet.
    const double tall =
        m_blocks->sizeHint().height() +
        m_measures->defaultSectionSize() * static_cast<double>(shown.measures.size());
    const int bar = tall > height() ? verticalScrollBar()->sizeHint().width() : 0;
    const double room = width() - m_measures->sizeHint().width() - bar;
    const std::vector<double> wide = sharedOut(shown, room, 1.3, pen);
    std::vector<double> widths;
    for (std::size_t i = 0; i < wide.size(); ++i) {
        widths.push_back(std::floor(std::max(wide[i], leastBlockWidth(shown, i, pen))));
        setColumnWidth(static_cast<int>(i), static_cast<int>(widths.back()));
    }
    if (const bool bars = anyBars(shown, widths, pen); bars != m_bars) {
        m_bars = bars;
        Q_EMIT barsChanged();
    }
}

QSizeF MatrixView::paperSize() const {
    QFont font = page::pageFont(charts::paperTextSize);
    const MatrixPen pen = matrixPen(look::paperGround(), font);
    return {560, matrixHeadHeight(figure(), pen) +
                     matrixRowHeight(pen) * static_cast<double>(figure().measures.size()) + 8};
}

void MatrixView::paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const {
    if (figure().empty())
        return;
    painter.save();
    painter.translate(target.topLeft());
    painter.scale(target.width() / points.width(), target.height() / points.height());
    painter.setRenderHint(QPainter::Antialiasing);
    const MatrixPen pen = matrixPen(look::paperGround(), page::pageFont(charts::paperTextSize));
    const MatrixColumns columns = matrixColumns(figure(), points.width() - 8, pen);
    QPointF at(4, 4);
    paintMatrixHead(painter, at, figure(), columns, pen);
    at.ry() += matrixHeadHeight(figure(), pen);
    for (std::size_t row = 0; row < figure().measures.size(); ++row) {
        paintMatrixRow(painter, at, matrixRowHeight(pen), figure(), row, columns, pen);
        at.ry() += matrixRowHeight(pen);
    }
    painter.restore();
}

} // namespace slopebook::ui
