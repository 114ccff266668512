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
#include <QResizeEvent>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace slopebook::ui {

namespace {
constexpr double side = 12;
constexpr double leastUnits = 1.5; // of line height, a bar at the least: its name
constexpr double mostUnits = 13;   // and at the most: what was done, in full
constexpr double markUnits = 2.8;  // a session's mark, and its day under it
constexpr double headUnits = 1.5;  // months
constexpr double laneGap = 0.3;
constexpr double insideLeft = 5, insideTop = 3, insideRight = 3, insideBottom = 2; // px, of a bar
constexpr double betweenLines = 2;

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
    return {480, heightAt(640) * 0.75}; // 640 px
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

/// In the middle of what room there is.
double Timeline::top() const {
    return 4 + std::max(0, height() - heightAt(width())) / 2;
}

QSize Timeline::sizeHint() const {
    constexpr int wide = 760;
    return {wide, heightAt(wide)};
}

int Timeline::heightAt(int width) const {
    const double lines = headUnits + m_lanes * laneGap + markUnits;
    return static_cast<int>(std::ceil(lines * lineHeight() + m_lanes * barHeight(width))) + 8;
}

double Timeline::barWidth(int block, int width) const {
    const Block& of = m_blocks[static_cast<std::size_t>(block)];
    return static_cast<double>(daysBetween(of.first, of.last) + 1) / static_cast<double>(m_days) *
           (width - 2 * side);
}

Timeline::Told Timeline::told(int block, int width) const {
    Told told{.height = insideTop + insideBottom};
    const double wide = barWidth(block, width) - insideLeft - insideRight;
    const QStringList lines = linesOf(m_blocks[static_cast<std::size_t>(block)]);
    for (qsizetype i = 0; i < lines.size(); ++i) {
        QFont strong = font();
        strong.setBold(i == 0);
        const QFontMetricsF metrics(strong);
        const QRectF needed = metrics.boundingRect(QRectF(0, 0, std::max(1.0, wide), 1e4),
                                                   Qt::TextWordWrap, lines[i]);
        const bool fits = needed.width() <= wide;
        told.whole = told.whole && fits;
        if (fits || i == 0)
            told.height += (fits ? needed.height() : metrics.height()) + betweenLines;
    }
    return told;
}

/// As high as the words of the fullest bar.
double Timeline::barHeight(int width) const {
    double high = leastUnits * lineHeight();
    for (int i = 0; i < static_cast<int>(m_blocks.size()); ++i)
        high = std::max(high, told(i, width).height);
    return std::min(high, mostUnits * lineHeight());
}

bool Timeline::showsAllWords() const {
    for (int i = 0; i < static_cast<int>(m_blocks.size()); ++i)
        if (const Told words = told(i, width()); !words.whole || words.height > barHeight() + 0.5)
            return false;
    return true;
}

void Timeline::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (event->oldSize().width() != event->size().width())
        Q_EMIT widthChanged();
}

QRectF Timeline::barOf(int block) const {
    const auto at = static_cast<std::size_t>(block);
    const double from = x(daysBetween(*m_first, m_blocks[at].first));
    const double to = x(daysBetween(*m_first, m_blocks[at].last) + 1);
    const double above =
        top() + lineHeight() * headUnits + m_lane[at] * (barHeight() + laneGap * lineHeight());
    return {from, above, std::max(3.0, to - from), barHeight()};
}

QPointF Timeline::markOf(int session) const {
    const double y =
        top() + lineHeight() * (headUnits + 0.7) + m_lanes * (barHeight() + laneGap * lineHeight());
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
        painter.drawLine(QPointF(x(day), top() + lineHeight()),
                         QPointF(x(day), top() + lineHeight() * headUnits +
                                             m_lanes * (barHeight() + laneGap * lineHeight())));
        const QString label = QLocale().toString(qtDate(month), QStringLiteral("MMM yyyy"));
        if (x(day) < taken)
            continue;
        painter.setPen(ground.quiet);
        painter.drawText(QPointF(x(day) + 2, top() + metrics.ascent()), label);
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
    QRectF inside = bar.adjusted(insideLeft, insideTop, -insideRight, -insideBottom);
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
            inside.setTop(one.bottom() + betweenLines);
            continue;
        }
        painter.drawText(inside, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, lines[i]);
        inside.setTop(inside.top() + needed.height() + betweenLines);
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
