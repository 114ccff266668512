// SPDX-License-Identifier: GPL-3.0-or-later
// The battery in the window: attempts typed by keys, kept, undone; two blocks side by side; the
// printed page read back; traces with their marks; the season in blocks.
#include "core/questions/batterytable.h"
#include "tests/log/builders.h"
#include "tests/traces/knownmotion.h"
#include "tests/ui/movingclock.h"
#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/battery/testdialog.h"
#include "ui/athlete/battery/tracedialog.h"
#include "ui/paper/batteryprint.h"
#include "ui/squad/blocks/blockspage.h"

#include <QAbstractButton>
#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTimer>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::questions;
using namespace slopebook::ui;

namespace {

constexpr Date today = day(2026, 3, 14);

QString cell(const TextTable& table, int row, int column) {
    return table.index(row, column).data().toString();
}

int rowOf(const TextTable& table, const QString& starts) {
    for (int row = 0; row < table.rowCount(); ++row)
        if (cell(table, row, 0).startsWith(starts))
            return row;
    return -1;
}

void choose(QComboBox* box, const QString& text) {
    const int at = box->findText(text);
    QVERIFY2(at >= 0, qPrintable(text));
    box->setCurrentIndex(at);
}

void type(QLineEdit* line, const QString& text) {
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Return);
}

Attempt attempt(double value, BodySide side = BodySide::Both) {
    Attempt made;
    made.side = side;
    made.value = value;
    return made;
}

Battery battery(TestKindId hop, TestKindId jump, double left, double right, double flight) {
    Battery b;
    const Conditions boards{.surface = "boards"};
    b.tests = {{hop, {attempt(left, BodySide::Left), attempt(right, BodySide::Right)}, boards},
               {jump, {attempt(flight), attempt(flight - 0.01)}, boards}};
    return b;
}

struct Squad {
    Season season;
    TestKindId hop{}, jump{};
    SessionId spring{};
    BlockId winter{}, later{};
};

/// Lane 3 before and after; the later session lies in another block, on another floor, and its
/// right hop was not possible.
Squad fill(log::Log& log) {
    Squad s;
    s.season = fillSeason(log);
    TestKind hop;
    hop.name = "Single hop";
    hop.unit = "m";
    hop.twoSided = true;
    hop.noise = TestNoise{.value = 0.0461, .percent = false, .source = "a paper"};
    hop.smallest = 0.05;
    TestKind jump;
    jump.name = "Jump";
    jump.unit = "m";
    jump.formula = TestFormula::FlightHeight;
    jump.decimals = 3;
    jump.noise = TestNoise{.value = 2.8, .percent = true, .source = "another"};
    jump.smallest = 0.01;
    s.hop = log.add(hop);
    s.jump = log.add(jump);
    s.winter =
        log.add(Block{.name = "Autumn", .first = day(2025, 11, 1), .last = day(2025, 12, 1)});
    s.later = log.add(Block{.name = "Spring", .first = day(2026, 3, 1), .last = day(2026, 3, 31)});
    s.spring = log.add(SessionHead{.athlete = s.season.lane3, .date = day(2026, 3, 10)});
    log.add(s.spring, s.season.pull, ladderSet(40, {1.20}));
    log.add(s.spring, s.season.pull, ladderSet(60, {0.95}));
    log.add(s.spring, s.season.pull, ladderSet(80, {0.60}));
    log.setBattery(s.season.autumn, battery(s.hop, s.jump, 1.80, 2.00, 0.50));
    Battery after = battery(s.hop, s.jump, 2.00, 2.05, 0.50);
    for (TestAttempts& test : after.tests)
        test.conditions.surface = "concrete";
    after.tests[0].attempts.pop_back();
    after.gaps = {{.kind = s.hop, .side = BodySide::Right, .reason = "sore ankle"}};
    log.setBattery(s.spring, after);
    return s;
}

QString pdfText(const QString& file, const QStringList& options = {}) {
    QProcess process;
    process.start(QStringLiteral("pdftotext"), options + QStringList{file, QStringLiteral("-")});
    process.waitForFinished();
    return QString::fromUtf8(process.readAllStandardOutput()).simplified();
}

} // namespace

class TestBatteryPage : public QObject {
    Q_OBJECT

    Folder m_folder;

