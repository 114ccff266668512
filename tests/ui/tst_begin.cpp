// SPDX-License-Identifier: GPL-3.0-or-later
// How the program begins: where it was left, on a test day on the floor, within the screen; which
// pages are made for it; what it says of logs that were open before.
#include "tests/log/builders.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/station/stationpage.h"
#include "ui/window/mainwindow.h"
#include "ui/window/messagebar.h"
#include "ui/window/welcomepage.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QScreen>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

constexpr Date today = day(2026, 3, 14);

QString qt(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

QByteArray bytesOf(const QString& file) {
    QFile read(file);
    return read.open(QIODevice::ReadOnly) ? read.readAll() : QByteArray();
}

} // namespace

class TestBegin : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    std::optional<Settings> m_kept;

    QString season() const { return qt(m_folder->path()); }
    Surroundings surroundings(const Settings& settings = {}) {
        Surroundings s;
        s.settings = settings;
        s.keepSettings = [this](const Settings& kept) { m_kept = kept; };
        s.clock = [] { return today; };
        return s;
    }
    std::unique_ptr<MainWindow> begun(const Settings& settings, const QString& file = {}) {
        auto window = std::make_unique<MainWindow>(surroundings(settings));
        window->show();
        window->begin(file);
        QCoreApplication::processEvents();
        return window;
    }
    Settings leftAt(const QString& page, AthleteId athlete, LiftId lift) const {
        Settings left;
        left.openLog = season();
        left.page = page;
        left.athlete = raw(athlete);
        left.lift = raw(lift);
        return left;
    }
    static qsizetype pagesMade(const MainWindow& window) {
        return window.findChildren<TaskPage*>().size();
    }

