// SPDX-License-Identifier: GPL-3.0-or-later
// Backups in the window, by real clicks: made at opening when due, listed, gone back to; and the
// way back offered where a log is damaged or is no log any more.
#include "core/log/backups.h"
#include "tests/log/builders.h"
#include "tests/log/craftedjournal.h"
#include "tests/log/rawfile.h"
#include "ui/window/mainwindow.h"
#include "ui/window/messagebar.h"
#include "ui/window/welcomepage.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>

#include <functional>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace std::chrono_literals;

namespace {
namespace fs = std::filesystem;
constexpr std::chrono::sys_seconds noon = std::chrono::sys_days{day(2026, 3, 14)} + 12h;

QString qt(const fs::path& path) {
    return QString::fromStdString(path.string());
}

/// Calls work with the next modal dialog, once it is there.
void inNextDialog(const std::function<void(QDialog&)>& work, int tries = 500) {
    QTimer::singleShot(20, qApp, [work, tries] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (dialog && dialog->isVisible())
            work(*dialog);
        else if (tries > 0)
            inNextDialog(work, tries - 1);
    });
}

void click(QWidget* widget) {
    QVERIFY(widget && widget->isVisible() && widget->isEnabled());
    QTest::mouseClick(widget, Qt::LeftButton);
}

template <class Widget>
Widget* named(const QWidget& in, const char* name) {
    return in.findChild<Widget*>(QLatin1String(name));
}
} // namespace

class TestBackupsWindow : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    std::chrono::sys_seconds m_now = noon;

    fs::path file() const { return m_folder->path(); }
    Surroundings surroundings() {
        Surroundings s;
        s.clock = Clock(
            [this] { return QDateTime::fromSecsSinceEpoch(m_now.time_since_epoch().count()); });
        s.dailyBackups = true;
        return s;
    }
    /// A log with a backup of an hour ago, and an athlete added since.
    void makeWithBackup() {
        log::Log log = log::Log::open(file());
        QVERIFY(log::backUpWhenDue(log, noon - 1h));
        log.add(Athlete{.name = "Cox"});
    }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        m_now = noon;
        log::Log log = log::Log::create(file());
        fillSeason(log);
    }
    void openingMakesTheOneThatIsDue();
    void oneThatCannotBeMadeIsTold();
    void goingBackByClicks();
    void aDamagedBackupIsShownAndNotTaken();
    void aDamagedLogIsReadAndTheWayBackOffered();
    void aDamagedLogIsWrittenToWhenTheCoachSaysSo();
    void damageThatTheBackupFindsStopsWriting();
    void aStrangeJournalIsLeftAlone();
    void whatIsNoLogAnyMoreHasAWayBack();
};

void TestBackupsWindow::openingMakesTheOneThatIsDue() {
    const auto open = [&] {
        MainWindow window(surroundings());
        window.show();
        window.openLogFile(qt(file()));
        QVERIFY(window.workspace());
        QTest::qWait(50);
    }; // closing waits for the copy
    open();
    QCOMPARE(log::backups(file()).size(), 1U);
    QCOMPARE(log::backups(file()).front().made, noon);
    VERIFY_SOUND(log::Log::open(log::backups(file()).front().file, log::Access::ReadOnly));
    m_now = noon + 24h;
    open();
    QCOMPARE(log::backups(file()).size(), 1U);
    for (int days = 1; days <= 12; ++days) {
        m_now = noon + days * 25h;
        open();
    }
    QCOMPARE(log::backups(file()).size(), log::backupsKept);
    QCOMPARE(log::backups(file()).front().made, m_now);
}

void TestBackupsWindow::oneThatCannotBeMadeIsTold() {
    writeBytes(log::backupFolder(file()), "a file where the folder should be");
    MainWindow window(surroundings());
    window.show();
    window.openLogFile(qt(file()));
    QTRY_VERIFY(window.workspace()->bar().text().contains(QLatin1String("could not be made")));
    QCOMPARE(window.workspace()->logbook().log().access(), log::Access::ReadWrite);
}

