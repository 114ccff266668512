// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/tutorial.h"

#include "ui/window/actions.h"
#include "ui/window/pagetable.h"
#include "ui/words/format.h"
#include "ui/words/units.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QMenu>
#include <QUrl>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

struct Tutorial {
    Q_DECLARE_TR_FUNCTIONS(Tutorial)
};

QString plain(QString words) {
    return words.remove(u'&').toHtmlEscaped();
}

QString wayOf(const QAction* action) {
    for (const QObject* holder : action->associatedObjects())
        if (const auto* menu = qobject_cast<const QMenu*>(holder))
            return ui::wayTo(menu->title(), action->text());
    return plain(action->text());
}

QString pressed(const QString& words) {
    return u"<b>%1</b>"_s.arg(words);
}

QString named(const QAction* action) {
    return u"<strong>%1</strong>"_s.arg(wayOf(action));
}

/// The place of a page in the index: its part, whose it is, and its name.
QString turnTo(Page page, const QString& whose = {}) {
    QStringList way{pressed(titleOf(entryOf(page).part))};
    if (!whose.isEmpty())
        way << pressed(whose);
    return (way << pressed(entryOf(page).title())).join(u", "_s);
}

/// Speeds as that language writes them.
QString typed(const QString& line) {
    QString words = line;
    return u"<code>%1</code>"_s.arg(words.replace(u'.', QLocale().decimalPoint()));
}

Date on(int year, unsigned month, unsigned day) {
    return std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day};
}

// In sample_db.
const QString sampleAthlete = u"Cora"_s, sampleLift = u"Bench pull"_s;

TutorialStep openIt(const Actions& actions) {
    return {u"sample"_s, Tutorial::tr("Open the sample"),
            Tutorial::tr("%1 opens an invented rowing squad. In winter a flood took the heavy "
                         "plates of its weights room: for one block nobody could load more than "
                         "what was left. What opens is a copy of your own; nothing that you try "
                         "can spoil anything.")
                .arg(pressed(wayOf(actions.openSample)))};
}

TutorialStep lookAtSomebody() {
    return {u"overview"_s, Tutorial::tr("One athlete at a glance"),
            Tutorial::tr("At the left press %1. The sentence on top says what the last block "
                         "changed in everything that she was tested in; the table below proves "
                         "it, a line a test. <i>%2</i> is no failure: beside it stands the change "
                         "from which such tests would have shown one.")
                .arg(turnTo(Page::Overview, sampleAthlete),
                     QCoreApplication::translate("Phrases", "unclear"))};
}

TutorialStep compareTwoDays() {
    return {
        u"comparison"_s, Tutorial::tr("Two days, one sentence"),
        Tutorial::tr("Press %1 and choose %2; %3 %4, %5 %6. One sentence says what "
                     "changed, by load and in the 1RM. In the chart a bar that does not touch "
                     "zero is a change; a grey band is what is too small to matter.")
            .arg(pressed(entryOf(Page::Comparison).title()), pressed(sampleLift),
                 pressed(plain(QCoreApplication::translate("slopebook::ui::ComparePage", "F&rom"))),
                 pressed(dateText(on(2025, 12, 1))),
                 pressed(plain(QCoreApplication::translate("slopebook::ui::ComparePage", "&To"))),
                 pressed(dateText(on(2026, 5, 4))))};
}

TutorialStep typeALadder() {
    return {u"session"_s, Tutorial::tr("Type a ladder"),
            Tutorial::tr("Press %1. A set is one line: the load, then the speed of every rep, and "
                         "Enter. Type %2, %3, %4 and %5. Each point lands on today's line beside "
                         "that of last time, <i>%6</i> says what comes next, and the estimated "
                         "1RM grows an interval from the third load on.")
                .arg(turnTo(Page::Session), typed(u"30 1.18 1.16"_s), typed(u"40 1.06 1.05 1.04"_s),
                     typed(u"50 0.94 0.92"_s), typed(u"60 0.80 0.78"_s),

                     QCoreApplication::translate("slopebook::ui::EntryPage", "Next load"))};
}

TutorialStep slip() {
    return {u"slip"_s, Tutorial::tr("A slip is asked about"),
            Tutorial::tr("Type %1, as happens between two sets. Whether <i>%2</i> was meant is "
                         "asked below the line, and nothing is written before you say so.")
                .arg(typed(u"70 64"_s), speedText(0.64))};
}

