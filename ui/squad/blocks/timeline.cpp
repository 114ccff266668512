// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/blocks/timeline.h"

#include "core/answers/story.h"
#include "ui/charts/chartmenu.h"
#include "ui/charts/look.h"
#include "ui/parts/deskstyle.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QFontMetricsF>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {
constexpr double side = 12;
constexpr double barUnits = 3.0; // of line height: name, ceiling
constexpr double markUnits = 1.6;

/// What was trained; where that is not said, the note.
QString workOf(const Block& block) {
    return text(block.trained.empty() ? block.note : block.trained);
}
} // namespace

Timeline::Timeline(LoadUnit unit, QWidget* parent) : QWidget(parent), m_unit(unit) {
    setAccessibleName(tr("Timeline of training blocks; the same stands in the table"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_menu = new charts::ChartMenu(this, *this);
}

double Timeline::lineHeight() const {
    return QFontMetricsF(font()).height();
}

void Timeline::show(std::vector<Block> blocks, std::vector<TimelineSession> sessions) {
    m_blocks = std::move(blocks);
    m_sessions = std::move(sessions);
    layOut();
    m_menu->dataChanged();
    updateGeometry();
    update();
}

charts::FigureTable Timeline::figures() const {
    charts::FigureTable table{
        .headings = {tr("Block or session"), tr("First day"), tr("Last day"), tr("What it is")}};
    for (const Block& block : m_blocks)
        table.rows.push_back({text(block.name), dateText(block.first), dateText(block.last),
                              block.ceiling
                                  ? tr("no load over %1").arg(massWithUnit(*block.ceiling, m_unit))
                                  : workOf(block)});
    for (const TimelineSession& session : m_sessions)
        table.rows.push_back({tr("session"), dateText(session.date), QString(),
                              session.missing ? tr("something was not possible") : QString()});
    return table;
}

QSizeF Timeline::paperSize() const {
    return {480, sizeHint().height() * 0.75};
}

void Timeline::paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const {
    Timeline paper(m_unit);
    paper.show(m_blocks, m_sessions);
    charts::paintWidget(paper, painter, target, points);
}

void Timeline::setCurrent(int block) {
    m_current = block;
    update();
}

void Timeline::layOut() {
    m_first.reset();
    std::optional<Date> last;
    const auto reach = [&](Date from, Date to) {
        m_first = m_first ? std::min(*m_first, from) : from;
        last = last ? std::max(*last, to) : to;
    };
    for (const Block& block : m_blocks)
        reach(block.first, block.last);
    for (const TimelineSession& session : m_sessions)
        reach(session.date, session.date);
    m_days = m_first ? std::max(1L, daysBetween(*m_first, *last) + 1) : 1;
    std::vector<Date> ends; // last day taken in each lane
    m_lane.clear();
    for (const Block& block : m_blocks) {
        std::size_t lane = 0;
        while (lane < ends.size() && ends[lane] >= block.first)
            ++lane;
        if (lane == ends.size())
            ends.push_back(block.last);
        ends[lane] = std::max(ends[lane], block.last);
        m_lane.push_back(static_cast<int>(lane));
    }
    m_lanes = std::max(1, static_cast<int>(ends.size()));
}

double Timeline::x(long day) const {
    return side + static_cast<double>(day) / static_cast<double>(m_days) * (width() - 2 * side);
}

QSize Timeline::sizeHint() const {
    const double lines = 1.5 + m_lanes * (barUnits + 0.3) + markUnits;
    return {760, static_cast<int>(std::ceil(lines * lineHeight())) + 8};
}

QRectF Timeline::barOf(int block) const {
    const auto at = static_cast<std::size_t>(block);
    const double from = x(daysBetween(*m_first, m_blocks[at].first));
    const double to = x(daysBetween(*m_first, m_blocks[at].last) + 1);
    const double top = 4 + lineHeight() * (1.5 + m_lane[at] * (barUnits + 0.3));
    return {from, top, std::max(3.0, to - from), barUnits * lineHeight()};
}

QPointF Timeline::markOf(int session) const {
    const double y = 4 + lineHeight() * (1.5 + m_lanes * (barUnits + 0.3) + markUnits / 2);
    return {x(daysBetween(*m_first, m_sessions[static_cast<std::size_t>(session)].date)) +
                0.5 * (x(1) - x(0)),
            y};
}

void Timeline::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const look::Ground ground = look::screenGround(palette());
    painter.fillRect(rect(), ground.paper);
    if (!m_first) {
        painter.setPen(ground.quiet);
        painter.drawText(rect(), Qt::AlignCenter, tr("No blocks and no sessions yet."));
        return;
    }
    paintMonths(painter);
    for (int i = 0; i < static_cast<int>(m_blocks.size()); ++i)
        paintBar(painter, i);
    const double size = lineHeight() * 0.35;
    for (int i = 0; i < static_cast<int>(m_sessions.size()); ++i) {
        painter.setPen(QPen(ground.ink, 1.6));
        painter.setBrush(m_sessions[static_cast<std::size_t>(i)].missing ? ground.paper
                                                                         : ground.ink);
        painter.drawEllipse(markOf(i), size, size);
    }
    if (hasFocus())
        look::paintFocus(painter, rect(), palette());
}

void Timeline::paintMonths(QPainter& painter) const {
    const look::Ground ground = look::screenGround(palette());
    const QFontMetricsF metrics(font());
    double taken = -1e9;
    Date month = m_first->year() / m_first->month() / std::chrono::day{1};
    for (;; month += std::chrono::months{1}) {
        const long day = daysBetween(*m_first, month);
        if (day > m_days)
            return;
        if (day < 0)
            continue;
        painter.setPen(QPen(ground.grid, 1));
        painter.drawLine(QPointF(x(day), 4 + lineHeight()), QPointF(x(day), height() - 4));
        const QString label = QLocale().toString(qtDate(month), QStringLiteral("MMM yy"));
        if (x(day) < taken)
            continue;
        painter.setPen(ground.quiet);
        painter.drawText(QPointF(x(day) + 2, 4 + metrics.ascent()), label);
        taken = x(day) + metrics.horizontalAdvance(label) + 10;
    }
}

void Timeline::paintBar(QPainter& painter, int block) const {
    const look::Ground ground = look::screenGround(palette());
    const QFontMetricsF metrics(font());
    const Block& shown = m_blocks[static_cast<std::size_t>(block)];
    const QRectF bar = barOf(block);
    painter.setPen(QPen(block == m_current ? deskTones(palette()).chosen : ground.quiet,
                        block == m_current ? 2.5 : 1.2));
    painter.setBrush(ground.grid);
    painter.drawRect(bar);
    if (shown.ceiling) { // a lid on the bar: the ceiling is told by shape and words
        painter.setPen(QPen(ground.ink, 3));
        painter.drawLine(bar.topLeft(), bar.topRight());
    }
    painter.setPen(ground.ink);
    const QRectF inside = bar.adjusted(5, 3, -3, -2);
    const auto line = [&](int row, const QString& words) {
        painter.drawText(inside.adjusted(0, row * lineHeight(), 0, 0), Qt::AlignLeft | Qt::AlignTop,
                         metrics.elidedText(words, Qt::ElideRight, inside.width()));
    };
    line(0, text(shown.name));
    line(1, shown.ceiling ? tr("no load over %1").arg(massWithUnit(*shown.ceiling, m_unit))
                          : workOf(shown));
}

void Timeline::mousePressEvent(QMouseEvent* event) {
    for (int i = 0; i < static_cast<int>(m_blocks.size()); ++i)
        if (barOf(i).contains(event->position()))
            Q_EMIT blockClicked(i);
}

bool Timeline::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && m_first) {
        auto* help = static_cast<QHelpEvent*>(event);
        QString tip;
        for (int i = 0; i < static_cast<int>(m_sessions.size()); ++i)
            if (QLineF(markOf(i), help->pos()).length() < lineHeight())
                tip = m_sessions[static_cast<std::size_t>(i)].tip;
        for (int i = 0; i < static_cast<int>(m_blocks.size()) && tip.isEmpty(); ++i)
            if (barOf(i).contains(help->pos()))
                tip = said(answers::storyWords(m_blocks[static_cast<std::size_t>(i)]), m_unit);
        QToolTip::showText(help->globalPos(), tip, this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace slopebook::ui
