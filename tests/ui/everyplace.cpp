// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/everyplace.h"

#include "core/log/storerows.h"
#include "tests/log/builders.h"
#include "ui/athlete/battery/testdialog.h"
#include "ui/athlete/battery/tracedialog.h"
#include "ui/charts/chartmenu.h"
#include "ui/floor/entry/setdialog.h"
#include "ui/floor/station/rosterdialog.h"
#include "ui/floor/station/stationdialog.h"
#include "ui/importing/importcsv.h"
#include "ui/importing/pastedialog.h"
#include "ui/importing/tabledialog.h"
#include "ui/records/athletedialog.h"
#include "ui/records/blocksdialog.h"
#include "ui/records/checkloadsdialog.h"
#include "ui/records/devicesdialog.h"
#include "ui/records/equipmentdialog.h"
#include "ui/records/liftdialog.h"
#include "ui/records/sessiondialog.h"
#include "ui/squad/changes/squadpage.h"
#include "ui/window/aboutdialog.h"
#include "ui/window/backupsdialog.h"
#include "ui/window/choicesdialog.h"
#include "ui/window/joindialog.h"
#include "ui/window/menudeeds.h"
#include "ui/window/mergedialog.h"
#include "ui/window/messagebar.h"
#include "ui/window/storedeeds.h"
#include "ui/window/storedialog.h"
#include "ui/window/storeline.h"
#include "ui/window/workspace.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTimer>

namespace slopebook::test {

using namespace slopebook::ui;

namespace {

void settle(QWidget& shown) {
    shown.activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(&shown));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    QCoreApplication::processEvents();
}

QList<QTabWidget*> innerTabs(const QWidget& within) {
    QList<QTabWidget*> tabs = within.findChildren<QTabWidget*>();
    tabs.removeIf([](const QTabWidget* one) { return !one->isVisible(); });
    return tabs;
}

/// What the platform without a screen says of itself at every window: a thousand lines, among which
/// nobody finds what is wrong.
void keepQuietOfThePlatform() {
    static QtMessageHandler before = nullptr;
    if (before)
        return;
    before = qInstallMessageHandler(
        [](QtMsgType type, const QMessageLogContext& at, const QString& words) {
            if (!words.startsWith(QLatin1String("This plugin does not support")))
                before(type, at, words);
        });
}

/// Looks at shown once a tab of the tabs inside `within`.
void lookAtTabs(const QString& place, QWidget& shown, const QWidget& within, const Look& look) {
    const auto tabs = innerTabs(within);
    if (tabs.isEmpty()) {
        look(place, shown);
        return;
    }
    for (QTabWidget* each : tabs)
        for (int i = 0; i < each->count(); ++i) {
            each->setCurrentIndex(i);
            settle(shown);
            look(place + QStringLiteral(", ") + each->tabText(i), shown);
        }
}

class Tour {
public:
    Tour(const QString& language, bool fingers, LoadUnit unit, const Look& look) : m_look(look) {
        keepQuietOfThePlatform();
        QVERIFY(QFile::copy(QStringLiteral(SLOPEBOOK_SAMPLE_LOG),
                            QString::fromStdString(m_folder.path().string())));
        {
            log::Log log = log::Log::open(m_folder.path());
            const auto lifts = log.lifts();
            const auto athletes = log.athletes();
            m_station = log.add(Station{.name = "Rack 1", .lift = lifts.front().id});
            log.setRoster({.station = m_station,
                           .day = day(2026, 5, 11),
                           .athletes = {athletes[0].id, athletes[1].id}});
        }
        changedApart();
        m_surroundings.settings.language = language;
        m_surroundings.settings.fingers = fingers;
        m_surroundings.settings.unit = unit;
        m_surroundings.settings.recentLogs = {QString::fromStdString(m_folder.path().string())};
        m_surroundings.settings.restTimer = true;
        m_surroundings.clock = [] { return day(2026, 5, 11); };
        m_surroundings.sampleLog = m_folder.path();
        m_window = std::make_unique<MainWindow>(m_surroundings);
        m_window->resize(1280, 720);
        m_window->show();
        settle(*m_window);
        m_look(QStringLiteral("welcome"), *m_window);
        m_window->openLogFile(m_surroundings.settings.recentLogs.front());
        QVERIFY(m_window->workspace());
    }