private Q_SLOTS:
    void init() {
        m_kept.reset();
        m_folder = std::make_unique<Folder>();
        log::Log log = log::Log::create(m_folder->path());
        m_season = fillSeason(log);
    }

    // Each page in its turn, whichever was left, with whom and what was chosen.
    void itOpensWhereItWasLeft() {
        for (const PageEntry& entry : pages())
            for (const auto& [athlete, lift] :
                 {std::pair{m_season.stroke, m_season.pull}, {m_season.lane3, m_season.throwing}}) {
                {
                    const auto window = begun(leftAt(QLatin1String(entry.word), athlete, lift));
                    QVERIFY(window->workspace());
                    QCOMPARE(int(window->workspace()->page()), int(entry.page));
                    QVERIFY(window->workspace()->athlete() == athlete);
                    QVERIFY(window->workspace()->lift() == lift);
                    window->close();
                }
                QCOMPARE(m_kept->openLog, season());
                QCOMPARE(m_kept->athlete, raw(athlete));
                QCOMPARE(m_kept->lift, raw(lift));
                QCOMPARE(m_kept->page, QLatin1String(entry.word));
            }
    }

    // A log that was closed stays closed; another log's choice is not this one's; what is gone from
    // the disk or from the log is no harm.
    void whatWasLeftMayBeGone() {
        {
            const auto window = begun(leftAt(u"lines"_s, m_season.lane3, m_season.pull));
            window->closeLogFile();
            window->close();
        }
        QVERIFY(m_kept->openLog.isEmpty());
        QVERIFY(!begun(*m_kept)->workspace());

        Settings other = leftAt(u"lines"_s, m_season.stroke, m_season.pull);
        other.openLog = u"/nowhere/else.slopebook"_s;
        const auto window = begun(other, season());
        QVERIFY(window->workspace() && window->workspace()->athlete() != m_season.stroke);
        const auto missing = begun(other);
        QVERIFY(!missing->workspace());
        QVERIFY(missing->welcome().problem().contains(u"else.slopebook"_s));

        Settings gone = leftAt(u"lines"_s, AthleteId{999}, LiftId{999});
        const auto still = begun(gone);
        QVERIFY(still->workspace() && still->workspace()->athlete());
    }

    void onATestDayItOpensOnTheFloor() {
        const Settings left = leftAt(u"overview"_s, m_season.lane3, m_season.pull);
        {
            log::Log log = log::Log::open(m_folder->path());
            log.add(SessionHead{.athlete = m_season.stroke, .date = today});
        }
        {
            const auto window = begun(left);
            QVERIFY(window->workspace()->page() == Page::Session);
            QVERIFY(window->workspace()->athlete() == m_season.stroke);
        }
        {
            log::Log log = log::Log::open(m_folder->path());
            log.add(SessionHead{.athlete = m_season.lane3, .date = today});
        }
        QVERIFY(begun(left)->workspace()->athlete() == m_season.lane3);
        {
            log::Log log = log::Log::open(m_folder->path());
            const StationId rack = log.add(Station{.name = "Rack 1", .lift = m_season.pull});
            log.setRoster({.station = rack, .day = day(2026, 3, 13), .athletes = {m_season.lane3}});
        }
        QVERIFY(begun(left)->workspace()->page() == Page::Session); // yesterday's roster
        {
            log::Log log = log::Log::open(m_folder->path());
            log.setRoster(
                {.station = log.stations().front().id, .day = today, .athletes = {m_season.lane3}});
        }
        QVERIFY(begun(left)->workspace()->page() == Page::Stations);
    }

    // Kept on a screen of another size, or at another scale.
    void theWindowStandsWithinTheScreen_data() {
        QTest::addColumn<QRect>("kept");
        QTest::newRow("a larger screen") << QRect(100, 50, 3400, 2000);
        QTest::newRow("a screen beside it that is gone") << QRect(5000, 3000, 600, 400);
        QTest::newRow("above it") << QRect(-900, -700, 700, 500);
        QTest::newRow("as it was") << QRect(20, 30, 640, 480);
    }
    void theWindowStandsWithinTheScreen() {
        QFETCH(QRect, kept);
        Settings settings;
        {
            QWidget other;
            other.setGeometry(kept);
            settings.geometry = other.saveGeometry();
        }
        MainWindow window(surroundings(settings));
        window.show();
        QCoreApplication::processEvents();
        const QRect room = window.screen()->availableGeometry();
        QVERIFY2(room.contains(window.geometry()),
                 qPrintable(QStringLiteral("%1 x %2 at %3, %4 on %5 x %6")
                                .arg(window.width())
                                .arg(window.height())
                                .arg(window.x())
                                .arg(window.y())
                                .arg(room.width())
                                .arg(room.height())));
        QVERIFY(window.width() <= room.width());
    }

    // One page is made for what is shown, each other one when it is: a page costs, and most are
    // not looked at in a session. Menus, keys and the index know them all before.
    void aPageIsMadeWhenItIsFirstShown() {
        const auto window = begun(leftAt(u"lines"_s, m_season.lane3, m_season.pull));
        QCOMPARE(pagesMade(*window), 1);
        QCOMPARE(window->actions().pages.size(), qsizetype(pageCount));
        qsizetype made = 1;
        for (const PageEntry& entry : pages()) {
            made += entry.page == Page::Lines ? 0 : 1;
            window->actions().pages.at(qsizetype(entry.page))->trigger();
            QCoreApplication::processEvents();
            QVERIFY(window->workspace()->page() == entry.page);
            QCOMPARE(pagesMade(*window), made);
        }
        for (const PageEntry& entry : pages()) { // once alone
            window->workspace()->showPage(entry.page);
            QCOMPARE(pagesMade(*window), qsizetype(pageCount));
        }
    }

    // What was typed and not written waits for its page, however long that is not made: through
    // another language, which builds the window anew, and through the end of the program.
    void whatIsHalfTypedWaitsForItsPage() {
        Settings left = leftAt(u"session"_s, m_season.lane3, m_season.pull);
        {
            const auto window = begun(left);
            QTest::keyClicks(window->workspace()->entry().findChild<QLineEdit*>(u"setLine"_s),
                             u"60 0.8"_s);
            window->workspace()->showPage(Page::Lines);
            window->close();
        }
        QCOMPARE(m_kept->unwrittenSets.size(), 1);
        {
            const auto window = begun(*m_kept); // on the lines: the session is not made
            QCOMPARE(pagesMade(*window), 1);
            window->countIn(LoadUnit::Pounds);
            window->countIn(LoadUnit::Kilograms);
            QCOMPARE(pagesMade(*window), 1);
            window->close();
        }
        QCOMPARE(m_kept->unwrittenSets.size(), 1);
        const auto window = begun(*m_kept);
        window->workspace()->showPage(Page::Session);
        QCOMPARE(window->workspace()->entry().findChild<QLineEdit*>(u"setLine"_s)->text(),
                 u"60 0.8"_s);
    }

    // Names alone: no log is opened, or written to, for the list.
    void recentLogsAreListedAndThoseThatAreGoneToldAsSuch() {
        const QByteArray before = bytesOf(season());
        const QFileInfo infoBefore(season());
        Settings settings;
        settings.recentLogs = {u"/nowhere/gone.slopebook"_s, season()};
        MainWindow window(surroundings(settings));
        window.show();
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));
        auto* list = window.welcome().findChild<QListWidget*>();
        QCOMPARE(list->count(), 2);
        QVERIFY(list->item(0)->text().contains(u"not there any more"_s));
        QVERIFY(list->item(0)->text().contains(u"/nowhere"_s));
        QVERIFY(list->item(0)->font().italic() && !list->item(1)->font().italic());
        QVERIFY(!list->item(0)->data(Qt::ForegroundRole).isValid()); // read in light and dark
        QVERIFY(!list->item(1)->text().contains(u"not there"_s));
        const QList<QAction*> menu = window.actions().recent->actions();
        QCOMPARE(menu.size(), 2);
        QVERIFY(!menu[0]->isEnabled() && menu[1]->isEnabled());
        QVERIFY(menu[1]->text().contains(QFileInfo(season()).fileName()));

        list->setFocus(); // by keys: Enter says what is wrong, Delete takes it off, Enter opens
        QCOMPARE(list->currentRow(), 0);
        QTest::keyClick(list, Qt::Key_Return);
        QVERIFY(window.welcome().problem().contains(u"gone.slopebook"_s));
        QVERIFY(!window.workspace());
        QTest::keyClick(list, Qt::Key_Delete);
        QCOMPARE(list->count(), 1);
        QCOMPARE(m_kept->recentLogs, QStringList{season()});
        QCOMPARE(bytesOf(season()), before);
        QCOMPARE(QFileInfo(season()).lastModified(), infoBefore.lastModified());
        QCOMPARE(QDir(QFileInfo(season()).path()).entryList(QDir::Files).size(), 1);
        QTest::keyClick(list, Qt::Key_Return);
        QTRY_VERIFY(window.workspace());
    }

    void atMostTenAreRemembered() {
        MainWindow window(surroundings());
        for (int i = 0; i < 12; ++i)
            window.createLogFile(
                qt(m_folder->path(("log" + std::to_string(i) + ".slopebook").c_str())));
        QCOMPARE(window.settings().recentLogs.size(), 10);
        QVERIFY(window.settings().recentLogs.front().contains(u"log11"_s));
        QCOMPARE(window.actions().recent->actions().size(), 10);
    }

    // A name without the ending gets it, one with a point in it as well; and what stands under the
    // whole name is as safe as under a typed one.
    void aNewLogGetsItsEnding_data() {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("made");
        QTest::newRow("none") << u"squad"_s << u"squad.slopebook"_s;
        QTest::newRow("a point within") << u"Season 2026.27"_s << u"Season 2026.27.slopebook"_s;
        QTest::newRow("its own") << u"squad.slopebook"_s << u"squad.slopebook"_s;
        QTest::newRow("its own in capitals") << u"SQUAD.SLOPEBOOK"_s << u"SQUAD.SLOPEBOOK"_s;
        QTest::newRow("one of a database") << u"squad.db"_s << u"squad.db"_s;
    }
    void aNewLogGetsItsEnding() {
        QFETCH(QString, typed);
        QFETCH(QString, made);
        const QString folder = QFileInfo(season()).path() + u'/';
        MainWindow window(surroundings());
        window.show();
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));
        const auto makeNew = [&] {
            QTimer typist;
            connect(&typist, &QTimer::timeout, &typist, [&] {
                QWidget* dialog = QApplication::activeModalWidget();
                auto* name = dialog ? dialog->findChild<QLineEdit*>(u"fileNameEdit"_s) : nullptr;
                if (!name)
                    return;
                name->setText(folder + typed);
                QTest::keyClick(name, Qt::Key_Return);
                if (dialog->isVisible())
                    QTest::keyClick(dialog, Qt::Key_Return);
            });
            typist.start(20);
            window.actions().newLog->trigger();
        };
        makeNew();
        QVERIFY(window.workspace());
        QVERIFY(QFileInfo::exists(folder + made));
        QVERIFY(made == typed || !QFileInfo::exists(folder + typed));
        window.closeLogFile();
        const QByteArray before = bytesOf(folder + made);
        makeNew();
        QVERIFY(!window.workspace());
        QVERIFY(window.welcome().problem().contains(made));
        QCOMPARE(bytesOf(folder + made), before);
    }

    // "Taken back" is true until the next deed.
    void whatWasTakenBackIsToldUntilTheNextDeed() {
        const auto window = begun(leftAt(u"session"_s, m_season.lane3, m_season.pull));
        Workspace& work = *window->workspace();
        const auto told = [&] {
            for (const auto* label : work.findChildren<QLabel*>())
                if (label->text().startsWith(u"Taken back"_s) ||
                    label->text().startsWith(u"Undo once more"_s))
                    return true;
            return false;
        };
        auto* line = work.entry().findChild<QLineEdit*>(u"setLine"_s);
        const auto set = [&](const QString& typed) {
            line->setFocus();
            QTest::keyClicks(line, typed);
            QTest::keyClick(line, Qt::Key_Return);
            QCoreApplication::processEvents();
        };
        set(u"60 0.8"_s);
        set(u"70 0.7"_s);
        for (int i = 0; i < 2 && !told(); ++i)
            work.step(true);
        QVERIFY(told());
        set(u"80 0.6"_s);
        QVERIFY(!told());
        work.step(true);
        QVERIFY(told()); // and what is taken back next is told again
        work.logbook().addAthlete({.name = "Cox", .note = {}});
        QVERIFY(!told());
    }

    /// A log with nobody in it: each page of somebody or everybody says what comes first, and its
    /// button does it.
    void anEmptyLogSaysWhatComesFirst() {
        const Folder folder;
        log::Log::create(folder.path());
        const auto window = begun({}, qt(folder.path()));
        Workspace& work = *window->workspace();
        for (const Page page : {Page::Overview, Page::Lines, Page::History, Page::Comparison,
                                Page::Season, Page::WholeSeason, Page::Battery, Page::Plan,
                                Page::Changes, Page::Due, Page::Noise}) {
            work.showPage(page);
            QCoreApplication::processEvents();
            const QWidget& shown = *work.currentPage();
            const QPushButton* way = nullptr;
            for (const auto* button : shown.findChildren<QPushButton*>())
                if (button->isVisible() &&
                    (button->objectName() == u"wayOn"_s || button->objectName() == u"emptyWay"_s))
                    way = button;
            const char* const where = entryOf(page).word;
            QVERIFY2(way && way->isEnabled(), where);
            QVERIFY2(QString(way->text()).remove(u'&').startsWith(u"Add an athlete"_s), where);
            bool said = false;
            for (const auto* label : shown.findChildren<QLabel*>())
                said =
                    said || (label->isVisible() && label->text().startsWith(u"No athlete yet"_s));
            QVERIFY2(said, where);
            const QSignalSpy asked(work.currentPage(), &TaskPage::placeWanted);
            const QSignalBlocker quiet(&work); // the dialog would wait for somebody
            const_cast<QPushButton*>(way)->click();
            QCOMPARE(asked.size(), 1);
            QCOMPARE(asked[0][0].value<TaskPage::Place>(), TaskPage::Place::Athletes);
        }
        work.logbook().addAthlete({.name = "Lane 1"});
        for (const Page page : {Page::Season, Page::Comparison, Page::Plan}) {
            work.showPage(page);
            QCoreApplication::processEvents();
            const auto* way = work.currentPage()->findChild<QPushButton*>(u"wayOn"_s);
            QVERIFY2(way && way->isVisible() && way->text().startsWith(u"Add a lift"_s),
                     entryOf(page).word);
        }
    }
};

QTEST_MAIN(TestBegin)
#include "tst_begin.moc"
