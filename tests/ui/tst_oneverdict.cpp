// SPDX-License-Identifier: GPL-3.0-or-later
// A change from one block to another has one verdict on every page, and where changes are counted
// from is chosen once. On the sample log, whose season has three blocks, every pair of them.
#include "core/answers/readingwords.h"
#include "core/questions/batteryquestions.h"
#include "core/questions/blockquestions.h"
#include "core/questions/liftcontext.h"
#include "core/questions/seasonquestions.h"
#include "core/questions/seasonstep.h"
#include "tests/log/builders.h"
#include "ui/athlete/overview/matrixfigure.h"
#include "ui/window/index.h"
#include "ui/window/mainwindow.h"
#include "ui/window/pagetable.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QComboBox>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace slopebook::questions;
using namespace Qt::Literals::StringLiterals;

namespace {

/// Of the season against that block, by measure: the readings of another.
std::map<std::string, answers::ReadChange> readingsOf(const answers::SeasonMatrix& matrix,
                                                      std::size_t to) {
    std::map<std::string, answers::ReadChange> readings;
    for (const answers::MatrixRow& row : matrix.rows)
        if (const auto& change = row.cells[to].against;
            change && change->comparable() && change->read.reading != answers::Reading::NoFigure)
            readings[english(answers::measureWords(row.measure))] = change->read;
    return readings;
}

/// That the same is said of it, by the same interval.
void agrees(const std::string& what, const answers::SeasonMatrix& matrix, std::size_t to,
            const answers::ReadChange& read, const answers::ReadChange& season) {
    const auto said = [](const answers::ReadChange& one) {
        return english(answers::sizedCell(one, 3)) + ", " + english(figure(one.change, 6)) + ", " +
               english(figure(one.interval.low, 6)) + " to " +
               english(figure(one.interval.high, 6));
    };
    QVERIFY2(said(read) == said(season),
             (what + ", " + matrix.blocks[matrix.chosen].block.name + " to " +
              matrix.blocks[to].block.name + ": " + said(read) + ", not " + said(season))
                 .c_str());
}

} // namespace

class TestOneVerdict : public QObject {
    Q_OBJECT

    std::filesystem::path m_sample{SLOPEBOOK_SAMPLE_LOG};

    /// Visits each athlete, pair of blocks in order of time, and the season against the first.
    template <class Visit>
    void eachStep(const log::Log& log, const Visit& visit) {
        const auto contextOf =
            [&log, kept = std::make_shared<LiftContext>()](LiftId lift) -> const LiftContext& {
            *kept = liftContext(log, lift);
            return *kept;
        };
        const auto blocks = log.blocks();
        QVERIFY(blocks.size() >= 3);
        for (const auto& athlete : log.athletes())
            for (const auto& from : blocks) {
                const auto season = seasonMatrixOf(log, athlete.id, {.chosen = from.id});
                if (!season || season->matrix.blocks[season->matrix.chosen].id != from.id)
                    continue;
                for (std::size_t to = 0; to < season->matrix.blocks.size(); ++to)
                    if (to > season->matrix.chosen)
                        visit(contextOf, athlete.id, season->matrix, to);
            }
    }

private Q_SLOTS:
    void theBatterySaysWhatTheSeasonSays() {
        const log::Log log = log::Log::open(m_sample);
        int compared = 0, alone = 0;
        eachStep(log, [&](const ContextOf& contextOf, AthleteId athlete,
                          const answers::SeasonMatrix& matrix, std::size_t to) {
            const auto words = readingsOf(matrix, to);
            const auto battery =
                batteryOf(log, contextOf, athlete, BatterySide(matrix.blocks[matrix.chosen].id),
                          BatterySide(matrix.blocks[to].id), {.allBlocks = true});
            QVERIFY(battery);
            for (const answers::TestChange& test : battery->battery.tests) {
                const auto season =
                    words.find(english(answers::testLabel(test.kind.value, test.side)));
                if (season == words.end() || !test.noReading.empty())
                    continue;
                agrees(season->first, matrix, to, test.read, season->second);
                ++compared;
                alone += test.read.clearAlone() != 0 ? 1 : 0;
            }
            for (const BatteryLift& lift : battery->lifts)
                if (lift.comparison)
                    for (const answers::ChangeAt& at : lift.comparison->at) {
                        const auto season = words.find(
                            english(answers::measureWords({.kind = answers::Measure::Kind::Speed,
                                                           .name = lift.lift.value.name,
                                                           .load = at.load})));
                        if (season == words.end() || !at.checkLoad ||
                            at.read.reading == answers::Reading::NoFigure)
                            continue;
                        agrees(season->first, matrix, to, at.read, season->second);
                        ++compared;
                        alone += at.read.clearAlone() != 0 ? 1 : 0;
                    }
        });
        QVERIFY2(compared > 100, qPrintable(QString::number(compared)));
        QVERIFY2(alone > 0, "the sample has nothing that is clear alone and unclear among all");
    }
    void theComparisonSaysWhatTheSeasonSays() {
        const log::Log log = log::Log::open(m_sample);
        int compared = 0, told = 0;
        eachStep(log, [&](const ContextOf&, AthleteId athlete, const answers::SeasonMatrix& matrix,
                          std::size_t to) {
            const auto words = readingsOf(matrix, to);
            const BlockId before = matrix.blocks[matrix.chosen].id, after = matrix.blocks[to].id;
            for (const LiftId lift : log.liftsOf(athlete)) {
                const LiftContext context = liftContext(log, lift);
                const Background about = background(log, athlete, lift);
                auto comparison = comparisonOfSides(
                    log, context, about, sessionsOf(LiftSide(before), log.blocks(), about.sessions),
                    sessionsOf(LiftSide(after), log.blocks(), about.sessions));
                if (!comparison)
                    continue;
                tellSeasonStep(*comparison, log, context, athlete, before, after);
                bool any = false;
                for (const answers::ChangeAt& at : comparison->at) {
                    QVERIFY(at.read.byItself || at.read.reading == answers::Reading::NoFigure);
                    const auto season = words.find(
                        english(answers::measureWords({.kind = answers::Measure::Kind::Speed,
                                                       .name = about.lift.value.name,
                                                       .load = at.load})));
                    if (season == words.end() || !at.checkLoad ||
                        at.read.reading == answers::Reading::NoFigure)
                        continue;
                    agrees(season->first, matrix, to, at.read, season->second);
                    any = any || (at.read.clearAlone() != 0 && !at.extrapolated);
                    ++compared;
                }
                QVERIFY(english(comparison->sentence)
                            .starts_with("Block against block, all blocks at once"));
                told += any ? 1 : 0;
            }
        });
        QVERIFY2(compared > 30, qPrintable(QString::number(compared)));
        QVERIFY(told > 0);
    }
    /// Days, and a season of two blocks, are read by themselves.
    void nothingIsAddedWhereNothingElseIsRead() {
        const log::Log log = log::Log::open(m_sample);
        const auto athlete = log.athletes().front().id;
        const auto blocks = log.blocks();
        const auto days = seasonOf(log, athlete);
        const auto answer = batteryOf(log, athlete, BatterySide(days.front().date),
                                      BatterySide(days.back().date), {.allBlocks = true});
        QVERIFY(answer);
        for (const answers::TestChange& test : answer->battery.tests)
            QVERIFY(!test.read.byItself);
        QVERIFY(!answer->battery.allAtOnce);
        const auto two = seasonMatrixOf(
            log, athlete, {.blocks = {blocks[0].id, blocks[1].id}, .chosen = blocks[0].id});
        QVERIFY(two);
        QVERIFY(answers::AmongBlocks(two->matrix, 1).empty());
    }