void TestBackupsWindow::goingBackByClicks() {
    makeWithBackup();
    MainWindow window(surroundings());
    window.show();
    window.openLogFile(qt(file()));
    QCOMPARE(window.workspace()->logbook().log().athletes().size(), 3U);
    QStringList row;
    inNextDialog([&](QDialog& dialog) {
        auto* list = named<QTreeWidget>(dialog, "backups");
        QVERIFY(list && list->topLevelItemCount() == 1);
        for (int column = 0; column < list->columnCount(); ++column)
            row << list->topLevelItem(0)->text(column);
        click(named<QPushButton>(dialog, "goBack"));
    });
    window.actions().backups->trigger();
    QCOMPARE(row.size(), 5);
    QVERIFY(!row[0].isEmpty() && !row[1].isEmpty());
    QCOMPARE(row[2], QStringLiteral("3"));
    QCOMPARE(row[3], QStringLiteral("15"));
    QCOMPARE(row[4], QStringLiteral("whole and sound"));
    QVERIFY(window.workspace());
    QCOMPARE(window.workspace()->logbook().log().file(), file());
    QCOMPARE(window.workspace()->logbook().log().athletes().size(), 2U);
    window.workspace()->logbook().addAthlete(Athlete{.name = "Bow"}); // it goes on
    // Nothing is lost: the log as it was stands beside it.
    const auto kept = m_folder->path("season before going back.slopebook");
    QCOMPARE(log::Log::open(kept, log::Access::ReadOnly).athletes().size(), 3U);
    QCOMPARE(namesIn(file().parent_path()).size(), 3U); // and its backups
}

void TestBackupsWindow::aDamagedBackupIsShownAndNotTaken() {
    makeWithBackup();
    runSql(log::backups(file()).front().file, "UPDATE reps SET velocity = 0.123");
    MainWindow window(surroundings());
    window.show();
    window.openLogFile(qt(file()));
    bool offered = true;
    QString state;
    inNextDialog([&](QDialog& dialog) {
        auto* list = named<QTreeWidget>(dialog, "backups");
        list->setCurrentItem(list->topLevelItem(0));
        state = list->topLevelItem(0)->text(4);
        offered = named<QPushButton>(dialog, "goBack")->isEnabled();
        dialog.reject();
    });
    window.actions().backups->trigger();
    QVERIFY(!offered);
    QCOMPARE(state, QStringLiteral("damaged"));
    QCOMPARE(window.workspace()->logbook().log().athletes().size(), 3U);
}

void TestBackupsWindow::aDamagedLogIsReadAndTheWayBackOffered() {
    makeWithBackup();
    runSql(file(), "UPDATE sets SET load_g = 61000 WHERE load_g = 60000 AND session = 1");
    const std::string bytes = readBytes(file());
    MainWindow window(surroundings());
    window.show();
    window.openLogFile(qt(file()));
    QVERIFY(window.workspace());
    const log::Log& log = window.workspace()->logbook().log();
    QCOMPARE(log.access(), log::Access::Salvage);
    QCOMPARE(log.athletes().size(), 3U);
    const auto read = log.liftSessions({}).size(); // of six: the damaged session is left out
    QVERIFY(read > 0 && read < 6);
    QVERIFY(window.workspace()->bar().text().contains(QLatin1String("damaged")));
    QCOMPARE(errorOf([&] { window.workspace()->logbook().addAthlete({.name = "Bow"}); }),
             LogError::Kind::ReadOnly);
    QCOMPARE(readBytes(file()), bytes);
    inNextDialog([](QDialog& dialog) { click(named<QPushButton>(dialog, "goBack")); });
    click(named<QPushButton>(window.workspace()->bar(), "offer"));
    QTRY_COMPARE(window.workspace()->logbook().log().access(), log::Access::ReadWrite);
    QVERIFY(!window.workspace()->bar().isVisible());
    VERIFY_SOUND(window.workspace()->logbook().log());
    QCOMPARE(readBytes(m_folder->path("season before going back.slopebook")), bytes);
}