    QString trace(const char* name, const std::function<double(double)>& f, double seconds) {
        const QString file = QString::fromStdString(m_folder.path(name).string());
        QFile out(file);
        if (!out.open(QIODevice::WriteOnly))
            qFatal("cannot write");
        out.write("time,value\n");
        const traces::Trace t = tests::sampled(f, seconds, 1000);
        for (std::size_t i = 0; i < t.values.size(); ++i)
            out.write(QByteArray::number(t.timeOf(double(i)), 'f', 6) + ',' +
                      QByteArray::number(t.values[i], 'f', 4) + '\n');
        return file;
    }

private Q_SLOTS:
    void initTestCase() { QTest::failOnWarning(QRegularExpression(QStringLiteral("[Nn]a[Nn]"))); }

    void aTestKeepsWhatItsDialogShows() {
        const auto path = m_folder.path("dialog.slopebook");
        Logbook book(log::Log::create(path));
        TestKind kind;
        kind.name = "Hop";
        kind.unit = "m";
        kind.twoSided = kind.bothToo = true;
        kind.rule = AttemptRule::Mean;
        kind.bestOf = 2;
        const TestKindId id = book.addTestKind(kind);
        TestDialog dialog(book, id, kind, nullptr);
        dialog.accept();
        QCOMPARE(dialog.result(), int(QDialog::Accepted));
        QVERIFY(book.log().testKinds().front().value == kind);
    }
    void bothAtOnce() {
        const auto path = m_folder.path("both.slopebook");
        Logbook book(log::Log::create(path));
        TestKind kind;
        kind.name = "Hop";
        kind.unit = "m";
        kind.twoSided = kind.bothToo = true;
        book.addTestKind(kind);
        const AthleteId athlete = book.addAthlete({.name = "Ada"});
        book.addSession({.athlete = athlete, .date = today});
        BatteryPage page(book, [] { return today; });
        page.setAthleteAndLift(athlete, {});
        AttemptsView& view = page.attempts();
        choose(view.testBox(), QStringLiteral("Hop"));
        type(view.line(), QStringLiteral("b 1.9 l 1.8 r 1.7"));
        QCOMPARE(view.attempts().rowCount(), 3);
        QCOMPARE(cell(view.attempts(), 0, 1), QStringLiteral("both"));
        type(view.line(), QStringLiteral("1.9"));
        QVERIFY(view.answer().contains(QStringLiteral("L, R or B")));
        QCOMPARE(view.attempts().rowCount(), 3);
    }

    void attemptsAreTypedAndStay() {
        const auto path = m_folder.path("typed.slopebook");
        {
            log::Log log = log::Log::create(path);
            fill(log);
            Logbook book(std::move(log));
            BatteryPage page(book, [] { return today; });
            page.setAthleteAndLift(AthleteId{1}, {});
            AttemptsView& view = page.attempts();
            QAbstractItemModelTester tester(const_cast<TextTable*>(&view.attempts()));
            choose(view.testBox(), QStringLiteral("Single hop"));
            const int before = view.attempts().rowCount();
            type(view.line(), QStringLiteral("L 2,01 R 1.99x # on the line"));
            QCOMPARE(view.line()->text(), QString());
            QCOMPARE(view.attempts().rowCount(), before + 2);
            const int row = 2; // after the one attempt that was there
            QCOMPARE(cell(view.attempts(), row, 1), QStringLiteral("right"));
            QVERIFY(cell(view.attempts(), row, 5).contains(QStringLiteral("on the line")));
            QCOMPARE(cell(view.values(), rowOf(view.values(), QStringLiteral("Single hop")), 2),
                     QStringLiteral("2.01 m"));

            // A built-in test that the log does not have yet comes in with its first attempt.
            choose(view.testBox(), QStringLiteral("Drop jump, reactive strength"));
            type(view.line(), QStringLiteral("0.5/0.2"));
            QCOMPARE(cell(view.values(), rowOf(view.values(), QStringLiteral("Drop jump")), 1),
                     QStringLiteral("1.53 m/s")); // 1.53229, published-values.md section 7
            book.undoStack()->undo();
            page.refresh(Logbook::What::Battery, SessionId{});
            QCOMPARE(rowOf(view.values(), QStringLiteral("Drop jump")), -1);
            book.undoStack()->redo();
            page.refresh(Logbook::What::Battery, SessionId{});
            QVERIFY(rowOf(view.values(), QStringLiteral("Drop jump")) >= 0);

            // A slip is asked about once; Enter again takes it as it stands.
            choose(view.testBox(), QStringLiteral("Single hop"));
            const int held = view.attempts().rowCount();
            type(view.line(), QStringLiteral("L 205"));
            QCOMPARE(view.attempts().rowCount(), held);
            QVERIFY2(view.answer().contains(QStringLiteral("2.05")), qPrintable(view.answer()));
            QTest::keyClick(view.line(), Qt::Key_Return);
            QCOMPARE(view.attempts().rowCount(), held + 1);
            // It is corrected in its row, and stays on its side.
            view.selectAttempt(3);
            QVERIFY(!view.changeSelected(QStringLiteral("2.0s5")));
            QCOMPARE(cell(view.attempts(), 3, 3), QStringLiteral("205"));
            view.selectAttempt(3);
            QVERIFY(view.changeSelected(QStringLiteral("2,05 # read again")));
            QCOMPARE(cell(view.attempts(), 3, 1), QStringLiteral("left"));
            QCOMPARE(cell(view.attempts(), 3, 3), QStringLiteral("2.05"));
            QCOMPARE(cell(view.attempts(), 3, 5), QStringLiteral("read again"));
            book.undoStack()->undo();
            book.undoStack()->undo();
            page.refresh(Logbook::What::Battery, SessionId{});
            QCOMPARE(view.attempts().rowCount(), held);
        }
        log::Log log = log::Log::open(path);
        VERIFY_SOUND(log);
        const auto sessions = log.batteries(AthleteId{1});
        QCOMPARE(sessions.back().battery.tests.size(), std::size_t(3));
        QCOMPARE(sessions.back().battery.tests[0].attempts[1].value, 2.01);
    }

