// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/figuretables.h"

#include "ui/words/wording.h"

#include <QCoreApplication>

namespace slopebook::ui::charts {

namespace {

struct FigureWords {
    Q_DECLARE_TR_FUNCTIONS(FigureWords)
};

QStringList oneRmRow(const LineEntry& session, const LineData& data) {
    const OneRmMark& mark = *session.oneRm;
    QString remark = FigureWords::tr("estimated 1RM");
    if (mark.interval)
        remark += QStringLiteral(", ") + rangeText(inUnit(*mark.interval, data.unit), 1);
    if (mark.measured)
        remark += QStringLiteral(", ") +
                  FigureWords::tr("lifted %1").arg(loadNumber(*mark.measured, data.unit));
    return {session.label, number(inUnit(mark.estimate, data.unit), 1),
            data.mvt ? number(*data.mvt, 2) : QString(), remark};
}

} // namespace

FigureTable figuresOf(const LineData& data) {
    FigureTable table{.headings = {FigureWords::tr("Session"),
                                   FigureWords::tr("Load, %1").arg(unitName(data.unit)),
                                   FigureWords::tr("Velocity, m/s"),
                                   FigureWords::tr("What it is")}};
    for (const LineEntry& session : data.sessions) {
        for (const LinePoint& point : session.points)
            table.rows.push_back(
                {session.label, loadNumber(point.load, data.unit), number(point.velocity, 3),
                 point.excluded ? FigureWords::tr("left out") : FigureWords::tr("point")});
        if (session.line)
            table.rows.push_back({session.label,
                                  FigureWords::tr("%1 to %2")
                                      .arg(loadNumber(session.line->from, data.unit),
                                           loadNumber(session.line->to, data.unit)),
                                  FigureWords::tr("%1 to %2")
                                      .arg(number(session.line->at(session.line->from), 3),
                                           number(session.line->at(session.line->to), 3)),
                                  FigureWords::tr("line")});
        if (session.notLifted)
            table.rows.push_back({session.label, loadNumber(*session.notLifted, data.unit),
                                  QString(), FigureWords::tr("not lifted")});
        if (session.oneRm)
            table.rows.push_back(oneRmRow(session, data));
    }
    return table;
}

FigureTable figuresOf(const ChangeData& data) {
    FigureTable table{
        .headings = {
            FigureWords::tr("Load, %1").arg(unitName(data.unit)), FigureWords::tr("Change, m/s"),
            readAgainst(FigureWords::tr("Interval with noise and bend, m/s"), data.allAtOnce),
            FigureWords::tr("As if straight, m/s"), FigureWords::tr("Reading")}};
    for (const ChangeReading& reading : data.readings)
        table.rows.push_back({loadNumber(reading.load, data.unit), signedNumber(reading.change, 3),
                              signedRangeText(reading.whisker.interval, 3),
                              signedRangeText(reading.whisker.straight, 3), reading.alone});
    return table;
}

} // namespace slopebook::ui::charts
