// SPDX-License-Identifier: GPL-3.0-or-later
// The window and a shared store, by keys: what is entered at one desk comes to the other, a log
// joins and leaves, and what goes wrong there never stands in the way of the work.
#include "core/desks/merge.h"
#include "core/log/sound.h"
#include "core/meetings/joining.h"
#include "core/meetings/meet.h"
#include "tests/log/builders.h"
#include "tests/store/storeworld.h"
#include "tests/support/cuttingproxy.h"
#include "tests/ui/bykeys.h"
#include "ui/window/joindialog.h"
#include "ui/window/mainwindow.h"
#include "ui/window/storedialog.h"
#include "ui/window/storeline.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTreeWidget>

#include <dlfcn.h>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {
constexpr Date today = day(2026, 3, 14);
constexpr int soon = 20000; ///< ms, for what comes by itself
constexpr auto noon = "2026-03-14T12:00:00Z";

QString qt(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

template <class Widget>
Widget* named(const QWidget& in, const char* name) {
    return in.findChild<Widget*>(QLatin1String(name));
}

/// The program's window on a log, shown.
class Desk {
public:
    explicit Desk(const std::filesystem::path& file) {
        Surroundings surroundings;
        surroundings.clock = [] { return today; };
        window = std::make_unique<MainWindow>(surroundings);
        window->show();
        window->openLogFile(qt(file));
        activate();
    }
    void activate() const {
        window->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(window.get()));
    }
    StoreLine* line() const { return window->workspace()->storeLine(); }
    QString told() const { return line() ? line()->accessibleName() : QString(); }
    bool hasMet() const { return line() && line()->keeper().state().met.isValid(); }
    /// As hands do.
    QLineEdit* typeHere(const QString& typed) const {
        activate();
        QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
        auto* line = named<QLineEdit>(*window, "setLine");
        QTest::keyClicks(line, typed);
        return line;
    }
    void enterSet(const QString& typed) const {
        QLineEdit* line = typeHere(typed);
        QTest::keyClick(line, Qt::Key_Return);
        QTRY_COMPARE_WITH_TIMEOUT(line->text(), QString(), soon); // it is on disk
    }
    const log::Log& log() const { return window->workspace()->logbook().log(); }

    std::unique_ptr<MainWindow> window;
};

std::vector<std::int64_t> loadsOf(const log::Log& log) {
    std::vector<std::int64_t> grams;
    for (const auto& athlete : log.athletes())
        for (const auto& session : log.sessions(athlete.id))
            for (const log::PlacedSet& one : log.session(session.id).sets)
                grams.push_back(one.set.load.grams);
    return grams;
}
std::ptrdiff_t countOf(const log::Log& log, double kg) {
    return std::ranges::count(loadsOf(log), massFromKilograms(kg).grams);
}

std::string addressThrough(const CuttingProxy& proxy) { // it passes on no TLS
    return Postgres::addressAt(proxy.port(), "cora") + " sslmode=disable gssencmode=disable";
}

/// In the dialog that comes after this one: a button that is pressed by its key acts a moment
/// later.
void inDialogAfter(const QWidget* before, const std::function<void(QWidget*)>& work,
                   int tries = 200) {
    QTimer::singleShot(20, qApp, [before, work, tries] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (dialog && dialog != before && dialog->isActiveWindow())
            work(dialog);
        else if (tries > 0)
            inDialogAfter(before, work, tries - 1);
    });
}

/// A word of the environment for as long as it lives.
class Environment {
public:
    Environment(const char* name, const QByteArray& value) : m_name(name) { qputenv(name, value); }
    ~Environment() { qunsetenv(m_name); }
    Environment(const Environment&) = delete;
    Environment& operator=(const Environment&) = delete;

private:
    const char* m_name;
};
} // namespace

class TestStoreWindow : public QObject {
    Q_OBJECT

    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<Folder> m_folder;
    Season m_season;
    Folder m_base;

