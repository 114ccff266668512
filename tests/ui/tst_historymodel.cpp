// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ladders.h"
#include "ui/history/historypage.h"

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace slopebook;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

Background about() {
    Background b{.athlete = {AthleteId{1}, {.name = "Wren", .note = {}}},
                 .lift = {LiftId{1}, test::benchPull()},
                 .sessions = {test::autumn(), test::winter()},
                 .checkLoads = {Mass{40'000}, Mass{80'000}}};
    b.mvt = *b.lift.value.mvt;
    // A day on which only one load was lifted, and one with nothing that counts.
    b.sessions.push_back(test::ladder(3, test::day(2026, 2, 1), {{50, 1.0}}));
    b.sessions.push_back(test::ladder(4, test::day(2026, 2, 9), {}));
    return b;
}

std::vector<Stored<BlockId, Block>> blocks() {
    return {{BlockId{1},
             {.name = "Autumn base",
              .first = test::day(2025, 9, 1),
              .last = test::day(2025, 12, 20),
              .ceiling = {},
              .note = {}}},
            {BlockId{2},
             {.name = "Light winter",
              .first = test::day(2026, 1, 2),
              .last = test::day(2026, 3, 1),
              .ceiling = Mass{70'000},
              .note = {}}}};
}

QString cell(const HistoryModel& model, int row, int column) {
    return model.index(row, column).data().toString();
}

// A log in a folder of its own, with Wren's two ladders typed in.
struct Written {
    QTemporaryDir folder;
    Logbook book{log::Log::create((folder.path() + u"/a.slopebook"_s).toStdString())};
    AthleteId athlete = book.addAthlete({.name = "Wren", .note = {}});
    LiftId lift = book.addLift(test::benchPull());
    std::vector<SessionId> sessions;

    Written() {
        for (const LiftSession& s : {test::autumn(), test::winter()}) {
            SessionHead head;
            head.athlete = athlete;
            head.date = s.date;
            sessions.push_back(book.addSession(head));
            for (const Point& p : s.points) {
                Set set;
                set.load = massFromKilograms(p.load);
                set.reps = {{.velocity = p.velocity, .excluded = {}}};
                book.addSet(sessions.back(), lift, set);
            }
        }
    }
};

} // namespace

