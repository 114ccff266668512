// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squadrows.h"

#include "core/answers/figures.h"
#include "core/answers/method.h"
#include "core/answers/readingwords.h"
#include "core/answers/sources.h"
#include "core/answers/squadmean.h"
#include "core/answers/squadsummary.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using answers::Reading;

struct SquadRows {
    Q_DECLARE_TR_FUNCTIONS(SquadRows)
};

int decimalsOf(const answers::SquadPart& part) {
    return part.load ? 3 : 1;
}

QString dayOf(const std::optional<LiftSession>& session, int count) {
    if (!session)
        return u"–"_s;
    return count > 1 ? SquadRows::tr("%1 sessions").arg(count) : sessionText(*session);
}

/// Athletes and their mean alike: change, interval, drawn, smallest.
void addChange(QStringList& cells, const answers::ReadChange& read, const QString& drawn, bool mass,
               LoadUnit unit) {
    const int decimals = mass ? 1 : 3;
    const auto scaled = [&](double v) { return mass ? inUnit(v, unit) : v; };
    cells << signedNumber(scaled(read.change), decimals)
          << signedRangeText({scaled(read.interval.low), scaled(read.interval.high)}, decimals)
          << drawn << (read.smallest ? number(scaled(read.smallest->value), decimals) : u"–"_s);
}

QString readingCell(const answers::SquadPart& part, const answers::SquadRow& row, LoadUnit unit) {
    QString words =
        said(part.load ? answers::speedCell(*row.read) : answers::maxCell(*row.read), unit);
    if (row.extrapolated)
        words += part.load ? SquadRows::tr("; extrapolated") : SquadRows::tr("; far from any load");
    if (row.correctedDevice)
        words += SquadRows::tr("; device corrected");
    else if (row.otherDevice)
        words += SquadRows::tr("; two devices");
    return words;
}

/// Where what matters is each athlete's own, a share of their max, it is the mean of theirs.
QString smallestOfAllTold(const answers::SquadPart& part, const answers::Smallest& ofAll,
                          LoadUnit unit) {
    return std::ranges::all_of(part.rows,
                               [&](const answers::SquadRow& row) {
                                   return !row.read || !row.read->smallest ||
                                          row.read->smallest->value == ofAll.value;
                               })
               ? said(answers::smallestTold(ofAll), unit).join(u'\n')
               : SquadRows::tr("Smallest change that matters: the mean of the athletes' own");
}

} // namespace

QString partName(const answers::SquadPart& part, LoadUnit unit) {
    return part.load ? loadWithUnit(kilograms(*part.load), unit) : SquadRows::tr("Estimated 1RM");
}

QString drawnAlike(const answers::SquadPart& part, double level, LoadUnit unit) {
    const auto mean = answers::squadMean(part, level);
    if (!mean)
        return {};
    const auto figure = [&](double drawn) {
        return signedNumber(part.load ? drawn : inUnit(drawn, unit), decimalsOf(part));
    };
    const QString one = figure(mean->each.front().drawn);
    if (!std::ranges::all_of(mean->each, [&](const answers::SquadMean::Drawn& each) {
            return figure(each.drawn) == one;
        }))
        return {};
    return SquadRows::tr("Drawn to all, every athlete comes to the mean of all: %1 %2.")
        .arg(one, part.load ? u"m/s"_s : unitName(unit));
}

bool drawnApart(const answers::SquadPart& part, double level, LoadUnit unit) {
    return answers::squadMean(part, level) && drawnAlike(part, level, unit).isEmpty();
}

QStringList squadHeadings(const answers::SquadPart& part, double level, LoadUnit unit) {
    const QString what = part.load ? u"m/s"_s : unitName(unit);
    return {SquadRows::tr("Athlete"),
            SquadRows::tr("Earlier"),
            SquadRows::tr("Later"),
            SquadRows::tr("Change (%1)").arg(what),
            SquadRows::tr("%1 interval").arg(levelText(level)),
            SquadRows::tr("Drawn to all"),
            SquadRows::tr("Smallest"),
            SquadRows::tr("Reading")};
}

std::vector<TextTable::Row> squadRows(const answers::SquadPart& part, double level, LoadUnit unit) {
    const bool mass = !part.load.has_value();
    const auto scaled = [&](double v) { return mass ? inUnit(v, unit) : v; };
    const auto mean = answers::squadMean(part, level);
    std::vector<TextTable::Row> rows;
    for (const answers::SquadRow& r : part.rows) {
        TextTable::Row row{
            .cells = {text(r.name), dayOf(r.from, r.fromSessions), dayOf(r.to, r.toSessions)}};
        if (r.read) {
            const auto drawn = answers::drawnOf(mean, r.athlete);
            addChange(row.cells, *r.read,
                      drawn ? signedNumber(scaled(drawn->drawn), decimalsOf(part)) : u"–"_s, mass,
                      unit);
            row.cells << readingCell(part, r, unit);
            QStringList told{readAgainst(SquadRows::tr("%1 interval").arg(levelText(level)))};
            if (drawn)
                told << SquadRows::tr("Drawn to all (moved towards the mean of all by what noise "
                                      "may be): %1 (%2)")
                            .arg(signedNumber(scaled(drawn->drawn), decimalsOf(part)),
                                 signedRangeText(
                                     {scaled(drawn->interval.low), scaled(drawn->interval.high)},
                                     decimalsOf(part)));
            if (r.read->smallest)
                told << said(answers::smallestTold(*r.read->smallest), unit);
            row.explanation = told.join(u'\n');
        } else {
            row.cells << u"–"_s << QString() << QString() << QString()
                      << said(answers::readingWords(Reading::NoFigure)) + u": "_s +
                             noAnswerText(r.read.why(), unit);
            row.quiet << 7;
        }
        rows.push_back(std::move(row));
    }
    if (mean) {
        TextTable::Row all{.cells = {SquadRows::tr("All (%1)").arg(mean->athletes), {}, {}},
                           .strong = true};
        addChange(all.cells, *mean->read, QString(), mass, unit);
        all.cells << said(mass ? answers::maxCell(*mean->read) : answers::speedCell(*mean->read),
                          unit);
        if (const auto& matters = mean->read->smallest)
            all.explanation = smallestOfAllTold(part, *matters, unit);
        rows.push_back(std::move(all));
    }
    return rows;
}

QString squadSentence(const answers::SquadPart& part, double level, LoadUnit unit) {
    const auto mean = answers::squadMean(part, level);
    return said(mean ? answers::squadMeanWords(part, *mean) : answers::countWords(part), unit);
}

QString squadCounts(const answers::SquadPart& part, LoadUnit unit) {
    const QString counts = said(answers::countWords(part), unit);
    const Words under = answers::squadUnderWords(part);
    return under.empty() ? counts : counts + u' ' + said(under, unit);
}

QString liftTitle(const Lift& lift) {
    return SquadRows::tr("%1 (%2)").arg(text(lift.name), kindText(lift.kind));
}

QStringList squadNotes(const answers::Squad& squad, LoadUnit unit) {
    QStringList notes{said(answers::squadChanceWords(squad), unit)};
    for (const answers::Note& note : squad.notes)
        notes << said(asSentence(note.words), unit);
    notes << said(answers::intervalsOfOneChange()) << said(answers::squadMethod());
    return notes;
}

} // namespace slopebook::ui
