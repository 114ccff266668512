// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonchart.h"

#include "ui/athlete/season/seasonwords.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>

#include <algorithm>

namespace slopebook::ui {

namespace {

QString dayText(double day) {
    return dateText(Date{std::chrono::sys_days{std::chrono::days{static_cast<int>(day)}}});
}

QString plannedText(const SeasonData& data, const SeasonPoint& p) {
    if (!p.oneRmToPlan)
        return {};
    const QString range = rangeText(inUnit(*p.oneRmToPlan, data.unit), 1);
    return p.plannedApart()
               ? QStringLiteral("%1 (%2)").arg(number(inUnit(*p.oneRmPlanned, data.unit), 1), range)
               : range;
}

QStringList sessionFigures(const SeasonData& data, const SeasonPoint& p) {
    QStringList seen;
    for (const double one : p.seen)
        seen << number(one, 3);
    return {dayText(p.day),
            p.line ? number(*p.line, 3) : QString(),
            p.interval ? rangeText(*p.interval, 3) : QString(),
            {},
            seen.join(QLatin1Char(' ')),
            p.felt,
            p.oneRm ? number(inUnit(*p.oneRm, data.unit), 1) : QString(),
            plannedText(data, p),
            p.oneRmInterval ? rangeText(inUnit(*p.oneRmInterval, data.unit), 1) : QString(),
            p.measured ? number(inUnit(*p.measured, data.unit), 1) : QString()};
}

} // namespace

void SeasonChart::setData(SeasonData data) {
    leaveKeys(); // they go along the season
    if (data == m_data)
        return;
    m_data = std::move(data);
    m_ringed.reset();
    describe();
    update();
}

charts::FigureTable SeasonChart::figures() const {
    charts::FigureTable table{
        .headings = {SeasonWords::tr("Day"), m_data.velocityTitle,
                     SeasonWords::tr("Interval (m/s)"), SeasonWords::tr("Against the baseline"),
                     SeasonWords::tr("Seen at the load (m/s)"), SeasonWords::tr("RPE"),
                     SeasonWords::tr("1RM (%1)").arg(unitName(m_data.unit)),
                     SeasonWords::tr("To plan with (%1)").arg(unitName(m_data.unit)),
                     SeasonWords::tr("Line alone (%1)").arg(unitName(m_data.unit)),
                     SeasonWords::tr("Measured 1RM (%1)").arg(unitName(m_data.unit))}};
    for (qsizetype i = 0; i < qsizetype(m_data.items.size()); ++i) {
        const SeasonItem& item = m_data.items[std::size_t(i)];
        if (item.kind == SeasonItem::Kind::Session) {
            table.rows.push_back(sessionFigures(m_data, m_data.points[item.index]));
        } else if (item.kind == SeasonItem::Kind::NotLifted) {
            table.rows.push_back(
                {dayText(m_data.marks[item.index].day), {}, {}, m_data.told.value(i)});
        } else if (const auto& mean = m_data.means[item.index]) {
            table.rows.push_back(
                {SeasonWords::tr("%1 to %2, mean").arg(dayText(mean->from), dayText(mean->to - 1)),
                 number(mean->value, 3), mean->interval ? rangeText(*mean->interval, 3) : QString(),
                 mean->label});
        } else {
            table.rows.push_back({m_data.told.value(i)});
        }
    }
    return table;
}

void SeasonChart::setRinged(const std::optional<SeasonItem>& item) {
    m_ringed = item;
    update();
}

void SeasonChart::paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                             double textSize, bool onScreen) const {
    paintSeason(painter, target, m_data, ground, textSize,
                onScreen ? m_ringed : std::optional<SeasonItem>());
}

void SeasonChart::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    if (const auto item = seasonItemAt(rect(), m_data, textSize(), event->position()))
        Q_EMIT itemClicked(*item);
}

void SeasonChart::keyPressEvent(QKeyEvent* event) {
    const int count = static_cast<int>(m_data.items.size());
    const auto here = m_ringed ? std::ranges::find(m_data.items, *m_ringed) : m_data.items.end();
    int place = here == m_data.items.end() ? -1 : static_cast<int>(here - m_data.items.begin());
    switch (event->key()) {
    case Qt::Key_Left:
        place = place < 0 ? count - 1 : place - 1;
        break;
    case Qt::Key_Right:
        ++place;
        break;
    case Qt::Key_Home:
        place = 0;
        break;
    case Qt::Key_End:
        place = count - 1;
        break;
    default:
        PaintedChart::keyPressEvent(event);
        return;
    }
    if (place < 0 || place >= count)
        return;
    setAccessibleDescription(m_data.told.value(place));
    QAccessibleEvent told(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&told);
    Q_EMIT itemWalkedTo(place);
}

bool SeasonChart::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip)
        return PaintedChart::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QString tip = toolTip();
    if (const auto item = seasonItemAt(rect(), m_data, textSize(), help->pos()))
        if (const auto at = std::ranges::find(m_data.items, *item); at != m_data.items.end())
            tip = m_data.told.value(at - m_data.items.begin());
    QToolTip::showText(help->globalPos(), tip, this);
    return true;
}

} // namespace slopebook::ui
