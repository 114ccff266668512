// SPDX-License-Identifier: GPL-3.0-or-later
// What the help says is true: each of its sentences has a row here, with a check of its own, the
// test that holds it, or what makes it a plain definition. A sentence that is new or changed has no
// row and fails.
#include "core/answers/comparison.h"
#include "core/answers/noise.h"
#include "core/answers/profile.h"
#include "tests/answers/builders.h"
#include "tests/log/builders.h"
#include "ui/edits/logbook.h"
#include "ui/typed/setline.h"
#include "ui/window/helptexts.h"

#include <QFile>
#include <QTest>
#include <QTextDocument>
#include <QUndoStack>

#include <functional>

using namespace slopebook;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

/// The texts of one page, sentence by sentence, headings aside.
QStringList sentencesOf(const QString& html) {
    static const QRegularExpression block(u"<(p|li)>(.*?)</\\1>"_s),
        parting(u"(?<=[.?])\\s+(?=[A-Z])"_s);
    QStringList sentences;
    for (auto found = block.globalMatch(html); found.hasNext();) {
        QTextDocument document;
        document.setHtml(found.next().captured(2));
        sentences += document.toPlainText().simplified().split(parting);
    }
    return sentences;
}

bool takes(const char16_t* line, double kg, const std::vector<TypedRep>& reps,
           bool maximum = false) {
    const auto read = readSetLine(line, MassUnit::Kilogram);
    const auto* set = std::get_if<TypedSet>(&read);
    return set && set->load == massFromKilograms(kg) && set->reps == reps &&
           set->trueMaximum == maximum;
}

bool asks(const char16_t* line, LineQuestion::Kind kind, const char16_t* meant) {
    const auto read = readSetLine(line, MassUnit::Kilogram);
    const auto* question = std::get_if<LineQuestion>(&read);
    return question && question->kind == kind &&
           question->meant.find(meant) != std::u16string::npos;
}

answers::Profile profileOf(const std::vector<std::pair<double, double>>& sets) {
    return *answers::profile(tests::benchPull(), tests::coachMvt(0.5), tests::session(1, sets));
}

bool intervalsNeedThreeSets() {
    const auto two = profileOf({{40, 1.2}, {60, 0.9}});
    const auto again = profileOf({{40, 1.2}, {60, 0.9}, {60, 0.92}});
    const auto third = profileOf({{40, 1.2}, {50, 1.04}, {60, 0.9}});
    return !two.line.hasInference() && !two.oneRm->interval && again.line.hasInference() &&
           again.oneRm->interval && third.oneRm->interval;
}

bool bendsFromFourLoads() {
    return !profileOf({{40, 1.2}, {50, 1.06}, {60, 0.9}, {60, 0.91}}).curvature &&
           profileOf({{40, 1.2}, {50, 1.06}, {60, 0.9}, {70, 0.76}}).curvature;
}

/// Every change by hand is undone and done again, on disk; an import ends what can be undone.
bool undoReachesToTheLastImport() {
    const test::Folder folder;
    Logbook book(log::Log::create(folder.path()));
    const auto names = [&] {
        return log::Log::open(folder.path(), log::Access::ReadOnly).athletes().size();
    };
    book.addAthlete({.name = "Wren"});
    book.addAthlete({.name = "Tern"});
    QUndoStack& stack = *book.undoStack();
    bool good = names() == 2;
    stack.undo();
    stack.undo();
    good = good && names() == 0;
    stack.redo();
    stack.redo();
    good = good && names() == 2;
    book.applyOutsideUndo([](log::Log& log) { log.add(Athlete{.name = "Imported"}); });
    good = good && !stack.canUndo() && names() == 3;
    book.addAthlete({.name = "Rook"});
    return good && stack.canUndo();
}

/// Four pairs of others weigh half.
bool fourRepeatTests() {
    const stats::RepeatSums four{.pairs = 4, .halfSquares = 0.004, .within = 0};
    const auto noise = answers::chooseDayNoise({}, four, std::pair{0.03, std::string("a paper")});
    return std::abs(noise.othersShare - 0.5) < 1e-12;
}