TutorialStep takeBack() {
    return {{},
            Tutorial::tr("Put right, take back"),
            Tutorial::tr("<kbd>Esc</kbd> says no, and the line is yours to mend: %1. What should "
                         "not have been written is taken back by <kbd>%2</kbd>, one step after "
                         "the other: the set at 70 kg is gone again.")
                .arg(typed(u"70 0.64"_s),
                     QKeySequence(QKeySequence::Undo).toString(QKeySequence::NativeText))};
}

TutorialStep trust() {
    return {u"lines"_s, Tutorial::tr("How far to trust it"),
            Tutorial::tr("Press %1. Every session has its line, its estimated 1RM and the interval "
                         "to plan with. <i>%2</i> is the heaviest load lifted as a share of the "
                         "estimate: the smaller it is, the further the line was drawn out.")
                .arg(turnTo(Page::Lines, sampleAthlete),
                     QCoreApplication::translate("slopebook::ui::LinesModel", "Reach"))};
}

TutorialStep planLoads() {
    return {u"plan"_s, Tutorial::tr("Loads for the next block"),
            Tutorial::tr("Press %1. An aim, 70 % of the estimated 1RM, becomes loads that the "
                         "plates at hand can build, with the speed to expect and the speed to stop "
                         "at. The tab %2 says which ladder would settle most of what is unclear.")
                .arg(pressed(entryOf(Page::Plan).title()),
                     pressed(plain(
                         QCoreApplication::translate("slopebook::ui::PlanPage", "Ne&xt test"))))};
}

TutorialStep season() {
    return {u"wholeseason"_s, Tutorial::tr("The whole season"),
            Tutorial::tr("Press %1: all that was measured, a column a training block, each read "
                         "against the first and against the one before.")
                .arg(pressed(entryOf(Page::WholeSeason).title()))};
}

TutorialStep squad() {
    return {u"changes"_s, Tutorial::tr("The squad"),
            Tutorial::tr("Press %1: everybody's change of one lift on one axis, their mean, and "
                         "how many readings chance alone would give.")
                .arg(turnTo(Page::Changes))};
}

TutorialStep yourOwn(const Actions& actions) {
    return {{},
            Tutorial::tr("Your own"),
            Tutorial::tr("%1 begins your own log, one file wherever you want it; %2 brings in the "
                         "tables that you have. What a page shows goes to paper by %3 and %4, and "
                         "everything comes out again by %5. Each set is on disk when it is typed; "
                         "%6 makes a checked copy for a stick. How every figure is made, and from "
                         "which paper, is told by %7.")
                .arg(named(actions.newLog), named(actions.importCsv), named(actions.print),
                     named(actions.pdf), named(actions.exportAll), named(actions.backUp),
                     named(actions.method))};
}

} // namespace

QString tutorialLead() {
    return Tutorial::tr(
        "Ten minutes with the sample log. Words in bold are there to press, in that "
        "order; the help stays open beside the window.");
}

QString wayTo(const QString& menu, const QString& entry) {
    return plain(menu) + u" \u203a "_s + plain(entry);
}

std::vector<TutorialStep> tutorialSteps(const Actions& actions) {
    return {openIt(actions), lookAtSomebody(), compareTwoDays(), typeALadder(),
            slip(),          takeBack(),       trust(),          planLoads(),
            season(),        squad(),          yourOwn(actions)};
}

QString tutorialHelp(const Actions& actions, const std::filesystem::path& pictures) {
    QString html = u"<p>%1</p>"_s.arg(tutorialLead());
    int at = 0;
    for (const TutorialStep& step : tutorialSteps(actions)) {
        html += u"<h3>%1. %2</h3><p>%3</p>"_s.arg(++at).arg(step.title, step.html);
        const QFileInfo picture(nameOf(pictures / (step.picture + u".png"_s).toStdString()));
        if (!pictures.empty() && !step.picture.isEmpty() && picture.exists())
            html += u"<p><img src=\"%1\" alt=\"%2\"/></p>"_s.arg(
                QUrl::fromLocalFile(picture.absoluteFilePath()).toString(), step.title);
    }
    return html;
}

} // namespace slopebook::ui
