// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/battery/traceview.h"

#include "ui/charts/chartmenu.h"
#include "ui/charts/look.h"
#include "ui/charts/scale.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {
constexpr double left = 64, right = 12, top = 34, bottom = 40;
constexpr double grip = 8; // pixels either side of a mark that take hold of it
} // namespace

TraceView::TraceView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Curve with marks"));
    (new charts::ChartMenu(this, *this))->leaveKeys(); // they move a mark
    setToolTip(tr("Drag a mark, or Tab to it and move it with the arrow keys (Shift: ten samples). "
                  "Wheel, plus and minus: zoom; 0: everything."));
}

void TraceView::show(const traces::Analysis* analysis, std::size_t event) {
    m_analysis = analysis;
    m_event = event;
    m_mark = 0;
    m_marks.clear();
    if (m_analysis) {
        const auto& values = m_analysis->trace().values;
        const auto [low, high] = std::minmax_element(values.begin(), values.end());
        const charts::Scale scale = charts::niceScale(*low, *high, 6);
        m_low = scale.from;
        m_high = scale.to;
        m_marks = m_analysis->marks(event);
        fit();
    }
    say();
    update();
}

charts::FigureTable TraceView::figures() const {
    charts::FigureTable table{.headings = {tr("Mark"), tr("Time, s"), tr("Value")}};
    for (const traces::Mark& mark : m_marks) {
        const traces::Trace& trace = m_analysis->trace();
        const auto sample =
            static_cast<std::size_t>(std::clamp(std::lround(trace.sampleOf(mark.time)), 0L,
                                                static_cast<long>(trace.values.size()) - 1));
        table.rows.push_back(
            {said(mark.name), number(mark.time, 4), number(trace.values[sample], 3)});
    }
    return table;
}

void TraceView::paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const {
    TraceView paper;
    paper.show(m_analysis, m_event);
    paper.m_from = m_from;
    paper.m_to = m_to;
    charts::paintWidget(paper, painter, target, points);
}

void TraceView::fit() {
    const traces::Trace& trace = m_analysis->trace();
    // The event with some room around it, where there are several; else the whole trace.
    if (m_analysis->events() > 1) {
        const double span = m_marks.back().time - m_marks.front().time;
        m_from = std::max(trace.start, m_marks.front().time - span / 2 - 0.2);
        m_to = std::min(trace.end(), m_marks.back().time + span / 2 + 0.2);
    } else {
        m_from = trace.start;
        m_to = trace.end();
    }
}

void TraceView::marksChanged() {
    if (!m_analysis)
        return;
    m_marks = m_analysis->marks(m_event);
    say();
    update();
}

void TraceView::setCurrentMark(int mark) {
    if (mark < 0 || mark >= static_cast<int>(m_marks.size()) || mark == m_mark)
        return;
    m_mark = mark;
    say();
    update();
}

void TraceView::say() {
    if (m_marks.empty())
        setAccessibleDescription(tr("No trace"));
    else
        setAccessibleDescription(
            tr("Mark %1 at %2 s")
                .arg(said(m_marks[static_cast<std::size_t>(m_mark)].name),
                     number(m_marks[static_cast<std::size_t>(m_mark)].time, 4)));
}

QRectF TraceView::plot() const {
    return QRectF(rect()).adjusted(left, top, -right, -bottom);
}
double TraceView::xOf(double time) const {
    return plot().left() + (time - m_from) / (m_to - m_from) * plot().width();
}
double TraceView::timeAt(double x) const {
    return m_from + (x - plot().left()) / plot().width() * (m_to - m_from);
}
double TraceView::yOf(double value) const {
    return plot().bottom() - (value - m_low) / (m_high - m_low) * plot().height();
}

QPointF TraceView::markPosition(int mark) const {
    const double time = m_marks.at(static_cast<std::size_t>(mark)).time;
    return {xOf(time), yOf(traces::valueAt(m_analysis->trace(), time))};
}