bool noiseFromThreeOn() {
    return answers::pairsNeeded == 3;
}

/// V0, L0, reach and the estimate by hand, of points on v = 1.8 - 0.015 x load.
bool figuresOfTheLine() {
    const auto p = profileOf({{40, 1.2}, {60, 0.9}, {80, 0.6}});
    const auto near = [](double a, double b) { return std::abs(a - b) < 1e-9; };
    return near(p.line.intercept, 1.8) && near(p.l0(), 120) &&
           near(p.oneRm->estimate, (1.8 - 0.5) / 0.015) &&
           near(p.oneRm->reach, 80 / ((1.8 - 0.5) / 0.015));
}

bool reachMarks() {
    return answers::OneRm::farMark == 0.80 && answers::OneRm::veryFarMark == 0.50;
}

struct Row {
    const char* sentence;
    std::function<bool()> check = {};
    /// FILE:FUNCTION of the test that holds it.
    const char* held = nullptr;
    /// Why there is nothing to test.
    const char* plain = nullptr;
};

const std::vector<Row>& rows() {
    using Kind = LineQuestion::Kind;
    static const std::vector<Row> all{
        {"60 0.92 0.90 0.88 and Enter: the load 60 and three reps.",
         [] {
             return takes(u"60 0.92 0.90 0.88", 60, {{0.92}, {0.90}, {0.88}});
         }},
        {"It is on disk when the line is empty again; there is nothing to save.",
         {},
         "ui/tst_entry.cpp:aWholeLadderByKeysStandsInTableChartAndLog"},
        {"Point and comma are both the decimal mark; there are no marks for thousands.",
         [] {
             return takes(u"62,5 0,92", 62.5, {{0.92}}) && takes(u"62.5 0.92", 62.5, {{0.92}}) &&
                    std::holds_alternative<LineProblem>(
                        readSetLine(u"1.062,5 0.92", MassUnit::Kilogram));
         }},
        {"Blanks, tabs or ; go between the numbers.",
         [] {
             return takes(u"60;0.92\t0.90 0.88", 60, {{0.92}, {0.90}, {0.88}});
         }},
        {"A load is in the unit chosen under View; 60kg and 135lb say their own.",
         [] {
             const auto in = [](const char16_t* line, MassUnit unit) {
                 const auto read = readSetLine(line, unit);
                 return std::get<TypedSet>(read).load;
             };
             return in(u"135 0.9", MassUnit::Pound) == massFromPounds(135) &&
                    in(u"60kg 0.9", MassUnit::Pound) == massFromKilograms(60) &&
                    in(u"135lb 0.9", MassUnit::Kilogram) == massFromPounds(135);
         }},
        {"Up puts the next load there: the ladder of last time, above its top the same rise again, "
         "never above the block's ceiling, nor above the estimated 1RM unless last time it was a "
         "true "
         "maximum.",
         {},
         "ui/tst_setline.cpp:theLaddersNextLoad"},
        {"Down steps back.", {}, "ui/tst_entry.cpp:upPutsTheNextLoadThere"},
        {"92.5! 0.18: a successful true maximum, one rep.",
         [] {
             return takes(u"92.5! 0.18", 92.5, {{0.18}}, true) &&
                    std::holds_alternative<LineProblem>(
                        readSetLine(u"92.5! 0.18 0.17", MassUnit::Kilogram));
         }},
        {"60 0.92 0.90 @8.5: how hard it was (RPE), from 1 to 10 in halves.",
         [] {
             const auto rated = readSetLine(u"60 0.92 0.90 @8.5");
             return std::get<TypedSet>(rated).effort == Effort{17};
         }},
        {"100 -: tried and not lifted, 100! - as a true maximum; what follows # says why.",
         [] {
             const auto tried = readSetLine(u"100 - # grip"), maximum = readSetLine(u"100! -");
             return std::get<TypedSet>(tried).outcome == Outcome::NotLifted &&
                    std::get<TypedSet>(tried).note == u"grip" &&
                    std::get<TypedSet>(maximum).trueMaximum &&
                    std::get<TypedSet>(maximum).outcome == Outcome::NotLifted;
         }},
        {"100 / # plates gone: that load was not possible. - # sore back: the lift was not; both "
         "with the reason.",
         [] {
             return std::get<TypedGap>(readSetLine(u"100 / # plates gone")) ==
                        TypedGap{massFromKilograms(100), u"plates gone"} &&
                    std::get<TypedGap>(readSetLine(u"- # sore back")) ==
                        TypedGap{{}, u"sore back"} &&
                    std::holds_alternative<LineProblem>(readSetLine(u"-")) &&
                    std::holds_alternative<LineProblem>(readSetLine(u"100 /"));
         }},
        {"What is refused stays in the line.", {}, "ui/tst_station.cpp:aRefusalMovesNothing"},
        {"Down puts there what would be taken, where that is said; Up brings the line back to be "
         "mended.",
         {},
         "ui/tst_station.cpp:aRefusalMovesNothing"},
        {"60 0.92 0.71x # slipped: the second rep is left out; what follows # is the note and the "
         "reason.",
         [] {
             const auto read = readSetLine(u"60 0.92 0.71x # slipped", MassUnit::Kilogram);
             const auto& set = std::get<TypedSet>(read);
             return !set.reps[0].leftOut && set.reps[1].leftOut && set.note == u"slipped";
         }},
        {"It stays in the log and is drawn hollow.",
         {},
         "ui/tst_entry.cpp:leftOutAtEntryStaysWithItsReason"},
        {"60 92: the line asks whether 0.92 was meant; Enter says yes, Esc no. 1.12 1.08: it asks "
         "whether the load was forgotten.",
         [] {
             return asks(u"60 92", Kind::Speeds, u"0.92") &&
                    asks(u"1.12 1.08", Kind::Load, u"1.12");
         },
         "ui/tst_entry.cpp:theQuestionCanBeDeclined"},
        {"A speed far from the line at that load, a speed that rises with the load, or a load far "
         "from all others is asked about; Enter takes it as typed, Esc leaves it to be corrected.",
         {},
         "ui/tst_entry.cpp:aSpeedFarFromTheLineIsAskedAboutAndTakenAsTyped"},
        {"Several lines pasted from a spreadsheet go in at once, all or none.",
         {},
         "ui/tst_entry.cpp:linesPastedGoInTogetherOrNotAtAll"},
        {"In the table F2 changes a cell, Delete removes the set, and Leave out, note\u2026 says "
         "what "
         "does not count and why.",
         {},
         "ui/tst_entry.cpp:cellsAreEditedInPlaceAndUndone"},
        {"Undo and Redo go back and forth through every change that was made by hand since the log "
         "was opened or a file was last imported, each on disk at once.",
         undoReachesToTheLastImport},
        {"View, Controls that fit a finger makes everything large enough for a touch screen; where "
         "there is one it is on by itself.",
         {},
         "ui/tst_everyplace.cpp:controlsFitAFinger"},
        {"View, Rest timer shows beside the line how long ago the last set was typed.",
         {},
         "ui/tst_desk.cpp:theRestTimerIsOffUntilWanted"},
        {"Ctrl+T shows the stations: a lift, or a few tests, with device, surface and ladder, and "
         "who is here today in the order of their turns.",
         {},
         "ui/tst_station.cpp:aWholeDayAtOneRack"},
        {"Enter writes, and makes it the next one's turn who is due.",
         {},
         "ui/tst_station.cpp:aWholeDayAtOneRack"},
        {"Alt+Down passes, Alt+Up goes back, Up puts the load there that is due.",
         {},
         "ui/tst_station.cpp:whatIsTypedWaitsForWhomItWasBegun"},
        {"be 60 0.92: Bela's set, where nobody else here begins so; where two do, it asks.",
         {},
         "ui/tst_dayline.cpp:twoThatBeginSoAreAsked"},
        {"A name alone goes there; it needs two letters, for l, r and b are always sides.",
         {},
         "ui/tst_dayline.cpp:whatIsWrongOfANameAndBehindIt"},
        {"At a test 1.84 1.91 are attempts; l 1.84 r 1.79: left and right, b 1.9: both at once, "
         "where the test takes that.",
         {},
         "ui/tst_attemptline.cpp:bothAtOnceWhereTheTestTakesIt"},
        {"0.512/0.204: flight and contact time, where the test takes both. 1.95x # on the line: "
         "left out; r - # knee: not possible on that side.",
         {},
         "ui/tst_attemptline.cpp:contactTime"},
        {"What is typed for somebody waits for them until it is written.",
         {},
         "ui/tst_station.cpp:whatIsTypedWaitsForWhomItWasBegun"},
        {"Undo names whose set it takes back, and goes there first.",
         {},
         "ui/tst_station.cpp:undoAcrossARotationNamesWhoseItIs"},
        {"Each set gives one point: its fastest rep, or the mean of its reps, as the lift says.",
         {},
         "model/tst_session.cpp:meanOfRepsMakesThePoint"},
        {"A lift is measured in one kind of velocity, and kinds are never mixed.",
         {},
         "exchange/tst_shapedimport.cpp:refusesAnotherKindOfVelocity"},
        {"The line is the ordinary least-squares regression of velocity on load through the "
         "session's "
         "points.",
         {},
         "stats/tst_line.cpp:norrisCertified"},
        {"V0 is its velocity at zero load, L0 its load at zero velocity.", figuresOfTheLine},
        {"Two sets at two loads make a line without intervals; a third set gives them, best at a "
         "third load.",
         intervalsNeedThreeSets},
        {"From four loads on it is tested whether the points bend.", bendsFromFourLoads},
        {"A point far from the line of the others is named: worth a look, never left out by "
         "itself.",
         {},
         "answers/tst_profile.cpp:pointFarFromTheLine"},
        {"The estimated 1RM is the load at which the line meets the minimal-velocity threshold "
         "(MVT): "
         "the mean of the athlete's own true maxima where there are any, drawn towards the lift's "
         "figure while they are few, else the coach's figure, else a published one; it is always "
         "said which.",
         figuresOfTheLine, "answers/tst_threshold.cpp:ownMaximaComeFirst"},
        {"Its interval is Fieller's [1].", {}, "stats/tst_inverse.cpp:checkTable"},
        {"The interval to plan with is wider: it holds the threshold's own spread, how much days "
         "differ, and how far a straight line may be off.",
         {},
         "answers/tst_uncertainty_answers.cpp:planIntervalHoldsItsParts"},
        {"From three maxima on that were lifted within a week of an estimate, the log says how far "
         "such estimates read off; both figures are shown, and plans take the calibrated one.",
         [] { return answers::calibrationPairsNeeded == 3 && answers::calibrationDays == 7; },
         "answers/tst_twoloads.cpp:plansTakeTheCalibratedEstimate"},
        {"Where two days differ in reps, the fastest of as many reps is compared.",
         {},
         "answers/tst_twoloads.cpp:asManyRepsOnBothDays"},
        {"Where a session has no line to judge by, the change at a load lifted on both days is "
         "told "
         "from the typical error of a point.",
         {},
         "answers/tst_twoloads.cpp:sharedLoads"},
        {"Of many sessions held against one baseline the newest is judged as one look, those "
         "before "
         "it more strictly.",
         {},
         "answers/tst_checkloads.cpp:manyLooksAtOneBaseline"},
        {"Speed falls nearly straight with load, not quite, and a straight line is fitted to it: "
         "what it reads depends on the loads that it was fitted to.",
         {},
         nullptr,
         "why the allowance is made"},
        {"So a full ladder and a light one differ with nothing changed; without an allowance for "
         "it "
         "more than half of such bench pulls would read as a lower maximum.",
         {},
         "answers/tst_worlds.cpp:straightLinesWouldBeFalse"},
        {"Every change by load, every estimate and its change have that allowance: from no bend to "
         "as much as the published curves have, of the lift's own or of all that are shipped.",
         [] {
             Lift own{.name = "Bench press"}, other{.name = "Landmine press"};
             own.kind = VelocityKind::Propulsive;
             return answers::bendOf(own).relations.size() == 1 &&
                    answers::bendOf(other).relations.size() == 5 &&
                    answers::bendOf(own).kappa == stats::Interval{0, 1};
         },
         "answers/tst_uncertainty_answers.cpp:workedNumbers"},
        {"It is nothing where both ladders hold the same loads.",
         [] {
             const auto a = profileOf({{40, 1.2}, {60, 0.9}, {80, 0.6}});
             const auto ladder = answers::ladderOf(a.session, a.line, a.oneRm->estimate);
             const answers::BendErrors none(answers::bendOf(tests::benchPull()), ladder, ladder);
             return none.ofMax() == stats::Interval{0, 0} && none.at(50) == stats::Interval{0, 0};
         }},
        {"The interval stands beside the one as if lines were straight.",
         {},
         "system/tst_json.cpp:compareKeepsItsContract"},
        {"Three own full ladders of five loads or more narrow it; the same ladder each time, or "
         "one "
         "load near 80 % of the maximum, ends the doubt.",
         [] { return answers::laddersNeeded == 3 && answers::loadsOfAFullLadder == 5; },
         "answers/tst_uncertainty_answers.cpp:ladderNarrowsKappa"},
        {"An athlete who bends the other way than published is not covered.",
         {},
         nullptr,
         "told of the simulation: see Worlds in tests/README.md"},
        {"leaning: an unclear change whose 80 % interval leaves out zero.",
         {},
         "answers/tst_sentence.cpp:golden"},
        {"It is no reading: of nothing, up to one in four such tests leans one way or the other.",
         {},
         nullptr,
         "told of the simulation: see Worlds in tests/README.md"},
        {"better alone, worse alone: clear by itself, and unclear where all blocks of the season "
         "are read at once, which asks for more; of two blocks every page says the same. standing "
         "among all: clear even with every reading of the season taken as one question.",
         {},
         "ui/tst_oneverdict.cpp:theBatterySaysWhatTheSeasonSays"},
        {"A measured 1RM stands beside the estimate and never replaces it.",
         {},
         "answers/tst_comparison.cpp:measuredMaxima"},
        {"A thrown or jumped lift has a line and no 1RM.",
         [] {
             Lift lift = tests::benchPull();
             lift.ballistic = true;
             const auto p =
                 answers::profile(lift, NoAnswer{NoAnswer::Why::BallisticLift, asIs("thrown")},
                                  tests::session(1, {{40, 1.2}, {60, 0.9}, {80, 0.6}}));
             return p && !p->oneRm;
         }},
        {"Reach is the heaviest load lifted divided by the estimate.", figuresOfTheLine},
        {"Under 0.80 it is extrapolated far, under 0.50 the interval is shown first (common "
         "practice).",
         reachMarks, "answers/tst_profile.cpp:reachIsMarked"},
        {"Estimates of free-weight maxima run high even with loads to 90 % [2].",
         {},
         nullptr,
         "a finding of the source named"},
        {"A comparison takes both sessions' lines together.", {}, "stats/tst_twolines.cpp:soap"},
        {"The change at a load, and where the lines differ [3], come with intervals; the change of "
         "the 1RM by recovering the variance from both intervals [4].",
         {},
         "answers/tst_comparison.cpp:oneRmChangeByRecovery"},
        {"A line also moves as a whole from day to day, which one day's scatter does not show, and "
         "it tilts a little, least near 60 % of the maximum.",
         {},
         nullptr,
         "why the noise is asked for"},
        {"That noise starts from a published figure, which weighs as much as four repeat tests; "
         "the log's repeat tests (the typical error [5]) move it, the athlete's own take its "
         "place, wholly from about twenty on, and the share of each is said.",
         fourRepeatTests, "answers/tst_noise.cpp:whatThePriorDoes"},
        {"Without a published figure three of them are needed.", noiseFromThreeOn,
         "answers/tst_noise.cpp:choice"},
        {"It is added before anything is read.",
         {},
         "answers/tst_comparison.cpp:dayNoiseWidensTheReadingAlone"},
        {"better or worse: the interval leaves out zero. held: the change surely lies within the "
         "smallest change that matters. unclear: neither; its change, its interval and the "
         "size from which on a change is clear with such tests (half of the interval) are said, "
         "and "
         "what would settle it. no figure: and "
         "why.",
         {},
         "answers/tst_reading.cpp:fiveWays"},
        {"The smallest change that matters is a fifth of the spread between athletes, by a measure "
         "that a few far-off ones do not move, where at least eight have the test [5], else the "
         "coach's figure, else a published one.",
         {},
         "answers/tst_smallest.cpp:eightAthletes"},
        {"A check load is a fixed submaximal load followed through the season, with a trend from "
         "three "
         "sessions on and the smallest detectable change around the baseline [5].",
         {},
         "answers/tst_checkloads.cpp:trendNeedsThree"},
        {"Over the season the sessions of a training block are made one, and all blocks are read "
         "together against the baseline, which is a session or a block.",
         {},
         "answers/tst_followedseason.cpp:threeBlocksAreTheMatrix"},
        {"A trend takes days as alike, by a half from one to the next; within a block it needs "
         "four "
         "days that cover the load.",
         {},
         "answers/tst_followedseason.cpp:theTrendWithinABlockIsRs"},
        {"Days on which the load, or a lighter one, was not lifted or not possible are marked "
         "under "
         "the chart.",
         {},
         "ui/tst_seasonchart.cpp:daysNotLiftedHaveTheirMark"},
        {"A squad between two blocks: each athlete's change, as it is and drawn to all, their "
         "mean, "
         "and how many athletes, at most, chance would make better or worse.",
         {},
         "ui/tst_trustpages.cpp:theSquadTellsItsMean"},
        {"Half of what a day does is shared by all who were tested that day, and no number of "
         "athletes lessens it.",
         {},
         "answers/tst_squadmean.cpp:theSharedDayIsNotLessenedByNumbers"},
        {"Of a block or a stretch of days all sessions are made one; a test of the battery is then "
         "the mean of its sessions.",
         {},
         "answers/tst_batterymeans.cpp:meansAndTheirIntervals"},
        {"Ctrl+U shows what is due: what somebody was not tested in since the running block began, "
         "for over so many weeks, or more than a week before most of the others.",
         {},
         "answers/tst_squaddue.cpp:byTheBlockTheOthersAndTheWeeks"},
        {"Two devices on the same lifts: bias and limits of agreement [6].",
         {},
         "answers/tst_agreement.cpp:blandAndAltman"},
        {"Sets of one athlete resemble each other: from three athletes on the intervals count "
         "athletes, else sessions.",
         {},
         "answers/tst_agreement.cpp:setsOfOneAthlete"},
        {"Sessions of different devices are compared with a warning, and with the bias taken off "
         "where "
         "the log holds such a study.",
         {},
         "answers/tst_comparison.cpp:deviceBias"},
        {"The plan turns a percentage, a speed or a window into loads that the plates at hand can "
         "make, under a ceiling, with the expected speed and the speed to stop at for a chosen "
         "velocity "
         "loss [7], and ranks ladders for the next test by how narrow they would make the "
         "interval, "
         "behind the others those with one great step or without the loads to show a bend.",
         {},
         "answers/tst_nexttest.cpp:laddersAreRankedByTheirInterval"},
        {"Light loads with restricted flow [8] carry their cautions.",
         {},
         "answers/tst_plan.cpp:restrictedFlowNeverWithoutItsText"},
        {"Loads end at the upper end of the estimated 1RM, under the block's ceiling, and a line "
         "that "
         "does not bound a maximum gives no plan.",
         {},
         "answers/tst_plansafety.cpp:noPlanNamesWhatCannotBe"},
        {"An athlete's short session may borrow from earlier ones by a mixed model; that line is "
         "shown "
         "beside the session's own, never instead.",
         {},
         "answers/tst_history.cpp:aLightSessionBorrows"},
        {"Published thresholds, noise and smallest changes carry their own source where they are "
         "used.",
         {},
         "answers/tst_published.cpp:damagedTables"},
        {"Most of these papers were read as abstracts.", {}, nullptr, "how the sources were read"},
        {"A log is one SQLite file, and all that was typed stands in its plain tables.",
         [] {
             const test::Folder folder;
             log::Log::create(folder.path());
             QFile file(QString::fromStdString(folder.path().string()));
             return file.open(QIODevice::ReadOnly) && file.read(15) == "SQLite format 3";
         },
         "log/tst_missing.cpp:everyColumnAlteredIsNoticed"},
        {"Whatever reads SQLite reads it, with this program or without.",
         {},
         "log/tst_missing.cpp:everyRowTakenOutIsNoticed"},
        {"slopebook schema, typed into a terminal, prints what every table and column holds, in "
         "which unit, and how the checksums are made.",
         {},
         nullptr,
         "what the command is for"},
        {"Keep its text beside your logs.", {}, nullptr, "advice"},
        {"Log, Export everything writes the same as CSV tables and a workbook, for those who have "
         "no SQLite either.",
         {},
         "exchange/tst_roundtrip.cpp:writesTheWorkbookToo"},
    };
    return all;
}

} // namespace