    /// A choice waits in the log, and another log would bring one more, and all else that is told.
    void changedApart() {
        const std::filesystem::path file = m_folder.path();
        m_other = m_folder.path("other.slopebook");
        std::filesystem::copy_file(file, m_other);
        for (const bool first : {true, false}) {
            for (const auto& path : {file, m_other}) {
                log::Log log = log::Log::open(path);
                const std::string note = path == file ? "held well" : "let go of the bar too early";
                const auto athletes = log.athletes();
                const SessionId session = log.sessions(athletes[first ? 0 : 1].id).front().id;
                log::PlacedSet placed = log.session(session).sets.front();
                placed.set.note = note;
                log.change(placed.id, placed.set);
                if (first)
                    continue;
                log.add(Athlete{.name = "Rowan Alder-Birch", .note = note});
                log.add(Lift{.name = "Seal row with a long pause", .note = note});
            }
            if (first) {
                log::Log log = log::Log::open(file);
                desks::mergeInto(log, m_other);
            }
        }
    }

    void pages() {
        Workspace& work = *m_window->workspace();
        for (const PageEntry& entry : ui::pages()) {
            work.showPage(entry.page);
            settle(*m_window);
            if (const auto* squad = work.findChild<SquadPage*>()) {
                QTRY_VERIFY_WITH_TIMEOUT(!squad->working(), 30000);
                settle(*m_window); // what is done after the answer, such as telling its figures
            }
            if (entry.page == Page::Stations) {
                lookAtStations(entry.title(), work);
                continue;
            }
            lookAtTabs(entry.title(), *m_window, *work.currentPage(), m_look);
        }
        work.bar().showText(QStringLiteral("Something"), QStringLiteral("Go back to a backup…"));
        settle(*m_window);
        m_look(QStringLiteral("with a message"), *m_window);
    }

    /// Of a lift and of tests, where somebody is and where nobody is yet.
    void lookAtStations(const QString& place, Workspace& work) {
        auto* stations = work.findChild<QComboBox*>(QStringLiteral("stations"));
        QVERIFY(stations && stations->count() > 1);
        for (int i = 0; i < stations->count(); ++i) {
            stations->setCurrentIndex(i);
            Q_EMIT stations->activated(i);
            settle(*m_window);
            m_look(QStringLiteral("%1, %2").arg(place, stations->currentText()), *m_window);
        }
    }

    void recordDialogs() {
        Logbook& book = m_window->workspace()->logbook();
        const log::Log& log = book.log();
        const AthleteId athlete = *m_window->workspace()->athlete();
        const LiftId lift = *m_window->workspace()->lift();
        const SessionId session = log.sessions(athlete).front().id;
        const SetId set = log.sets(session, lift).front().id;
        const Clock& clock = m_surroundings.clock;
        QWidget* parent = m_window.get();
        show<AthleteDialog>("athlete", book, athlete, parent);
        show<LiftDialog>("lift", book, lift, parent);
        show<LiftDialog>("new lift", book, std::nullopt, parent);
        show<CheckLoadsDialog>("check loads", book, athlete, lift, parent);
        show<SessionDialog>("session", book, session, parent);
        show<SetDialog>("set", book, set, parent);
        show<DeviceDialog>("device", book, std::nullopt, parent);
        show<DevicesDialog>("devices", book, parent);
        show<BlockDialog>("block", book, std::nullopt, clock.today(), parent);
        show<BlocksDialog>("blocks", book, clock, parent);
        show<TestDialog>("test", book, std::nullopt, TestKind{}, parent);
        show<TestsDialog>("tests", book, parent);
        show<TraceDialog>("trace", parent);
        show<StationDialog>("new station", book, std::nullopt, parent);
        show<RosterDialog>("who is here", book, m_station, clock.today(), parent);
        show<EquipmentDialog>("equipment", log.equipment().front().value, parent);
        show<BackupsDialog>("backups", m_folder.path(), parent);
        const desks::MergeReport report = desks::previewMerge(log, m_other);
        QVERIFY(!report.listed.empty() && !report.joined.empty() && !report.renamed.empty());
        show<MergeDialog>("merge", report, QStringLiteral("/hall/rack.slopebook"), book, parent);
        show<MergeDialog>("merge without a common past",
                          desks::MergeReport{.athletes = {.here = 12, .there = 9, .both = 0},
                                             .noCommonPast = true,
                                             .nothingNew = false},
                          QStringLiteral("/hall/rack.slopebook"), book, parent);
        QCOMPARE(desks::openConflictCount(log), std::size_t{1});
        show<ChoicesDialog>("choices", book, parent);
    }

