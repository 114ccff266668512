// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/chartview.h"

#include "ui/charts/chartmenu.h"

#include <QCoreApplication>
#include <QEvent>
#include <QFontInfo>
#include <QGraphicsScene>
#include <QPainter>

namespace slopebook::ui::charts {

ChartView::ChartView(Figure* figure, QWidget* parent)
    : QChartView(figure, parent), m_figure(figure) {
    setRenderHint(QPainter::Antialiasing);
    // Layers lie over the whole of it: to look for the parts that changed is work for nothing.
    setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
    scene()->setItemIndexMethod(QGraphicsScene::NoIndex);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    m_menu = new ChartMenu(this, *this);
    followDesktop();
}

QSize ChartView::sizeHint() const {
    return {640, 400};
}
QSize ChartView::minimumSizeHint() const {
    return {260, 170};
}

void ChartView::setSpokenText(const QString& text) {
    m_menu->setSpoken(text);
}

void ChartView::describe() {
    m_menu->dataChanged();
}

// What the figure and its scene put off until the next event is done now. A scene that did so has
// itself painted at once: to repaint would paint it twice.
void ChartView::drawNow() {
    if (!isVisible())
        return;
    QCoreApplication::sendPostedEvents(m_figure, QEvent::LayoutRequest);
    QCoreApplication::sendPostedEvents(scene(), QEvent::MetaCall);
    QCoreApplication::sendPostedEvents(window(), QEvent::UpdateRequest);
}

void ChartView::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::StyleChange)
        followDesktop();
}

void ChartView::followDesktop() {
    m_figure->setTextSize(QFontInfo(font()).pixelSize());
    m_figure->setGround(look::screenGround(palette()));
    setBackgroundBrush(palette().color(QPalette::Base));
}

void ChartView::paintEvent(QPaintEvent* event) {
    QChartView::paintEvent(event);
    if (hasFocus()) {
        QPainter painter(viewport());
        look::paintFocus(painter, viewport()->rect(), palette());
    }
}

void ChartView::focusInEvent(QFocusEvent* event) {
    QChartView::focusInEvent(event);
    viewport()->update();
}

void ChartView::focusOutEvent(QFocusEvent* event) {
    QChartView::focusOutEvent(event);
    viewport()->update();
}

void ChartView::paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const {
    const auto figure = paperFigure();
    figure->setGround(look::paperGround());
    figure->setTextSize(paperTextSize);
    figure->paintInto(painter, target, points);
}

} // namespace slopebook::ui::charts
