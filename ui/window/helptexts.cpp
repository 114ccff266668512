// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/helptexts.h"

#include <QCoreApplication>
#include <QStringList>

namespace slopebook::ui {

namespace {

struct Help {
    Q_DECLARE_TR_FUNCTIONS(Help)
};

QString part(const QString& title, const QStringList& paragraphs) {
    QString html = QStringLiteral("<h3>%1</h3>").arg(title);
    for (const QString& paragraph : paragraphs)
        html += QStringLiteral("<p>%1</p>").arg(paragraph);
    return html;
}

QString list(const QStringList& items) {
    QString html = QStringLiteral("<ul>");
    for (const QString& item : items)
        html += QStringLiteral("<li>%1</li>").arg(item);
    return html + QStringLiteral("</ul>");
}

} // namespace

QString typingHelp() {
    return part(
               Help::tr("One line a set"),
               {Help::tr("<code>60 0.92 0.90 0.88</code> and Enter: the load 60 and three reps. It "
                         "is on disk when the line is empty again; there is nothing to save.")}) +
           list({Help::tr("Point and comma are both the decimal mark; there are no marks for "
                          "thousands. Blanks, tabs or ; go between the numbers."),
                 Help::tr("A load is in the unit chosen under View; <code>60kg</code> and "
                          "<code>135lb</code> say their own."),
                 Help::tr("Up puts the next load there: the ladder of last time, above its top the "
                          "same rise again, never above the block's ceiling, nor above the "
                          "estimated 1RM unless last time it was a true maximum. Down steps back."),
                 Help::tr("<code>92.5! 0.18</code>: a successful true maximum, one rep."),
                 Help::tr("<code>60 0.92 0.90 @8.5</code>: how hard it was (RPE), from 1 to 10 in "
                          "halves."),
                 Help::tr("<code>100 -</code>: tried and not lifted, <code>100! -</code> as a true "
                          "maximum; what follows # says why."),
                 Help::tr("<code>100 / # plates gone</code>: that load was not possible. "
                          "<code>- # sore back</code>: the lift was not; both with the reason."),
                 Help::tr("What is refused stays in the line. Down puts there what would be taken, "
                          "where that is said; Up brings the line back to be mended."),
                 Help::tr("<code>60 0.92 0.71x # slipped</code>: the second rep is left out; what "
                          "follows # is the note and the reason. It stays in the log and is drawn "
                          "hollow."),
                 Help::tr(
                     "<code>60 92</code>: the line asks whether 0.92 was meant; Enter says yes, "
                     "Esc no. <code>1.12 1.08</code>: it asks whether the load was forgotten."),
                 Help::tr("A speed far from the line at that load, a speed that rises with the "
                          "load, or a load far from all others is asked about; Enter takes it as "
                          "typed, Esc leaves it to be corrected."),
                 Help::tr("Several lines pasted from a spreadsheet go in at once, all or none."),
                 Help::tr("In the table F2 changes a cell, Delete removes the set, and Leave out, "
                          "note… says what does not count and why."),
                 Help::tr(
                     "Undo and Redo go back and forth through every change that was made by hand "
                     "since the log was opened or a file was last imported, each on disk at "
                     "once."),
                 Help::tr("View, Controls that fit a finger makes everything large enough for a "
                          "touch screen; where there is one it is on by itself."),
                 Help::tr("View, Rest timer shows beside the line how long ago the last set was "
                          "typed.")}) +
           part(Help::tr("At a station"),
                {Help::tr("Ctrl+T shows the stations: a lift, or a few tests, with device, surface "
                          "and ladder, and who is here today in the order of their turns.")}) +
           list({Help::tr("Enter writes, and makes it the next one's turn who is due. Alt+Down "
                          "passes, Alt+Up goes back, Up puts the load there that is due."),
                 Help::tr("<code>be 60 0.92</code>: Bela's set, where nobody else here begins so; "
                          "where two do, it asks. A name alone goes there; it needs two letters, "
                          "for l, r and b are always sides."),
                 Help::tr("At a test <code>1.84 1.91</code> are attempts; <code>l 1.84 r "
                          "1.79</code>: left and right, <code>b 1.9</code>: both at once, where "
                          "the test takes that."),
                 Help::tr("<code>0.512/0.204</code>: flight and contact time, where the test takes "
                          "both. <code>1.95x # on the line</code>: left out; <code>r - # "
                          "knee</code>: not possible on that side."),
                 Help::tr("What is typed for somebody waits for them until it is written."),
                 Help::tr("Undo names whose set it takes back, and goes there first.")});
}

QString methodHelp() {
    return part(Help::tr("From reps to a line"),
                {Help::tr(
                     "Each set gives one point: its fastest rep, or the mean of its reps, as the "
                     "lift says. A lift is measured in one kind of velocity, and kinds are never "
                     "mixed. The <b>line</b> is the ordinary least-squares regression of velocity "
                     "on load through the session's points. V0 is its velocity at zero load, L0 "
                     "its load at zero velocity."),
                 Help::tr(
                     "Two sets at two loads make a line without intervals; a third set gives them, "
                     "best at a third load. From four loads on it is tested whether the points "
                     "bend. A point far from the line of "
                     "the others is named: worth a look, never left out by itself.")}) +
           part(Help::tr("Estimated 1RM and its interval"),
                {Help::tr(
                     "The estimated 1RM is the load at which the line meets the minimal-velocity "
                     "threshold (MVT): the mean of the athlete's own true maxima where there are "
                     "any, drawn towards the lift's figure while they are few, else the coach's "
                     "figure, else a published one; it is always said which. "
                     "Its interval is Fieller's [1]. A measured 1RM stands beside the estimate and "
                     "never replaces it. A thrown or jumped lift has a line and no 1RM."),
                 Help::tr(
                     "The interval to plan with is wider: it holds the threshold's own spread, how "
                     "much days differ, and how far a straight line may be off. From three maxima "
                     "on that were lifted within a week of an estimate, the log says how far such "
                     "estimates read off; both figures are shown, and plans take the calibrated "
                     "one."),
                 Help::tr(
                     "<b>Reach</b> is the heaviest load lifted divided by the estimate. Under 0.80 "
                     "it is extrapolated far, under 0.50 the interval is shown first (common "
                     "practice). Estimates of free-weight maxima run high even with loads to 90 % "
                     "[2].")}) +
           part(
               Help::tr("What changed"),
               {Help::tr(
                    "A comparison takes both sessions' lines together. The change at a load, and "
                    "where the lines differ [3], come with intervals; the change of the 1RM by "
                    "recovering the variance from both intervals [4]."),
                Help::tr(
                    "A line also moves as a whole from day to day, which one day's scatter does "
                    "not show, and it tilts a little, least near 60 % of the maximum. That noise "
                    "starts from a published figure, which weighs as much as four repeat tests; "
                    "the log's repeat tests (the typical error [5]) move it, the athlete's own "
                    "take its place, wholly from about twenty on, and the share of each is said. "
                    "Without a published figure three of them are needed. It is added before "
                    "anything is read."),
                Help::tr(
                    "Where two days differ in reps, the fastest of as many reps is compared. Where "
                    "a session has no line to judge by, the change at a load lifted on both days "
                    "is told from the typical error of a point. Of many sessions held against one "
                    "baseline the newest is judged as one look, those before it more "
                    "strictly.")}) +
           part(
               Help::tr("Where lines bend"),
               {Help::tr(
                    "Speed falls nearly straight with load, not quite, and a straight line is "
                    "fitted to it: what it reads depends on the loads that it was fitted to. So a "
                    "full ladder and a light one differ with nothing changed; without an allowance "
                    "for it more than half of such bench pulls would read as a lower maximum."),
                Help::tr(
                    "Every change by load, every estimate and its change have that allowance: from "
                    "no bend to as much as the published curves have, of the lift's own or of all "
                    "that are shipped. It is nothing where both ladders hold the same loads. The "
                    "interval stands beside the one as if lines were straight. Three own full "
                    "ladders of five loads or more narrow it; the same ladder each time, or one "
                    "load near 80 % of the maximum, ends the doubt. An athlete who bends the other "
                    "way than published is not covered.")}) +
           part(
               Help::tr("The readings"),
               {Help::tr(
                    "<b>better</b> or <b>worse</b>: the interval leaves out zero. <b>held</b>: the "
                    "change surely lies within the smallest change that matters. "
                    "<b>unclear</b>: neither; its change, its interval and the size from which on "
                    "a change is clear with such tests (half of the interval) are said, and what "
                    "would settle it. <b>no figure</b>: and "
                    "why."),
                Help::tr("<b>leaning</b>: an unclear change whose 80 % interval leaves out zero. "
                         "It is no "
                         "reading: of nothing, up to one in four such tests leans one way or the "
                         "other."),
                Help::tr(
                    "<b>better alone</b>, <b>worse alone</b>: clear by itself, and unclear "
                    "where all blocks of the season are read at once, which asks for more; of two "
                    "blocks every page says the same. <b>standing among all</b>: clear even with "
                    "every reading of the season taken as one question."),
                Help::tr(
                    "The smallest change that matters is a fifth of the spread between athletes, "
                    "by a measure that a few far-off ones do not move, "
                    "where at least eight have the test [5], else the coach's figure, else a "
                    "published one.")}) +
           part(
               Help::tr("Season, devices, squad, plan"),
               {Help::tr(
                    "A <b>check load</b> is a fixed submaximal load followed through the season, "
                    "with a trend from three sessions on and the smallest detectable change around "
                    "the baseline [5]."),
                Help::tr(
                    "Over the season the sessions of a training block are made one, and all blocks "
                    "are read together against the baseline, which is a session or a block. A "
                    "trend takes days as alike, by a half from one to the next; within a block it "
                    "needs four days that cover the load. Days on which the load, or a lighter "
                    "one, was not lifted or not possible are marked under the chart."),
                Help::tr(
                    "A <b>squad</b> between two blocks: each athlete's change, as it is and drawn "
                    "to all, their mean, and how many athletes, at most, chance would make better "
                    "or worse. Half of "
                    "what a day does is shared by all who were tested that day, and no number of "
                    "athletes lessens it. Of a block or a stretch of days all sessions are made "
                    "one; a test of the battery is then the mean of its sessions."),
                Help::tr("Ctrl+U shows <b>what is due</b>: what somebody was not tested in since "
                         "the running block began, for over so many weeks, or more than a week "
                         "before most of the others."),
                Help::tr(
                    "Two devices on the same lifts: bias and limits of agreement [6]. Sets of "
                    "one athlete resemble each other: from three athletes on the intervals count "
                    "athletes, else sessions. Sessions of "
                    "different devices are compared with a warning, and with the bias taken off "
                    "where the log holds such a study."),
                Help::tr(
                    "The plan turns a percentage, a speed or a window into loads that the plates "
                    "at "
                    "hand can make, under a ceiling, with the expected speed and the speed to stop "
                    "at for a chosen velocity loss [7], and ranks ladders for the next test by how "
                    "narrow they would make the interval, behind the others those with one great "
                    "step or without the loads to show a bend. Loads end at the upper end of the "
                    "estimated 1RM, under the block's ceiling, and a line that does not bound a "
                    "maximum gives no plan. Light loads with restricted flow [8] "
                    "carry their cautions. An athlete's short session may borrow from earlier ones "
                    "by a mixed model; that line is shown beside the session's own, never "
                    "instead.")});
}

QString sourcesHelp() {
    return QStringLiteral("<h3>%1</h3><ol>").arg(Help::tr("Sources")) +
           QStringLiteral(
               "<li>E. C. Fieller, 1954; N. R. Draper and H. Smith, Applied Regression "
               "Analysis</li>"
               "<li>H. G. Banyard, K. Nosaka and G. G. Haff, 2017</li>"
               "<li>P. O. Johnson and J. Neyman, 1936; H. Working and H. Hotelling, 1929</li>"
               "<li>G. Y. Zou and A. Donner, 2008</li>"
               "<li>W. G. Hopkins, 2000</li>"
               "<li>J. M. Bland and D. G. Altman, 1986, 1999</li>"
               "<li>L. Sánchez-Medina and J. J. González-Badillo, 2011</li>"
               "<li>S. D. Patterson and others, 2019</li></ol>") +
           QStringLiteral("<p>%1</p>")
               .arg(Help::tr(
                   "Published thresholds, noise and smallest changes carry their own source where "
                   "they are used. Most of these papers were read as abstracts."));
}

QString fileHelp() {
    return part(
        Help::tr("Ten years on"),
        {Help::tr("A log is one SQLite file, and all that was typed stands in its plain tables. "
                  "Whatever reads SQLite reads it, with this program or without."),
         Help::tr("<code>slopebook schema</code>, typed into a terminal, prints what every table "
                  "and column holds, in which unit, and how the checksums are made. Keep its text "
                  "beside your logs."),
         Help::tr("Log, Export everything writes the same as CSV tables and a workbook, for those "
                  "who have no SQLite either.")});
}

} // namespace slopebook::ui