    void whatIsWrongIsSaidInPlace_data() {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("says");
        QTest::newRow("no side") << "1.8"
                                 << "L or R";
        QTest::newRow("a word") << "L far"
                                << "number";
        QTest::newRow("zero") << "L 0"
                              << "above 0";
        QTest::newRow("left out without a reason") << "L 1.8x"
                                                   << "why";
    }
    void whatIsWrongIsSaidInPlace() {
        QFETCH(QString, line);
        QFETCH(QString, says);
        const auto path = m_folder.path("wrong.slopebook");
        std::filesystem::remove(path);
        log::Log log = log::Log::create(path);
        fill(log);
        Logbook book(std::move(log));
        AttemptsView view(book, [] { return today; });
        view.setAthlete(AthleteId{1});
        choose(view.testBox(), QStringLiteral("Single hop"));
        const int before = view.attempts().rowCount();
        type(view.line(), line);
        QVERIFY2(view.answer().contains(says), qPrintable(view.answer()));
        QCOMPARE(view.line()->text(), line);
        QCOMPARE(view.attempts().rowCount(), before);
        QVERIFY(!book.undoStack()->canUndo());
    }

    /// Place, and the reason why a day of one test stands beside no other: on disk at once, each
    /// one step of undo, and of the chosen test alone.
    void whyATestIsNotComparableIsEntered() {
        const auto path = m_folder.path("reason.slopebook");
        log::Log log = log::Log::create(path);
        const Squad squad = fill(log);
        Logbook book(std::move(log));
        AttemptsView view(book, [] { return today; });
        view.setAthlete(AthleteId{1});
        choose(view.testBox(), QStringLiteral("Jump"));
        const auto enter = [&](const char* name, const char* words) {
            for (auto* field : view.findChildren<QLineEdit*>())
                if (field->accessibleName() == QLatin1String(name)) {
                    field->setFocus();
                    field->clear();
                    QTest::keyClicks(field, QLatin1String(words));
                    QTest::keyClick(field, Qt::Key_Return);
                }
        };
        enter("Place", "Boathouse");
        enter("Not comparable, because", "mat was wet");
        const auto held = [&](TestKindId kind) {
            return log::Log::open(path).battery(squad.spring).test(kind)->conditions;
        };
        QCOMPARE(held(squad.jump).place, std::string("Boathouse"));
        QCOMPARE(held(squad.jump).notComparable, std::string("mat was wet"));
        QVERIFY(held(squad.hop).notComparable.empty());
        book.undoStack()->undo();
        QVERIFY(held(squad.jump).notComparable.empty());
        QCOMPARE(held(squad.jump).place, std::string("Boathouse"));
    }

