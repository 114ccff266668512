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
constexpr double barUnits = 3.0;  // of line height, at the least: name, ceiling
constexpr double mostUnits = 13;  // and at the most: what was done, in full
constexpr double markUnits = 2.8; // a session's mark, and its day under it
constexpr double headUnits = 1.5; // months
constexpr double laneGap = 0.3;

/// What was trained; where that is not said, the note.
QString workOf(const Block& block) {
    return text(block.trained.empty() ? block.note : block.trained);
}
} // namespace

Timeline::Timeline(LoadUnit unit, QWidget* parent) : QWidget(parent), m_unit(unit) {
    setAccessibleName(tr("Timeline of training blocks; the same stands in the table"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
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
    const double lines = headUnits + m_lanes * (2 * barUnits + laneGap) + markUnits;
    return {760, static_cast<int>(std::ceil(lines * lineHeight())) + 8};
}

int Timeline::leastHeight() const {
    const double lines = headUnits + m_lanes * (barUnits + laneGap) + markUnits;
    return static_cast<int>(std::ceil(lines * lineHeight())) + 8;
}

double Timeline::barHeight() const {
    const double room = (height() - 8) / lineHeight() - headUnits - markUnits;
    return std::clamp(room / m_lanes - laneGap, barUnits, mostUnits) * lineHeight();
}

QRectF Timeline::barOf(int block) const {
    const auto at = static_cast<std::size_t>(block);
    const double from = x(daysBetween(*m_first, m_blocks[at].first));
    const double to = x(daysBetween(*m_first, m_blocks[at].last) + 1);
    const double top =
        4 + lineHeight() * headUnits + m_lane[at] * (barHeight() + laneGap * lineHeight());
    return {from, top, std::max(3.0, to - from), barHeight()};
}

QPointF Timeline::markOf(int session) const {
    const double y =
        4 + lineHeight() * (headUnits + 0.7) + m_lanes * (barHeight() + laneGap * lineHeight());
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
    paintMarks(painter);
    if (hasFocus())
        look::paintFocus(painter, rect(), palette());
}

/// Each session, and its day where there is room for it.
void Timeline::paintMarks(QPainter& painter) const {
    const look::Ground ground = look::screenGround(palette());
    const QFontMetricsF metrics(font());
    const double size = lineHeight() * 0.35;
    double taken = 0;
    for (int i = 0; i < static_cast<int>(m_sessions.size()); ++i) {
        const TimelineSession& session = m_sessions[static_cast<std::size_t>(i)];
        const QPointF at = markOf(i);
        painter.setPen(QPen(ground.ink, 1.6));
        painter.setBrush(session.missing ? ground.paper : ground.ink);
        painter.drawEllipse(at, size, size);
        const QString day = QLocale().toString(qtDate(session.date), QStringLiteral("d MMM"));
        const double wide = metrics.horizontalAdvance(day);
        const double left = std::clamp(at.x() - wide / 2, 2.0, width() - wide - 2);
        if (left < taken)
            continue;
        painter.setPen(ground.ink);
        painter.drawText(QPointF(left, at.y() + 0.6 * lineHeight() + metrics.ascent()), day);
        taken = left + wide + 6;
    }
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
        painter.drawLine(QPointF(x(day), 4 + lineHeight()),
                         QPointF(x(day), 4 + lineHeight() * headUnits +
                                             m_lanes * (barHeight() + laneGap * lineHeight())));
        const QString label = QLocale().toString(qtDate(month), QStringLiteral("MMM yyyy"));
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
    // Whole lines alone: what has no room stands in the table. The name is cut short, never left
    // out.
    QRectF inside = bar.adjusted(5, 3, -3, -2);
    const QStringList lines = linesOf(shown);
    for (qsizetype i = 0; i < lines.size(); ++i) {
        QFont strong = font();
        strong.setBold(i == 0);
        painter.setFont(strong);
        const QRectF needed = QFontMetricsF(strong).boundingRect(QRectF(0, 0, inside.width(), 1e4),
                                                                 Qt::TextWordWrap, lines[i]);
        if (needed.height() > inside.height() || needed.width() > inside.width()) {
            const QFontMetricsF bold(strong);
            if (i > 0 || inside.width() < bold.averageCharWidth())
                continue;
            const QRectF one(inside.topLeft(), QSizeF(inside.width(), bold.height()));
            painter.drawText(one, Qt::AlignLeft | Qt::AlignTop | Qt::TextSingleLine,
                             bold.elidedText(lines[i], Qt::ElideRight, inside.width()));
            inside.setTop(one.bottom() + 2);
            continue;
        }
        painter.drawText(inside, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, lines[i]);
        inside.setTop(inside.top() + needed.height() + 2);
    }
    painter.setFont(font());
}

QStringList Timeline::linesOf(const Block& block) const {
    QStringList lines{text(block.name)};
    if (block.ceiling)
        lines << tr("no load over %1").arg(massWithUnit(*block.ceiling, m_unit));
    for (const std::string& each : {block.trained, block.note})
        if (!each.empty())
            lines << text(each);
    return lines;
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
