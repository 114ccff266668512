// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonrows.h"

#include "core/answers/followsummary.h"
#include "core/answers/planbounds.h"
#include "core/answers/readingwords.h"
#include "core/questions/questions.h"
#include "ui/athlete/season/seasondata.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <cmath>

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
    if (f.interval)
        said << SeasonRows::tr("From the line: %1 m/s").arg(rangeText(*f.interval, speedDecimals));
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
    else if (f.oneRm->interval)
        said << SeasonRows::tr("1RM by the line alone: %1")
                    .arg(rangeText(inUnit(*f.oneRm->interval, unit), massDecimals));
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
            SeasonRows::tr("To plan with (%1)").arg(mass),
            SeasonRows::tr("Line alone (%1)").arg(mass),
            SeasonRows::tr("Measured 1RM (%1)").arg(mass)};
}

namespace {

constexpr int tableColumns = seasonMeasured + 1;

class RowMaker {
public:
    RowMaker(const answers::FollowedSeason& season, std::span<const Stored<BlockId, Block>> blocks,
             std::span<const Stored<DeviceId, Device>> devices, LoadUnit unit, bool trends)
        : m_season(season), m_blocks(blocks), m_devices(devices), m_unit(unit), m_trends(trends) {}

    TextTable::Row session(std::size_t i, const QString& felt) const {
        const answers::Followed& f = m_season.follow.sessions[i];
        const bool base = m_season.isBaseline(f);
        QStringList cells{sessionText(f.session), blockOn(f.session.date), seenText(f), felt};
        cells << (f.line ? number(*f.line, speedDecimals) +
                               (f.extrapolated ? SeasonRows::tr(" (extrapolated)") : QString())
                         : u"–"_s);
        cells << (f.interval ? rangeText(*f.interval, speedDecimals) : QString());
        const answers::ReadChange* read = f.change       ? &f.change->read
                                          : f.seenChange ? &*f.seenChange
                                                         : nullptr;
        if (read)
            addChange(cells, *read);
        else
            cells << QString() << QString() << (base ? SeasonRows::tr("baseline") : u"–"_s);
        // The newest day is read by itself; those before it hold together, which asks for more.
        if (read && i + 1 == m_season.follow.sessions.size() && i > 1)
            cells.back() = SeasonRows::tr("alone: %1", "a reading").arg(cells.back());
        if (f.oneRm)
            cells << number(inUnit(f.oneRm->estimate, m_unit), massDecimals) +
                         (f.oneRm->extrapolatedFar() ? SeasonRows::tr(" (far)") : QString())
                  << planned(*f.oneRm) << held(f.oneRm->interval);
        else
            cells << u"–"_s << QString() << QString();
        cells << (f.session.measuredOneRm ? loadNumber(kilograms(*f.session.measuredOneRm), m_unit)
                                          : QString());
        TextTable::Row row{.cells = cells,
                           .strong = base && !m_season.block,
                           .explanation =
                               explanation(f, felt, deviceName(m_devices, f.session), m_unit)};
        if (f.oneRm && f.oneRm->extrapolatedVeryFar())
            row.quiet << 9;
        return row;
    }

    TextTable::Row notLifted(const answers::NotLifted& day) const {
        QStringList cells = blank();
        cells[0] = dateText(day.date);
        cells[1] = blockOn(day.date);
        const QString load = day.load ? loadWithUnit(kilograms(*day.load), m_unit) : QString();
        cells[seasonReading] = day.tried  ? SeasonRows::tr("%1 not lifted").arg(load)
                               : day.load ? SeasonRows::tr("%1 not possible").arg(load)
                                          : SeasonRows::tr("not possible");
        return {.cells = cells,
                .explanation = said(asSentence(answers::notLiftedWords(day)), m_unit)};
    }

    TextTable::Row block(const answers::FollowedBlock& block) const {
        const answers::MatrixCell& cell = block.cell;
        const bool base = m_season.block && m_season.block->id == block.id;
        QStringList cells = blank();
        cells[0] = cell.sessions == 1 ? SeasonRows::tr("mean of 1 day")
                                      : SeasonRows::tr("mean of %1 days").arg(cell.sessions);
        cells[1] = periodText(block.block.name);
        if (cell.value) {
            cells[4] = number(*cell.value, speedDecimals) +
                       (cell.extrapolated ? SeasonRows::tr(" (extrapolated)") : QString());
            cells[5] = cell.interval ? rangeText(*cell.interval, speedDecimals) : QString();
        } else {
            cells[0] = SeasonRows::tr("mean");
            cells[4] = u"–"_s;
        }
        if (base)
            cells[seasonReading] = SeasonRows::tr("baseline");
        else if (cell.against && cell.against->why.empty())
            setChange(cells, cell.against->read);
        else if (cell.against && !cell.against->comparable())
            cells[seasonReading] = said(answers::speedCell(cell.against->read), m_unit);
        else
            cells[seasonReading] = u"–"_s;
        QString told = said(answers::blockWords(m_season, block), m_unit);
        if (m_trends)
            told += u'\n' +
                    said(answers::blockTrendWords(block, questions::AskSettings{}.level), m_unit);
        return {.cells = cells, .strong = base, .explanation = told};
    }

private:
    QString held(const std::optional<stats::Interval>& interval) const {
        return interval ? rangeText(inUnit(*interval, m_unit), massDecimals)
                        : SeasonRows::tr("not bounded");
    }
    /// The interval to plan with; by the log's own maxima it is around another estimate.
    QString planned(const answers::OneRm& oneRm) const {
        const QString range = held(answers::toPlanWith(oneRm));
        const double estimate = answers::estimateToPlanWith(oneRm);
        return std::abs(estimate - oneRm.estimate) > plannedApartFrom
                   ? u"%1 (%2)"_s.arg(number(inUnit(estimate, m_unit), massDecimals), range)
                   : range;
    }
    static QStringList blank() { return QStringList(tableColumns, QString()); }
    QString blockOn(Date date) const {
        const auto block = questions::blockOn(m_blocks, date);
        return block ? text(block->name) : QString();
    }
    static void addChange(QStringList& cells, const answers::ReadChange& read) {
        cells << signedNumber(read.change, speedDecimals)
              << signedRangeText(read.interval, speedDecimals) << said(answers::speedCell(read));
    }
    static void setChange(QStringList& cells, const answers::ReadChange& read) {
        QStringList change;
        addChange(change, read);
        for (int i = 0; i < 3; ++i)
            cells[seasonReading - 2 + i] = change[i];
    }

    const answers::FollowedSeason& m_season;
    std::span<const Stored<BlockId, Block>> m_blocks;
    std::span<const Stored<DeviceId, Device>> m_devices;
    LoadUnit m_unit;
    bool m_trends;
};

} // namespace

std::vector<TextTable::Row> seasonRows(const answers::FollowedSeason& season,
                                       std::span<const Stored<BlockId, Block>> blocks,
                                       std::span<const Stored<DeviceId, Device>> devices,
                                       LoadUnit unit, const QStringList& felt, bool trends) {
    const RowMaker maker(season, blocks, devices, unit, trends);
    std::vector<TextTable::Row> rows;
    for (const SeasonItem& item : seasonItems(season))
        rows.push_back(item.kind == SeasonItem::Kind::Session
                           ? maker.session(item.index, felt.value(qsizetype(item.index)))
                       : item.kind == SeasonItem::Kind::NotLifted
                           ? maker.notLifted(season.notLifted[item.index])
                           : maker.block(season.blocks[item.index]));
    return rows;
}

} // namespace slopebook::ui
