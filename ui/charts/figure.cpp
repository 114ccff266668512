// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/figure.h"

#include "ui/charts/layer.h"
#include "ui/charts/plotframe.h"

#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QGraphicsView>
#include <QLegend>
#include <QLocale>
#include <QPainterPath>

#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

Figure::Figure() : m_x(new QValueAxis), m_y(new QValueAxis) {
    addAxis(m_x, Qt::AlignBottom);
    addAxis(m_y, Qt::AlignLeft);
    for (QValueAxis* axis : {m_x, m_y}) {
        axis->setTickType(QValueAxis::TicksDynamic);
    }
    legend()->hide();
    setLocalizeNumbers(true);
    setBackgroundRoundness(0);
    setDropShadowEnabled(false);
    setAnimationOptions(QChart::NoAnimation);
    layout()->setContentsMargins(0, 0, 0, 0);
    m_under = std::make_unique<Layer>(this, look::underSeries,
                                      [this](QPainter& painter) { paintUnder(painter); });
    m_over = std::make_unique<Layer>(this, look::overSeries, [this](QPainter& painter) {
        paintOver(painter);
        paintTitle(painter);
    });
    m_y->setTitleVisible(false); // it is written by paintTitle
    connect(this, &QChart::plotAreaChanged, this, [this] { repaintLayers(); });
    dressFrame();
}

Figure::~Figure() {
    disconnect(this, &QChart::plotAreaChanged, this, nullptr);
}

void Figure::setGround(const look::Ground& ground) {
    if (ground == m_ground)
        return;
    m_ground = ground;
    dressFrame();
    dress();
    repaintLayers();
}

void Figure::setTextSize(double size) {
    if (std::abs(size - m_textSize) < 1e-9)
        return;
    m_textSize = size;
    dressFrame();
    dress();
    repaintLayers();
}

// Fonts in pixels: points would be scaled twice where a printer has its own resolution.
QFont Figure::textFont(double scale, bool bold) const {
    QFont f = font();
    f.setPixelSize(static_cast<int>(std::lround(smallSize(m_textSize, scale))));
    f.setBold(bold);
    return f;
}

void Figure::dressFrame() {
    setBackgroundBrush(m_ground.paper);
    setBackgroundPen(Qt::NoPen);
    setPlotAreaBackgroundVisible(false);
    const double u = unit();
    setMargins(QMargins(static_cast<int>(4 * u), static_cast<int>(6 * u + titleRoom()),
                        static_cast<int>(10 * u), static_cast<int>(2 * u)));
    for (QValueAxis* axis : {m_x, m_y}) {
        axis->setLabelsFont(textFont());
        axis->setTitleFont(textFont());
        axis->setLabelsBrush(m_ground.ink);
        axis->setTitleBrush(m_ground.ink);
        axis->setLinePen(QPen(m_ground.quiet, m_ground.print ? 0.7 : 1.0));
        axis->setGridLinePen(QPen(m_ground.grid, m_ground.print ? 0.5 : 1.0));
    }
}

namespace {
/// As the language writes numbers, but with a minus for a hyphen: a locale has its own sign, so one
/// is taken that differs in nothing else.
QLocale axisNumbers() {
    QLocale own;
    for (const auto language : {QLocale::Romansh, QLocale::Swedish})
        if (const QLocale other(language); other.decimalPoint() == own.decimalPoint() &&
                                           other.zeroDigit() == own.zeroDigit() &&
                                           other.negativeSign() == QChar(0x2212)) {
            own = other;
            break;
        }
    own.setNumberOptions(QLocale::OmitGroupSeparator);
    return own;
}
} // namespace