class TestHelp : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everySentenceHasItsRow() {
        QStringList told =
            sentencesOf(typingHelp()) + sentencesOf(methodHelp()) + sentencesOf(fileHelp());
        // The list of sources is of names; its sentences stand in paragraphs.
        for (const QString& sentence : sentencesOf(sourcesHelp()))
            if (sentence.startsWith(u"Published"_s) || sentence.startsWith(u"Most"_s))
                told << sentence;
        QStringList known;
        for (const Row& row : rows()) {
            known << QString::fromUtf8(row.sentence);
            QVERIFY2(row.check || row.held || row.plain, row.sentence);
        }
        QVERIFY(told.size() > 40);
        for (const QString& sentence : told)
            QVERIFY2(known.contains(sentence), qPrintable(u"no row checks: "_s + sentence));
        for (const QString& sentence : known)
            QVERIFY2(told.contains(sentence), qPrintable(u"the help does not say: "_s + sentence));
    }

    /// The numbers in the method are those of its sources, which stand below it.
    void everySourceIsCitedAndEveryCitationHasOne() {
        const auto cited = static_cast<int>(sourcesHelp().count(u"<li>"_s));
        QCOMPARE(cited, 8);
        static const QRegularExpression number(u"\\[(\\d+)\\]"_s);
        QSet<int> numbers;
        for (auto found = number.globalMatch(methodHelp()); found.hasNext();)
            numbers << found.next().captured(1).toInt();
        for (int i = 1; i <= cited; ++i)
            QVERIFY2(numbers.remove(i), qPrintable(QString::number(i)));
        QVERIFY(numbers.isEmpty());
    }

    void eachIsTrue_data() {
        QTest::addColumn<int>("at");
        for (std::size_t i = 0; i < rows().size(); ++i)
            QTest::newRow(rows()[i].sentence) << static_cast<int>(i);
    }
    void eachIsTrue() {
        QFETCH(int, at);
        const Row& row = rows()[static_cast<std::size_t>(at)];
        if (row.check)
            QVERIFY(row.check());
        if (!row.held)
            return;
        const QString place = QString::fromLatin1(row.held);
        QFile file(QStringLiteral(SLOPEBOOK_SOURCE "/tests/") + place.section(u':', 0, 0));
        QVERIFY2(file.open(QIODevice::ReadOnly), row.held);
        QVERIFY2(QString::fromUtf8(file.readAll())
                     .contains(u"void "_s + place.section(u':', 1) + u"()"_s),
                 row.held);
    }
};

QTEST_MAIN(TestHelp)
#include "tst_help.moc"