void TraceView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const look::Ground ground = look::screenGround(palette());
    painter.fillRect(rect(), ground.paper);
    painter.setRenderHint(QPainter::Antialiasing);
    if (!m_analysis) {
        painter.setPen(ground.quiet);
        painter.drawText(rect(), Qt::AlignCenter, tr("Choose a file."));
        return;
    }
    paintAxes(painter);
    painter.save();
    painter.setClipRect(plot().adjusted(0, -top, 0, 1));
    paintCurve(painter);
    paintMarks(painter);
    painter.restore();
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void TraceView::paintAxes(QPainter& painter) const {
    const look::Ground ground = look::screenGround(palette());
    const QFontMetricsF metrics(font());
    const charts::Scale y = charts::niceScale(m_low, m_high, 6);
    const charts::Scale x{m_from, m_to, charts::niceStep(m_to - m_from, 8)};
    const double slack = y.step / 1000;
    for (double value = y.from; value <= m_high + slack; value += y.step) {
        if (value < m_low - slack) // the rounded scale may begin below the plot
            continue;
        painter.setPen(QPen(ground.grid, 1));
        painter.drawLine(QPointF(plot().left(), yOf(value)), QPointF(plot().right(), yOf(value)));
        painter.setPen(ground.ink);
        painter.drawText(QRectF(0, yOf(value) - 10, left - 6, 20),
                         Qt::AlignRight | Qt::AlignVCenter, number(value, y.decimals()));
    }
    for (double time = std::ceil(m_from / x.step) * x.step; time <= m_to; time += x.step) {
        painter.setPen(QPen(ground.grid, 1));
        painter.drawLine(QPointF(xOf(time), plot().top()), QPointF(xOf(time), plot().bottom()));
        painter.setPen(ground.ink);
        const QString label = number(time, x.decimals());
        painter.drawText(QPointF(xOf(time) - metrics.horizontalAdvance(label) / 2,
                                 plot().bottom() + metrics.ascent() + 3),
                         label);
    }
    painter.setPen(ground.quiet);
    painter.drawText(QRectF(plot().left(), height() - 20, plot().width(), 18), Qt::AlignCenter,
                     m_analysis->kind() == traces::TraceKind::Lift
                         ? tr("time (s); displacement (m)")
                         : tr("time (s); force (N)"));
}

void TraceView::paintCurve(QPainter& painter) const {
    const traces::Trace& trace = m_analysis->trace();
    const double last = static_cast<double>(trace.values.size()) - 1;
    const auto first =
        static_cast<std::size_t>(std::clamp(std::floor(trace.sampleOf(m_from)), 0.0, last));
    const auto past =
        static_cast<std::size_t>(std::clamp(std::ceil(trace.sampleOf(m_to)), 0.0, last)) + 1;
    painter.setPen(QPen(look::screenGround(palette()).ink, 1.4));
    painter.setBrush(Qt::NoBrush);
    const double pixels = std::max(1.0, plot().width());
    const auto stride = std::max<std::size_t>(
        1, static_cast<std::size_t>(static_cast<double>(past - first) / pixels));
    QPolygonF line;
    // Of each pixel's samples the lowest and the highest, so that no spike is lost.
    for (std::size_t i = first; i < past; i += stride) {
        const std::size_t end = std::min(past, i + stride);
        const auto [low, high] = std::minmax_element(trace.values.begin() + static_cast<long>(i),
                                                     trace.values.begin() + static_cast<long>(end));
        const double x = xOf(trace.timeOf(static_cast<double>(i)));
        line << QPointF(x, yOf(low < high ? *low : *high));
        if (stride > 1)
            line << QPointF(x, yOf(low < high ? *high : *low));
    }
    painter.drawPolyline(line);
}

