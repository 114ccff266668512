// SPDX-License-Identifier: GPL-3.0-or-later
// The window and a shared store, by keys: what is entered at one desk comes to the other, a log
// joins and leaves, and what goes wrong there never stands in the way of the work.
#include "core/desks/merge.h"
#include "core/log/sound.h"
#include "core/log/storerows.h"
#include "core/meetings/joining.h"
#include "core/meetings/meet.h"
#include "tests/log/builders.h"
#include "tests/store/storeworld.h"
#include "tests/support/cuttingproxy.h"
#include "tests/ui/bykeys.h"
#include "ui/window/joindialog.h"
#include "ui/window/mainwindow.h"
#include "ui/window/quietlook.h"
#include "ui/window/storedialog.h"
#include "ui/window/storeline.h"
#include "ui/window/typing.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTreeWidget>

#include <atomic>
#include <chrono>
#include <dlfcn.h>
#include <fstream>
#include <netdb.h>
#include <thread>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

// A network whose names hang: the system's own search for one cannot be stopped by anybody.
extern "C" int getaddrinfo(const char* name, const char* service, const addrinfo* wanted,
                           addrinfo** found) {
    static const auto real =
        reinterpret_cast<decltype(&::getaddrinfo)>(::dlsym(RTLD_NEXT, "getaddrinfo"));
    if (name && std::string_view(name) == "hangs.invalid") {
        std::this_thread::sleep_for(std::chrono::seconds(5));
        return EAI_AGAIN;
    }
    return real(name, service, wanted, found);
}

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
        QVERIFY2(line->text().isEmpty(), // it is on disk
                 qPrintable(named<QLabel>(*window, "setAnswer")->text()));
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

    // One after the other, ever longer, and never more than a minute.
    void itWaitsLongerAfterFailures() {
        const std::vector<int> seconds{15, 30, 60, 60};
        for (std::size_t i = 0; i < seconds.size(); ++i)
            QCOMPARE(static_cast<int>(StoreKeeper::pauseAfter(static_cast<int>(i) + 1).count()),
                     seconds[i]);
        QCOMPARE(StoreKeeper::pauseAfter(1000).count(), 60);
    }

    // What others wrote is shown in a pause of the typing, once, and at the latest after some time.
    void pagesAreShownAnewBetweenTheKeys() {
        QLineEdit line;
        line.show();
        line.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&line));
        int looks = 0;
        QuietLook look([&] { ++looks; });
        const auto type = [&](int ms) {
            QElapsedTimer time;
            time.start();
            while (time.elapsed() < ms) {
                look.want();
                QTest::keyClick(&line, Qt::Key_5);
                QTest::qWait(60);
            }
        };
        type(1500);
        QCOMPARE(looks, 0);
        QTRY_COMPARE_WITH_TIMEOUT(looks, 1, 2000);
        QTest::qWait(500);
        QCOMPARE(looks, 1);
        type(5000); // somebody who never pauses
        QVERIFY2(looks >= 2 && looks <= 3, qPrintable(QString::number(looks)));
    }

    // Work beside the window gives way to who types, between its parts alone, and not for good.
    void workGivesWayToTyping() {
        QLineEdit line;
        line.show();
        const Typing typing;
        int asked = 0;
        const Progress work = Typing::givingWay(typing.last(), [&](std::int64_t, std::int64_t) {
            ++asked;
            return true;
        });
        const auto takes = [&](std::int64_t total) {
            QElapsedTimer time;
            time.start();
            work(0, total);
            return time.elapsed();
        };
        QVERIFY(takes(10) < 100); // nobody types
        QTest::keyClick(&line, Qt::Key_5);
        QVERIFY(takes(0) < 100); // no part of it: a network is waited for
        asked = 0;
        const auto once = takes(10);
        QVERIFY2(once >= 250 && once < 900, qPrintable(QString::number(once)));
        QVERIFY(asked > 5); // and hears of it when it is to stop
        QVERIFY(takes(10) < 100);
        // Who types on and on.
        QElapsedTimer time;
        time.start();
        std::atomic<bool> done = false;
        std::thread beside([&] {
            work(1, 10);
            done = true;
        });
        while (!done && time.elapsed() < 10000) {
            QTest::keyClick(&line, Qt::Key_5);
            QTest::qWait(30);
        }
        beside.join();
        QVERIFY2(time.elapsed() < 3000, qPrintable(QString::number(time.elapsed())));
    }

    // How it stands is told in trouble as well: why, since when, and all that waits.
    void theLineInTrouble_data() {
        using Kind = StoreError::Kind;
        QTest::addColumn<int>("kind");
        QTest::addColumn<QString>("begins");
        QTest::addColumn<bool>("waits");
        const auto add = [](const char* name, Kind kind, const char* begins, bool waits = false) {
            QTest::newRow(name) << static_cast<int>(kind) << QString::fromLatin1(begins) << waits;
        };
        const char* const reached = "Store not met since 14:05: ";
        const char* const gone = "Store not reached since 14:05: ";
        add("name", Kind::Unresolved, gone);
        add("nobody", Kind::Unreachable, gone);
        add("lost", Kind::Lost, gone);
        add("no library", Kind::NoLibrary, gone);
        add("password", Kind::WrongPassword, reached, true);
        add("no password", Kind::NoPassword, reached, true);
        add("not let in", Kind::NotLetIn, reached); // perhaps of this network alone
        add("database", Kind::NoSuchDatabase, reached);
        add("layout", Kind::OtherLayout, reached);
        add("another store", Kind::NoStore, reached);
        add("certificate", Kind::Certificate, reached);
        add("no right", Kind::NotAllowed, reached);
        add("full", Kind::Full, reached);
    }
    void theLineInTrouble() {
        QFETCH(const int, kind);
        QFETCH(const QString, begins);
        QFETCH(const bool, waits);
        const QDateTime now(QDate(2026, 3, 14), QTime(14, 30));
        StoreState state;
        state.met = now.addSecs(-3600);
        state.joined.waiting = 3;
        state.choices = 2;
        state.trouble = troubleOf(
            std::make_exception_ptr(StoreError(static_cast<StoreError::Kind>(kind), asIs("why"))),
            now.addSecs(-25 * 60));
        const QString line = storeLine(state, now);
        QVERIFY2(line.startsWith(begins), qPrintable(line));
        QVERIFY2(line.endsWith(QLatin1String("; last met: 13:30; 3 things wait; 2 choices are "
                                             "open; work goes on")),
                 qPrintable(line));
        QCOMPARE(state.trouble->waitsForCoach, waits);
        QCOMPARE(state.trouble->whole().contains(QLatin1String("Meet now")), waits);
        const QString all = storeSentences(state, now).join(u' ');
        QVERIFY2(all.contains(QLatin1String("It was not met since 14:05. why")) &&
                     all.contains(QLatin1String("Last meeting: 13:30.")) &&
                     all.contains(QLatin1String("2 choices are open.")),
                 qPrintable(all));
        state.met = {};
        state.choices = 0;
        state.joined.waiting = 0;
        QVERIFY(
            storeLine(state, now).endsWith(QLatin1String("; it was not met yet; work goes on")));
    }

    // What gives way to entries for long says so, and is tried again by itself.
    void theLineThatWaitsForAPause() {
        const QDateTime now(QDate(2026, 3, 14), QTime(14, 30));
        StoreState state;
        state.trouble =
            troubleOf(std::make_exception_ptr(meetings::WaitsForPause({})), now.addSecs(-25 * 60));
        const QString line = storeLine(state, now);
        QVERIFY2(line.startsWith(QLatin1String("Store not met since 14:05: it waits until nothing "
                                               "is entered for a moment; ")),
                 qPrintable(line));
        QVERIFY(!state.trouble->waitsForCoach);
        QVERIFY(state.trouble->whole().contains(
            QLatin1String("it waits until nothing is entered for 5 s. Nothing is lost")));
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

    // A set that another desk has changed is not taken back unseen: said in words.
    void undoOfWhatAnotherDeskChanged() {
        const Desk here(joined("a.slopebook"));
        const auto other = joined("b.slopebook");
        QTRY_VERIFY_WITH_TIMEOUT(here.hasMet(), soon);
        here.enterSet(QStringLiteral("52 1.0 0.98"));
        const auto hasCome = [&] {
            meet(other);
            return countOf(log::Log::open(other), 52) == 1;
        };
        QTRY_VERIFY_WITH_TIMEOUT(hasCome(), soon); // what waits is known here a moment later
        {
            log::Log log = log::Log::open(other);
            for (const auto& athlete : log.athletes())
                for (const auto& session : log.sessions(athlete.id))
                    for (log::PlacedSet one : log.session(session.id).sets)
                        if (one.set.load == massFromKilograms(52)) {
                            one.set.note = "grip";
                            log.change(one.id, one.set);
                        }
        }
        meet(other);
        const auto changed = [&] {
            for (const auto& athlete : here.log().athletes())
                for (const auto& session : here.log().sessions(athlete.id))
                    for (const log::PlacedSet& one : here.log().session(session.id).sets)
                        if (one.set.note == "grip")
                            return true;
            return false;
        };
        QTRY_VERIFY_WITH_TIMEOUT(changed(), soon);
        QTest::qWait(2500);
        here.activate();
        QTest::keyClick(here.window.get(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_VERIFY(named<QLabel>(*here.window, "barText")->isVisible());
        QCOMPARE(countOf(here.log(), 52), 1);
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

    // What was entered here goes with one meeting, and no page is made anew for it: nobody tells
    // this desk of its own news.
    void anOwnEntryIsOneMeeting() {
        const Desk desk(joined("a.slopebook"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
        QTRY_COMPARE_WITH_TIMEOUT(desk.line()->keeper().state().joined.waiting, 0, soon);
        QTest::qWait(3000);
        const Postgres& server = world().server;
        server.sql("ALTER ROLE cora SET log_statement = 'all'");
        server.sql("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = 'cora'");
        const auto meetings = [&] {
            std::ifstream log(server.folder() / "log");
            int count = 0;
            for (std::string line; std::getline(log, line);)
                count += line.find("REPEATABLE READ") != std::string::npos ? 1 : 0;
            return count;
        };
        desk.line()->keeper().meetNow(); // by a connection that is written down
        QTRY_VERIFY_WITH_TIMEOUT(meetings() > 0, soon);
        QTest::qWait(2500);
        const int before = meetings();
        int everything = 0;
        connect(
            &desk.window->workspace()->logbook(), &Logbook::changed, this,
            [&](Logbook::What what) { everything += what == Logbook::What::Everything ? 1 : 0; });
        desk.enterSet(QStringLiteral("57 1.0 0.98"));
        QTRY_COMPARE_WITH_TIMEOUT(meetings(), before + 1, soon);
        QTRY_COMPARE_WITH_TIMEOUT(desk.line()->keeper().state().joined.waiting, 0, soon);
        QTest::qWait(4000); // what would be told, is
        QCOMPARE(meetings(), before + 1);
        QCOMPARE(everything, 0);
        // Another desk's is told, and shown once.
        enterThere(joined("b.slopebook"), 58);
        QTRY_COMPARE_WITH_TIMEOUT(countOf(desk.log(), 58), 1, soon);
        QTest::qWait(3000);
        QCOMPARE(everything, 1);
        server.sql("ALTER ROLE cora RESET log_statement");
    }

    // Another language, or another unit, builds the window anew: what was told of the store stays.
    void anotherLanguageKeepsTheNews() {
        const auto mine = joined("a.slopebook");
        enterThere(joined("b.slopebook"), 59);
        const Desk desk(mine);
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
        const StoreState before = desk.line()->keeper().state();
        QVERIFY(before.newsAt.isValid() && before.news.came > 0);
        desk.window->speak(QStringLiteral("de"));
        QVERIFY(desk.line());
        QCOMPARE(desk.line()->keeper().state().newsAt, before.newsAt);
        QCOMPARE(desk.line()->keeper().state().news.came, before.news.came);
        QVERIFY2(!desk.told().startsWith(QLatin1String("Met the store")), qPrintable(desk.told()));
        desk.window->countIn(LoadUnit::Pounds);
        QCOMPARE(desk.line()->keeper().state().newsAt, before.newsAt);
        desk.window->countIn(LoadUnit::Kilograms);
        desk.window->speak(QStringLiteral("en"));
        enterThere(m_folder->path("b.slopebook"), 67); // and it goes on meeting
        QTRY_COMPARE_WITH_TIMEOUT(countOf(desk.log(), 67), 1, soon);
        QVERIFY(desk.told().startsWith(QLatin1String("Met the store at")));
    }

    // Who refuses the login is not asked again before the coach says so.
    void aWrongPasswordIsTriedOnce() {
        const Desk desk(joined("a.slopebook"));
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
        StoreKeeper& keeper = desk.line()->keeper();
        world().server.sql(
            "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = 'cora'");
        {
            const Environment wrong("PGPASSWORD", "wrong");
            keeper.meetNow();
            QTRY_VERIFY_WITH_TIMEOUT(keeper.state().trouble.has_value(), soon);
            QVERIFY(!keeper.meetsByItself());
            desk.enterSet(QStringLiteral("61 1.0 0.98"));
            QTest::qWait(4000);
            QVERIFY(!keeper.meetsByItself() && keeper.state().trouble);
        }
        desk.window->actions().meetStore->trigger();
        QTRY_VERIFY_WITH_TIMEOUT(!keeper.state().trouble, soon);
        QVERIFY(keeper.meetsByItself());
        QTRY_COMPARE_WITH_TIMEOUT(keeper.state().joined.waiting, 0, soon);
    }

    // Whatever the network does, a window is closed at once.
    void closingNeverWaits_data() {
        QTest::addColumn<QString>("what");
        QTest::newRow("a server that accepts and says nothing") << "silent";
        QTest::newRow("a name whose search hangs") << "name";
    }
    void closingNeverWaits() {
        QFETCH(const QString, what);
        CuttingProxy proxy(world().server.port());
        proxy.stall(true);
        const auto file = joined("a.slopebook");
        {
            log::Log log = log::Log::open(file);
            log.together([&] {
                log::JoinedStore store = *log::joinedStore(log::connectionOf(log));
                store.connection = what == QLatin1String("name")
                                       ? "host=hangs.invalid dbname=squad user=cora"
                                       : addressThrough(proxy);
                log::setJoinedStore(log::connectionOf(log), store);
            });
        }
        for (const int after : {0, 300, 1200}) {
            auto desk = std::make_unique<Desk>(file);
            QTest::qWait(after);
            desk->enterSet(QStringLiteral("62 1.0 0.98"));
            QVERIFY(!desk->hasMet());
            QElapsedTimer time;
            time.start();
            QVERIFY(desk->window->close());
            desk.reset();
            QVERIFY2(time.elapsed() < 1000, qPrintable(QString::number(time.elapsed())));
        }
        proxy.stall(false);
        VERIFY_SOUND(log::Log::open(file));
    }

    // Esc comes when it has just joined: what is said is what is so.
    void escapeAfterJoining() {
        const auto file = copy("a.slopebook");
        const Desk desk(file);
        const QString address = QString::fromStdString(world().server.address("cora"));
        bool walked = false;
        inNextDialog([&](QWidget* shown) {
            auto* field = named<QLineEdit>(*shown, "storeAddress");
            QTest::keyClicks(field, address);
            QTest::keyClick(field, Qt::Key_Return);
            auto* join = named<QPushButton>(*shown, "joinStore");
            QTRY_VERIFY(join->isEnabled());
            QTest::keyClick(join, Qt::Key_Return);
            const log::Log reader = log::Log::open(file, log::Access::ReadOnly);
            for (int i = 0; i < 1000 && !meetings::joined(reader); ++i)
                std::this_thread::sleep_for(std::chrono::milliseconds(5));
            QVERIFY(meetings::joined(reader)); // and the window has not heard of it yet
            walked = true;
            QTest::keyClick(shown, Qt::Key_Escape);
            QVERIFY(!named<QLabel>(*shown, "joinTold")->text().startsWith(u"Stopped"_s));
        });
        desk.window->actions().joinStore->trigger();
        QVERIFY(walked);
        QVERIFY(desk.line());
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
    }

    // Another window has joined the log just now: this one meets as well once it is asked.
    void anotherWindowHasJoined() {
        const auto file = copy("a.slopebook");
        const Desk desk(file);
        QVERIFY(!desk.line());
        {
            log::Log log = log::Log::open(file);
            meetings::joinStore(log, world().server.address("cora"), "");
        }
        desk.window->actions().meetStore->trigger();
        QVERIFY(desk.line());
        QTRY_VERIFY_WITH_TIMEOUT(desk.hasMet(), soon);
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
        QVERIFY2(desk.told().startsWith(what == QLatin1String("gone")
                                            ? QLatin1String("Store not reached since ")
                                            : QLatin1String("Store not met since ")) &&
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
        StoreLine line(std::make_shared<StoreKeeper>(book, Clock([] { return today; })));
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
        const int sessions = qEnvironmentVariableIntValue("SLOPEBOOK_MEASURE") > 0 ? 4000 : 50;
        constexpr int setsEach = 10;
        {
            log::Log log = log::Log::open(other);
            log.together([&] {
                for (int i = 0; i < sessions; ++i) {
                    const SessionId session =
                        log.add(SessionHead{.athlete = m_season.stroke,
                                            .date = Date{std::chrono::sys_days{day(2012, 1, 1)} +
                                                         std::chrono::days{i}}});
                    for (int j = 0; j < setsEach; ++j)
                        log.add(session, m_season.pull, ladderSet(30, {1.1}));
                }
            });
        }
        meet(other);
        const std::ptrdiff_t all = std::ptrdiff_t{sessions} * setsEach;
        const Desk desk(mine);
        const QSignalSpy allCame(&desk.line()->keeper(), &StoreKeeper::tookIn);
        {
            const log::Log reader = log::Log::open(mine, log::Access::ReadOnly);
            QTRY_VERIFY_WITH_TIMEOUT(countOf(reader, 30) > 0, soon);
        }
        QVERIFY(allCame.isEmpty());
        // From the key, pressed whatever the window is just doing, to what the page shows of it.
        using Time = std::chrono::steady_clock;
        QLineEdit* line = desk.typeHere({});
        const auto enterUntil = [&](const std::function<bool(std::size_t)>& over) {
            std::vector<double> waits; // ms
            double longestWrite = 0;   // of them, from when the window came to it
            std::atomic<bool> ends = false;
            std::thread hands([&] {
                for (int i = 0; !ends; ++i) {
                    for (const QChar letter : QStringLiteral("56 1.0 0.98")) {
                        QMetaObject::invokeMethod(
                            line, [line, letter] { QTest::keyClicks(line, letter); },
                            Qt::QueuedConnection);
                        std::this_thread::sleep_for(std::chrono::milliseconds(20));
                    }
                    QMetaObject::invokeMethod(
                        line,
                        [&, pressed = Time::now()] {
                            const auto come = Time::now();
                            QTest::keyClick(line, Qt::Key_Return);
                            if (!line->text().isEmpty())
                                return;
                            const auto since = [now = Time::now()](Time::time_point from) {
                                return std::chrono::duration<double, std::milli>(now - from)
                                    .count();
                            };
                            waits.push_back(since(pressed));
                            longestWrite = std::max(longestWrite, since(come));
                        },
                        Qt::QueuedConnection);
                    std::this_thread::sleep_for(std::chrono::milliseconds(150 + i * 37 % 100));
                }
            });
            while (!over(waits.size()))
                QTest::qWait(10);
            ends = true;
            hands.join();
            QTest::qWait(300); // the last that was pressed
            std::ranges::sort(waits);
            return std::pair(waits, longestWrite);
        };
        const auto [meanwhile, longestMeanwhile] = enterUntil([&](std::size_t entered) {
            return (entered > 0 && !allCame.isEmpty()) || entered >= 1000;
        });
        QVERIFY(!meanwhile.empty());
        QTRY_COMPARE_WITH_TIMEOUT(countOf(desk.log(), 30), all, soon);
        QTRY_COMPARE_WITH_TIMEOUT(desk.line()->keeper().state().joined.waiting, 0, soon);
        const std::size_t asMany = meanwhile.size();
        const auto [afterwards, longestAfterwards] =
            enterUntil([asMany](std::size_t entered) { return entered >= asMany; });
        QCOMPARE(static_cast<std::size_t>(countOf(desk.log(), 56)),
                 meanwhile.size() + afterwards.size());
        for (const auto& [when, waits, write] :
             {std::tuple{"while they came", meanwhile, longestMeanwhile},
              std::tuple{"afterwards", afterwards, longestAfterwards}})
            qInfo("%td sets came; %zu entered %s: median %.1f ms, 99th percentile %.1f, the "
                  "longest %.1f; once the window was free for it %.1f",
                  all, waits.size(), when, waits[waits.size() / 2], waits[waits.size() * 99 / 100],
                  waits.back(), write);
        VERIFY_SOUND(desk.log());
    }
};

QTEST_MAIN(TestStoreWindow)
#include "tst_storewindow.moc"