class TestHistoryModel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(u"nan|NaN|QPainter"_s)); }

    void rowsSayWhatTheSessionsWere() {
        HistoryModel model;
        const QAbstractItemModelTester tester(
            &model, QAbstractItemModelTester::FailureReportingMode::Fatal);
        const Background b = about();
        model.setRows(historyRows(b, blocks(), {}), b.checkLoads, LoadUnit::Kilograms);
        QCOMPARE(model.rowCount(), 4);
        QCOMPARE(model.columnCount(), HistoryModel::FirstCheckLoad + 2);
        QCOMPARE(cell(model, 0, HistoryModel::BlockColumn), u"Autumn base"_s);
        QCOMPARE(cell(model, 1, HistoryModel::BlockColumn), u"Light winter"_s);
        QCOMPARE(cell(model, 0, HistoryModel::PointsColumn), u"6"_s);
        QCOMPARE(cell(model, 0, HistoryModel::LoadsColumn), u"30–80"_s);
        QCOMPARE(cell(model, 0, HistoryModel::MeasuredColumn), u"90"_s);
        QCOMPARE(cell(model, 1, HistoryModel::MeasuredColumn), QString());
        // What core says, as it is written everywhere.
        const auto p = *profileOf(b, b.sessions[0]);
        QCOMPARE(cell(model, 0, HistoryModel::V0Column), number(p.line.intercept, 2));
        QCOMPARE(cell(model, 0, HistoryModel::R2Column), number(p.line.r2, 3));
        QVERIFY(cell(model, 0, HistoryModel::OneRmColumn).startsWith(number(p.oneRm->estimate, 1)));
        QCOMPARE(cell(model, 0, HistoryModel::FirstCheckLoad), number(p.line.at(40), 2));
        // 80 kg was not lifted that winter: marked.
        QVERIFY(cell(model, 1, HistoryModel::FirstCheckLoad + 1).endsWith(u'*'));
    }

    void aSessionWithoutALineSaysWhy() {
        HistoryModel model;
        const Background b = about();
        model.setRows(historyRows(b, blocks(), {}), b.checkLoads, LoadUnit::Kilograms);
        for (const int row : {2, 3}) {
            QCOMPARE(cell(model, row, HistoryModel::V0Column), QString());
            QCOMPARE(cell(model, row, HistoryModel::OneRmColumn), QString());
            QVERIFY(!model.index(row, HistoryModel::OneRmColumn)
                         .data(Qt::ToolTipRole)
                         .toString()
                         .isEmpty());
        }
        QCOMPARE(cell(model, 3, HistoryModel::LoadsColumn), QString());
    }

    void sortsByRawValues() {
        HistoryModel model;
        std::vector<HistoryRow> rows;
        for (const double v : {9.0, 10.0, 100.0}) { // as text 9 would come last
            HistoryRow row;
            row.session = SessionId{static_cast<long long>(v)};
            row.date = test::day(2026, 1, static_cast<unsigned>(v / 10 + 1));
            row.n = static_cast<int>(v);
            row.lightest = row.heaviest = v;
            row.measured = v;
            rows.push_back(row);
        }
        std::swap(rows[0], rows[2]);
        model.setRows(rows, {}, LoadUnit::Kilograms);
        QSortFilterProxyModel sorted;
        sorted.setSourceModel(&model);
        sorted.setSortRole(HistoryModel::SortRole);
        for (const int column :
             {int{HistoryModel::DateColumn}, int{HistoryModel::PointsColumn},
              int{HistoryModel::LoadsColumn}, int{HistoryModel::MeasuredColumn}}) {
            sorted.sort(column, Qt::AscendingOrder);
            QCOMPARE(sorted.index(0, HistoryModel::PointsColumn).data().toString(), u"9"_s);
            QCOMPARE(sorted.index(2, HistoryModel::PointsColumn).data().toString(), u"100"_s);
        }
    }

    void poundsAreShownAndKilogramsSorted() {
        HistoryModel model;
        const Background b = about();
        model.setRows(historyRows(b, blocks(), {}), b.checkLoads, LoadUnit::Pounds);
        // 90 kg / 0.45359237 = 198.4 lb
        QCOMPARE(cell(model, 0, HistoryModel::MeasuredColumn), u"198.4"_s);
        QCOMPARE(
            model.index(0, HistoryModel::MeasuredColumn).data(HistoryModel::SortRole).toDouble(),
            90.0);
        QVERIFY(model.headerData(HistoryModel::FirstCheckLoad, Qt::Horizontal)
                    .toString()
                    .contains(u"88.2"_s)); // 40 kg
    }

    void aHundredThousandRowsAreTakenAtOnce() {
        std::vector<HistoryRow> rows(100'000);
        for (unsigned i = 0; i < rows.size(); ++i) {
            rows[i].session = SessionId{static_cast<long long>(i)};
            rows[i].date = test::day(1990 + static_cast<int>(i % 30), 1 + i % 12, 1 + i % 28);
            rows[i].n = static_cast<int>(i);
        }
        HistoryModel model;
        model.setRows(std::move(rows), {}, LoadUnit::Kilograms);
        QCOMPARE(model.rowCount(), 100'000);
        QCOMPARE(cell(model, 99'999, HistoryModel::PointsColumn), u"99999"_s);
    }

    void thePageShowsDeletesAndTakesBack() {
        Written w;
        HistoryPage page(w.book);
        const QAbstractItemModelTester tester(page.table()->model());
        page.setAthleteAndLift(w.athlete, w.lift);
        QCOMPARE(page.table()->model()->rowCount(), 2);
        // newest first
        QCOMPARE(page.table()->model()->index(0, 0).data(HistoryModel::SessionRole).toLongLong(),
                 raw(w.sessions[1]));
        QCOMPARE(page.chart().data().sessions.size(), std::size_t{2});
        QSignalSpy said(&page, &TaskPage::message);
        page.deleteSession(w.sessions[0]);
        QCOMPARE(page.table()->model()->rowCount(), 1);
        QCOMPARE(said.count(), 1);
        w.book.undoStack()->undo();
        page.refresh(Logbook::What::Sessions, w.sessions[0]);
        QCOMPARE(page.table()->model()->rowCount(), 2);
        QCOMPARE(page.table()->model()->index(1, HistoryModel::PointsColumn).data().toString(),
                 u"6"_s);
    }

    void enterOpensAndChoosingOverlays() {
        Written w;
        HistoryPage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        page.show();
        page.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&page));
        QSignalSpy wanted(&page, &TaskPage::sessionWanted);
        page.table()->setFocus();
        page.table()->selectRow(1);
        page.table()->setCurrentIndex(page.table()->model()->index(1, 0));
        QCOMPARE(page.chosen(), std::vector{w.sessions[0]});
        QCOMPARE(page.chart().data().sessions.size(), std::size_t{1});
        QTest::keyClick(page.table(), Qt::Key_Return);
        QCOMPARE(wanted.count(), 1);
        QCOMPARE(wanted[0][0].value<SessionId>(), w.sessions[0]);
        page.table()->selectAll();
        QCOMPARE(page.chosen(), w.sessions); // by date, whatever the table's order
        QVERIFY(page.table()->hasFocus());
        QTest::keySequence(page.table(), QKeySequence::Copy);
        QCOMPARE(QGuiApplication::clipboard()->text().count(u'\n'), 2);
    }

    void withNothingChosenItSaysWhatToDo() {
        Written w;
        HistoryPage page(w.book);
        page.setAthleteAndLift(std::nullopt, std::nullopt);
        QCOMPARE(page.table()->model()->rowCount(), 0);
        page.setAthleteAndLift(AthleteId{999}, w.lift); // not in the log
        QCOMPARE(page.table()->model()->rowCount(), 0);
    }
};

QTEST_MAIN(TestHistoryModel)
#include "tst_historymodel.moc"
