// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/devices/noisechart.h"

#include "ui/charts/plotframe.h"
#include "ui/words/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {

constexpr double tallest = 2.5; // of the largest error: longer intervals run on beyond the scale

struct NoiseChartWords {
    Q_DECLARE_TR_FUNCTIONS(NoiseChartWords)
};

QString caption() {
    return NoiseChartWords::tr("All athletes together. Points: of one set at that load, its "
                               "own scatter with it; dashed: of a whole line.");
}

/// On as many lines as it needs.
double captionHeight(double width, double textSize) {
    return QFontMetricsF(charts::chartFont(textSize, 0.9))
        .boundingRect(QRectF(0, 0, width, 1e6), Qt::TextWordWrap, caption())
        .height();
}

charts::PlotFrame noiseFrame(const QRectF& target, const NoiseData& data,
                             const look::Ground& ground, double textSize) {
    charts::PlotFrame f{.ground = ground, .textSize = textSize};
    const double left = target.left() + charts::yAxisRoom(textSize) + 0.4 * textSize;
    f.area = QRectF(QPointF(left, target.top() + 0.9 * textSize +
                                      captionHeight(target.right() - left, textSize)),
                    QPointF(target.right() - 8 * textSize,
                            target.bottom() - charts::xAxisRoom(textSize, true)));
    const double least = inUnit(data.loads.front().load, data.unit);
    const double most = inUnit(data.loads.back().load, data.unit);
    const double edge = std::max(1.0, 0.06 * (most - least));
    f.from = least - edge;
    f.to = most + edge;
    double largest = 0, longest = 0;
    for (const NoiseData::Line& line : data.inUse)
        largest = std::max(largest, line.sd);
    for (const NoiseData::At& at : data.loads) {
        largest = std::max(largest, at.error);
        longest = std::max(longest, at.interval.high);
    }
    f.y = charts::niceScale(0, std::min(longest, tallest * largest), 5);
    return f;
}

/// A dashed line each, and beside it whose it is: no label on another.
void paintInUse(QPainter& painter, const charts::PlotFrame& f, std::vector<NoiseData::Line> lines,
                double textSize) {
    std::ranges::sort(lines, std::ranges::greater{}, &NoiseData::Line::sd);
    painter.setFont(charts::chartFont(textSize, 0.9));
    const QFontMetricsF metrics(painter.font());
    const double left = f.area.right() + 0.4 * textSize, room = 7.4 * textSize;
    // Two at the most: moved apart from the middle of both.
    double middle = 0;
    for (const NoiseData::Line& line : lines)
        middle += f.yOf(line.sd) / static_cast<double>(lines.size());
    const bool close =
        lines.size() > 1 && f.yOf(lines.back().sd) - f.yOf(lines.front().sd) < metrics.height();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const double y = f.yOf(lines[i].sd);
        painter.setPen(look::thresholdPen(f.ground));
        painter.drawLine(QPointF(f.area.left(), y), QPointF(f.area.right(), y));
        const double label = close ? middle + (i == 0 ? -0.5 : 0.5) * metrics.height() : y;
        const QString sd = u' ' + number(lines[i].sd, 3);
        const QString whose = metrics.elidedText(lines[i].whose, Qt::ElideRight,
                                                 room - metrics.horizontalAdvance(sd));
        painter.setPen(f.ground.ink);
        painter.drawText(QPointF(left, label + metrics.ascent() - metrics.height() / 2),
                         whose + sd);
    }
}

} // namespace

NoiseData noiseData(std::span<const questions::NoiseGroup> groups, LoadUnit unit) {
    const questions::NoiseGroup* best = nullptr;
    for (const questions::NoiseGroup& group : groups)
        if (group.noise && group.athlete.empty() &&
            (!best || group.noise->used.size() > best->noise->used.size()))
            best = &group;
    NoiseData data{.unit = unit};
    if (!best)
        return data;
    for (const answers::NoiseAtLoad& at : best->noise->atLoads)
        if (answers::spreads(at.error, 4))
            data.loads.push_back({.load = kilograms(at.load),
                                  .error = at.error.value,
                                  .interval = at.error.interval,
                                  .pairs = static_cast<int>(at.error.df) + 1});
    std::ranges::sort(data.loads, {}, &NoiseData::At::load);
    for (const questions::NoiseGroup& group : groups)
        if (group.device == best->device && group.lift == best->lift &&
            group.inUse.origin != answers::DayNoise::Origin::None)
            data.inUse.push_back(
                {.whose = group.athlete.empty() ? NoiseChartWords::tr("all") : text(group.athlete),
                 .sd = std::sqrt(group.inUse.variance.value)});
    data.whose = text(best->lift.name);
    if (!best->deviceName.empty())
        data.whose += QStringLiteral(", ") + text(best->deviceName);
    return data;
}

void NoiseChart::setData(NoiseData data) {
    if (data == m_data)
        return;
    m_data = std::move(data);
    describe();
    update();
}

charts::FigureTable NoiseChart::figures() const {
    charts::FigureTable table{
        .headings = {NoiseChartWords::tr("Load, %1").arg(unitName(m_data.unit)),
                     NoiseChartWords::tr("Typical error, m/s"),
                     NoiseChartWords::tr("95 % interval"), NoiseChartWords::tr("Repeat tests")}};
    for (const NoiseData::At& at : m_data.loads)
        table.rows.push_back({loadNumber(at.load, m_data.unit), number(at.error, 3),
                              rangeText(at.interval, 3), QString::number(at.pairs)});
    for (const NoiseData::Line& line : m_data.inUse)
        table.rows.push_back({NoiseChartWords::tr("whole line, %1").arg(line.whose),
                              number(line.sd, 3), QString(), QString()});
    return table;
}

void NoiseChart::paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                            double textSize, bool /*onScreen*/) const {
    painter.setFont(charts::chartFont(textSize));
    if (m_data.loads.empty()) {
        painter.setPen(ground.quiet);
        painter.drawText(target, Qt::AlignCenter | Qt::TextWordWrap,
                         NoiseChartWords::tr("No load was lifted in two repeat tests yet"));
        return;
    }
    const charts::PlotFrame f = noiseFrame(target, m_data, ground, textSize);
    f.paintXAxis(painter, NoiseChartWords::tr("Load (%1)").arg(unitName(m_data.unit)),
                 charts::niceStep(f.to - f.from, 8));
    f.paintYAxis(painter, NoiseChartWords::tr("Typical error (m/s)"),
                 NoiseChartWords::tr("Error (m/s)"));
    painter.setFont(charts::chartFont(textSize, 0.9));
    painter.setPen(ground.quiet);
    const double wide = target.right() - f.area.left(), high = captionHeight(wide, textSize);
    painter.drawText(QRectF(f.area.left(), f.area.top() - 0.4 * textSize - high, wide, high + 1),
                     Qt::AlignLeft | Qt::TextWordWrap, caption());
    paintInUse(painter, f, m_data.inUse, textSize);
    for (const NoiseData::At& at : m_data.loads) {
        const double load = inUnit(at.load, m_data.unit);
        painter.setPen(QPen(ground.ink, 0.1 * textSize));
        f.paintWhisker(painter, load, at.interval.low, at.interval.high);
        painter.setPen(QPen(ground.paper, 0.8));
        painter.setBrush(ground.ink);
        painter.drawEllipse(f.at(load, at.error), 0.3 * textSize, 0.3 * textSize);
        painter.setBrush(Qt::NoBrush);
    }
    f.paintOutline(painter);
}

} // namespace slopebook::ui