    /// A test comes into the log with the first thing that is said of it: that must be kept.
    void conditionsOfATestThatTheLogDoesNotHoldYet() {
        const auto path = m_folder.path("firstuse.slopebook");
        log::Log log = log::Log::create(path);
        const Squad squad = fill(log);
        Logbook book(std::move(log));
        AttemptsView view(book, [] { return today; });
        view.setAthlete(AthleteId{1});
        const std::size_t before = book.log().testKinds().size();
        choose(view.testBox(), QStringLiteral("Drop jump, reactive strength"));
        for (auto* field : view.findChildren<QLineEdit*>())
            if (field->accessibleName() == QLatin1String("Surface")) {
                QTest::keyClicks(field, QStringLiteral("grass"));
                QTest::keyClick(field, Qt::Key_Return);
                QCOMPARE(field->text(), QStringLiteral("grass"));
            }
        const log::Log anew = log::Log::open(path);
        const auto kinds = anew.testKinds();
        QCOMPARE(kinds.size(), before + 1);
        int kept = 0;
        for (const auto& test : anew.battery(squad.spring).tests)
            kept += test.conditions.surface == "grass";
        QCOMPARE(kept, 1);
    }

    void attemptsAreLeftOutAndRemoved() {
        const auto path = m_folder.path("leftout.slopebook");
        log::Log log = log::Log::create(path);
        fill(log);
        Logbook book(std::move(log));
        AttemptsView view(book, [] { return today; });
        view.setAthlete(AthleteId{1});
        view.selectAttempt(1);
        view.leaveOut(QStringLiteral("early landing"));
        QVERIFY(cell(view.attempts(), 1, 5).contains(QStringLiteral("early landing")));
        QCOMPARE(cell(view.values(), rowOf(view.values(), QStringLiteral("Jump")), 1),
                 QStringLiteral("0.294 m")); // g 0.49^2 / 8
        view.selectAttempt(1);
        view.leaveOut({});
        QCOMPARE(cell(view.values(), rowOf(view.values(), QStringLiteral("Jump")), 1),
                 QStringLiteral("0.306 m")); // published-values.md section 7
        const int rows = view.attempts().rowCount();
        view.selectAttempt(rows - 1); // the gap
        view.removeSelected();
        QCOMPARE(view.attempts().rowCount(), rows - 1);
    }

    void beforeAndAfter() {
        const auto path = m_folder.path("compare.slopebook");
        log::Log log = log::Log::create(path);
        fill(log);
        Logbook book(std::move(log));
        BatteryPage page(book, [] { return today; });
        page.setAthleteAndLift(AthleteId{1}, {});
        BeforeAfterView& view = page.beforeAfter();
        QVERIFY(page.canPrint());
        choose(view.fromBox(), QStringLiteral("block Autumn"));
        choose(view.toBox(), QStringLiteral("block Spring"));
        const int left = rowOf(view.tests(), QStringLiteral("Single hop, left"));
        QVERIFY(left >= 0);
        QCOMPARE(cell(view.tests(), left, 3), QStringLiteral("+0.20"));
        // 1.959964 sqrt(2) 0.0461 = 0.1278 (MDC95 of Ross et al. 2002, section 7)
        QCOMPARE(cell(view.tests(), left, 5), QStringLiteral("+0.07 to +0.33"));
        QVERIFY(cell(view.tests(), left, 7).startsWith(QStringLiteral("better")));
        QVERIFY(cell(view.tests(), left, 8).contains(QStringLiteral("concrete")));
        const int right = rowOf(view.tests(), QStringLiteral("Single hop, right"));
        QCOMPARE(cell(view.tests(), right, 2), QStringLiteral("not possible: sore ankle"));
        const int jump = rowOf(view.tests(), QStringLiteral("Jump"));
        QVERIFY(cell(view.tests(), jump, 7).startsWith(QStringLiteral("unclear")));
        QVERIFY(cell(view.tests(), jump, 7).contains(QStringLiteral("clear from ")));
        QVERIFY(view.summary().contains(QStringLiteral("clear from ")));
        // The sentence counts the rows of the chart: three tests, and what the lifts give.
        const auto& bars = view.forest().rows();
        QVERIFY(bars.size() >= 3);
        QVERIFY2(view.summary().startsWith(
                     QStringLiteral(
                         "Of %1 readings (each change alone), better: Single hop, left (+0.20")
                         .arg(bars.size())),
                 qPrintable(view.summary()));
        QVERIFY(std::ranges::any_of(bars, [](const auto& bar) { return !bar.noBar.empty(); }));
        const auto* alone = page.findChild<QLabel*>(QStringLiteral("alone"));
        QVERIFY(alone && !alone->isHidden() &&
                alone->text().contains(QStringLiteral("Each change alone")));
        const QString csv = QString::fromStdString(batteryCsv(*view.answer()));
        QVERIFY(csv.contains(QStringLiteral("Single hop,left,m,1.8,2025-11-03,2,2026-03-10,")));
        QCOMPARE(csv.count(QLatin1Char('\n')), 1 + 3 + (csv.count(QStringLiteral("Bench"))));
        // The same side twice is no comparison.
        choose(view.toBox(), QStringLiteral("block Autumn"));
        QVERIFY(!page.canPrint());
        QVERIFY(view.summary().contains(QStringLiteral("same")));
    }

