// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonrows.h"

#include "core/answers/told.h"
#include "core/questions/questions.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

struct SeasonRows {
    Q_DECLARE_TR_FUNCTIONS(SeasonRows)
};

constexpr int speedDecimals = 3;
constexpr int massDecimals = 1;
constexpr double daysOfAMonth = 365.25 / 12;

QString dayText(const LiftSession& session) {
    const QString day = dateText(session.date);
    return session.ordinal > 1 ? SeasonRows::tr("%1 #%2").arg(day).arg(session.ordinal) : day;
}

QString seenText(const answers::Followed& f) {
    QStringList seen;
    for (const double v : f.seen)
        seen << number(v, 2);
    return seen.join(u", "_s);
}

QString deviceName(std::span<const Stored<DeviceId, Device>> devices, const LiftSession& session) {
    for (const auto& device : devices)
        if (device.id == session.conditions.device)
            return text(device.value.name);
    return {};
}

/// What a reader of one row should know beside its figures.
QString explanation(const answers::Followed& f, const QString& device, LoadUnit unit) {
    QStringList said;
    if (f.change && f.change->read.straight)
        said << SeasonRows::tr("As if lines were straight: %1 m/s")
                    .arg(signedRangeText(*f.change->read.straight, speedDecimals));
    if (const QString settling = settlingOf(f, unit); !settling.isEmpty())
        said << settling;
    if (!device.isEmpty())
        said << SeasonRows::tr("Device: %1").arg(device);
    if (!f.line)
        said << noAnswerText(f.line.why(), unit);
    if (f.extrapolated)
        said << SeasonRows::tr("The load lies beyond the session's loads: extrapolated.");
    if (f.bias)
        said << SeasonRows::tr("The device's bias against the baseline's, %1 m/s, is taken off in "
                               "change, trend and chart.")
                    .arg(signedNumber(*f.bias, speedDecimals));
    if (!f.oneRm)
        said << noAnswerText(f.oneRm.why(), unit);
    return said.join(u'\n');
}

} // namespace

QString settlingOf(const answers::Followed& f, LoadUnit unit) {
    if (!f.change || f.change->read.reading != answers::Reading::Unclear)
        return {};
    return said(asSentence(answers::settlingWords(
                    answers::unsettled({f.change->load}, f.change->unsettled))),
                unit);
}

QStringList seasonHeadings(LoadUnit unit) {
    const QString mass = unitName(unit);
    return {SeasonRows::tr("Day"),
            SeasonRows::tr("Block"),
            SeasonRows::tr("Seen (m/s)"),
            SeasonRows::tr("From the line (m/s)"),
            SeasonRows::tr("Interval"),
            SeasonRows::tr("Change (m/s)"),
            SeasonRows::tr("Interval, with noise and bend"),
            SeasonRows::tr("Reading"),
            SeasonRows::tr("Estimated 1RM (%1)").arg(mass),
            SeasonRows::tr("Interval"),
            SeasonRows::tr("Measured 1RM (%1)").arg(mass)};
}

std::vector<TextTable::Row> seasonRows(const answers::Follow& follow,
                                       std::span<const Stored<BlockId, Block>> blocks,
                                       std::span<const Stored<DeviceId, Device>> devices,
                                       LoadUnit unit) {
    std::vector<TextTable::Row> rows;
    for (std::size_t i = 0; i < follow.sessions.size(); ++i) {
        const answers::Followed& f = follow.sessions[i];
        const auto block = blockOn(blocks, f.session.date);
        const bool base = i == follow.baseline;
        QStringList cells{dayText(f.session), block ? text(block->name) : QString(), seenText(f)};
        cells << (f.line ? number(*f.line, speedDecimals) +
                               (f.extrapolated ? SeasonRows::tr(" (extrapolated)") : QString())
                         : u"–"_s);
        cells << (f.interval ? rangeText(*f.interval, speedDecimals) : QString());
        if (f.change)
            cells << signedNumber(f.change->read.change, speedDecimals)
                  << signedRangeText(f.change->read.interval, speedDecimals)
                  << said(answers::speedCell(f.change->read));
        else
            cells << QString() << QString() << (base ? SeasonRows::tr("baseline") : u"–"_s);
        if (f.oneRm)
            cells << number(inUnit(f.oneRm->estimate, unit), massDecimals) +
                         (f.oneRm->extrapolatedFar() ? SeasonRows::tr(" (far)") : QString())
                  << (f.oneRm->interval ? rangeText(inUnit(*f.oneRm->interval, unit), massDecimals)
                                        : SeasonRows::tr("not bounded"));
        else
            cells << u"–"_s << QString();
        cells << (f.session.measuredOneRm ? loadNumber(kilograms(*f.session.measuredOneRm), unit)
                                          : QString());
        TextTable::Row row{.cells = cells,
                           .strong = base,
                           .explanation = explanation(f, deviceName(devices, f.session), unit)};
        if (f.oneRm && f.oneRm->extrapolatedVeryFar())
            row.quiet << 8;
        rows.push_back(std::move(row));
    }
    return rows;
}

QString latestText(const answers::Follow& follow) {
    const answers::Followed& last = follow.sessions.back();
    const QString day = dayText(last.session);
    if (follow.baseline + 1 == follow.sessions.size())
        return SeasonRows::tr("%1 is the baseline: nothing later to compare with it.").arg(day);
    const QString base = dayText(follow.sessions[follow.baseline].session);
    if (!last.change)
        return SeasonRows::tr("%1 against %2: no figure.").arg(day, base);
    return SeasonRows::tr("%1 against %2: %3 m/s (%4), %5.")
        .arg(day, base, signedNumber(last.change->read.told(), speedDecimals),
             signedRangeText(last.change->read.interval, speedDecimals),
             said(answers::toldSpeed(last.change->read)));
}

QString trendText(const answers::Follow& follow, double level) {
    if (!follow.trend)
        return SeasonRows::tr("No trend: %1.").arg(said(follow.trend.why().reason));
    const double perMonth = daysOfAMonth / 7;
    const auto per = [&](const QString& words, double scale) {
        QString phrase = words.arg(signedNumber(scale * follow.trend->perWeek, speedDecimals));
        if (const auto& within = follow.trend->interval)
            phrase += SeasonRows::tr(" (%1 %2)")
                          .arg(levelText(level),
                               signedRangeText({scale * within->low, scale * within->high},
                                               speedDecimals));
        return phrase;
    };
    const QString text =
        SeasonRows::tr("Trend over %1 sessions: %2, %3")
            .arg(QString::number(follow.trend->sessions), per(SeasonRows::tr("%1 m/s per week"), 1),
                 per(SeasonRows::tr("%1 m/s per month"), perMonth));
    return text + u'.';
}

} // namespace slopebook::ui
