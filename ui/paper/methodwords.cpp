// SPDX-License-Identifier: GPL-3.0-or-later
// How the comparison was computed and where its figures come from, in a few lines.
#include "core/answers/sources.h"
#include "core/answers/told.h"
#include "ui/paper/comparisonrows.h"
#include "ui/paper/pagewords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::page {

namespace {

using answers::Comparison;
using answers::Note;
using answers::Profile;

QString lineOf(const Profile& p, LoadUnit unit) {
    const double kg = 1 / inUnit(1, unit); // kilograms in one unit of load
    return Page::tr("%1: V0 %2 m/s, slope %3 m/s per %4, residual SD %5 m/s, R² %6, n %7")
        .arg(sessionName(p), number(p.line.intercept, 3), number(p.line.slope * kg, 5),
             unitName(unit), number(p.line.s(), 3), number(p.line.r2, 3))
        .arg(p.line.n);
}

QString testText(const QString& what, const stats::FTest& t) {
    return Page::tr("%1: F(%2, %3) = %4, %5")
        .arg(what, QString::number(t.df1, 'g', 4), QString::number(t.df2, 'g', 4), number(t.f, 2),
             pText(t.p));
}

bool isSource(const Note& n) {
    return n.kind == Note::Kind::DayNoiseSource || n.kind == Note::Kind::SmallestSource ||
           n.kind == Note::Kind::MvtCancels || n.kind == Note::Kind::LevelNot95;
}

void addNotes(QStringList& lines, const std::vector<Note>& notes, const QString& before,
              LoadUnit unit) {
    for (const Note& n : notes) {
        const QString line = before + said(asSentence(n.words), unit);
        if (!isSource(n) && !lines.contains(line))
            lines << line;
    }
}

} // namespace

QStringList remarks(const Comparison& c, const PageHeader& h) {
    QStringList lines;
    addNotes(lines, c.notes, {}, h.unit);
    for (const Profile* p : {&c.from, &c.to})
        addNotes(lines, p->notes, sessionName(*p) + ": "_L1, h.unit);
    return lines;
}

QStringList methodLines(const Comparison& c, const PageHeader& h) {
    const QString level = levelText(c.settings.level);
    const QString other = levelText(answers::equivalenceLevel(c.settings.level));
    QStringList lines;
    lines << Page::tr("One least-squares line of velocity on load a session (%1 of each counting "
                      "set). %2. %3.")
                 .arg(h.rule == PointRule::Fastest ? Page::tr("fastest rep")
                                                   : Page::tr("mean of the reps"),
                      lineOf(c.from, h.unit), lineOf(c.to, h.unit));
    lines << (c.settings.variances == stats::Variances::Pooled
                  ? Page::tr("Change: both lines in one model, one residual variance (%1 df).")
                        .arg(number(c.lines.df(), 0))
                  : Page::tr("Change: both lines, each with its own residual variance "
                             "(Satterthwaite's df).")) +
                 u' ' + testText(Page::tr("Parallel"), c.lines.parallel()) + "; "_L1 +
                 testText(Page::tr("one line for both"), c.lines.coincident()) + ". "_L1 +
                 Page::tr("Band over all loads: Working and Hotelling 1929.");
    lines << Page::tr("Estimated 1RM: the load at which a line reaches the MVT; interval: Fieller "
                      "1954; of the change: variance recovery, Zou and Donner 2008.");
    lines << Page::tr("Better or worse: the %1 interval with day-to-day noise and bend leaves "
                      "out zero. Held: the %2 interval lies within the smallest change that "
                      "matters. Else unclear.")
                 .arg(level, other);
    return lines;
}

QStringList sourceLines(const Comparison& c, LoadUnit unit) {
    QStringList lines;
    if (c.from.mvt)
        lines << Page::tr("MVT (minimal-velocity threshold): %1.").arg(mvtText(*c.from.mvt));
    lines << Page::tr("Day-to-day noise: %1.").arg(dayNoiseText(c.settings.dayNoise));
    if (const Words tilt = answers::tiltWords(c.settings.dayNoise); !tilt.empty())
        lines << said(asSentence(tilt));
    lines << said(asSentence(answers::bendSource(c.settings.bend)));
    if (!c.settings.smallestAt.empty())
        lines << Page::tr("Smallest change of speed that matters, by load: %1.")
                     .arg(said(answers::sourceOf(c.settings.smallestAt.begin()->second)));
    if (const auto& m = c.settings.smallestVelocity)
        lines << (c.settings.smallestAt.empty()
                      ? Page::tr("Smallest change of speed that matters: %1 m/s (%2).")
                      : Page::tr(
                            "Smallest change of speed that matters, other loads: %1 m/s (%2)."))
                     .arg(number(m->value, 3), said(answers::sourceOf(*m)));
    if (const auto& m = c.settings.smallestOneRm; m && c.oneRm)
        lines << Page::tr("Smallest change of the estimated 1RM that matters: %1 %2 (%3).")
                     .arg(number(inUnit(m->value, unit), 1), unitName(unit),
                          said(answers::sourceOf(*m)));
    return lines;
}

} // namespace slopebook::ui::page