    void thePageIsReadBack() {
        if (QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty())
            QSKIP("PDFTOTEXT IS NOT INSTALLED: the page is not read back (poppler-utils)");
        const auto path = m_folder.path("page.slopebook");
        log::Log log = log::Log::create(path);
        const Squad s = fill(log);
        const auto answer = batteryOf(log, s.season.lane3, s.winter, s.later);
        QVERIFY(answer);
        const auto file = m_folder.path("page.pdf");
        writeBatteryPdf(*answer, LoadUnit::Kilograms, page::Paper::A4, file);
        const QString text = pdfText(QString::fromStdString(file.string()));
        for (const char* expected :
             {"Lane 3", "All tests from Autumn to Spring", "Single hop, left", "sore ankle",
              "concrete", "smallest change that matters", "Bench pull", "page 1 of"})
            QVERIFY2(text.contains(QString::fromUtf8(expected)), expected);
        const QSizeF a4 = QPageSize(QPageSize::A4).size(QPageSize::Point);
        QVERIFY(page::pageCount(batteryPrint(*answer, LoadUnit::Kilograms), a4) <= 2);
        QVERIFY_THROWS_EXCEPTION(LogError, writeBatteryPdf(*answer, LoadUnit::Kilograms,
                                                           page::Paper::A4, "/nowhere/page.pdf"));
    }

    void aSideWithoutSessionsSaysSo() {
        const auto path = m_folder.path("empty.slopebook");
        log::Log log = log::Log::create(path);
        const Squad s = fill(log);
        const auto answer = batteryOf(log, s.season.lane3, Date(day(2020, 1, 1)), s.later);
        QVERIFY(!answer);
        QVERIFY(english(answer.why().reason).find("2020-01-01") != std::string::npos);
        QVERIFY_THROWS_EXCEPTION(BadInput, batterySide(log, "Summer"));
        QVERIFY(batterySide(log, "spring") == BatterySide(s.later));
    }

    void aTraceBecomesAnAttempt() {
        const auto path = m_folder.path("trace.slopebook");
        log::Log log = log::Log::create(path);
        const Squad s = fill(log);
        Logbook book(std::move(log));
        BatteryPage page(book, [] { return day(2026, 3, 10); }); // the session's own
        page.setAthleteAndLift(s.season.lane3, {});
        const tests::HalfSinePush push;
        choose(page.attempts().testBox(), QStringLiteral("Isometric pull, peak force"));
        TraceDialog* dialog = page.openTrace();
        dialog->openFile(trace(
            "push.csv", [&](double t) { return push.force(t); }, 4));
        QCOMPARE(dialog->events(), std::size_t(1));
        const TextTable& figures = dialog->figures();
        const int peak = rowOf(figures, QStringLiteral("peak force, gross"));
        QCOMPARE(cell(figures, peak, 1), QStringLiteral("2680")); // 780 + 1900
        // A mark moved by keys: the figures follow.
        const int to = rowOf(figures, QStringLiteral("onset to peak"));
        const QString before = cell(figures, to, 1);
        TraceView& view = dialog->view();
        view.setCurrentMark(2);
        QTest::keyClick(&view, Qt::Key_Right, Qt::ShiftModifier);
        QVERIFY(cell(figures, to, 1) != before);
        QVERIFY(std::abs(cell(figures, to, 1).toDouble() - before.toDouble() + 0.010) < 0.0011);
        // And by the mouse.
        const QPoint at = view.markPosition(2).toPoint();
        QTest::mousePress(&view, Qt::LeftButton, {}, at);
        QTest::mouseMove(&view, at + QPoint(5, 0));
        QTest::mouseRelease(&view, Qt::LeftButton, {}, at + QPoint(5, 0));
        auto* accept = dialog->findChild<QPushButton*>(QStringLiteral("accept"));
        QVERIFY(accept);
        accept->click();
        const Battery battery = book.log().batteries(s.season.lane3).back().battery;
        QCOMPARE(battery.tests.back().attempts.size(), std::size_t(1));
        QVERIFY(std::abs(battery.tests.back().attempts[0].value - 2680) < 1);
        dialog->close();
    }

