// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/errors.h"
#include "tests/log/rawfile.h"
#include "tests/support/ladders.h"
#include "tests/ui/typedladders.h"
#include "ui/athlete/history/historypage.h"
#include "ui/words/format.h"

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <memory>
#include <random>
#include <variant>

using namespace slopebook;
using namespace slopebook::questions;
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

void ofOneLift(HistoryPage& page) {
    page.findChild<QComboBox*>()->setCurrentIndex(0);
}

/// Wren's two ladders, and in the later session two jumps, one of them left out, a hop on the left
/// and a pull that was not possible: five rows, by hand.
TestKind kindOf(const std::string& name, bool twoSided, int decimals) {
    TestKind kind;
    kind.name = name;
    kind.unit = "m";
    kind.twoSided = twoSided;
    kind.decimals = decimals;
    return kind;
}

Attempt attemptOf(BodySide side, double value, const std::string& note = {},
                  const std::string& excluded = {}) {
    Attempt attempt;
    attempt.side = side;
    attempt.value = value;
    attempt.note = note;
    attempt.excluded = excluded;
    return attempt;
}

struct WholeDays : test::TypedLadders {
    TestKindId jump = book.addTestKind(kindOf("Jump", false, 3));
    TestKindId hop = book.addTestKind(kindOf("Hop", true, 2));
    WholeDays() {
        Battery battery;
        battery.tests.push_back({.kind = jump,
                                 .attempts = {attemptOf(BodySide::Both, 0.41, "arms"),
                                              attemptOf(BodySide::Both, 0.52, {}, "fell")}});
        battery.tests.back().conditions.surface = "rubber";
        battery.tests.push_back({.kind = hop, .attempts = {attemptOf(BodySide::Left, 1.8)}});
        battery.gaps.push_back({.lift = lift, .load = Mass{90'000}, .reason = "plates gone"});
        book.setBattery(sessions[1], battery, u"test"_s);
    }
};

/// All rows at once, in the order given, whatever the column.
HistorySource plainly(std::vector<HistoryRow> rows) {
    const auto all = std::make_shared<std::vector<HistoryRow>>(std::move(rows));
    return {.order =
                [all](int, Qt::SortOrder) {
                    std::vector<SessionId> order;
                    for (const HistoryRow& row : *all)
                        order.push_back(row.session);
                    return order;
                },
            .rows =
                [all](std::span<const SessionId> sessions) {
                    std::vector<HistoryRow> page;
                    for (const SessionId session : sessions)
                        page.push_back(*std::ranges::find(*all, session, &HistoryRow::session));
                    return page;
                }};
}

QString cell(const HistoryModel& model, int row, int column) {
    return model.index(row, column).data().toString();
}

std::string asciiLower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c + 32);
    return text;
}

/// Made-up sessions of a few athletes with names that differ in letter case, with blocks that
/// overlap, days with two sessions, sets left out, and another lift in between.
struct RandomLog {
    QTemporaryDir folder;
    log::Log log = log::Log::create((folder.path() + u"/r.slopebook"_s).toStdString());
    LiftId lift{}, otherLift{};
    std::vector<AthleteId> athletes;
    std::vector<DeviceId> devices;
    std::mt19937 random{20260314};