    StoreWorld& world() {
        if (!m_world)
            m_world = std::make_unique<StoreWorld>();
        return *m_world;
    }
    std::filesystem::path copy(const char* name) {
        const auto file = m_folder->path(name);
        std::filesystem::copy_file(m_base.path(), file);
        return file;
    }
    std::filesystem::path joined(const char* name, const std::string& address = {}) {
        const auto file = copy(name);
        log::Log log = log::Log::open(file);
        meetings::joinStore(log, address.empty() ? world().server.address("cora") : address, "");
        return file;
    }
    /// A desk without a window.
    meetings::MeetingReport meet(const std::filesystem::path& file) {
        log::Log log = log::Log::open(file);
        Connection store = Connection::open(meetings::addressOf(log));
        return meetings::meet(log, store, noon);
    }
    void enterThere(const std::filesystem::path& file, double kg) {
        {
            log::Log log = log::Log::open(file);
            log.add(m_season.winter, m_season.pull, ladderSet(kg, {0.7}));
        }
        meet(file);
    }

private Q_SLOTS:
    void initTestCase() {
        log::Log log = log::Log::create(m_base.path());
        m_season = fillSeason(log);
    }
    void init() { m_folder = std::make_unique<Folder>(); }

    // First: a window whose log meets no store has nothing of it, and loads nothing for it.
    void nothingOfItWithoutAStore() {
        const Desk desk(copy("alone.slopebook"));
        QVERIFY(!desk.line());
        desk.enterSet(QStringLiteral("50 1.0 0.98"));
        QTest::keyClick(desk.window.get(), Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
        QCOMPARE(QApplication::activeModalWidget(), nullptr);
        QVERIFY(!::dlopen("libpq.so.5", RTLD_NOW | RTLD_NOLOAD));
    }

    // One after the other, ever longer, and never more than ten minutes.
    void itWaitsLongerAfterFailures() {
        const std::vector<int> seconds{15, 30, 60, 120, 240, 480, 600, 600};
        for (std::size_t i = 0; i < seconds.size(); ++i)
            QCOMPARE(static_cast<int>(StoreKeeper::pauseAfter(static_cast<int>(i) + 1).count()),
                     seconds[i]);
        QCOMPARE(StoreKeeper::pauseAfter(1000).count(), 600);
    }

    void aSetEnteredAtOneDeskComesToTheOther() {
        const Desk here(joined("a.slopebook"));
        const Desk there(joined("b.slopebook"));
        QTRY_VERIFY_WITH_TIMEOUT(here.hasMet() && there.hasMet(), soon);
        here.enterSet(QStringLiteral("51 1.0 0.98"));
        // What is typed at the other meanwhile stays as it is, with the keys in it.
        QLineEdit* half = there.typeHere(QStringLiteral("47.5 1.0"));
        half->setSelection(0, 2);
        QTRY_COMPARE_WITH_TIMEOUT(countOf(there.log(), 51), 1, soon);
        QTest::qWait(2500); // until the window has looked for what others wrote
        QCOMPARE(half->text(), QStringLiteral("47.5 1.0"));
        QCOMPARE(half->selectedText(), QStringLiteral("47"));
        QVERIFY(half->hasFocus());
        QVERIFY2(here.told().startsWith(QLatin1String("Met the store at")),
                 qPrintable(here.told()));
        QTRY_COMPARE_WITH_TIMEOUT(here.line()->keeper().state().joined.waiting, 0, soon);
        // It can still be taken back here, and goes there as well.
        QTest::keyClick(half, Qt::Key_Escape);
        here.activate();
        QTest::keyClick(here.window.get(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_COMPARE(countOf(here.log(), 51), 0);
        QTRY_COMPARE_WITH_TIMEOUT(countOf(there.log(), 51), 0, soon);
        VERIFY_SOUND(here.log());
        VERIFY_SOUND(there.log());
    }

    void joiningByTheDialog() {
        const Desk desk(copy("a.slopebook"));
        QVERIFY(!desk.line());
        const QString address = QString::fromStdString(world().server.address("cora"));
        bool walked = false;
        inNextDialog([&](QWidget* shown) {
            auto* told = named<QLabel>(*shown, "joinTold");
            auto* field = named<QLineEdit>(*shown, "storeAddress");
            QVERIFY(field->hasFocus());
            const auto type = [&](const QString& typed) {
                field->setFocus();
                field->selectAll();
                QTest::keyClicks(field, typed);
                QTest::keyClick(field, Qt::Key_Return);
            };
            type(QStringLiteral("nonsense="));
            QTRY_VERIFY(told->text().contains(QLatin1String("that cannot be read")));
            type(QStringLiteral("host=no-such-machine.invalid dbname=squad user=cora"));
            QTRY_VERIFY_WITH_TIMEOUT(told->text().startsWith(QChar(0x26a0)) &&
                                         told->text().contains(QLatin1String("no-such-machine")),
                                     soon);
            {
                const Environment wrong("PGPASSWORD", "wrong");
                type(address);
                QTRY_VERIFY(told->text().contains(QLatin1String("does not take the password")));
                keepPicture(*shown, u"join-wrong"_s);
            }
            QVERIFY(!named<QPushButton>(*shown, "joinStore")->isEnabled());
            QVERIFY(!meetings::joined(desk.log())); // nothing was written
            // One that may only read.
            type(QString::fromStdString(world().server.address("ana")));
            QTRY_VERIFY(told->text().contains(QLatin1String("may write in no squad")));
            type(address);
            auto* join = named<QPushButton>(*shown, "joinStore");
            QTRY_VERIFY(join->isEnabled());
            QCOMPARE(named<QComboBox>(*shown, "storeSquad")->currentText(),
                     QStringLiteral("Rowing"));
            keepPicture(*shown, u"join"_s);
            QVERIFY(join->hasFocus());
            walked = true;
            QTest::keyClick(join, Qt::Key_Return);
        });
        desk.window->actions().joinStore->trigger();
        QVERIFY(walked);
        QVERIFY(desk.line());
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
        QCOMPARE(meetings::joined(desk.log())->squad, std::string("Rowing"));
        QVERIFY(world().count("slopebook.atoms WHERE kind = 'set'") > 0);
        keepPicture(*desk.window, u"met"_s);
    }

    // While a name or a network hangs, the window lives, and one key ends it.
    void joiningIsStoppedByAKey() {
        const Desk desk(copy("a.slopebook"));
        CuttingProxy proxy(world().server.port());
        proxy.stall(true);
        bool walked = false;
        inNextDialog([&](QWidget* shown) {
            auto* told = named<QLabel>(*shown, "joinTold");
            auto* field = named<QLineEdit>(*shown, "storeAddress");
            QTest::keyClicks(field, QString::fromStdString(addressThrough(proxy)));
            QTest::keyClick(field, Qt::Key_Return);
            QVERIFY(!field->isEnabled());
            QTest::qWait(200);
            QElapsedTimer time;
            time.start();
            QTest::keyClick(shown, Qt::Key_Escape);
            QVERIFY(told->text().startsWith(QLatin1String("Stopped.")));
            QVERIFY(field->isEnabled() && shown->isVisible());
            walked = true;
            QTest::keyClick(shown, Qt::Key_Escape);
            QVERIFY(!shown->isVisible());
        });
        desk.window->actions().joinStore->trigger();
        QVERIFY(walked && !desk.line());
    }

    // Said once, then in the line; sets are entered all the same, and go when it works again.
    void whatGoesWrongIsSaidInTheLine_data() {
        QTest::addColumn<QString>("what");
        QTest::addColumn<QString>("said");
        QTest::newRow("wrong password") << "password"
                                        << "wrong password, or no such login";
        QTest::newRow("another layout") << "layout"
                                        << "it is of another version";
        QTest::newRow("server gone") << "gone"
                                     << "nobody answers there";
    }
    void whatGoesWrongIsSaidInTheLine() {
        QFETCH(const QString, what);
        QFETCH(const QString, said);
        const Desk desk(joined("a.slopebook"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
        StoreKeeper& keeper = desk.line()->keeper();
        QSignalSpy began(&keeper, &StoreKeeper::troubleBegan);
        const Postgres& server = world().server;
        std::optional<Environment> wrong;
        if (what == QLatin1String("password")) {
            server.sql("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = "
                       "'cora'");
            wrong.emplace("PGPASSWORD", "wrong");
        } else if (what == QLatin1String("layout")) {
            server.sql("UPDATE slopebook.store SET layout = 9");
        } else {
            world().server.killHard();
        }
        keeper.meetNow();
        QTRY_VERIFY_WITH_TIMEOUT(desk.told().contains(said), soon);
        QVERIFY2(desk.told().startsWith(QLatin1String("Store not reached since ")) &&
                     desk.told().endsWith(QLatin1String("; work goes on")),
                 qPrintable(desk.told()));
        keepPicture(*desk.window, u"trouble-"_s + what);
        keeper.meetNow();
        QTRY_VERIFY_WITH_TIMEOUT(!keeper.state().meets, soon);
        QCOMPARE(began.size(), 1);
        desk.enterSet(QStringLiteral("53 1.0 0.98"));
        const auto sets = countOf(desk.log(), 53);
        wrong.reset();
        if (what == QLatin1String("layout"))
            server.sql("UPDATE slopebook.store SET layout = 1");
        else if (what == QLatin1String("gone"))
            world().server.start();
        keeper.meetNow();
        QTRY_VERIFY2_WITH_TIMEOUT(!keeper.state().trouble && !keeper.state().meets,
                                  qPrintable(desk.told()), soon);
        QTRY_COMPARE_WITH_TIMEOUT(keeper.state().joined.waiting, 0, soon);
        QCOMPARE(countOf(desk.log(), 53), sets);
        VERIFY_SOUND(desk.log());
    }

    // A log that cannot be written meets nobody, and says why.
    void aLogForReadingOnly() {
        const auto file = joined("a.slopebook");
        Logbook book(log::Log::open(file, log::Access::ReadOnly));
        StoreLine line(book, Clock([] { return today; }));
        QVERIFY(line.accessibleName().contains(QLatin1String("the log is open for reading only")));
        line.keeper().meetNow();
        QTest::qWait(300);
        QVERIFY(!line.keeper().state().met.isValid() && !line.keeper().state().meets);
    }

    // Neither a network that is gone in the middle nor much that comes keeps a log open.
    void closingInTheMiddle() {
        CuttingProxy proxy(world().server.port());
        const auto file = joined("a.slopebook", addressThrough(proxy));
        const Desk desk(file);
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
        proxy.stall(true);
        desk.enterSet(QStringLiteral("54 1.0 0.98"));
        desk.line()->keeper().meetNow();
        QTRY_VERIFY(desk.line()->keeper().state().meets);
        QTest::qWait(300);
        desk.enterSet(QStringLiteral("54 1.01 0.97")); // nothing waits for it
        QElapsedTimer time;
        time.start();
        desk.window->closeLogFile();
        QVERIFY2(time.elapsed() < 2000, qPrintable(QString::number(time.elapsed())));
        QCOMPARE(desk.window->workspace(), nullptr);
        proxy.stall(false);
        log::Log log = log::Log::open(file);
        QCOMPARE(countOf(log, 54), 2);
        VERIFY_SOUND(log);
        // What was sent and not acknowledged goes once.
        meet(file);
        meet(file);
        QCOMPARE(world().server.sql("SELECT count(*) FROM slopebook.atoms WHERE kind = 'set' AND "
                                    "(content->>'load_g') = '54000'"),
                 std::string("2"));
    }

    // Both sides had changed one thing: said at the foot, and behind the line, with the way to it.
    void aChoiceIsAnnounced() {
        const auto mine = joined("a.slopebook");
        const auto other = joined("b.slopebook");
        meet(mine);
        meet(other);
        for (const auto& [file, note] : {std::pair{mine, "here"}, std::pair{other, "there"}}) {
            log::Log log = log::Log::open(file);
            log::PlacedSet placed = log.session(m_season.autumn).sets.front();
            placed.set.note = note;
            log.change(placed.id, placed.set);
        }
        meet(other);
        const Desk desk(mine);
        QTRY_VERIFY2_WITH_TIMEOUT(desk.told().contains(QLatin1String("choice")),
                                  qPrintable(desk.told()), soon);
        bool walked = false;
        inNextDialog([&](QWidget* shown) {
            auto* list = named<QTreeWidget>(*shown, "storeNews");
            QCOMPARE(list->topLevelItem(0)->text(0), QStringLiteral("to choose"));
            keepPicture(*shown, u"store"_s);
            inDialogAfter(shown, [&](QWidget* choices) {
                QVERIFY(named<QTreeWidget>(*choices, "choices"));
                walked = true;
                QTest::keyClick(choices, Qt::Key_Escape);
            });
            QTest::keyClick(shown, Qt::Key_H, Qt::AltModifier);
        });
        QTest::keyClick(desk.window.get(), Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
        QTRY_VERIFY(walked);
    }

    void leaving() {
        const auto file = joined("a.slopebook");
        meet(file);
        const Desk desk(file);
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
        const auto before = loadsOf(desk.log());
        for (const bool leaves : {false, true}) {
            bool asked = false;
            inNextDialog([&](QWidget* shown) {
                inDialogAfter(shown, [&, leaves](QWidget* question) {
                    asked = true;
                    keepPicture(*question, u"leave"_s);
                    QTest::keyClick(question, leaves ? Qt::Key_L : Qt::Key_S, Qt::AltModifier);
                });
                QTest::keyClick(shown, Qt::Key_L, Qt::AltModifier);
            });
            QTest::mouseClick(desk.line(), Qt::LeftButton);
            QTRY_VERIFY(asked && !QApplication::activeModalWidget());
            QTRY_COMPARE(desk.line() == nullptr, leaves);
        }
        QVERIFY(!meetings::joined(desk.log()));
        QCOMPARE(loadsOf(desk.log()), before);
        VERIFY_SOUND(desk.log());
        desk.enterSet(QStringLiteral("55 1.0 0.98"));
    }

    // Between two moments of a meeting whoever types comes in: much that comes is taken in pieces,
    // and sets go in before the last of them. How long each waited is told, for DEVELOPERS.md.
    void setsGoInWhileMuchComes() {
        const auto other = joined("b.slopebook");
        const auto mine = joined("a.slopebook");
        meet(other);
        meet(mine);
        const int sessions = qEnvironmentVariableIntValue("SLOPEBOOK_MEASURE") > 0 ? 500 : 150;
        constexpr int setsEach = 10;
        {
            log::Log log = log::Log::open(other);
            log.together([&] {
                for (int i = 0; i < sessions; ++i) {
                    const SessionId session =
                        log.add(SessionHead{.athlete = m_season.stroke,
                                            .date = Date{std::chrono::sys_days{day(2024, 1, 1)} +
                                                         std::chrono::days{i}}});
                    for (int j = 0; j < setsEach; ++j)
                        log.add(session, m_season.pull, ladderSet(30, {1.1}));
                }
            });
        }
        meet(other);
        const std::ptrdiff_t all = std::ptrdiff_t{sessions} * setsEach;
        const Desk desk(mine);
        log::Log reader = log::Log::open(mine, log::Access::ReadOnly);
        QTRY_VERIFY_WITH_TIMEOUT(countOf(reader, 30) > 0, soon);
        // Each with what the page does about it.
        struct Waits {
            int sets = 0;
            qint64 longest = 0, together = 0; ///< ns
        };
        const auto enter = [&desk](Waits& waits) {
            QLineEdit* line = desk.typeHere(QStringLiteral("56 1.0 0.98"));
            QElapsedTimer time;
            time.start();
            QTest::keyClick(line, Qt::Key_Return);
            waits.longest = std::max(waits.longest, time.nsecsElapsed());
            waits.together += time.nsecsElapsed();
            ++waits.sets;
            QCOMPARE(line->text(), QString());
            QTest::qWait(20);
        };
        Waits meanwhile, afterwards;
        while (countOf(reader, 30) < all && meanwhile.sets < 1000)
            enter(meanwhile);
        QVERIFY(meanwhile.sets > 0);
        QTRY_COMPARE_WITH_TIMEOUT(countOf(desk.log(), 30), all, soon);
        QTRY_COMPARE_WITH_TIMEOUT(desk.line()->keeper().state().joined.waiting, 0, soon);
        while (afterwards.sets < meanwhile.sets)
            enter(afterwards);
        QCOMPARE(countOf(desk.log(), 56), std::ptrdiff_t{2} * meanwhile.sets);
        for (const auto& [when, waits] :
             {std::pair{"while they came", meanwhile}, std::pair{"afterwards", afterwards}})
            qInfo("%td sets came; %d entered %s: %.1f ms each, the longest %.1f ms", all,
                  waits.sets, when, static_cast<double>(waits.together) / 1e6 / waits.sets,
                  static_cast<double>(waits.longest) / 1e6);
        VERIFY_SOUND(desk.log());
    }
};

QTEST_MAIN(TestStoreWindow)
#include "tst_storewindow.moc"