    void otherDialogs() {
        Logbook& book = m_window->workspace()->logbook();
        QWidget* parent = m_window.get();
        show<AboutDialog>("about", parent);
        show<HelpDialog>("help", helpOf(*m_window), parent);
        const auto file = m_folder.path("reps.csv");
        QFile out(QString::fromStdString(file.string()));
        QVERIFY(out.open(QIODevice::WriteOnly));
        out.write("date,athlete,lift,set,load_kg,rep,velocity\n2026-05-01,New one,Bench "
                  "pull,1,40,1,1.1\n");
        out.close();
        show<ImportDialog>("import", book, std::vector{file}, parent);
        ImportMaps maps;
        show<TableDialog>("table", book,
                          exchange::Source{.file = {},
                                           .text = "Day\tName\tkg\tSpeed\tx\n"
                                                   "1.5.26\tNew one\t40\t1,1\t\n"},
                          maps, parent);
        // Whatever may be odd about a table: titles above, units, totals, loads as columns, times.
        show<TableDialog>("odd table", book,
                          exchange::Source{.file = {},
                                           .text = "Report\t\t\t\t\n"
                                                   "Day\tTime\tName\t40 kg\t50 kg\n"
                                                   "\t\t\tm/s\tm/s\n"
                                                   "2026-05-01\t10:40\tNew one\t1.12\t0.95\n"
                                                   "2026-05-01\t10:20\tNew one\t1.10\t0.97\n"
                                                   "2026-05-01\t10:50\tNew one\t\t\n"
                                                   "Total\t\t\t2\t2\n"},
                          maps, parent);
        show<PasteDialog>("paste", readBlock(QStringLiteral("40\t92\n50\t85\n60\t71\n")),
                          m_surroundings.settings.unit, parent);
        m_window->workspace()->showPage(Page::Lines);
        settle(*m_window);
        auto* chart = charts::ChartMenu::of(*m_window->workspace()->currentPage());
        QVERIFY(chart);
        QTimer::singleShot(50, qApp, [this] {
            QWidget* dialog = QApplication::activeModalWidget();
            settle(*dialog);
            m_look(QStringLiteral("figures of a chart"), *dialog);
            dialog->close();
        });
        chart->showFigures();
    }

    /// The log joins a store that nobody answers for: the longest of what is said of one.
    void ofAStore() {
        show<JoinDialog>("join a store", m_folder.path(), QString(), QString(), m_window.get());
        {
            log::Log log = log::Log::open(m_folder.path());
            log.together([&] {
                log::Connection& db = log::connectionOf(log);
                log::setJoinedStore(db, {.id = log::randomUuid(),
                                         .connection = "host=" + m_folder.path("nowhere").string() +
                                                       " dbname=squad user=cora",
                                         .squad = log::randomUuid(),
                                         .met = "2026-03-14T09:30:00Z"});
            });
        }
        StoreDeeds(*m_window).begin();
        StoreLine* line = m_window->workspace()->storeLine();
        QVERIFY(line);
        QTRY_VERIFY(line->keeper().state().trouble);
        m_window->workspace()->showPage(Page::Session);
        settle(*m_window);
        m_look(QStringLiteral("a store that is not met"), *m_window);
        show<StoreDialog>("store", line->keeper(), m_window->workspace()->logbook(),
                          m_window.get());
    }

private:
    template <class Dialog, class... Arguments>
    void show(const char* name, Arguments&&... arguments) {
        Dialog dialog(std::forward<Arguments>(arguments)...);
        dialog.show();
        settle(dialog);
        QTest::qWait(30); // what is read on a thread of its own
        if constexpr (requires { dialog.summary(); })
            QTRY_VERIFY(!dialog.summary().isEmpty());
        else if constexpr (requires { dialog.canImport(); })
            QTRY_VERIFY(dialog.canImport());
        lookAtTabs(QStringLiteral("dialog: ") + QLatin1String(name), dialog, dialog, m_look);
    }

    Folder m_folder;
    std::filesystem::path m_other; ///< a log that was changed apart
    StationId m_station{};
    Look m_look;
    Surroundings m_surroundings;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

void inEveryPlace(const QString& language, bool fingers, const Look& look) {
    inEveryPlace(language, fingers, LoadUnit::Kilograms, look);
}

void inEveryPlace(const QString& language, bool fingers, LoadUnit unit, const Look& look) {
    Tour tour(language, fingers, unit, look);
    tour.pages();
    tour.recordDialogs();
    tour.otherDialogs();
    tour.ofAStore();
}

QList<QWidget*> controlsOf(const QWidget& root) {
    QList<QWidget*> all = root.findChildren<QWidget*>();
    all.removeIf([&root](const QWidget* widget) {
        for (const QWidget* at = widget; at && at != &root; at = at->parentWidget()) {
            if (at->isWindow())
                return true;
            const auto* stack = qobject_cast<const QStackedWidget*>(at->parentWidget());
            if (stack && stack->currentWidget() != at)
                return true;
        }
        return false;
    });
    return all;
}

QString described(const QWidget& widget) {
    QString words = widget.accessibleName();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        words = button->text();
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        words = label->text();
    return QStringLiteral("%1 \"%2\" %3 x %4")
        .arg(QLatin1String(widget.metaObject()->className()), words)
        .arg(widget.width())
        .arg(widget.height());
}

} // namespace slopebook::test