    /// A test of the coach's own, on one side, takes the figure that is selected.
    void aTraceBecomesTheCoachsOwnTest() {
        const auto path = m_folder.path("own.slopebook");
        log::Log log = log::Log::create(path);
        const Squad s = fill(log);
        TestKind own;
        own.name = "Calf push, early impulse";
        own.unit = "N s";
        own.twoSided = true;
        log.add(own);
        Logbook book(std::move(log));
        BatteryPage page(book, [] { return day(2026, 3, 10); }); // the session's own
        page.setAthleteAndLift(s.season.lane3, {});
        const tests::HalfSinePush push;
        choose(page.attempts().testBox(), QStringLiteral("Calf push, early impulse"));
        TraceDialog* dialog = page.openTrace();
        dialog->openFile(trace(
            "own.csv", [&](double t) { return push.force(t); }, 4));
        QComboBox *into = nullptr, *side = nullptr;
        for (auto* box : dialog->findChildren<QComboBox*>()) {
            if (box->accessibleName() == QStringLiteral("Becomes"))
                into = box;
            if (box->accessibleName() == QStringLiteral("Side"))
                side = box;
        }
        QVERIFY(into && side);
        QVERIFY(into->currentText().contains(QStringLiteral("Calf push"))); // the page's test
        QVERIFY(!side->isHidden());
        const int peakForce = into->findText(QStringLiteral("peak force"), Qt::MatchContains);
        const int calf = into->currentIndex();
        into->setCurrentIndex(peakForce);
        QVERIFY(side->isHidden());
        into->setCurrentIndex(calf);
        side->setCurrentIndex(1);
        auto* accept = dialog->findChild<QPushButton*>(QStringLiteral("accept"));
        const auto kept = [&] {
            std::size_t count = 0;
            const auto sessions = book.log().batteries(s.season.lane3);
            for (const auto& test : sessions.back().battery.tests)
                count += test.attempts.size();
            return count;
        };
        const std::size_t before = kept();
        dialog->selectFigure(rowOf(dialog->figures(), QStringLiteral("peak force, gross")));
        accept->click(); // newtons are no newton-seconds
        QCOMPARE(kept(), before);
        QVERIFY(dialog->said().contains(QStringLiteral("Select the figure")));
        dialog->selectFigure(rowOf(dialog->figures(), QStringLiteral("impulse, net, 0 to 100 ms")));
        accept->click();
        QCOMPARE(kept(), before + 1);
        const Attempt made =
            book.log().batteries(s.season.lane3).back().battery.tests.back().attempts.back();
        QVERIFY(made.side == BodySide::Right);
        // from the onset at 10 N on, 0.1 s of the half sine
        const double onset = push.reaches(10);
        QVERIFY(std::abs(made.value - push.impulse(onset, onset + 0.1)) < 0.2);
        dialog->close();
    }