// Only on the coach's word, given to a question whose safe answer is the one at hand.
void TestBackupsWindow::aDamagedLogIsWrittenToWhenTheCoachSaysSo() {
    makeWithBackup();
    runSql(file(), "UPDATE sets SET load_g = 61000 WHERE load_g = 60000 AND session = 1");
    const std::string bytes = readBytes(file());
    MainWindow window(surroundings());
    window.show();
    QVERIFY(!window.actions().writeOn->isEnabled());
    window.openLogFile(qt(file()));
    QVERIFY(window.actions().writeOn->isEnabled());
    // An import, which writes by a connection of its own, is not let in either.
    ImportMaps maps;
    writeBytes(m_folder->path("new.csv"), "date,athlete,lift,set,load_kg,rep,velocity\n"
                                          "2026-05-01,Cox,Bench pull,1,50,1,0.99\n");
    window.workspace()->importCsv({qt(m_folder->path("new.csv"))}, maps);
    QVERIFY(window.workspace()->bar().text().contains(QLatin1String("reading only. Nothing")));
    QCOMPARE(readBytes(file()), bytes);

    inNextDialog([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    window.actions().writeOn->trigger();
    QCOMPARE(window.workspace()->logbook().log().access(), log::Access::Salvage);
    QCOMPARE(readBytes(file()), bytes);

    inNextDialog([](QDialog& dialog) {
        for (auto* button : dialog.findChildren<QPushButton*>())
            if (button->text() == QLatin1String("Write all the same"))
                click(button);
    });
    window.actions().writeOn->trigger();
    const log::Log& log = window.workspace()->logbook().log();
    QCOMPARE(log.access(), log::Access::SalvageAndWrite);
    QVERIFY(window.workspace()->bar().text().contains(QLatin1String("because you said so")));
    QVERIFY(!window.actions().writeOn->isEnabled());
    window.workspace()->logbook().addAthlete({.name = "Bow"});
    QCOMPARE(log::Log::open(file(), log::Access::Salvage).athletes().size(), 4U);
    // What is damaged itself is left as it is.
    const auto findings = log.check();
    QCOMPARE(errorOf([&] { window.workspace()->logbook().removeSet(SetId{1}); }),
             LogError::Kind::Damaged);
    QCOMPARE(log.check(), findings);
    // Opened anew it is only read again.
    window.openLogFile(qt(file()));
    QCOMPARE(window.workspace()->logbook().log().access(), log::Access::Salvage);
}

// A log too large to be checked at its opening is checked by its backup.
void TestBackupsWindow::damageThatTheBackupFindsStopsWriting() {
    {
        log::Log log = log::Log::open(file());
        const AthleteId cox = log.add(Athlete{.name = "Cox"});
        log.together([&] {
            for (int i = 0; i < 180; ++i)
                log.add(SessionHead{
                    .athlete = cox,
                    .date = Date{std::chrono::sys_days{day(2020, 1, 1)} + std::chrono::days{i}},
                    .note = std::string(95'000, 'x')});
        });
    }
    runSql(file(), "UPDATE sets SET load_g = 61000 WHERE load_g = 60000 AND session = 1");
    QVERIFY(fs::file_size(file()) > 16'000'000); // as openlog.cpp has it
    MainWindow window(surroundings());
    window.show();
    window.openLogFile(qt(file()));
    QCOMPARE(window.workspace()->logbook().log().access(), log::Access::ReadWrite);
    QTRY_COMPARE_WITH_TIMEOUT(window.workspace()->logbook().log().access(), log::Access::Salvage,
                              30'000);
    QVERIFY(window.workspace()->bar().text().contains(QLatin1String("open for reading only")));
    QVERIFY(log::backups(file()).empty());
}

// Each of them would have SQLite delete, grow or overwrite something: the log is not opened.
void TestBackupsWindow::aStrangeJournalIsLeftAlone() {
    makeWithBackup();
    const fs::path journal = file().string() + "-journal";
    const fs::path victim = m_folder->path("thesis.txt");
    const std::string thesis = std::string(1, '\0') + "years of work";
    const std::string bytes = readBytes(file());
    MainWindow window(surroundings());
    window.show();
    for (const Attack& attack : attacks()) {
        writeBytes(victim, thesis);
        attack.plant(file(), victim);
        const auto names = namesIn(file().parent_path());
        window.openLogFile(qt(file()));
        QVERIFY2(!window.workspace(), attack.name);
        QVERIFY2(readBytes(file()) == bytes && readBytes(victim) == thesis, attack.name);
        QCOMPARE(namesIn(file().parent_path()), names);
        fs::remove(journal);
    }
    window.openLogFile(qt(file()));
    QVERIFY(window.workspace());
}

void TestBackupsWindow::whatIsNoLogAnyMoreHasAWayBack() {
    makeWithBackup();
    writeBytes(file(), "overwritten by something else");
    MainWindow window(surroundings());
    window.show();
    window.openLogFile(qt(file()));
    QVERIFY(!window.workspace());
    inNextDialog([](QDialog& dialog) { click(named<QPushButton>(dialog, "goBack")); });
    click(named<QPushButton>(window.welcome(), "wayBack"));
    QVERIFY(window.workspace());
    QCOMPARE(window.workspace()->logbook().log().athletes().size(), 2U);
    QCOMPARE(readBytes(m_folder->path("season before going back.slopebook")),
             std::string("overwritten by something else"));
}

QTEST_MAIN(TestBackupsWindow)
#include "tst_backupswindow.moc"
