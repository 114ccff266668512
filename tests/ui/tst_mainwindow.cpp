// SPDX-License-Identifier: GPL-3.0-or-later
// The window by keys alone, its welcome page, and what it says of logs that are not as they should
// be.
#include "tests/log/builders.h"
#include "ui/charts/linechart.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/importing/importcsv.h"
#include "ui/squad/changes/squadpage.h"
#include "ui/window/index.h"
#include "ui/window/mainwindow.h"
#include "ui/window/messagebar.h"
#include "ui/window/welcomepage.h"
#include "ui/window/workspace.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenuBar>
#include <QMimeData>
#include <QTabWidget>
#include <QTimer>

#include <functional>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {

constexpr Date today = day(2026, 3, 14);

QString qt(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

/// Calls work with the next modal dialog that opens, once it is there and takes keys: a hand cannot
/// type into a window before it is the active one.
void inNextDialog(const std::function<void(QWidget*)>& work, int tries = 200) {
    QTimer::singleShot(20, qApp, [work, tries] {
        QWidget* dialog = QApplication::activeModalWidget();
        const QWidget* focus = dialog ? dialog->focusWidget() : nullptr;
        if (dialog && dialog->isActiveWindow() && focus && focus->hasFocus())
            work(dialog);
        else if (tries > 0)
            inNextDialog(work, tries - 1);
    });
}

/// Types into a dialog as hands do: each text into the field that has the focus, Tab between.
std::function<void(QWidget*)> typing(const QStringList& fields) {
    return [fields](QWidget* dialog) {
        for (qsizetype i = 0; i < fields.size(); ++i) {
            if (i > 0)
                QTest::keyClick(dialog->focusWidget(), Qt::Key_Tab);
            QTest::keyClicks(dialog->focusWidget(), fields[i]);
        }
        // The first Enter may only close the list of names that a field offers.
        for (int i = 0; i < 2 && dialog->isVisible(); ++i)
            QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
    };
}

} // namespace

class TestMainWindow : public QObject {
    Q_OBJECT

    Folder m_folder;
    std::optional<Settings> m_kept;

    Surroundings surroundings(const Settings& settings = {}) {
        Surroundings s;
        s.settings = settings;
        s.keepSettings = [this](const Settings& kept) { m_kept = kept; };
        s.clock = [] { return today; };
        return s;
    }
    std::filesystem::path seasonFile(const char* name) {
        const auto path = m_folder.path(name);
        if (!std::filesystem::exists(path)) {
            log::Log log = log::Log::create(path);
            fillSeason(log);
        }
        return path;
    }
    /// One picture a page, to be looked at, where SLOPEBOOK_PICTURES names a folder.
    static void keepPictures(MainWindow& window, const QString& name) {
        const QString folder = qEnvironmentVariable("SLOPEBOOK_PICTURES");
        if (folder.isEmpty())
            return;
        for (const PageEntry& entry : pages()) {
            window.workspace()->showPage(entry.page);
            QTest::qWait(100);
            QVERIFY(window.grab().save(
                QStringLiteral("%1/%2-%3.png").arg(folder, name, QLatin1String(entry.word))));
        }
    }
    static void show(MainWindow& window) {
        window.show();
        activate(window);
    }
    /// Also after a dialog: shortcuts go to the active window.
    static void activate(MainWindow& window) {
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));
    }

