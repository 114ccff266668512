// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/chartview.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QEvent>
#include <QFileDialog>
#include <QFontInfo>
#include <QMenu>
#include <QMessageBox>
#include <QSaveFile>
#include <QSvgGenerator>

#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

namespace {
constexpr QSizeF pictureSize(480, 300); // points
} // namespace

ChartView::ChartView(Figure* figure, QWidget* parent)
    : QChartView(figure, parent), m_figure(figure) {
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus); // its figures are in a table, which has the focus
    followDesktop();
}

QSize ChartView::sizeHint() const {
    return {640, 400};
}
QSize ChartView::minimumSizeHint() const {
    return {260, 170};
}

void ChartView::setSpokenText(const QString& text) {
    setAccessibleName(text);
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

void ChartView::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    menu.addAction(tr("&Copy the picture"), this, [this] { copyToClipboard(pictureSize); });
    menu.addAction(tr("Save as &PNG…"), this, [this] { savePicture(false); });
    menu.addAction(tr("Save as &SVG…"), this, [this] { savePicture(true); });
    menu.exec(event->globalPos());
}

void ChartView::savePicture(bool vectors) {
    const QString ending = vectors ? u".svg"_s : u".png"_s;
    QString file =
        QFileDialog::getSaveFileName(this, tr("Save the picture"), tr("chart") + ending,
                                     vectors ? tr("Drawings (*.svg)") : tr("Pictures (*.png)"));
    if (file.isEmpty())
        return;
    const bool good =
        vectors ? writeSvg(file, pictureSize, accessibleName()) : writePng(file, pictureSize);
    if (!good)
        QMessageBox::warning(this, tr("Save the picture"),
                             tr("%1 could not be written.").arg(file));
}

void ChartView::paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const {
    const auto figure = paperFigure();
    figure->setGround(look::paperGround());
    figure->setTextSize(paperTextSize);
    figure->paintInto(painter, target, points);
}

QImage ChartView::picture(const QSizeF& points, double scale) const {
    QImage image((points * scale).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    image.setDotsPerMeterX(static_cast<int>(std::lround(72 * scale / 0.0254)));
    image.setDotsPerMeterY(image.dotsPerMeterX());
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    paintPaper(painter, QRectF(image.rect()), points);
    return image;
}

bool ChartView::writePng(const QString& file, const QSizeF& points, double scale) const {
    QSaveFile out(file);
    return out.open(QIODevice::WriteOnly) && picture(points, scale).save(&out, "PNG") &&
           out.commit();
}

bool ChartView::writeSvg(const QString& file, const QSizeF& points, const QString& title) const {
    QSaveFile out(file);
    if (!out.open(QIODevice::WriteOnly))
        return false;
    QSvgGenerator svg;
    svg.setOutputDevice(&out);
    svg.setResolution(72);
    svg.setSize(points.toSize());
    svg.setViewBox(QRectF(QPointF(), points));
    svg.setTitle(title);
    QPainter painter;
    if (!painter.begin(&svg))
        return false;
    paintPaper(painter, QRectF(QPointF(), points), points);
    painter.end();
    return out.commit();
}

void ChartView::copyToClipboard(const QSizeF& points) const {
    QApplication::clipboard()->setImage(picture(points, 3));
}

} // namespace slopebook::ui::charts