    RandomLog() {
        log.together([this] { fill(); });
    }
    int below(int n) { return std::uniform_int_distribution<int>(0, n - 1)(random); }
    void fill() {
        lift = log.add(test::benchPull());
        otherLift = log.add(Lift{.name = "Squat"});
        for (const char* name : {"wren", "Änne", "Wren B", "ida", "Ida B", "Zoë"})
            athletes.push_back(log.add(Athlete{.name = name, .note = {}}));
        for (const char* name : {"Encoder", "camera", "änker"})
            devices.push_back(log.add(Device{.name = name, .note = {}}));
        for (const auto& [name, first, last] :
             {std::tuple{"Winter", test::day(2024, 12, 1), test::day(2025, 3, 1)},
              {"camp", test::day(2025, 1, 10), test::day(2025, 1, 20)},
              {"Windy spring", test::day(2025, 3, 2), test::day(2025, 6, 1)}})
            log.add(Block{.name = name, .first = first, .last = last, .ceiling = {}, .note = {}});
        for (const Mass load : {Mass{40'000}, Mass{60'000}})
            m_checkLoads.push_back(load);
        for (const AthleteId athlete : athletes)
            log.setCheckLoads(athlete, lift, m_checkLoads);
        for (int i = 0; i < 260; ++i)
            addSession();
    }
    void addSession() {
        SessionHead head;
        head.athlete = athletes[static_cast<std::size_t>(below(6))];
        head.date =
            Date{std::chrono::sys_days{test::day(2024, 10, 1)} + std::chrono::days{below(270)}};
        for (const auto& held : log.sessions(head.athlete))
            if (held.value.date == head.date)
                ++head.ordinal;
        static const std::array<const char*, 3> notes{"sore knee", "Windy", "älter als sonst"};
        if (below(3) == 0)
            head.note = notes[static_cast<std::size_t>(below(3))];
        const SessionId session = log.add(head);
        for (const LiftId of : {lift, otherLift})
            if (below(4) != 0)
                log.setConditions(session, of,
                                  {.device = devices[static_cast<std::size_t>(below(3))]});
        const int sets = below(6);
        for (int i = 0; i < sets; ++i) {
            Set set{.load = Mass{30'000 + 10'000 * below(6)}};
            set.trueMaximum = below(12) == 0;
            set.excluded = below(8) == 0 ? "slipped" : "";
            set.reps = {{.velocity = 1.3 - 0.012 * kilograms(set.load) + 0.001 * below(60)}};
            log.add(session, below(5) == 0 ? otherLift : lift, set);
        }
    }

    using Key = std::variant<std::monostate, double, std::string>;
    static Key keyOf(const HistoryRow& row, int column) {
        const auto figure = [](const std::optional<double>& value) {
            return value ? Key(*value) : Key();
        };
        const auto name = [](const QString& text) {
            return text.isEmpty() ? Key() : Key(asciiLower(text.toStdString()));
        };
        switch (column) {
        case HistoryModel::DateColumn:
            return isoDate(row.date);
        case HistoryModel::AthleteColumn:
            return name(row.athlete);
        case HistoryModel::BlockColumn:
            return name(row.block);
        case HistoryModel::DeviceColumn:
            return name(row.device);
        case HistoryModel::PointsColumn:
            return double(row.n);
        case HistoryModel::LoadsColumn:
            return row.n > 0 ? Key(row.heaviest) : Key();
        case HistoryModel::V0Column:
            return figure(row.v0);
        case HistoryModel::SlopeColumn:
            return figure(row.slope);
        case HistoryModel::R2Column:
            return figure(row.r2);
        case HistoryModel::OneRmColumn:
            return row.oneRm ? Key(row.oneRm->estimate) : Key();
        case HistoryModel::ReachColumn:
            return row.oneRm ? Key(row.oneRm->reach) : Key();
        case HistoryModel::MeasuredColumn:
            return figure(row.measured);
        case HistoryModel::NoteColumn:
            return name(row.note);
        default:
            break;
        }
        const auto& at =
            row.atCheckLoads[static_cast<std::size_t>(column - HistoryModel::FirstCheckLoad)];
        return at ? Key(at->velocity) : Key();
    }
    std::vector<HistoryRow> plainly(bool everybody, const QString& find, int column,
                                    Qt::SortOrder direction) const {
        std::vector<HistoryRow> rows;
        for (const AthleteId athlete : athletes)
            if (everybody || athlete == athletes[1]) {
                Background b = background(log, athlete, lift);
                if (everybody)
                    b.checkLoads.clear();
                for (HistoryRow& row : historyRows(b, log.blocks(), log.devices())) {
                    row.note = text(log.session(row.session).head.value.note);
                    if (find.isEmpty() || text(isoDate(row.date)).contains(find) ||
                        dateText(row.date).contains(find, Qt::CaseInsensitive) ||
                        row.athlete.contains(find, Qt::CaseInsensitive) ||
                        row.block.contains(find, Qt::CaseInsensitive) ||
                        row.device.contains(find, Qt::CaseInsensitive) ||
                        row.note.contains(find, Qt::CaseInsensitive))
                        rows.push_back(std::move(row));
                }
            }
        std::ranges::sort(rows, [&](const HistoryRow& a, const HistoryRow& b) {
            const Key first = keyOf(a, column), second = keyOf(b, column);
            if (first != second)
                return direction == Qt::AscendingOrder ? first < second : second < first;
            if (a.date != b.date)
                return b.date < a.date;
            const auto who = [](const HistoryRow& row) {
                return std::pair(asciiLower(row.athlete.toStdString()), raw(row.of));
            };
            if (who(a) != who(b))
                return who(a) < who(b);
            const bool up = column == HistoryModel::DateColumn && direction == Qt::AscendingOrder;
            return up ? a.ordinal < b.ordinal : b.ordinal < a.ordinal;
        });
        return rows;
    }

private:
    std::vector<Mass> m_checkLoads;
};

} // namespace