private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral("nan|NaN"))); }

    void aNewLogAnAthleteALiftAndALadderByKeysAlone() {
        MainWindow window(surroundings());
        show(window);
        const auto path = m_folder.path("by-keys.slopebook");
        inNextDialog([&](QWidget* dialog) {
            auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
            QVERIFY(name);
            name->selectAll();
            QTest::keyClicks(name, qt(path));
            for (int i = 0; i < 4 && dialog->isVisible(); ++i)
                QTest::keyClick(i % 2 == 0 ? static_cast<QWidget*>(name) : dialog, Qt::Key_Return);
        });
        QTest::keySequence(&window, QKeySequence::New);
        QTRY_VERIFY(window.workspace());
        QVERIFY(std::filesystem::exists(path));

        activate(window);
        inNextDialog(typing({QStringLiteral("Stroke seat")}));
        QTest::keyClick(&window, Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
        QTRY_VERIFY(window.workspace()->athlete());
        activate(window);
        inNextDialog(typing({QStringLiteral("Bench pull")}));
        QTest::keyClick(&window, Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
        QTRY_VERIFY(window.workspace()->lift());
        activate(window);

        QTest::keyClick(&window, Qt::Key_L, Qt::ControlModifier);
        auto* line = window.findChild<QLineEdit*>(QStringLiteral("setLine"));
        QCOMPARE(window.focusWidget(), static_cast<QWidget*>(line));
        for (const char* set : {"40 1.10 1.12", "60 0,86 0,88", "70 0.74", "80 0.61"}) {
            QTest::keyClicks(line, QString::fromLatin1(set));
            QTest::keyClick(line, Qt::Key_Return);
        }
        QTest::keySequence(&window, QKeySequence::Undo);
        QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);

        const log::Log log = log::Log::open(path, log::Access::ReadOnly);
        QCOMPARE(QString::fromStdString(log.athletes().at(0).value.name),
                 QStringLiteral("Stroke seat"));
        const Lift lift = log.lifts().at(0).value;
        QCOMPARE(lift.name, "Bench pull");
        QVERIFY(lift.mvt.has_value()); // from the published table, by its name
        QCOMPARE(lift.mvt->origin, Mvt::Origin::Published);
        const auto sessions = log.liftSessions({});
        QCOMPARE(sessions.size(), 1U);
        QCOMPARE(sessions.at(0).date, today);
        QCOMPARE(sessions.at(0).points.size(), 4U);
        QCOMPARE(sessions.at(0).points.at(1).velocity, 0.88);
    }

    void everyPageShowsTheLogAndHasItsKey() {
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        QVERIFY(window.workspace());
        for (const PageEntry& entry : pages()) {
            QTest::keyClick(&window, entry.key, Qt::ControlModifier);
            QVERIFY2(window.workspace()->page() == entry.page, entry.word);
            QVERIFY(!window.grab().isNull());
        }
    }

    void aSessionOfAnotherAthleteIsOpenedUnderItsOwnName() {
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        Workspace& work = *window.workspace();
        const log::Log& log = work.logbook().log();
        const auto other = log.athletes().at(1);
        QVERIFY(work.athlete() != other.id);
        const auto sessions = log.sessions(other.id);
        work.showPage(Page::Changes);
        auto* squad = window.findChild<SquadPage*>();
        Q_EMIT squad->sessionWanted(sessions.front().id);
        QCOMPARE(work.athlete(), std::optional(other.id));
        QVERIFY(work.page() == Page::Session);
        QCOMPARE(window.findChild<EntryPage*>()->session(), std::optional(sessions.front().id));
    }

    void aNameTypedIsFollowedByASet() {
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        auto* line = window.findChild<QLineEdit*>(QStringLiteral("setLine"));
        window.actions().findAthlete->trigger();
        QVERIFY(!line->hasFocus());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QVERIFY(line->hasFocus());
    }

    void keysReachTheirActionsWhileALineIsTyped() {
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        auto* line = window.findChild<QLineEdit*>(QStringLiteral("setLine"));
        line->setFocus();
        const Actions& actions = window.actions();
        int keys = 0;
        for (const QAction* action : window.menuBar()->findChildren<QAction*>()) {
            if (action->shortcut().isEmpty() || action == actions.undo || action == actions.redo)
                continue;
            const QKeyCombination combination = action->shortcut()[0];
            line->setText(QStringLiteral("60 0.92"));
            QKeyEvent asked(QEvent::ShortcutOverride, combination.key(),
                            combination.keyboardModifiers());
            asked.ignore();
            QCoreApplication::sendEvent(line, &asked);
            QVERIFY2(!asked.isAccepted(), qPrintable(action->text()));
            ++keys;
        }
        QVERIFY(keys > 12);
        // With nothing typed, undo and redo are the log's.
        line->clear();
        QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
        undo.ignore();
        QCoreApplication::sendEvent(line, &undo);
        QVERIFY(!undo.isAccepted());
    }

    void theChooserFindsByAnyPartOfAName() {
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        const Workspace& work = *window.workspace();
        QCOMPARE(work.athleteName(), QStringLiteral("Lane 3"));
        for (const char* typed : {"seat", "nobody"}) {
            QTest::keySequence(&window, QKeySequence::Find);
            QTest::keyClicks(QApplication::focusWidget(), QLatin1String(typed));
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
            QCOMPARE(work.athleteName(), QStringLiteral("Stroke seat"));
        }
    }

    void everyControlHasAName() {
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        for (const PageEntry& entry : pages()) {
            window.workspace()->showPage(entry.page);
            for (const QWidget* widget : window.findChildren<QWidget*>()) {
                if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible())
                    continue;
                const auto* button = qobject_cast<const QAbstractButton*>(widget);
                // A label is heard by its words; what it is about is its description.
                const auto* label = qobject_cast<const QLabel*>(widget);
                const bool inner = widget->objectName().startsWith(QLatin1String("qt_")) ||
                                   qobject_cast<const QTabWidget*>(widget) ||
                                   (widget->parentWidget() &&
                                    (qobject_cast<QComboBox*>(widget->parentWidget()) ||
                                     qobject_cast<QAbstractScrollArea*>(widget->parentWidget()) ||
                                     widget->parentWidget()->inherits("QAbstractSpinBox")));
                QVERIFY2(
                    inner || !widget->accessibleName().isEmpty() ||
                        (button && !button->text().isEmpty()) ||
                        (label && !label->accessibleDescription().isEmpty()),
                    qPrintable(QStringLiteral("%1 %2 in %3")
                                   .arg(QLatin1String(widget->metaObject()->className()),
                                        widget->objectName(),
                                        QLatin1String(
                                            widget->parentWidget()->metaObject()->className()))));
            }
        }
    }

    void theWindowFollowsADarkDesktop() {
        const QPalette light = QApplication::palette();
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        window.resize(1280, 720);
        show(window);
        for (const PageEntry& entry : pages())
            window.workspace()->showPage(entry.page);
        QPalette dark(QColor(0x23, 0x26, 0x29));
        dark.setColor(QPalette::Base, QColor(0x1b, 0x1e, 0x20));
        dark.setColor(QPalette::AlternateBase, QColor(0x23, 0x26, 0x29));
        dark.setColor(QPalette::Text, QColor(0xe8, 0xe8, 0xe8));
        dark.setColor(QPalette::WindowText, QColor(0xe8, 0xe8, 0xe8));
        dark.setColor(QPalette::ButtonText, QColor(0xe8, 0xe8, 0xe8));
        dark.setColor(QPalette::PlaceholderText, QColor(0xa0, 0xa0, 0xa0));
        QApplication::setPalette(dark);
        QCoreApplication::processEvents();
        for (const auto* chart : window.findChildren<charts::LineChart*>()) {
            QVERIFY(chart->figure().ground().dark);
            QVERIFY(chart->figure().ground().ink.lightness() > 150);
        }
        keepPictures(window, QStringLiteral("dark"));
        QApplication::setPalette(light);
        QCoreApplication::processEvents();
        for (const auto* chart : window.findChildren<charts::LineChart*>())
            QVERIFY(!chart->figure().ground().dark);
    }

    void aSmallWindowCutsNothingOff_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("1280 x 720 at a scale of 1.5") << QSize(853, 480);
        QTest::newRow("1280 x 720 at a scale of 2") << QSize(640, 360);
    }
    void aSmallWindowCutsNothingOff() {
        QFETCH(QSize, size);
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        window.resize(size);
        for (const PageEntry& entry : pages()) {
            window.workspace()->showPage(entry.page);
            QCoreApplication::processEvents();
            QVERIFY2(
                window.width() <= size.width() && window.height() <= size.height(),
                qPrintable(QStringLiteral("%1 x %2").arg(window.width()).arg(window.height())));
            // What does not fit is scrolled to: the page itself is never squeezed.
            const TaskPage* page = window.workspace()->currentPage();
            QTRY_VERIFY2(page->width() >= page->minimumSizeHint().width() &&
                             page->height() >= page->minimumSizeHint().height(),
                         entry.word); // once its words have their width
        }
        keepPictures(window, QStringLiteral("small%1").arg(size.width()));
    }

    void theWelcomePageOpensRecentLogs() {
        Settings settings;
        settings.recentLogs = {qt(seasonFile("season.slopebook")),
                               qt(m_folder.path("gone.slopebook"))};
        MainWindow window(surroundings(settings));
        show(window);
        QVERIFY(!window.workspace());
        auto* recent = window.welcome().findChild<QListWidget*>();
        recent->setFocus();
        recent->setCurrentRow(0); // what is gone is told as such (tst_begin)
        QTest::keyClick(recent, Qt::Key_Return);
        QVERIFY(window.workspace());
        QTest::keyClick(&window, Qt::Key_W, Qt::ControlModifier);
        QVERIFY(!window.workspace());
        QVERIFY(window.welcome().isVisible());
    }

    /// A line that is half typed waits for its athlete, also for the next window.
    void whatIsTypedWaitsForItsAthlete() {
        const auto path = m_folder.path("typed.slopebook");
        std::filesystem::copy_file(seasonFile("season.slopebook"), path);
        Settings kept;
        std::vector<AthleteId> who;
        LiftId lift{};
        const auto lineOf = [](MainWindow& window) {
            return window.findChild<QLineEdit*>(QStringLiteral("setLine"));
        };
        const auto sets = [&](MainWindow& window, AthleteId athlete) {
            std::size_t count = 0;
            const log::Log& log = window.workspace()->logbook().log();
            for (const auto& session : log.sessions(athlete))
                count += log.session(session.id).sets.size();
            return count;
        };
        {
            MainWindow window(surroundings());
            window.openLogFile(qt(path));
            show(window);
            for (const auto& athlete : window.workspace()->logbook().log().athletes())
                who.push_back(athlete.id);
            lift = window.workspace()->logbook().log().lifts().front().id;
            window.workspace()->choose(who[0], lift);
            QTest::keyClicks(lineOf(window), QStringLiteral("40 0.9"));
            window.workspace()->choose(who[1], lift);
            QCOMPARE(lineOf(window)->text(), QString());
            QTest::keyClicks(lineOf(window), QStringLiteral("50 0.7"));
            window.workspace()->choose(who[0], lift);
            QCOMPARE(lineOf(window)->text(), QStringLiteral("40 0.9"));
            kept = window.settings();
        }
        MainWindow window(surroundings(kept));
        window.openLogFile(qt(path));
        show(window);
        window.workspace()->choose(who[1], lift);
        QCOMPARE(lineOf(window)->text(), QStringLiteral("50 0.7"));
        window.workspace()->choose(who[0], lift);
        QCOMPARE(lineOf(window)->text(), QStringLiteral("40 0.9"));
        const std::size_t first = sets(window, who[0]), second = sets(window, who[1]);
        QTest::keyClick(lineOf(window), Qt::Key_Return);
        QCOMPARE(sets(window, who[0]), first + 1);
        QCOMPARE(sets(window, who[1]), second);
        QCOMPARE(window.settings().unwrittenSets.size(), 1); // the other's still waits
    }

    void theSampleIsOpenedAsACopy() {
        Surroundings s = surroundings();
        s.sampleLog = seasonFile("season.slopebook");
        s.dataFolder = m_folder.path("data");
        MainWindow window(s);
        window.openSample();
        QVERIFY(window.workspace());
        QCOMPARE(window.workspace()->logbook().log().file().parent_path(), s.dataFolder);
        window.workspace()->logbook().addAthlete({.name = "Cox", .note = {}});
        QCOMPARE(log::Log::open(s.sampleLog).athletes().size(), 2U);
    }

    void whatIsNoLogIsRefusedInTheWindow() {
        const auto path = m_folder.path("notes.txt");
        QFile file(qt(path));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("not a log at all, but long enough to have a header of a hundred bytes: "
                   "0123456789012345678901234567890123456789");
        file.close();
        MainWindow window(surroundings());
        show(window);
        window.openLogFile(qt(path));
        QVERIFY(!window.workspace());
        QVERIFY(!window.welcome().problem().isEmpty());
        window.openLogFile(qt(m_folder.path("missing.slopebook")));
        QVERIFY(!window.workspace());
        // With a log open, the refusal stands in its bar and the log stays open.
        window.openLogFile(qt(seasonFile("season.slopebook")));
        QVERIFY(window.welcome().problem().isEmpty());
        window.openLogFile(qt(path));
        QVERIFY(window.workspace());
        QVERIFY(!window.workspace()->bar().text().isEmpty());
    }

    void aDamagedLogOpensWithABar() {
        const auto path = m_folder.path("damaged.slopebook");
        std::filesystem::copy_file(seasonFile("season.slopebook"), path);
        QFile file(qt(path));
        QVERIFY(file.open(QIODevice::ReadWrite));
        const QByteArray content = file.readAll();
        const qsizetype at = content.indexOf("boathouse"); // a session's place
        QVERIFY(at > 0);
        file.seek(at);
        file.write("boatHOUSE");
        file.close();
        MainWindow window(surroundings());
        window.openLogFile(qt(path));
        show(window);
        QVERIFY(window.workspace());
        QVERIFY(window.workspace()->bar().isVisible());
        QVERIFY2(window.workspace()->bar().text().contains(QStringLiteral("damaged")),
                 qPrintable(window.workspace()->bar().text()));
    }

    void anotherWindowsWriteShowsItself() {
        MainWindow window(surroundings());
        const auto path = m_folder.path("shared.slopebook");
        std::filesystem::copy_file(seasonFile("season.slopebook"), path);
        window.openLogFile(qt(path));
        show(window);
        log::Log other = log::Log::open(path);
        other.add(Athlete{.name = "Bow seat", .note = {}});
        const NameModel& names = window.workspace()->index().names();
        QTRY_COMPARE_WITH_TIMEOUT(names.rowCount(), 3, 10000);
    }

    void droppedFilesOpen() {
        MainWindow window(surroundings());
        show(window);
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(qt(seasonFile("season.slopebook")))});
        QDragEnterEvent enter(QPoint(50, 50), Qt::CopyAction, &data, Qt::LeftButton,
                              Qt::NoModifier);
        QCoreApplication::sendEvent(&window, &enter);
        QVERIFY(enter.isAccepted());
        QDropEvent drop(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&window, &drop);
        QVERIFY(window.workspace());
    }

    void csvIsToldOfFirstAndThenTakenIn() {
        const auto table = m_folder.path("spring.csv");
        QFile file(qt(table));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("date,athlete,lift,set,load_kg,rep,velocity,mood\n"
                   "2026-03-01,Cox,Bench pull,1,40,1,1.12,fine\n"
                   "2026-03-01,Cox,Bench pull,2,60,1,0.85,fine\n");
        file.close();
        MainWindow window(surroundings());
        window.createLogFile(qt(m_folder.path("imported.slopebook")));
        show(window);
        QString told;
        inNextDialog([&](QWidget* dialog) {
            QTRY_VERIFY(static_cast<ImportDialog*>(dialog)->canImport());
            told = dialog->property("reportText").toString();
            QTest::keyClick(dialog, Qt::Key_Return);
        });
        window.importFiles({qt(table)});
        QVERIFY2(told.contains(QStringLiteral("mood")), qPrintable(told));
        QCOMPARE(window.workspace()->logbook().log().liftSessions({}).size(), 1U);
        QVERIFY(window.workspace()->athlete());
    }

    // From the start page: the log is there once something is in it; cancelled, nothing is.
    void anImportIntoANewLogLeavesNothingWhenCancelled() {
        QTemporaryDir place;
        const QString table = place.filePath(QStringLiteral("spring.csv"));
        QFile file(table);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("date,athlete,lift,set,load_kg,rep,velocity\n"
                   "2026-03-01,Cox,Bench pull,1,40,1,1.12\n");
        file.close();
        const QString log = place.filePath(QStringLiteral("new.slopebook"));
        const auto all = [&] {
            return QDir(place.path())
                .entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name);
        };
        MainWindow window(surroundings());
        show(window);
        inNextDialog([&](QWidget* dialog) {
            QTRY_VERIFY(static_cast<ImportDialog*>(dialog)->canImport());
            QTest::keyClick(dialog, Qt::Key_Escape);
        });
        window.importIntoNew(log, {table});
        QVERIFY(!window.workspace());
        QCOMPARE(all(), QStringList{QStringLiteral("spring.csv")});
        inNextDialog([&](QWidget* dialog) {
            QTRY_VERIFY(static_cast<ImportDialog*>(dialog)->canImport());
            QTest::keyClick(dialog, Qt::Key_Return);
        });
        window.importIntoNew(log, {table});
        QVERIFY(window.workspace());
        QCOMPARE(window.workspace()->logbook().log().liftSessions({}).size(), 1U);
        QVERIFY(QFile::exists(log));
        for (const QString& name : all())
            QVERIFY2(!name.startsWith(QLatin1Char('.')), qPrintable(name));
        // A log that is there already is not touched.
        MainWindow second(surroundings());
        show(second);
        second.importIntoNew(log, {table});
        QVERIFY(!second.workspace());
        QVERIFY(second.welcome().problem().contains(QStringLiteral("is there already")));
    }

    // One that shows all that is wrong with a file, each with its place.
    void aFaultyFileShowsAllItsFaults() {
        const auto table = m_folder.path("faulty.csv");
        QFile file(qt(table));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("date,athlete,lift,set,load_kg,rep,velocity\n"
                   "1.3.2026,Cox,Bench pull,1,40,1,99\n2026-03-01,,Bench pull,2,60,1,0.85\n");
        file.close();
        MainWindow window(surroundings());
        window.createLogFile(qt(m_folder.path("faulty.slopebook")));
        show(window);
        QString told;
        inNextDialog([&](QWidget* dialog) {
            QTRY_VERIFY(dialog->property("reportText").toString().contains(QStringLiteral("line")));
            told = dialog->property("reportText").toString();
            QTest::keyClick(dialog, Qt::Key_Escape);
        });
        window.importFiles({qt(table)});
        QCOMPARE(told.count(QStringLiteral("line 2")), 2);
        QCOMPARE(told.count(QStringLiteral("line 3")), 1);
    }

    void whatWasSetIsKeptWhenTheWindowCloses() {
        MainWindow window(surroundings());
        window.openLogFile(qt(seasonFile("season.slopebook")));
        show(window);
        window.workspace()->showPage(Page::Lines);
        window.close();
        QVERIFY(m_kept.has_value());
        QCOMPARE(m_kept->page, QStringLiteral("lines"));
        QCOMPARE(m_kept->recentLogs, QStringList{qt(seasonFile("season.slopebook"))});
        MainWindow again(surroundings(*m_kept));
        again.openLogFile(m_kept->recentLogs.front());
        QVERIFY(again.workspace()->page() == Page::Lines);
    }
};

QTEST_MAIN(TestMainWindow)
#include "tst_mainwindow.moc"