void TraceView::paintMarks(QPainter& painter) const {
    const look::Ground ground = look::screenGround(palette());
    const QFontMetricsF metrics(font());
    double taken[2] = {-1e9, -1e9}; // right ends of the labels in two rows
    for (std::size_t i = 0; i < m_marks.size(); ++i) {
        const double x = xOf(m_marks[i].time);
        const bool current = static_cast<int>(i) == m_mark;
        painter.setPen(QPen(current ? palette().color(QPalette::Highlight) : ground.quiet,
                            current ? 2.4 : 1.4, current ? Qt::SolidLine : Qt::DashLine));
        painter.drawLine(QPointF(x, plot().top()), QPointF(x, plot().bottom()));
        const QPointF at = markPosition(static_cast<int>(i));
        painter.setBrush(current ? palette().color(QPalette::Highlight) : ground.paper);
        painter.drawEllipse(at, 4.5, 4.5);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(ground.ink);
        const QString label = said(m_marks[i].name);
        const double width = metrics.horizontalAdvance(label);
        const int row = x - width / 2 > taken[0] + 4 ? 0 : 1;
        const double begin = std::clamp(x - width / 2, plot().left(),
                                        std::max(plot().left(), plot().right() - width));
        taken[row] = begin + width;
        painter.drawText(QPointF(begin, row == 0 ? top - 4 : top - 4 - metrics.height()), label);
    }
}

void TraceView::mousePressEvent(QMouseEvent* event) {
    setFocus(Qt::MouseFocusReason);
    int nearest = -1;
    double distance = grip;
    for (int i = 0; m_analysis && i < static_cast<int>(m_marks.size()); ++i) {
        const double away = std::abs(markPosition(i).x() - event->position().x());
        // Of two in one place the current one stays in hand.
        if (away < distance || (away == distance && i == m_mark)) {
            distance = away;
            nearest = i;
        }
    }
    if (nearest < 0)
        return;
    setCurrentMark(nearest);
    m_dragging = true;
}

void TraceView::mouseMoveEvent(QMouseEvent* event) {
    if (m_dragging)
        Q_EMIT markMoved(m_mark, timeAt(event->position().x()));
}

void TraceView::mouseReleaseEvent(QMouseEvent*) {
    m_dragging = false;
}

void TraceView::wheelEvent(QWheelEvent* event) {
    if (!m_analysis)
        return;
    zoom(event->angleDelta().y() > 0 ? 0.8 : 1.25, timeAt(event->position().x()));
    event->accept();
}

void TraceView::zoom(double factor, double around) {
    const traces::Trace& trace = m_analysis->trace();
    const double least = 10 / trace.rate;
    const double span = std::max(least, (m_to - m_from) * factor);
    const double part = (around - m_from) / (m_to - m_from);
    m_from = std::max(trace.start, around - part * span);
    m_to = std::min(trace.end(), m_from + span);
    update();
}

void TraceView::step(double samples) {
    const double time = m_marks[static_cast<std::size_t>(m_mark)].time;
    Q_EMIT markMoved(m_mark, time + samples / m_analysis->trace().rate);
}

bool TraceView::event(QEvent* event) {
    if (event->type() == QEvent::KeyPress && !m_marks.empty()) {
        auto* key = static_cast<QKeyEvent*>(event);
        const int last = static_cast<int>(m_marks.size()) - 1;
        // Tab walks over the marks before it leaves.
        if (key->key() == Qt::Key_Tab && m_mark < last) {
            setCurrentMark(m_mark + 1);
            return true;
        }
        if (key->key() == Qt::Key_Backtab && m_mark > 0) {
            setCurrentMark(m_mark - 1);
            return true;
        }
    }
    return QWidget::event(event);
}

void TraceView::keyPressEvent(QKeyEvent* event) {
    if (m_marks.empty()) {
        QWidget::keyPressEvent(event);
        return;
    }
    const double samples = event->modifiers() & Qt::ShiftModifier ? 10 : 1;
    const double here = m_marks[static_cast<std::size_t>(m_mark)].time;
    switch (event->key()) {
    case Qt::Key_Left:
        step(-samples);
        break;
    case Qt::Key_Right:
        step(samples);
        break;
    case Qt::Key_Plus:
        zoom(0.8, here);
        break;
    case Qt::Key_Minus:
        zoom(1.25, here);
        break;
    case Qt::Key_0:
        m_from = m_analysis->trace().start;
        m_to = m_analysis->trace().end();
        update();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace slopebook::ui