    /// The attempts of a test in that athlete's sessions, by day.
    static std::map<Date, std::size_t> attemptsOf(const log::Log& log, AthleteId athlete,
                                                  const char* test) {
        std::map<Date, std::size_t> found;
        for (const BatterySession& one : log.batteries(athlete))
            for (const TestAttempts& each : one.battery.tests)
                for (const auto& kind : log.testKinds())
                    if (kind.id == each.kind && kind.value.name == test)
                        found[one.date] += each.attempts.size();
        return found;
    }
    /// Presses the button with these words in the next question; what it asked, or nothing.
    static void press(const char* words, QString& asked) {
        asked.clear();
        QTimer::singleShot(0, qApp, [words, &asked] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (!box)
                return;
            asked = box->text();
            for (QAbstractButton* button : box->buttons())
                if (button->text().remove(QLatin1Char('&')).contains(QLatin1String(words)))
                    return button->click();
            box->reject();
        });
    }

    /// It goes to whom it was opened for, into the session that it says, once.
    void aTraceStaysTheirs() {
        using Days = std::map<Date, std::size_t>;
        constexpr const char* pull = "Isometric pull, peak force";
        const auto path = m_folder.path("theirs.slopebook");
        log::Log log = log::Log::create(path);
        const Squad s = fill(log);
        Logbook book(std::move(log));
        MovingClock clock(QDateTime(QDate(2026, 3, 14), QTime(18, 0)));
        BatteryPage page(book, clock.clock());
        page.setAthleteAndLift(s.season.lane3, {});
        choose(page.attempts().testBox(), QString::fromLatin1(pull));
        const tests::HalfSinePush push;
        TraceDialog* dialog = page.openTrace();
        const auto* whose = dialog->findChild<QLabel*>(QStringLiteral("whose"));
        QVERIFY(whose->text().contains(QStringLiteral("Lane 3")));
        QVERIFY2(whose->text().contains(dateText(day(2026, 3, 10))), qPrintable(whose->text()));
        dialog->openFile(trace(
            "theirs.csv", [&](double t) { return push.force(t); }, 4));
        page.setAthleteAndLift(s.season.stroke, {}); // the window moves on
        auto* accept = dialog->findChild<QPushButton*>(QStringLiteral("accept"));
        QString asked;
        press("Cancel", asked); // the session is four days old
        accept->click();
        QVERIFY2(asked.contains(QStringLiteral("Lane 3")), qPrintable(asked));
        QCOMPARE(attemptsOf(book.log(), s.season.lane3, pull), Days());
        press("To today", asked);
        accept->click();
        QCOMPARE(attemptsOf(book.log(), s.season.lane3, pull), (Days{{day(2026, 3, 14), 1}}));
        QVERIFY(attemptsOf(book.log(), s.season.stroke, pull).empty());
        QVERIFY2(whose->text().contains(dateText(day(2026, 3, 14))), qPrintable(whose->text()));
        press("No", asked); // pressed twice
        accept->click();
        QVERIFY2(asked.contains(QStringLiteral("second time")), qPrintable(asked));
        QCOMPARE(attemptsOf(book.log(), s.season.lane3, pull), (Days{{day(2026, 3, 14), 1}}));
        clock.moveOn(std::chrono::hours(8)); // the dialog stood open over midnight
        press("Yes", asked);
        QString again;
        QTimer::singleShot(50, qApp, [&again] { press("Cancel", again); });
        accept->click();
        QVERIFY(again.contains(QStringLiteral("not of today")));
        QCOMPARE(attemptsOf(book.log(), s.season.lane3, pull), (Days{{day(2026, 3, 14), 1}}));
        dialog->close();
        // Opened anew on the same trace it is asked about as well.
        page.setAthleteAndLift(s.season.lane3, {});
        clock.moveTo(QDateTime(QDate(2026, 3, 14), QTime(18, 30)));
        dialog = page.openTrace();
        dialog->openFile(QString::fromStdString(m_folder.path("theirs.csv").string()));
        press("No", asked);
        dialog->findChild<QPushButton*>(QStringLiteral("accept"))->click();
        QVERIFY(asked.contains(QStringLiteral("second time")));
        QCOMPARE(attemptsOf(book.log(), s.season.lane3, pull), (Days{{day(2026, 3, 14), 1}}));
        dialog->close();
    }

    /// A landing is no pull: the page's test says what kind of trace it is, and no other is made.
    void aTraceIsOfThePagesTest() {
        const auto path = m_folder.path("kind.slopebook");
        log::Log log = log::Log::create(path);
        const Squad s = fill(log);
        Logbook book(std::move(log));
        BatteryPage page(book, [] { return day(2026, 3, 10); });
        page.setAthleteAndLift(s.season.lane3, {});
        const auto boxOf = [](const TraceDialog& dialog, const char* name) {
            for (auto* box : dialog.findChildren<QComboBox*>())
                if (box->accessibleName() == QLatin1String(name))
                    return box;
            return static_cast<QComboBox*>(nullptr);
        };
        choose(page.attempts().testBox(), QStringLiteral("Jump"));
        TraceDialog* jumps = page.openTrace();
        QCOMPARE(boxOf(*jumps, "Kind")->currentIndex(), int(traces::TraceKind::Jump));
        QVERIFY(boxOf(*jumps, "Becomes")->currentText().contains(QStringLiteral("Jump")));
        // The coach says that it is a push: of that no jump is made, and nothing else by itself.
        const tests::HalfSinePush push;
        jumps->openFile(trace(
            "kind.csv", [&](double t) { return push.force(t); }, 4));
        jumps->setKind(traces::TraceKind::Isometric);
        QCOMPARE(jumps->events(), std::size_t(1));
        QCOMPARE(boxOf(*jumps, "Becomes")->currentIndex(), -1);
        QVERIFY(!jumps->findChild<QPushButton*>(QStringLiteral("accept"))->isEnabled());
        boxOf(*jumps, "Becomes")->setCurrentIndex(0);
        QVERIFY(jumps->findChild<QPushButton*>(QStringLiteral("accept"))->isEnabled());
        jumps->close();
        choose(page.attempts().testBox(), QStringLiteral("Isometric pull, peak force"));
        TraceDialog* pulls = page.openTrace();
        QCOMPARE(boxOf(*pulls, "Kind")->currentIndex(), int(traces::TraceKind::Isometric));
        pulls->close();
        // Nobody's trace is opened for nobody.
        BatteryPage empty(book, [] { return today; });
        QVERIFY(!empty.openTrace());
    }

    void repsBecomeSpeeds() {
        TraceDialog dialog;
        dialog.setKind(traces::TraceKind::Lift);
        const tests::MinimumJerk jerk;
        dialog.openFile(trace(
            "lift.csv",
            [&](double t) {
                return jerk.position(t - 1) - jerk.position((t - 2.5) / 2) + jerk.position(t - 6);
            },
            9));
        QCOMPARE(dialog.events(), std::size_t(2));
        QSignalSpy speeds(&dialog, &TraceDialog::speedsAccepted);
        dialog.findChild<QPushButton*>(QStringLiteral("accept"))->click();
        QCOMPARE(speeds.count(), 1);
        const QStringList given = speeds[0][0].toString().split(QLatin1Char(' '));
        QCOMPARE(given.size(), 2);
        QVERIFY(std::abs(given[0].toDouble() - 0.625) < 0.03); // 0.5 m in 0.8 s
    }

    void badTracesAreSaid() {
        TraceDialog dialog;
        const QString file = QString::fromStdString(m_folder.path("bad.csv").string());
        QFile out(file);
        QVERIFY(out.open(QIODevice::WriteOnly));
        out.write("time,force\n");
        for (int i = 0; i < 100; ++i)
            out.write(QByteArray::number(i == 50 ? 0.0505 : i * 0.001) + ",800\n");
        out.close();
        dialog.openFile(file);
        QVERIFY2(dialog.said().contains(QStringLiteral("Line 52")), qPrintable(dialog.said()));
        QCOMPARE(dialog.events(), std::size_t(0));
        dialog.openFile(QStringLiteral("/nowhere/at/all.csv"));
        QVERIFY(dialog.said().startsWith(QStringLiteral("\u26a0")));
    }

    void theSeasonInBlocks() {
        const auto path = m_folder.path("blocks.slopebook");
        log::Log log = log::Log::create(path);
        const Squad s = fill(log);
        Logbook book(std::move(log));
        BlocksPage page(book, [] { return today; });
        page.resize(900, 600);
        page.setAthleteAndLift(s.season.lane3, {});
        const TextTable& blocks = page.blocks();
        QCOMPARE(blocks.rowCount(), 3);
        const int autumn = rowOf(blocks, QStringLiteral("Autumn"));
        const int flood = rowOf(blocks, QStringLiteral("Flood winter"));
        const int spring = rowOf(blocks, QStringLiteral("Spring"));
        QCOMPARE(cell(blocks, autumn, 5), QStringLiteral("2"));
        QCOMPARE(cell(blocks, flood, 5), QStringLiteral("0"));
        QVERIFY(cell(blocks, flood, 3).startsWith(QStringLiteral("60")));
        QCOMPARE(cell(blocks, spring, 6), QStringLiteral("in 1 of 1"));
        QVERIFY(blocks.index(spring, 0)
                    .data(Qt::ToolTipRole)
                    .toString()
                    .contains(QStringLiteral("sore ankle")));
        page.selectBlock(spring);
        QCOMPARE(page.sessions().rowCount(), 1);
        QVERIFY(cell(page.sessions(), 0, 1).contains(QStringLiteral("sore ankle")));
        QVERIFY(cell(page.sessions(), 0, 2).contains(QStringLiteral("Bench pull")));
        QVERIFY(cell(page.sessions(), 0, 2).contains(QStringLiteral("Single hop")));
        QCOMPARE(page.timeline().lanes(), 1);
        QVERIFY(page.timeline().barOf(flood).left() > page.timeline().barOf(autumn).right());
        book.addBlock(Block{.name = "Camp", .first = day(2026, 3, 8), .last = day(2026, 3, 12)});
        page.refresh(Logbook::What::Blocks, SessionId{});
        QCOMPARE(page.timeline().lanes(), 2); // overlapping blocks stand below each other
    }
};
QTEST_MAIN(TestBatteryPage)
#include "tst_batterypage.moc"
