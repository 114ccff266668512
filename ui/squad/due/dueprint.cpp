// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/due/dueprint.h"

#include "ui/paper/tablecells.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using page::Flow;
using page::headlineFont;
using page::pageFont;

struct DuePaper {
    Q_DECLARE_TR_FUNCTIONS(DuePaper)
};

constexpr double dueText = 8.5, dueUnder = 7.5;

void fillDue(Flow& flow, const answers::SquadDue& due, LoadUnit unit) {
    flow.text(DuePaper::tr("What is due on %1").arg(dateText(due.question.today)), pageFont(9));
    flow.leading(said(answers::dueWords(due), unit), headlineFont(14), 4);
    if (!due.rows.empty()) {
        const double w = flow.width() / 523;
        flow.table({{110 * w}, {130 * w}, {70 * w}, {50 * w, Qt::AlignRight}, {163 * w}},
                   page::headCells(dueHeadings()), page::rowCells(dueRows(due, unit)),
                   pageFont(dueText), 8);
    }
    for (const QString& note : dueNotes(due, unit))
        flow.text(note, pageFont(dueUnder), 4);
}

} // namespace

QStringList dueHeadings() {
    return {DuePaper::tr("Athlete"), DuePaper::tr("Lift or test"), DuePaper::tr("Last tested"),
            DuePaper::tr("Days ago"), DuePaper::tr("Why it is due")};
}

std::vector<TextTable::Row> dueRows(const answers::SquadDue& due, LoadUnit unit) {
    std::vector<TextTable::Row> rows;
    for (const answers::DueRow& row : due.rows)
        rows.push_back({.cells = {text(row.name), testText(row.measure),
                                  row.last ? dateText(*row.last) : DuePaper::tr("never"),
                                  row.last ? QLocale().toString(row.days) : u"–"_s,
                                  said(answers::dueWhy(row, due.question), unit)}});
    return rows;
}

QStringList dueNotes(const answers::SquadDue& due, LoadUnit unit) {
    QStringList notes;
    if (const Words away = answers::awayWords(due); !away.empty())
        notes << said(away, unit);
    notes << said(answers::dueMethod(due.question), unit);
    return notes;
}

page::Print duePrint(const answers::SquadDue& due, LoadUnit unit) {
    const QString title = DuePaper::tr("What is due on %1").arg(dateText(due.question.today));
    return {.title = title, .foot = title, .fill = [due, unit](Flow& flow) {
                fillDue(flow, due, unit);
            }};
}

} // namespace slopebook::ui