    void whereChangesAreCountedFromIsChosenOnce() {
        const QTemporaryDir folder;
        const QString copy = folder.filePath(u"log.slopebook"_s);
        QVERIFY(QFile::copy(QString::fromStdString(m_sample.string()), copy));
        Surroundings given;
        given.clock = [] { return day(2026, 5, 20); };
        MainWindow window(given);
        window.resize(1280, 720);
        window.show();
        QVERIFY(QTest::qWaitForWindowActive(&window));
        window.openLogFile(copy);
        QVERIFY(window.workspace());
        Workspace& work = *window.workspace();
        const log::Log& log = work.logbook().log();
        const auto athlete = log.athletes().front().id;
        work.choose(athlete, log.liftsOf(athlete).front());
        const auto boxOn = [&](Page page) {
            work.showPage(page);
            for (int i = 0; i < 3; ++i)
                QCoreApplication::processEvents();
            const auto boxes = work.currentPage()->findChildren<QComboBox*>(u"countedFrom"_s);
            return boxes.size() == 1 ? boxes.front() : nullptr;
        };
        const auto choose = [&](Page page, const QString& block) {
            QComboBox* box = boxOn(page);
            QVERIFY2(box, qPrintable(entryOf(page).title()));
            int at = -1;
            for (int i = 0; i < box->count(); ++i)
                if (at < 0 && box->itemText(i).contains(block)) // blocks stand first
                    at = i;
            QVERIFY2(at >= 0, qPrintable(entryOf(page).title()));
            box->setFocus();
            box->setCurrentIndex(at);
            Q_EMIT box->activated(at); // as a click in its list does
            QCoreApplication::processEvents();
        };
        const std::array all{Page::Overview, Page::WholeSeason, Page::Season, Page::Comparison,
                             Page::Battery};
        int seen = 0;
        for (const Page chosenOn : all)
            for (const QString& block : {u"Autumn"_s, u"Winter flood"_s}) {
                choose(chosenOn, block);
                for (const Page page : all) {
                    const QComboBox* box = boxOn(page);
                    QVERIFY2(box, qPrintable(entryOf(page).title()));
                    QVERIFY2(box->currentText().contains(block),
                             qPrintable(u"%1 chosen on %2: %3 on %4"_s.arg(
                                 block, entryOf(chosenOn).title(), box->currentText(),
                                 entryOf(page).title())));
                    ++seen;
                }
            }
        QCOMPARE(seen, 50);
        // Another athlete's is another.
        const auto other = log.athletes().back().id;
        work.choose(other, log.liftsOf(other).front());
        choose(Page::Overview, u"Autumn"_s);
        work.choose(athlete, log.liftsOf(athlete).front());
        QVERIFY(boxOn(Page::WholeSeason)->currentText().contains(u"Winter flood"_s));
    }
};

QTEST_MAIN(TestOneVerdict)
#include "tst_oneverdict.moc"
