// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/plotframe.h"

#include "core/model/date.h"
#include "ui/charts/whisker.h"
#include "ui/words/units.h"

#include <QFontDatabase>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <vector>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

namespace {

Date dateOf(int year, unsigned month) {
    return Date{std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{1}};
}

double dayOf(Date date) {
    return static_cast<double>(std::chrono::sys_days{date}.time_since_epoch().count());
}

QPen line(const QColor& colour, const look::Ground& ground) {
    return {colour, ground.print ? 0.5 : 1.0};
}

/// Those that have room for their numbers, apart by as many steps at the least: every second one,
/// fifth or tenth; the first and the last where that would leave one alone.
std::vector<double> thinned(const std::vector<double>& ticks, double step, double apart) {
    int every = 10;
    for (const int candidate : {5, 2, 1})
        if (candidate >= apart)
            every = candidate;
    std::vector<double> kept;
    std::ranges::copy_if(ticks, std::back_inserter(kept),
                         [&](double v) { return std::lround(v / step) % every == 0; });
    if (kept.size() < 2 && ticks.size() >= 2)
        kept = {ticks.front(), ticks.back()};
    return kept;
}

} // namespace

double smallSize(double textSize, double scale) {
    constexpr double least = 12;
    const double wanted = textSize * scale;
    return std::max(1.0, textSize >= least ? std::max(least, wanted) : wanted);
}

QFont chartFont(double textSize, double scale, bool bold) {
    QFont font;
    font.setPixelSize(static_cast<int>(std::lround(smallSize(textSize, scale))));
    font.setBold(bold);
    return font;
}

double PlotFrame::x(double value) const {
    return area.left() + (value - from) / (to - from) * area.width();
}

double PlotFrame::yOf(double value) const {
    return area.bottom() - (value - y.from) / (y.to - y.from) * area.height();
}

void PlotFrame::paintYAxis(QPainter& painter, const QString& whole, const QString& shorter) const {
    painter.setFont(chartFont(textSize));
    const QFontMetricsF metrics(painter.font());
    const Scale scale{.from = y.from, .to = y.to, .step = stepWithTwo(y.from, y.to, y.step)};
    for (const double v : ticksOf(scale)) {
        const double at = yOf(v);
        painter.setPen(line(ground.grid, ground));
        painter.drawLine(QPointF(area.left(), at), QPointF(area.right(), at));
        const QString label = number(v, scale.decimals());
        painter.setPen(ground.ink);
        painter.drawText(QPointF(area.left() - 0.4 * textSize - metrics.horizontalAdvance(label),
                                 at + metrics.ascent() / 2 - metrics.descent() / 2),
                         label);
    }
    const bool fits = shorter.isEmpty() || metrics.horizontalAdvance(whole) <= area.height();
    const QString title = fits ? whole : shorter;
    painter.save();
    painter.translate(area.left() - yAxisRoom(textSize) + metrics.ascent(), area.center().y());
    painter.rotate(-90);
    painter.setPen(ground.ink);
    painter.drawText(QPointF(-metrics.horizontalAdvance(title) / 2, 0), title);
    painter.restore();
}

void PlotFrame::paintXAxis(QPainter& painter, const QString& title, double step) const {
    painter.setFont(chartFont(textSize));
    const QFontMetricsF metrics(painter.font());
    const Scale scale{.from = from, .to = to, .step = stepWithTwo(from, to, step)};
    const int decimals = scale.decimals();
    const std::vector<double> ticks = ticksOf(scale);
    double widest = 0;
    for (const double v : {from, to})
        widest = std::max(widest, metrics.horizontalAdvance(number(v, decimals)));
    const double each = scale.step / (to - from) * area.width();
    const std::vector<double> labelled =
        thinned(ticks, scale.step, (widest + 0.6 * textSize) / each);
    for (const double v : ticks) {
        painter.setPen(line(ground.grid, ground));
        painter.drawLine(QPointF(x(v), area.top()), QPointF(x(v), area.bottom()));
    }
    painter.setPen(ground.ink);
    for (const double v : labelled) {
        const QString label = number(v, decimals);
        painter.drawText(QPointF(x(v) - metrics.horizontalAdvance(label) / 2,
                                 area.bottom() + 0.3 * textSize + metrics.ascent()),
                         label);
    }
    painter.setPen(ground.ink);
    painter.drawText(QPointF(area.center().x() - metrics.horizontalAdvance(title) / 2,
                             area.bottom() + 1.6 * textSize + metrics.ascent()),
                     title);
}

void PlotFrame::paintMonths(QPainter& painter, bool label) const {
    painter.setFont(chartFont(textSize));
    const QFontMetricsF metrics(painter.font());
    const double months = std::max(1e-9, (to - from) / 30.44);
    const double each = area.width() / months;
    const double need = metrics.horizontalAdvance(u"Mmm 2026"_s) + textSize;
    int step = 60;
    for (const int candidate : {1, 2, 3, 6, 12, 24})
        if (each * candidate >= need) {
            step = candidate;
            break;
        }
    const QLocale locale;
    const Date first{std::chrono::sys_days{std::chrono::days{static_cast<int>(from)}}};
    for (int year = int(first.year()), month = 1; dayOf(dateOf(year, unsigned(month))) <= to;
         month += step) {
        year += (month - 1) / 12;
        month = (month - 1) % 12 + 1;
        const double day = dayOf(dateOf(year, unsigned(month)));
        if (day < from || day > to)
            continue;
        painter.setPen(line(ground.grid, ground));
        painter.drawLine(QPointF(x(day), area.top()), QPointF(x(day), area.bottom()));
        if (!label)
            continue;
        const QString text = step >= 12 ? QString::number(year)
                                        : locale.standaloneMonthName(month, QLocale::ShortFormat) +
                                              u' ' + QString::number(year);
        painter.setPen(ground.ink);
        painter.drawText(QPointF(x(day) - metrics.horizontalAdvance(text) / 2,
                                 area.bottom() + 0.3 * textSize + metrics.ascent()),
                         text);
    }
}

void PlotFrame::paintWhisker(QPainter& painter, double xValue, double low, double high) const {
    const double cap = 0.3 * textSize;
    const double at = x(xValue);
    const double bottom = std::min(yOf(low), area.bottom()), top = std::max(yOf(high), area.top());
    if (bottom < top)
        return;
    painter.drawLine(QPointF(at, top), QPointF(at, bottom));
    paintWhiskerEnd(painter, {at, top}, {0, -1}, cap, high > y.to);
    paintWhiskerEnd(painter, {at, bottom}, {0, 1}, cap, low < y.from);
}

void PlotFrame::paintOutline(QPainter& painter) const {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(line(ground.quiet, ground));
    painter.drawLine(area.bottomLeft(), area.bottomRight());
    painter.drawLine(area.bottomLeft(), area.topLeft());
}

double yAxisRoom(double textSize) {
    return 5.2 * textSize;
}

double xAxisRoom(double textSize, bool title) {
    return (title ? 3.2 : 1.9) * textSize;
}

} // namespace slopebook::ui::charts
