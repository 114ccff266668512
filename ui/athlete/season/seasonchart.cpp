// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonchart.h"

#include "ui/athlete/season/seasonwords.h"

#include <QCoreApplication>
#include <QMouseEvent>

namespace slopebook::ui {

void SeasonChart::setData(SeasonData data) {
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
                     SeasonWords::tr("Interval (m/s)"), SeasonWords::tr("Seen at the load (m/s)"),
                     SeasonWords::tr("RPE"), SeasonWords::tr("1RM (%1)").arg(unitName(m_data.unit)),
                     SeasonWords::tr("Interval (%1)").arg(unitName(m_data.unit)),
                     SeasonWords::tr("Measured 1RM (%1)").arg(unitName(m_data.unit))}};
    for (const SeasonPoint& p : m_data.points) {
        QStringList seen;
        for (const double one : p.seen)
            seen << number(one, 3);
        const Date day{std::chrono::sys_days{std::chrono::days{static_cast<int>(p.day)}}};
        table.rows.push_back(
            {dateText(day), p.line ? number(*p.line, 3) : QString(),
             p.interval ? rangeText(*p.interval, 3) : QString(), seen.join(QLatin1Char(' ')),
             p.felt, p.oneRm ? number(inUnit(*p.oneRm, m_data.unit), 1) : QString(),
             p.oneRmInterval ? rangeText(inUnit(*p.oneRmInterval, m_data.unit), 1) : QString(),
             p.measured ? number(inUnit(*p.measured, m_data.unit), 1) : QString()});
    }
    return table;
}

void SeasonChart::setRinged(std::optional<int> session) {
    m_ringed = session;
    update();
}

void SeasonChart::paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                             double textSize, bool onScreen) const {
    paintSeason(painter, target, m_data, ground, textSize, onScreen ? m_ringed : std::nullopt);
}

void SeasonChart::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    if (const auto session = seasonPointAt(rect(), m_data, textSize(), event->position()))
        Q_EMIT sessionClicked(*session);
}

} // namespace slopebook::ui