bool Figure::setScales(const Scale& x, const Scale& y) {
    if (m_scales == std::pair(x, y))
        return false;
    m_scales = {x, y};
    setLocale(axisNumbers()); // as everything beside it is written, whenever the figure was made
    const auto apply = [](QValueAxis* axis, Scale s) {
        s.step = stepWithTwo(s.from, s.to, s.step);
        axis->setTickInterval(s.step);
        // Reckoned from 0 itself, zero comes out as "-0.000" where the axis begins below it.
        const double off = s.from < 0 && s.to > 0 ? 1e-9 * s.step : 0;
        axis->setTickAnchor(off);
        // Qt's own reading of such a format, written by QLocale: no C locale is asked.
        axis->setLabelFormat(u"%.%1f"_s.arg(s.decimals()));
        axis->setRange(s.from, s.to + off);
    };
    apply(m_x, x);
    apply(m_y, y);
    return true;
}

void Figure::setTitles(const QString& x, const QString& y) {
    m_x->setTitleText(x);
    m_y->setTitleText(y);
}

double Figure::titleRoom() const {
    return 1.6 * m_textSize;
}

// Between the numbers of the axis and the figure's edge: never turned, never over another.
void Figure::paintTitle(QPainter& painter) const {
    painter.setFont(textFont());
    painter.setPen(m_ground.quiet);
    const QFontMetricsF metrics(painter.font());
    const double edge = 4 * unit(), most = size().width() - 2 * edge;
    QString words = m_y->titleText();
    const qsizetype opening = words.lastIndexOf(u'('), closing = words.lastIndexOf(u')');
    if (metrics.horizontalAdvance(words) > most && opening >= 0 && closing > opening)
        words = words.mid(opening + 1, closing - opening - 1);
    const double wide = metrics.horizontalAdvance(words);
    const double left = std::max(edge, std::min(plotArea().left(), edge + most - wide));
    painter.drawText(QPointF(left, plotArea().top() - 0.6 * m_textSize), words);
}

void Figure::join(QAbstractSeries* series) {
    addSeries(series);
    series->attachAxis(m_x);
    series->attachAxis(m_y);
}

void Figure::repaintLayers() {
    for (Layer* layer : {m_under.get(), m_over.get()}) {
        layer->setSize(size());
        layer->repaint();
    }
}

QPointF Figure::toPosition(double x, double y) const {
    const QRectF area = plotArea();
    const double spanX = m_x->max() - m_x->min();
    const double spanY = m_y->max() - m_y->min();
    return {area.left() + (x - m_x->min()) / spanX * area.width(),
            area.bottom() - (y - m_y->min()) / spanY * area.height()};
}

void Figure::paintInto(QPainter& painter, const QRectF& target, const QSizeF& size) {
    QGraphicsScene scene;
    scene.addItem(this);
    resize(size);
    layout()->activate();
    repaintLayers();
    // A scene lays charts out for a view; one that is never shown is enough.
    QGraphicsView view(&scene);
    view.setSceneRect(QRectF(QPointF(), size));
    scene.render(&painter, target, QRectF(QPointF(), size), Qt::IgnoreAspectRatio);
    scene.removeItem(this);
}

QRectF paintLabel(QPainter& painter, const QPointF& anchor, Qt::Alignment alignment,
                  const QString& text, const look::Ground& ground, const QColor& ink) {
    const QFontMetricsF metrics(painter.font());
    const double width = metrics.horizontalAdvance(text);
    double left = anchor.x();
    if (alignment & Qt::AlignRight)
        left -= width;
    else if (alignment & Qt::AlignHCenter)
        left -= width / 2;
    double top = anchor.y();
    if (alignment & Qt::AlignBottom)
        top -= metrics.height();
    else if (alignment & Qt::AlignVCenter)
        top -= metrics.height() / 2;
    const QRectF box(left, top, width, metrics.height());
    QColor halo = ground.paper;
    halo.setAlphaF(0.8F);
    painter.fillRect(box.adjusted(-1, 0, 1, 0), halo);
    painter.setPen(ink);
    painter.drawText(QPointF(left, top + metrics.ascent()), text);
    return box;
}

} // namespace slopebook::ui::charts
