// SPDX-License-Identifier: GPL-3.0-or-later
// A log too large to be checked before it is shown: shown at once, checked beside, and not written
// to before that is done.
#include "core/log/hold.h"
#include "core/log/testedsessions.h"
#include "tests/log/builders.h"
#include "tests/log/rawfile.h"
#include "ui/window/mainwindow.h"
#include "ui/window/messagebar.h"
#include "ui/window/workspace.h"

#include <QDialog>
#include <QTimer>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {
namespace fs = std::filesystem;

constexpr int sessions = 500;
constexpr std::uintmax_t checkedBefore = 256'000; // as openlog.cpp has it

QString qt(const fs::path& path) {
    return QString::fromStdString(path.string());
}

Surroundings surroundings() {
    Surroundings made;
    made.clock = [] { return day(2026, 3, 14); };
    return made;
}
} // namespace

class TestOpeningCheck : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    fs::path file() const { return m_folder->path(); }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        log::Log log = log::Log::create(file());
        const Season season = fillSeason(log);
        log.together([&] {
            for (int i = 0; i < sessions; ++i) {
                const Date date{std::chrono::sys_days{day(2020, 1, 1)} + std::chrono::days{i}};
                const SessionId id =
                    log.add(SessionHead{.athlete = season.stroke, .date = date, .note = "winter"});
                for (int set = 0; set < 6; ++set)
                    log.add(id, season.pull,
                            ladderSet(40 + 10 * set, {1.2 - 0.1 * set, 1.19 - 0.1 * set}));
            }
        });
    }

    void isShownAtOnceAndWrittenWhenSound() {
        QVERIFY(fs::file_size(file()) > checkedBefore);
        MainWindow window(surroundings());
        window.show();
        window.openLogFile(qt(file()));
        QVERIFY(window.workspace());
        // Without going back to the event loop: the write itself waits for the check.
        window.workspace()->logbook().addAthlete({.name = "Bow"});
        QCOMPARE(log::Log::open(file(), log::Access::ReadOnly).athletes().size(), 3U);
        QTest::qWait(50);
        QCOMPARE(window.workspace()->logbook().log().access(), log::Access::ReadWrite);
        QVERIFY(window.workspace()->bar().text().isEmpty());
    }

    void damageIsFoundBesideAndNothingWritten_data() {
        QTest::addColumn<QString>("sql");
        QTest::addRow("a load") << "UPDATE sets SET load_g = 61000 WHERE load_g = 60000 AND "
                                   "session = 1";
        QTest::addRow("a rep") << "UPDATE reps SET velocity = 0.123 WHERE set_id = 900";
        QTest::addRow("a reference") << "DELETE FROM lifts WHERE id = 1";
    }
    void damageIsFoundBesideAndNothingWritten() {
        QFETCH(QString, sql);
        runSql(file(), sql.toUtf8().constData());
        const std::string bytes = readBytes(file());
        MainWindow window(surroundings());
        window.show();
        window.openLogFile(qt(file()));
        QVERIFY(window.workspace());
        QCOMPARE(window.workspace()->logbook().log().access(), log::Access::ReadWrite);
        QCOMPARE(errorOf([&] { window.workspace()->logbook().addAthlete({.name = "Bow"}); }),
                 LogError::Kind::Damaged);
        QCOMPARE(errorOf([&] { window.workspace()->logbook().addDevice({.name = "new"}); }),
                 LogError::Kind::Damaged);
        const auto athlete = window.workspace()->athlete();
        const auto lift = window.workspace()->lift();
        QTRY_COMPARE(window.workspace()->logbook().log().access(), log::Access::Salvage);
        QVERIFY(window.workspace()->bar().text().contains(QLatin1String("damaged")));
        QVERIFY(window.workspace()->bar().isVisible());
        QCOMPARE(window.workspace()->athlete(), athlete);
        if (!sql.contains(QLatin1String("lifts")))
            QCOMPARE(window.workspace()->lift(), lift);
        QCOMPARE(errorOf([&] { window.workspace()->logbook().addAthlete({.name = "Bow"}); }),
                 LogError::Kind::ReadOnly);
        QVERIFY(readBytes(file()) == bytes);
    }

    void aDialogIsWaitedFor() {
        runSql(file(), "UPDATE reps SET velocity = 0.123 WHERE set_id = 900");
        MainWindow window(surroundings());
        window.show();
        window.openLogFile(qt(file()));
        Workspace* const shown = window.workspace();
        bool stood = false;
        QDialog dialog(&window);
        QTimer::singleShot(1000, &dialog, [&] {
            stood = window.workspace() == shown;
            dialog.reject();
        });
        dialog.exec();
        QVERIFY(stood);
        QTRY_COMPARE(window.workspace()->logbook().log().access(), log::Access::Salvage);
    }

    void closingIsNoMatter() {
        {
            MainWindow window(surroundings());
            window.openLogFile(qt(file()));
            window.closeLogFile();
            QVERIFY(!window.workspace());
            window.openLogFile(qt(file()));
            window.openLogFile(qt(file()));
            QVERIFY(window.workspace());
        }
        VERIFY_SOUND(log::Log::open(file()));
    }

    void aHoldIsPassedOnce() {
        log::Log log = log::Log::open(file());
        int asked = 0;
        bool good = false;
        log::holdWrites(log, [&] {
            ++asked;
            if (!good)
                throw LogError(LogError::Kind::Damaged, asIs("not yet"));
        });
        const std::string bytes = readBytes(file());
        QCOMPARE(errorOf([&] { log.add(Athlete{.name = "Bow"}); }), LogError::Kind::Damaged);
        QCOMPARE(errorOf([&] { log.together([&] { log.add(Athlete{.name = "Bow"}); }); }),
                 LogError::Kind::Damaged);
        QCOMPARE(errorOf([&] { log::passHold(log); }), LogError::Kind::Damaged);
        QVERIFY(readBytes(file()) == bytes);
        QCOMPARE(asked, 3);
        good = true;
        log.together([&] {
            log.add(Athlete{.name = "Bow"});
            log.add(Athlete{.name = "Cox"});
        });
        log.add(Athlete{.name = "Two"});
        QCOMPARE(asked, 4);
    }

    void testedSessionsAreFoundByTheirTests() {
        log::Log log = log::Log::open(file());
        TestKind hop;
        hop.name = "Hop";
        hop.unit = "m";
        const TestKindId one = log.add(hop);
        hop.name = "Jump";
        const TestKindId two = log.add(hop);
        std::vector<SessionId> all;
        for (const auto& athlete : log.athletes())
            for (const auto& session : log.sessions(athlete.id))
                all.push_back(session.id);
        const auto test = [&](SessionId session, TestKindId kind) {
            Battery battery = log.battery(session);
            battery.tests.push_back({kind, {{BodySide::Both, 1.5, {}, {}, {}}}});
            log.setBattery(session, battery);
        };
        test(all[3], one);
        test(all[3], two);
        test(all[1], two);
        const auto found = [&](std::initializer_list<TestKindId> kinds) {
            std::vector<BatterySession> tested;
            log::scanTested(log, std::vector(kinds),
                            [&](const BatterySession& session) { tested.push_back(session); });
            return tested;
        };
        std::vector<BatterySession> whole;
        log.scanBatteries({}, [&](const BatterySession& session) {
            if (!session.battery.tests.empty())
                whole.push_back(session);
        });
        QCOMPARE(whole.size(), 2U);
        QVERIFY(found({one, two}) == whole); // in the same order
        QVERIFY(found({two}) == whole);
        QCOMPARE(found({one}).size(), 1U);
        QCOMPARE(found({one})[0].session, all[3]);
        QVERIFY(found({}).empty());
        runSql(file(), "UPDATE attempts SET value = 1.6");
        QCOMPARE(errorOf([&] { found({one}); }), LogError::Kind::Damaged);
    }
};

QTEST_MAIN(TestOpeningCheck)
#include "tst_openingcheck.moc"
