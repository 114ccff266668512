// SPDX-License-Identifier: GPL-3.0-or-later
// A monkey at the window (tests/ui/monkey): 200 steps in the usual run, 100,000 in the long one.
// One round again: SLOPEBOOK_MONKEY_SEED, SLOPEBOOK_MONKEY_STEPS and what a failure prints. Only
// some kinds of steps: SLOPEBOOK_MONKEY_ONLY="wheel,set typed".
#include "tests/log/rawfile.h"
#include "tests/support/longrun.h"
#include "tests/ui/monkey/rounds.h"

#include <QSet>
#include <QTest>
#include <QUndoStack>

using namespace slopebook;
using namespace slopebook::monkey;

namespace {

constexpr int stepsOfARound = 200;
constexpr int leastShare = 30; // %, of steps that edit

ui::Logbook& book(ui::MainWindow& window) {
    return window.workspace()->logbook();
}

/// Changes the head of the first session that there is.
void changeHead(ui::MainWindow& window, const std::function<void(SessionHead&)>& change) {
    const auto& log = book(window).log();
    const AthleteId athlete = *window.workspace()->athlete();
    const auto sessions = log.sessions(athlete);
    SessionHead head = sessions.back().value;
    change(head);
    book(window).changeSession(sessions.back().id, head);
}

} // namespace

class TestMonkey : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral("nan|NaN"))); }

    void whatIsOnDiskIsWhatWasEntered() {
        const bool wholeRound = !plannedByHand().without.empty();
        const int all = wholeRound ? plannedByHand().steps
                                   : test::rounds("SLOPEBOOK_MONKEY_STEPS", stepsOfARound, 100'000);
        const int first = test::rounds("SLOPEBOOK_MONKEY_SEED", 1, 1);
        std::map<std::string, Tally> tally;
        QMap<QString, int> kinds;
        QStringList findings;
        int rounds = 0;
        for (int done = 0; done < all; ++rounds) {
            Plan plan = plannedByHand();
            plan.seed = static_cast<std::uint64_t>(first + rounds);
            plan.steps = wholeRound ? all : std::min(stepsOfARound, all - done);
            done += plan.steps;
            const auto found = go(plan, tally);
            if (!found)
                continue;
            // Each kind once, with all its words; of the others their number.
            const QString kind = QString::fromStdString(found->kind) + QStringLiteral(": ") +
                                 found->what.section(QLatin1Char('\n'), 0, 0).left(48);
            if (++kinds[kind] > 1)
                continue;
            const auto [less, shorter] =
                wholeRound ? std::pair(plan, *found) : shortened(plan, *found);
            findings << told(less, shorter);
            qInfo("%s\n", qPrintable(findings.back()));
        }
        const Tally whole = sum(tally);
        qInfo("%d rounds, seeds %d to %d, %d steps, %d edits, %lld findings\n%s", rounds, first,
              first + rounds - 1, whole.steps, whole.edits, static_cast<long long>(findings.size()),
              qPrintable(table(tally)));
        for (const auto& [kind, times] : kinds.asKeyValueRange())
            qInfo("%d rounds: %s", times, qPrintable(kind));
        QVERIFY2(findings.isEmpty(), qPrintable(findings.value(0)));
        if (plannedByHand().only.empty() && !wholeRound)
            QVERIFY2(100 * whole.edits >= leastShare * whole.steps,
                     "it edits too little to prove anything");
    }

    // What it must find, planted: a monkey that finds nothing anywhere proves nothing.
    void whatIsPlantedIsFound_data() {
        using Plant = std::function<void(ui::MainWindow&)>;
        QTest::addColumn<QString>("step");
        QTest::addColumn<Plant>("plant");
        QTest::addColumn<QString>("found");
        const auto row = [](const char* name, const char* step, const Plant& plant,
                            const char* found) {
            QTest::newRow(name) << QString::fromLatin1(step) << plant << QString::fromLatin1(found);
        };
        row(
            "the wheel changes the device", "wheel",
            [](ui::MainWindow& window) {
                const auto& log = book(window).log();
                const auto session = log.sessions(*window.workspace()->athlete()).back().id;
                LiftConditions under = log.session(session).conditions.front();
                under.conditions.device.reset();
                book(window).setConditions(session, under.lift, under.conditions);
            },
            "What is on disk is not what was entered");
        row(
            "a session begun after midnight is yesterday's", "session started",
            [](ui::MainWindow& window) {
                changeHead(window, [](SessionHead& head) {
                    head.date = Date{std::chrono::sys_days{head.date} - std::chrono::days{1}};
                });
            },
            "What is on disk is not what was entered");
        row(
            "Tab writes a note that nobody typed", "Tab",
            [](ui::MainWindow& window) {
                changeHead(window, [](SessionHead& head) { head.note += "?"; });
            },
            "What is on disk is not what was entered");
        row(
            "a typed set goes in twice", "set typed",
            [](ui::MainWindow& window) {
                const auto& log = book(window).log();
                const auto session = log.sessions(*window.workspace()->athlete()).back().id;
                const auto sets = log.sets(session, *window.workspace()->lift());
                if (!sets.empty())
                    book(window).addSets(session, *window.workspace()->lift(), {sets.back().set});
            },
            "What is on disk is not what was entered");
        row(
            "a page turned changes the athlete", "page turned",
            [](ui::MainWindow& window) {
                const auto all = book(window).log().athletes();
                window.workspace()->choose(all.back().id == *window.workspace()->athlete()
                                               ? all.front().id
                                               : all.back().id,
                                           {});
            },
            "Nobody chose what is shown");
        row(
            "undo goes on to the step before", "undo",
            [](ui::MainWindow& window) { book(window).undoStack()->undo(); },
            "What is on disk is not what was entered");
        row(
            "a checksum is not kept up", "Tab",
            [](ui::MainWindow& window) {
                test::runSql(book(window).log().file(),
                             "UPDATE sessions SET checksum = checksum + 1 WHERE id = 9");
            },
            "The check finds");
    }
    void whatIsPlantedIsFound() {
        using Plant = std::function<void(ui::MainWindow&)>;
        QFETCH(QString, step);
        QFETCH(Plant, plant);
        QFETCH(QString, found);
        Plan plan;
        plan.only = {"set typed", "undo", step.toStdString()};
        plan.steps = 40;
        plan.sabotage = [&](ui::MainWindow& window, const std::string& kind) {
            if (kind == step.toStdString())
                plant(window);
        };
        std::map<std::string, Tally> tally;
        const auto one = go(plan, tally);
        QVERIFY(one);
        QVERIFY2(one->what.startsWith(found), qPrintable(one->what));
    }
};

QTEST_MAIN(TestMonkey)
#include "tst_monkey.moc"
