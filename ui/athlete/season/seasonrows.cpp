// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonrows.h"

#include "core/answers/followsummary.h"
#include "core/answers/readingwords.h"
#include "core/questions/questions.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

struct SeasonRows {
    Q_DECLARE_TR_FUNCTIONS(SeasonRows)
};

constexpr int speedDecimals = 3;
constexpr int massDecimals = 1;

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
QString explanation(const answers::Followed& f, const QString& felt, const QString& device,
                    LoadUnit unit) {
    QStringList said;
    if (!felt.isEmpty())
        said << SeasonRows::tr("Felt at the load (RPE): %1").arg(felt);
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
        said << ui::said(asSentence(answers::beyondLoadsWords()));
    if (f.bias)
        said << ui::said(asSentence(answers::biasWords(f)));
    if (!f.oneRm)
        said << noAnswerText(f.oneRm.why(), unit);
    return said.join(u'\n');
}

} // namespace

QString feltText(std::span<const Effort> felt) {
    QStringList each;
    for (const Effort effort : felt)
        each << number(effort.value(), effort.halves % 2);
    return each.join(u", "_s);
}

QString settlingOf(const answers::Followed& f, LoadUnit unit) {
    const Words settling = answers::settlingWords(f);
    return settling.empty() ? QString() : said(asSentence(settling), unit);
}

QStringList seasonHeadings(LoadUnit unit) {
    const QString mass = unitName(unit);
    return {SeasonRows::tr("Day"),
            SeasonRows::tr("Block"),
            SeasonRows::tr("Seen (m/s)"),
            SeasonRows::tr("RPE"),
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
                                       LoadUnit unit, const QStringList& felt) {
    std::vector<TextTable::Row> rows;
    for (std::size_t i = 0; i < follow.sessions.size(); ++i) {
        const answers::Followed& f = follow.sessions[i];
        const auto block = questions::blockOn(blocks, f.session.date);
        const bool base = i == follow.baseline;
        QStringList cells{sessionText(f.session), block ? text(block->name) : QString(),
                          seenText(f), felt.value(qsizetype(i))};
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
                           .explanation = explanation(f, felt.value(qsizetype(i)),
                                                      deviceName(devices, f.session), unit)};
        if (f.oneRm && f.oneRm->extrapolatedVeryFar())
            row.quiet << 9;
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace slopebook::ui
