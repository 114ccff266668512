// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squadrows.h"

#include "core/answers/figures.h"
#include "core/answers/readingwords.h"
#include "core/answers/sources.h"
#include "core/answers/squadsummary.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

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

QString dayOf(const std::optional<LiftSession>& session) {
    return session ? text(dateKey(session->date, session->ordinal)) : u"–"_s;
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

} // namespace

QString partName(const answers::SquadPart& part, LoadUnit unit) {
    return part.load ? loadWithUnit(kilograms(*part.load), unit) : SquadRows::tr("Estimated 1RM");
}

QStringList squadHeadings(const answers::SquadPart& part, double level, LoadUnit unit) {
    const QString what = part.load ? u"m/s"_s : unitName(unit);
    return {SquadRows::tr("Athlete"),
            SquadRows::tr("Earlier"),
            SquadRows::tr("Later"),
            SquadRows::tr("Change (%1)").arg(what),
            SquadRows::tr("%1 interval").arg(levelText(level)),
            SquadRows::tr("Smallest"),
            SquadRows::tr("Reading")};
}

std::vector<TextTable::Row> squadRows(const answers::SquadPart& part, LoadUnit unit) {
    const int decimals = decimalsOf(part);
    const auto scaled = [&](double v) { return part.load ? v : inUnit(v, unit); };
    std::vector<TextTable::Row> rows;
    for (const answers::SquadRow& r : part.rows) {
        QStringList cells{text(r.name), dayOf(r.from), dayOf(r.to)};
        TextTable::Row row;
        if (r.read) {
            cells << signedNumber(scaled(r.read->change), decimals)
                  << signedRangeText({scaled(r.read->interval.low), scaled(r.read->interval.high)},
                                     decimals)
                  << (r.read->smallest ? number(scaled(r.read->smallest->value), decimals) : u"–"_s)
                  << readingCell(part, r, unit);
            if (r.read->smallest)
                row.explanation = said(answers::smallestTold(*r.read->smallest), unit).join(u'\n');
        } else {
            cells << u"–"_s << QString() << QString()
                  << said(answers::readingWords(Reading::NoFigure)) + u": "_s +
                         noAnswerText(r.read.why(), unit);
            row.quiet << 6;
        }
        row.cells = cells;
        rows.push_back(std::move(row));
    }
    return rows;
}

QStringList squadNotes(const answers::Squad& squad, LoadUnit unit) {
    QStringList notes;
    for (const answers::Note& note : squad.notes)
        notes << said(asSentence(note.words), unit);
    notes << said(answers::squadMethod());
    return notes;
}

} // namespace slopebook::ui