class TestHistoryModel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(u"nan|NaN|QPainter"_s)); }

    void rowsSayWhatTheSessionsWere() {
        HistoryModel model;
        QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
        tester.setUseFetchMore(false); // it would fetch while a reset is told of
        const Background b = about();
        model.setSource(plainly(historyRows(b, blocks(), {})), b.checkLoads, LoadUnit::Kilograms);
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
        model.setSource(plainly(historyRows(b, blocks(), {})), b.checkLoads, LoadUnit::Kilograms);
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

    void poundsAreShownAndKilogramsSorted() {
        HistoryModel model;
        const Background b = about();
        model.setSource(plainly(historyRows(b, blocks(), {})), b.checkLoads, LoadUnit::Pounds);
        // 90 kg / 0.45359237 = 198.4 lb
        QCOMPARE(cell(model, 0, HistoryModel::MeasuredColumn), u"198.4"_s);
        QCOMPARE(model.row(0).measured, std::optional(90.0));
        QVERIFY(model.headerData(HistoryModel::FirstCheckLoad, Qt::Horizontal)
                    .toString()
                    .contains(u"88.2"_s)); // 40 kg
    }

    void aHundredThousandRowsAreReadAsTheyAreLookedAt() {
        std::vector<SessionId> order(100'000);
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = SessionId{static_cast<long long>(i) + 1};
        std::size_t read = 0;
        HistoryModel model;
        QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
        tester.setUseFetchMore(false); // it would fetch while a reset is told of
        model.setSource({.order = [&](int, Qt::SortOrder) { return order; },
                         .rows =
                             [&](std::span<const SessionId> sessions) {
                                 std::vector<HistoryRow> page(sessions.size());
                                 for (std::size_t i = 0; i < page.size(); ++i) {
                                     page[i].session = sessions[i];
                                     page[i].date = test::day(2026, 1, 1);
                                 }
                                 read += page.size();
                                 return page;
                             }},
                        {}, LoadUnit::Kilograms);
        QCOMPARE(model.sessions(), order.size());
        QTableView view;
        view.setModel(&model);
        view.resize(600, 400);
        view.show();
        QVERIFY(QTest::qWaitForWindowExposed(&view));
        QVERIFY(read < 1000);
        view.scrollToBottom();
        QTRY_VERIFY(model.rowCount() > int(HistoryModel::pageRows));
        QVERIFY(read < 2000);
        const int last = model.rowOf(SessionId{5000});
        QCOMPARE(last, 4999);
        QCOMPARE(model.row(last).session, SessionId{5000});
        QVERIFY(read < 7000);
        QCOMPARE(model.rowOf(SessionId{100'001}), -1);
    }

    void aPageThatCannotBeReadEndsTheTable() {
        int pages = 0;
        HistoryModel model;
        QSignalSpy failed(&model, &HistoryModel::failed);
        model.setSource({.order = [](int, Qt::SortOrder) { return std::vector(250, SessionId{1}); },
                         .rows =
                             [&](std::span<const SessionId> sessions) {
                                 if (++pages > 1)
                                     throw LogError(LogError::Kind::Unavailable, asIs("gone"));
                                 return std::vector<HistoryRow>(
                                     sessions.size(), HistoryRow{.session = SessionId{1}});
                             }},
                        {}, LoadUnit::Kilograms);
        QCOMPARE(model.rowCount(), int(HistoryModel::pageRows));
        QVERIFY(model.canFetchMore({}));
        model.fetchMore({});
        QCOMPARE(failed.count(), 1);
        QVERIFY(!model.canFetchMore({}));
        QCOMPARE(model.rowCount(), int(HistoryModel::pageRows));
    }

    void ordersAndFindsAsAPlainListWould_data();
    void ordersAndFindsAsAPlainListWould();
    void everybodysSessionsAreShown();

    void thePageShowsDeletesAndTakesBack() {
        test::TypedLadders w;
        HistoryPage page(w.book);
        ofOneLift(page);
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
        test::TypedLadders w;
        HistoryPage page(w.book);
        ofOneLift(page);
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

    void everythingIsARowOfItsOwn() {
        const WholeDays w;
        const auto rows = doneBy(w.book.log(), w.athlete, LoadUnit::Kilograms);
        QCOMPARE(rows.size(), std::size_t{5});
        const auto says = [&](std::size_t at, const QStringList& cells) {
            const DoneRow& row = rows[at];
            QCOMPARE(QStringList({row.what, row.result, row.conditions, row.note}), cells);
        };
        says(0, {u"Bench pull"_s, u"30 to 70\u00a0kg, 5 sets"_s, {}, {}});
        says(1, {u"Jump"_s, u"0.410 m"_s, u"rubber"_s, u"arms; fell"_s});
        says(2, {u"Hop"_s, u"left 1.80 m"_s, {}, {}});
        says(3, {u"Bench pull, 90\u00a0kg"_s, u"not possible"_s, {}, u"plates gone"_s});
        says(4, {u"Bench pull"_s, u"30 to 80\u00a0kg, 6 sets"_s, {}, {}});
        QCOMPARE(rows[4].session, w.sessions[0]);
        QVERIFY(!rows[1].lift);
        QCOMPARE(rows[3].lift, std::optional(w.lift));
        const auto pounds = doneBy(w.book.log(), w.athlete, LoadUnit::Pounds);
        QVERIFY(pounds[0].result.contains(u"lb"_s)); // never a kilogram bare
    }

    // Whatever of a session is not as it was written: it is a row that says so, and all others
    // stay.
    void aDamagedSessionHidesNoneBesideIt_data() {
        QTest::addColumn<QString>("damage");
        QTest::newRow("a set") << u"UPDATE sets SET load_g = load_g + 500 WHERE session = %1"_s;
        QTest::newRow("a rep")
            << u"UPDATE reps SET velocity = velocity / 2 WHERE set_id IN (SELECT "
               "id FROM sets WHERE session = %1)"_s;
        QTest::newRow("a set that is gone")
            << u"DELETE FROM reps WHERE set_id IN (SELECT id FROM sets WHERE session = %1 AND "
               "ordinal = 2); DELETE FROM sets WHERE session = %1 AND ordinal = 2"_s;
        QTest::newRow("an attempt")
            << u"UPDATE attempts SET value = value + 0.1 WHERE session = %1"_s;
        QTest::newRow("a gap") << u"DELETE FROM gaps WHERE session = %1"_s;
        QTest::newRow("conditions")
            << u"UPDATE test_conditions SET surface = 'mud' WHERE session = %1"_s;
    }
    void aDamagedSessionHidesNoneBesideIt() {
        QFETCH(QString, damage);
        const WholeDays w;
        const auto sound = doneBy(w.book.log(), w.athlete, LoadUnit::Kilograms);
        test::runSql(w.book.log().file(), damage.arg(raw(w.sessions[1])).toStdString());
        for (const bool anew : {false, true}) {
            const log::Log again = log::Log::open(w.book.log().file(), log::Access::ReadOnly);
            const auto rows = doneBy(anew ? again : w.book.log(), w.athlete, LoadUnit::Kilograms);
            QCOMPARE(rows.size(), std::size_t{2});
            QCOMPARE(rows[0].session, w.sessions[1]);
            QVERIFY(rows[0].what.isEmpty() && rows[0].result.isEmpty());
            QVERIFY2(rows[0].note.contains(u"damaged"_s), qPrintable(rows[0].note));
            QCOMPARE(rows[1].session, w.sessions[0]);
            QCOMPARE(rows[1].result, sound.back().result);
        }
    }

    // What is left out is told with its reason, and is not among the loads, lifted or not.
    void setsLeftOutAreNoLoads() {
        test::TypedLadders w;
        w.book.addSets(w.sessions[0], w.lift,
                       {{.load = Mass{100'000}, .excluded = "spotted", .reps = {{.velocity = 0.3}}},
                        {.load = Mass{110'000}, .outcome = Outcome::NotLifted, .excluded = "fell"},
                        {.load = Mass{95'000}, .outcome = Outcome::NotLifted, .reason = "grip"}});
        const auto rows = doneBy(w.book.log(), w.athlete, LoadUnit::Kilograms);
        QCOMPARE(rows.back().result, u"30 to 80\u00a0kg, 6 sets; 95\u00a0kg not lifted"_s);
        QCOMPARE(rows.back().note, u"spotted; fell; grip"_s);
    }

    void everythingIsOrderedAndFound() {
        const WholeDays w;
        EverythingModel model;
        const QAbstractItemModelTester tester(&model);
        model.setRows(doneBy(w.book.log(), w.athlete, LoadUnit::Kilograms));
        const auto column = [&](int which) {
            QStringList all;
            for (int row = 0; row < model.rowCount(); ++row)
                all << model.index(row, which).data().toString();
            return all;
        };
        QCOMPARE(model.sessions(), 2);
        model.sort(EverythingModel::Day, Qt::AscendingOrder);
        QCOMPARE(model.row(0).session, w.sessions[0]);
        model.sort(EverythingModel::What, Qt::AscendingOrder);
        QCOMPARE(column(EverythingModel::What),
                 QStringList({u"Bench pull"_s, u"Bench pull"_s, u"Bench pull, 90\u00a0kg"_s,
                              u"Hop"_s, u"Jump"_s}));
        // What says nothing comes last in both orders.
        for (const auto order : {Qt::AscendingOrder, Qt::DescendingOrder}) {
            model.sort(EverythingModel::Note, order);
            QVERIFY(!column(EverythingModel::Note)[1].isEmpty());
            QVERIFY(column(EverythingModel::Note)[2].isEmpty());
        }
        for (const auto& [find, rows] : {std::pair{u"PLATES"_s, 1},
                                         {u"rubber"_s, 1},
                                         {u"90 kg"_s, 1},
                                         {u"bench"_s, 3},
                                         {u"no such"_s, 0}}) {
            model.setFind(find);
            QCOMPARE(model.rowCount(), rows);
        }
        model.setFind({});
        QCOMPARE(model.rowCount(), 5);
    }

    void enterOpensWhatARowIsAbout() {
        WholeDays w;
        HistoryPage page(w.book);
        page.setAthleteAndLift(w.athlete, std::nullopt);
        page.show();
        page.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&page));
        QTableView& table = *page.everything();
        QVERIFY(table.isVisible());
        QCOMPARE(table.model()->rowCount(), 5);
        QSignalSpy tests(&page, &TaskPage::testsWanted), lifts(&page, &TaskPage::liftWanted),
            sessions(&page, &TaskPage::sessionWanted);
        table.setFocus();
        table.setCurrentIndex(table.model()->index(1, 0)); // the jump
        QTest::keyClick(&table, Qt::Key_Return);
        QCOMPARE(tests.count(), 1);
        QCOMPARE(tests[0][0].value<SessionId>(), w.sessions[1]);
        QCOMPARE(sessions.count(), 0);
        table.setCurrentIndex(table.model()->index(4, 0)); // the autumn's ladder
        QTest::keyClick(&table, Qt::Key_Return);
        QCOMPARE(lifts.count(), 1);
        QCOMPARE(sessions[0][0].value<SessionId>(), w.sessions[0]);
        QTest::keyClicks(page.findChild<QLineEdit*>(), u"plates"_s);
        QTRY_COMPARE(table.model()->rowCount(), 1);
        QVERIFY(page.findChild<QLabel*>(u"sentence"_s)->text().startsWith(u"1 "));
    }

    void withNothingChosenItSaysWhatToDo() {
        test::TypedLadders w;
        HistoryPage page(w.book);
        page.setAthleteAndLift(std::nullopt, std::nullopt);
        QCOMPARE(page.table()->model()->rowCount(), 0);
        page.setAthleteAndLift(AthleteId{999}, w.lift); // not in the log
        QCOMPARE(page.table()->model()->rowCount(), 0);
    }
};

void TestHistoryModel::ordersAndFindsAsAPlainListWould_data() {
    QTest::addColumn<bool>("everybody");
    QTest::addColumn<QString>("find");
    for (const bool everybody : {false, true})
        for (const char* find :
             {"", "wi", "ÄNN", "2025-0", "dec 2024", "encoder", "KNEE", "nobody"})
            QTest::addRow("%s, find '%s'", everybody ? "everybody" : "one athlete", find)
                << everybody << QString::fromUtf8(find);
}

void TestHistoryModel::ordersAndFindsAsAPlainListWould() {
    QFETCH(bool, everybody);
    QFETCH(QString, find);
    const RandomLog made;
    const auto reader = std::make_shared<HistoryReader>(
        made.log, made.lift, everybody ? std::nullopt : std::optional(made.athletes[1]), find);
    for (int column = 0; column < HistoryModel::FirstCheckLoad + (everybody ? 0 : 2); ++column)
        for (const auto direction : {Qt::AscendingOrder, Qt::DescendingOrder}) {
            HistoryModel model;
            model.setSource(sourceOf(reader), reader->checkLoads(), LoadUnit::Kilograms);
            model.sort(column, direction);
            while (model.canFetchMore({}))
                model.fetchMore({});
            const auto expected = made.plainly(everybody, find, column, direction);
            QCOMPARE(model.rowCount(), int(expected.size()));
            for (int row = 0; row < model.rowCount(); ++row) {
                const auto& want = expected[static_cast<std::size_t>(row)];
                QVERIFY2(model.row(row).session == want.session,
                         qPrintable(u"column %1, row %2"_s.arg(column).arg(row)));
                QCOMPARE(model.row(row).n, want.n);
                QCOMPARE(model.row(row).athlete, want.athlete);
                QCOMPARE(model.row(row).ordinal, want.ordinal);
                QCOMPARE(model.row(row).block, want.block);
                QCOMPARE(model.row(row).note, want.note);
                QCOMPARE(model.row(row).v0, want.v0);
                QCOMPARE(model.row(row).oneRm.has_value(), want.oneRm.has_value());
            }
        }
}

void TestHistoryModel::everybodysSessionsAreShown() {
    test::TypedLadders w;
    const AthleteId other = w.book.addAthlete({.name = "Ida", .note = {}});
    const SessionId theirs = w.book.addSession({.athlete = other, .date = test::day(2026, 4, 1)});
    w.book.addSets(theirs, w.lift, {{.load = Mass{60'000}, .reps = {{.velocity = 0.8}}}});
    HistoryPage page(w.book);
    ofOneLift(page);
    page.setAthleteAndLift(w.athlete, w.lift);
    QCOMPARE(page.table()->model()->rowCount(), 2);
    QVERIFY(page.table()->isColumnHidden(HistoryModel::AthleteColumn));
    page.findChild<QComboBox*>()->setCurrentIndex(1);
    QCOMPARE(page.table()->model()->rowCount(), 3);
    QVERIFY(!page.table()->isColumnHidden(HistoryModel::AthleteColumn));
    QCOMPARE(page.table()->model()->index(0, HistoryModel::AthleteColumn).data().toString(),
             u"Ida"_s);
    QCOMPARE(page.chart().data().sessions.size(), std::size_t{3});
}

QTEST_MAIN(TestHistoryModel)
#include "tst_historymodel.moc"
