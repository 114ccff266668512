// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/maxchart.h"

#include "core/answers/bendwords.h"
#include "core/answers/readingwords.h"
#include "ui/charts/figure.h"
#include "ui/charts/plotframe.h"
#include "ui/charts/scale.h"
#include "ui/words/said.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

namespace {

constexpr double barUnits = 1.3, axisUnits = 1.9, sideUnits = 0.6; // of text height
constexpr int paperWidth = 400;

MaxChangeRow rowOf(const answers::ReadChange& read, const Words& name, LoadUnit unit) {
    return {.name = said(name),
            .reading = said(answers::maxReading(read), unit),
            .change = read.besideInterval(),
            .whisker = {.interval = read.interval,
                        .equivalence = read.equivalence,
                        .straight = read.straight.value_or(read.interval)}};
}

QString wordsOf(const MaxChangeRow& row) {
    return row.name + u": "_s + row.reading;
}

double wordsHeight(const MaxChangeRow& row, double width, double textSize) {
    return QFontMetricsF(chartFont(textSize))
        .boundingRect(QRectF(0, 0, width, 1e6), Qt::TextWordWrap, wordsOf(row))
        .height();
}

Scale scaleOf(const MaxChangeData& data, double width, double textSize) {
    double low = 0, high = 0;
    const auto take = [&](const stats::Interval& held) {
        const stats::Interval own = inUnit(held, data.unit);
        low = std::min(low, own.low);
        high = std::max(high, own.high);
    };
    for (const MaxChangeRow& row : data.rows)
        take(row.whisker.interval);
    if (data.smallest)
        take({-1.2 * *data.smallest, 1.2 * *data.smallest});
    const double room = 0.03 * (high - low);
    const int parts = static_cast<int>(std::clamp(width / (5 * textSize), 2.0, 8.0));
    const double from = low - room, to = high + room;
    return {.from = from, .to = to, .step = stepWithTwo(from, to, niceStep(high - low, parts))};
}

} // namespace

MaxChangeData maxChangeOf(const answers::Comparison& c, LoadUnit unit) {
    MaxChangeData data{.unit = unit};
    const auto straight = answers::maxIfStraight(c);
    const bool read = c.oneRm && c.oneRm->read.reading != answers::Reading::NoFigure;
    if (!straight && !(c.allAtOnce && read))
        return data;
    if (straight)
        data.rows.push_back(rowOf(*straight, answers::ifStraightWords(), unit));
    data.rows.push_back(rowOf(c.oneRm->read, answers::bendInWords(), unit));
    data.notComparable = !c.under.notComparable.empty();
    if (c.oneRm->read.smallest)
        data.smallest = c.oneRm->read.smallest->value;
    return data;
}

double maxChangeHeight(const MaxChangeData& data, double width, double textSize) {
    if (data.rows.empty())
        return 0;
    double height = axisUnits * textSize;
    for (const MaxChangeRow& row : data.rows)
        height += wordsHeight(row, width, textSize) + barUnits * textSize;
    return std::ceil(height);
}

void paintMaxChange(QPainter& painter, const QRectF& target, const MaxChangeData& data,
                    const look::Ground& ground, double textSize) {
    if (data.rows.empty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QFont font = chartFont(textSize);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const QString unit = unitName(data.unit);
    const Scale scale = scaleOf(data, target.width(), textSize);
    const double side = sideUnits * textSize;
    const QRectF plot(target.left() + side, target.top(),
                      target.width() - 2 * side - metrics.horizontalAdvance(unit) - side,
                      maxChangeHeight(data, target.width(), textSize) - axisUnits * textSize);
    const auto x = [&](double shown) {
        return plot.left() + (shown - scale.from) / (scale.to - scale.from) * plot.width();
    };
    const auto xOf = [&](double kg) { return x(inUnit(kg, data.unit)); };
    double top = plot.top();
    const double zero = xOf(0);
    for (const MaxChangeRow& row : data.rows) {
        const double words = wordsHeight(row, target.width(), textSize);
        painter.setPen(ground.ink);
        painter.drawText(QRectF(target.left(), top, target.width(), words),
                         Qt::AlignLeft | Qt::TextWordWrap, wordsOf(row));
        const double bar = barUnits * textSize, y = top + words + bar / 2;
        if (data.smallest) {
            const double a = xOf(-*data.smallest);
            painter.fillRect(QRectF(a, top + words, xOf(*data.smallest) - a, bar),
                             look::smallestBrush(ground));
        }
        if (data.notComparable)
            look::hatch(painter, QRectF(plot.left(), top + words, plot.width(), bar), ground);
        painter.setPen(look::zeroPen(ground));
        painter.drawLine(QPointF(zero, top + words), QPointF(zero, top + words + bar));
        paintWhisker(
            painter, row.whisker, [&](double kg) { return QPointF(xOf(kg), y); },
            {0, 0.32 * textSize}, ground);
        QPen tick = look::readingPen(ground);
        tick.setWidthF(3 * tick.widthF());
        tick.setCapStyle(Qt::FlatCap);
        painter.setPen(tick);
        painter.drawLine(QPointF(xOf(row.change), y - 0.5 * textSize),
                         QPointF(xOf(row.change), y + 0.5 * textSize));
        top += words + bar;
    }
    painter.setPen(look::zeroPen(ground));
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    for (double at = std::ceil(scale.from / scale.step) * scale.step;
         at <= scale.to + 1e-9 * scale.step; at += scale.step) {
        painter.setPen(look::zeroPen(ground));
        painter.drawLine(QPointF(x(at), plot.bottom()),
                         QPointF(x(at), plot.bottom() + 0.3 * textSize));
        painter.setPen(ground.ink);
        const QString label = signedNumber(at, scale.decimals());
        painter.drawText(QPointF(x(at) - metrics.horizontalAdvance(label) / 2,
                                 plot.bottom() + 0.4 * textSize + metrics.ascent()),
                         label);
    }
    painter.setPen(ground.quiet);
    painter.drawText(QPointF(target.right() - metrics.horizontalAdvance(unit),
                             plot.bottom() + 0.4 * textSize + metrics.ascent()),
                     unit);
    painter.restore();
}

MaxChart::MaxChart(QWidget* parent) : PaintedChart(parent) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void MaxChart::setData(const MaxChangeData& shownData) {
    m_data = shownData;
    setVisible(!m_data.rows.empty());
    updateGeometry();
    describe();
    update();
}

QSize MaxChart::sizeHint() const {
    return {400, heightForWidth(400)};
}

QSize MaxChart::minimumSizeHint() const {
    return {200, heightForWidth(std::max(200, width()))};
}

int MaxChart::heightForWidth(int width) const {
    return static_cast<int>(std::ceil(maxChangeHeight(m_data, width, textSize())));
}

FigureTable MaxChart::figures() const {
    const QString unit = unitName(m_data.unit);
    FigureTable table{.headings = {tr("Change of the max"), tr("Change, %1").arg(unit),
                                   tr("Interval, %1").arg(unit), tr("Reading")}};
    for (const MaxChangeRow& row : m_data.rows)
        table.rows.push_back({row.name, signedNumber(inUnit(row.change, m_data.unit), 1),
                              signedRangeText(inUnit(row.whisker.interval, m_data.unit), 1),
                              row.reading});
    return table;
}

QSizeF MaxChart::paperSize() const {
    return {paperWidth, std::max(40.0, maxChangeHeight(m_data, paperWidth, paperTextSize))};
}

void MaxChart::paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                          double textSize, bool /*onScreen*/) const {
    paintMaxChange(painter, target, m_data, ground, textSize);
}

} // namespace slopebook::ui::charts
