// SPDX-License-Identifier: GPL-3.0-or-later
// A season played by two coaches at two windows, each on a log of its own, who meet in a shared
// store that is set up as DEVELOPERS.md says, to the letter, and by an analyst at psql. What stands
// there is taken from that page.
#include "core/log/sound.h"
#include "core/meetings/joining.h"
#include "tests/log/builders.h"
#include "tests/support/postgres.h"
#include "tests/ui/bykeys.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/window/mainwindow.h"
#include "ui/window/scheme.h"
#include "ui/window/storeline.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QProcess>
#include <QPushButton>
#include <QTreeWidget>

#include <fstream>
#include <sstream>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {
constexpr int soon = 25000; ///< ms, for what comes by itself
constexpr Date march = day(2026, 3, 14);
constexpr Date april = day(2026, 4, 11);

template <class Widget>
Widget* named(const QWidget& in, const char* name) {
    return in.findChild<Widget*>(QLatin1String(name));
}

/// What is written between two words of DEVELOPERS.md.
QString ofThePage(const QString& from, const QString& to) {
    std::ifstream file(SLOPEBOOK_SOURCE "/DEVELOPERS.md");
    std::stringstream all;
    all << file.rdbuf();
    const QString page = QString::fromStdString(all.str());
    const qsizetype begin = page.indexOf(from) + from.size();
    const qsizetype end = page.indexOf(to, begin);
    if (!page.contains(from) || end < 0)
        qFatal("DEVELOPERS.md does not say '%s ... %s' any more", qPrintable(from), qPrintable(to));
    return page.mid(begin, end - begin);
}

struct Ran {
    int exit = -1;
    QString out;
};
Ran run(const QString& program, const QStringList& arguments, const QString& input = {}) {
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    process.write(input.toUtf8());
    process.closeWriteChannel();
    if (!process.waitForFinished(60000))
        return {-1, program + u" does not end"_s};
    return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

/// In the dialog that comes after this one.
void inDialogAfter(const QWidget* before, const std::function<void(QWidget*)>& work,
                   int tries = 400) {
    QTimer::singleShot(20, qApp, [before, work, tries] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (dialog && dialog != before && dialog->isActiveWindow())
            work(dialog);
        else if (tries > 0)
            inDialogAfter(before, work, tries - 1);
    });
}

/// A coach's window.
class Desk {
public:
    Desk(const QString& file, const Date& today) {
        Surroundings surroundings;
        surroundings.clock = [&today] { return today; };
        window = std::make_unique<MainWindow>(surroundings);
        window->resize(1280, 720);
        window->show();
        window->createLogFile(file);
        activate();
    }
    void activate() const {
        window->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(window.get()));
    }
    Logbook& book() const { return window->workspace()->logbook(); }
    const log::Log& log() const { return book().log(); }
    StoreLine* line() const { return window->workspace()->storeLine(); }
    const StoreState& state() const { return line()->keeper().state(); }
    QString told() const { return line() ? line()->accessibleName() : QString(); }
    QString answer() const { return named<QLabel>(*window, "setAnswer")->text(); }

    void choose(const char* athlete) const {
        for (const auto& one : log().athletes())
            if (one.value.name == athlete)
                window->workspace()->choose(one.id, log().lifts().front().id);
        QCOMPARE(window->workspace()->athleteName(), QString::fromLatin1(athlete));
    }
    /// As hands do.
    void enter(const char* typed) const {
        activate();
        QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
        auto* line = named<QLineEdit>(*window, "setLine");
        QTRY_VERIFY(line && line->isEnabled());
        line->setFocus();
        QTest::keyClicks(line, QString::fromLatin1(typed));
        QTest::keyClick(line, Qt::Key_Return);
        if (!line->text().isEmpty()) // a question: yes
            QTest::keyClick(line, Qt::Key_Return);
        QVERIFY2(line->text().isEmpty(), qPrintable(answer()));
    }
    void meet() const {
        window->actions().meetStore->trigger();
        QTRY_VERIFY_WITH_TIMEOUT(!state().meets, soon);
    }
    void press(QAction* action) const {
        activate();
        action->trigger();
    }
    std::vector<log::PlacedSet> setsOf(const char* athlete, double kg) const {
        std::vector<log::PlacedSet> all;
        for (const auto& one : log().athletes())
            if (one.value.name == athlete)
                for (const auto& session : log().sessions(one.id))
                    for (const auto& set : log().session(session.id).sets)
                        if (set.set.load == massFromKilograms(kg))
                            all.push_back(set);
        return all;
    }
    std::size_t sessionsOf(const char* athlete) const {
        for (const auto& one : log().athletes())
            if (one.value.name == athlete)
                return log().sessions(one.id).size();
        return 0;
    }
    bool has(const char* athlete) const {
        return std::ranges::any_of(log().athletes(),
                                   [&](const auto& one) { return one.value.name == athlete; });
    }
    /// Joins by the dialog, into that squad.
    void join(const QString& address, const QString& squad, const QString& picture) const {
        bool walked = false;
        inNextDialog([&](QWidget* shown) {
            auto* field = named<QLineEdit>(*shown, "storeAddress");
            QTest::keyClicks(field, address);
            QTest::keyClick(field, Qt::Key_Return);
            auto* joins = named<QPushButton>(*shown, "joinStore");
            QTRY_VERIFY2_WITH_TIMEOUT(joins->isEnabled(),
                                      qPrintable(named<QLabel>(*shown, "joinTold")->text()), soon);
            auto* squads = named<QComboBox>(*shown, "storeSquad");
            if (squads->count() > 1)
                chooseByKeys(squads, squad);
            QCOMPARE(squads->currentText(), squad);
            keepPicture(*shown, picture);
            walked = true;
            QTest::keyClick(joins, Qt::Key_Return);
        });
        press(window->actions().joinStore);
        QVERIFY(walked && line());
        QTRY_VERIFY_WITH_TIMEOUT(state().met.isValid(), soon);
    }

    std::unique_ptr<MainWindow> window;
};
} // namespace

class TestPlaySeason : public QObject {
    Q_OBJECT

    std::unique_ptr<Postgres> m_server;
    Folder m_folder;
    Date m_today = march;

    /// The page's address of a login, of this machine: the network has no name of it.
    QString address(const char* login) const {
        return u"host=store.test hostaddr=127.0.0.1 port=%1 dbname=squad user=%2"_s
            .arg(m_server->port())
            .arg(QLatin1String(login));
    }
    Ran slopebook(const QStringList& arguments) const {
        return run(QStringLiteral(SLOPEBOOK_PROGRAM), arguments);
    }
    /// psql as a login, away from any terminal: a password is typed into its input.
    Ran psql(const QString& where, const QString& typed) const {
        return run(u"setsid"_s,
                   {u"-w"_s, u"psql"_s, u"-X"_s, u"-A"_s, u"-t"_s, u"-q"_s, u"-v"_s,
                    u"ON_ERROR_STOP=1"_s, u"-F"_s, u", "_s, where},
                   typed);
    }
    QString asAdmin(const QString& database = u"postgres"_s) const {
        return u"host=127.0.0.1 port=%1 dbname=%2 user=admin"_s.arg(m_server->port()).arg(database);
    }
    /// A password as the page has it: a line of ~/.pgpass.
    void keepPassword(const QString& login, const QString& password) const {
        const auto file = m_folder.path("home") / ".pgpass";
        std::ofstream(file, std::ios::app) << "store.test:*:squad:" << login.toStdString() << ':'
                                           << password.toStdString() << '\n';
        std::filesystem::permissions(file, std::filesystem::perms(0600));
    }

private Q_SLOTS:
    // Step by step as "Setting one up" says.
    void settingUp() {
        m_server = std::make_unique<Postgres>(PostgresOptions{.tls = true});
        const auto home = m_folder.path("home");
        std::filesystem::create_directories(home / ".postgresql");
        std::filesystem::copy_file(m_server->folder() / "root.crt",
                                   home / ".postgresql" / "root.crt");
        // Who runs the server is let in on its own machine; all others by the page's line alone.
        std::ofstream(home / ".pgpass")
            << "127.0.0.1:*:*:admin:" << Postgres::passwordOf("admin") << '\n';
        std::filesystem::permissions(home / ".pgpass", std::filesystem::perms(0600));
        qputenv("HOME", QByteArray::fromStdString(home.string()));
        qunsetenv("PGPASSFILE");
        QString line = ofThePage(u"a line for the desks: `"_s, u"`"_s);
        QCOMPARE(line, u"hostssl squad all 10.0.0.0/8 scram-sha-256"_s);
        line.replace(u"10.0.0.0/8"_s, u"127.0.0.0/8"_s); // the network of this test
        std::ofstream(m_server->folder() / "data" / "pg_hba.conf")
            << "host all admin 127.0.0.1/32 scram-sha-256\n"
            << line.toStdString() << '\n';
        QVERIFY(psql(asAdmin(), u"SELECT pg_reload_conf();\n"_s).exit == 0);

        QString first = ofThePage(u"as who runs the server: `"_s, u"`. Who owns"_s);
        first.replace(u"`, `"_s, u"\n"_s);
        first.replace(u"\\password chief"_s, u"\\password chief\nof chief\nof chief"_s);
        const Ran made = psql(asAdmin(), first + u'\n');
        QVERIFY2(made.exit == 0, qPrintable(made.out));
        keepPassword(u"chief"_s, u"of chief"_s);

        const QString init = ofThePage(u"2. `slopebook store init "_s, u"`"_s);
        QCOMPARE(init, u"\"host=db.example.org dbname=squad user=chief\" --squad Rowing --squad "
                       "Judo"_s);
        const Ran store = slopebook({u"store"_s, u"init"_s, address("chief"), u"--squad"_s,
                                     u"Rowing"_s, u"--squad"_s, u"Judo"_s});
        QVERIFY2(store.exit == 0 && store.out.contains(u"New squad: Judo"_s),
                 qPrintable(store.out));

        for (const char* login : {"cora", "dora", "ana"}) {
            const QString name = QString::fromLatin1(login);
            QString person = ofThePage(u"gives each person a login in psql, `"_s, u"` (the"_s);
            person.replace(u"`, then `"_s, u"\n"_s);
            person.replace(u"cora"_s, name);
            const QString secret = u"\nof %1\nof %1\n"_s.arg(name);
            const Ran one = psql(asAdmin(), person + secret);
            QVERIFY2(one.exit == 0, qPrintable(one.out));
            keepPassword(name, u"of "_s + name);
        }
        QCOMPARE(ofThePage(u"a right: `slopebook store grant "_s, u"`"_s),
                 u"\"host=db.example.org dbname=squad user=chief\" --login cora --squad Rowing "
                 "--may write"_s);
        for (const auto& [login, squad, may] : {std::tuple{u"cora"_s, u"Rowing"_s, u"write"_s},
                                                {u"dora"_s, u"Rowing"_s, u"write"_s},
                                                {u"dora"_s, u"Judo"_s, u"write"_s},
                                                {u"ana"_s, u"Rowing"_s, u"read"_s}}) {
            const Ran one = grant(login, squad, may);
            QVERIFY2(one.exit == 0, qPrintable(one.out));
        }
        const Ran status = slopebook({u"store"_s, u"status"_s, address("cora")});
        QVERIFY2(status.exit == 0 && status.out.contains(u"encrypted"_s) &&
                     !status.out.contains(u"not encrypted"_s) &&
                     status.out.contains(u"Rowing (write)"_s),
                 qPrintable(status.out));
        // By no other way: without TLS the server's line lets nobody in.
        const Ran bare =
            psql(address("cora") + u" sslmode=disable"_s, u"SELECT 1 FROM slopebook.reps;\n"_s);
        QVERIFY2(bare.exit != 0 && bare.out.contains(u"no encryption"_s), qPrintable(bare.out));
    }

private:
    Ran grant(const QString& login, const QString& squad, const QString& may) const {
        return slopebook({u"store"_s, u"grant"_s, address("chief"), u"--login"_s, login,
                          u"--squad"_s, squad, u"--may"_s, may});
    }

private Q_SLOTS:
    void theSeason() {
        QVERIFY(m_server);
        const QString folder = QString::fromStdString(m_folder.path("cora.slopebook").string());
        // Cora has a log of her own already; Dora begins with an empty one.
        const Desk cora(folder, m_today);
        cora.book().addLift({.name = "Bench pull"});
        cora.book().addAthlete({.name = "Ada"});
        cora.book().addAthlete({.name = "Bea"});
        cora.choose("Ada");
        cora.enter("40 1.1 1.05");
        cora.enter("60 0.88 0.9");
        cora.join(address("cora"), u"Rowing"_s, u"1-join"_s);
        keepPicture(*cora.window, u"2-joined"_s);
        const Desk dora(QString::fromStdString(m_folder.path("dora.slopebook").string()), m_today);
        dora.join(address("dora"), u"Rowing"_s, u"3-join-empty"_s);
        QTRY_VERIFY_WITH_TIMEOUT(dora.has("Ada") && dora.has("Bea"), soon);
        QTRY_VERIFY(dora.window->workspace()->athlete() && dora.window->workspace()->lift());
        keepPicture(*dora.window, u"4-came"_s);

        // Sets at both.
        cora.enter("80 0.6");
        dora.choose("Bea");
        dora.enter("50 1.2");
        QTRY_COMPARE_WITH_TIMEOUT(dora.setsOf("Ada", 80).size(), 1U, soon);
        QTRY_COMPARE_WITH_TIMEOUT(cora.setsOf("Bea", 50).size(), 1U, soon);

        // One that is taken back at once is taken back at both.
        cora.enter("42 1.0");
        QTRY_COMPARE_WITH_TIMEOUT(dora.setsOf("Ada", 42).size(), 1U, soon);
        cora.press(cora.window->actions().undo);
        QCOMPARE(cora.setsOf("Ada", 42).size(), 0U);
        QTRY_COMPARE_WITH_TIMEOUT(dora.setsOf("Ada", 42).size(), 0U, soon);

        storeGone(cora, dora);
        aChoice(cora, dora);

        // A session removed at one is gone at the other, and its undo brings it back there.
        m_today = april;
        cora.choose("Bea");
        cora.press(cora.window->actions().newSession);
        cora.enter("50 1.25");
        QTRY_COMPARE_WITH_TIMEOUT(dora.sessionsOf("Bea"), 2U, soon);
        cora.press(cora.window->actions().removeSession);
        QTRY_COMPARE_WITH_TIMEOUT(dora.sessionsOf("Bea"), 1U, soon);
        cora.press(cora.window->actions().undo);
        QTRY_COMPARE_WITH_TIMEOUT(dora.sessionsOf("Bea"), 2U, soon);

        // April, for the analyst.
        cora.choose("Ada");
        cora.press(cora.window->actions().newSession);
        cora.enter("40 1.12 1.1");
        cora.enter("80 0.7 0.68");
        cora.meet();
        theAnalyst();
        movesSquads(cora, dora);
        rightTaken(cora, dora);
        leaves(cora);
        VERIFY_SOUND(cora.log());
        VERIFY_SOUND(dora.log());
    }

private:
    /// Work goes on while the store is gone; what was entered goes when it is back, by itself.
    void storeGone(const Desk& cora, const Desk& dora) {
        m_server->stop();
        cora.choose("Ada");
        dora.choose("Ada");
        QTRY_VERIFY2_WITH_TIMEOUT(cora.told().startsWith(u"Store not reached since"_s),
                                  qPrintable(cora.told()), soon);
        QTRY_VERIFY_WITH_TIMEOUT(dora.state().trouble.has_value(), soon);
        keepPicture(*cora.window, u"5-gone"_s);
        // Both say something else of one set meanwhile.
        for (const auto& [desk, note] : {std::pair{&cora, "grip slipped"}, {&dora, "straps"}}) {
            log::PlacedSet one = desk->setsOf("Ada", 60).front();
            one.set.note = note;
            desk->book().changeSet(one.id, one.set);
        }
        QTRY_VERIFY_WITH_TIMEOUT(cora.state().joined.waiting > 0 && cora.told().contains(u"wait"_s),
                                 soon);
        keepPicture(*cora.window, u"6-waits"_s);
        m_server->start();
        QTRY_VERIFY_WITH_TIMEOUT(!cora.state().trouble && cora.state().joined.waiting == 0, soon);
        dora.meet();
        QTRY_VERIFY_WITH_TIMEOUT(!dora.state().trouble && dora.state().joined.waiting == 0, soon);
    }

    /// Both had said something else of one thing: it is chosen in the window, and holds at both.
    void aChoice(const Desk& cora, const Desk& dora) {
        cora.meet();
        QTRY_VERIFY2_WITH_TIMEOUT(cora.state().choices == 1 && dora.state().choices == 1,
                                  qPrintable(cora.told() + dora.told()), soon);
        keepPicture(*dora.window, u"7-choice-waits"_s);
        bool walked = false;
        QString stands;
        inNextDialog([&](QWidget* shown) {
            keepPicture(*shown, u"8-store"_s);
            inDialogAfter(shown, [&](QWidget* choices) {
                keepPicture(*choices, u"9-choices"_s);
                stands = QString::fromStdString(dora.setsOf("Ada", 60).front().set.note);
                walked = true;
                QTest::mouseClick(named<QPushButton>(*choices, "takeOther"), Qt::LeftButton);
            });
            QTest::keyClick(shown, Qt::Key_H, Qt::AltModifier);
        });
        dora.activate();
        QTest::keyClick(dora.window.get(), Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
        QTRY_VERIFY_WITH_TIMEOUT(walked && !QApplication::activeModalWidget(), soon);
        const std::string chosen = stands == u"straps"_s ? "grip slipped" : "straps";
        QCOMPARE(dora.setsOf("Ada", 60).front().set.note, chosen);
        QTRY_COMPARE_WITH_TIMEOUT(cora.setsOf("Ada", 60).front().set.note, chosen, soon);
        QTRY_VERIFY_WITH_TIMEOUT(cora.state().choices == 0 && dora.state().choices == 0, soon);
    }

    /// The page's three questions, and its answers: of 40, 60, 80 kg at 1.1, 0.9, 0.6 m/s in March.
    void theAnalyst() {
        const QString asked = ofThePage(u"### What an analyst can ask"_s, u"### Why it is"_s);
        QString sql = asked.mid(asked.indexOf(u"    --"_s));
        const Ran told = psql(address("ana"), sql);
        QVERIFY2(told.exit == 0, qPrintable(told.out));
        QVERIFY2(told.out.contains(u"2026-03-14, 3, "_s), qPrintable(told.out));
        for (const QString& figure : {u"1.6167"_s, u"-0.0125"_s, u"0.9868"_s, u"0.0408"_s})
            QVERIFY(asked.contains(figure));
        const auto cells = told.out.section(u'\n', 0, 0).split(u", "_s);
        QVERIFY2(cells.size() == 7, qPrintable(told.out));
        for (const auto& [column, expected] :
             {std::pair{3, 1.6167}, {4, -0.0125}, {5, 0.9868}, {6, 0.0408}})
            QVERIFY2(std::abs(cells.at(column).toDouble() - expected) < 0.00006,
                     qPrintable(told.out));
        QVERIFY2(told.out.contains(u"2026-03-14, 0.6\n2026-04-11, 0.7\n"_s), qPrintable(told.out));
        QVERIFY2(told.out.contains(u"2026-03-01, 1, 5\n2026-04-01, 1, 4\n"_s),
                 qPrintable(told.out));
        const Ran writes = psql(address("ana"), u"UPDATE slopebook.atoms SET alive = false;\n"_s);
        QVERIFY2(writes.exit != 0 && writes.out.contains(u"permission denied"_s),
                 qPrintable(writes.out));
    }

    /// Bea goes to Judo: Cora, who is not there, has her no more; Dora has.
    void movesSquads(const Desk& cora, const Desk& dora) {
        const Ran moved =
            psql(address("chief"),
                 u"SELECT slopebook.move_athlete("_s +
                     ofThePage(u"`SELECT slopebook.move_athlete("_s, u"` in psql moves"_s) + u'\n');
        QVERIFY2(moved.exit == 0 && !moved.out.trimmed().isEmpty(), qPrintable(moved.out));
        QTRY_VERIFY_WITH_TIMEOUT(!cora.has("Bea"), soon);
        QVERIFY(cora.has("Ada"));
        QCOMPARE(dora.sessionsOf("Bea"), 2U);
        inNextDialog([&](QWidget* shown) {
            keepPicture(*shown, u"10-departed"_s);
            QTest::keyClick(shown, Qt::Key_Escape);
        });
        cora.press(cora.window->actions().showStore);
    }

    /// What came stays; what is new waits, and is told so.
    void rightTaken(const Desk& cora, const Desk& dora) {
        QCOMPARE(grant(u"cora"_s, u"Rowing"_s, u"nothing"_s).exit, 0);
        cora.choose("Ada");
        cora.enter("44 1.0");
        cora.meet();
        QTRY_VERIFY2_WITH_TIMEOUT(!cora.state().meets && cora.state().joined.waiting > 0,
                                  qPrintable(cora.told()), soon);
        QVERIFY(cora.has("Ada"));
        QVERIFY(dora.setsOf("Ada", 44).empty());
        keepPicture(*cora.window, u"11-right-taken"_s);
        cora.window->wear(Scheme::Dark);
        cora.window->speak(u"de"_s);
        QTest::qWait(200); // built anew, and laid out
        keepPicture(*cora.window, u"12-right-taken-german-dark"_s);
        inNextDialog([&](QWidget* shown) {
            keepPicture(*shown, u"13-store-german-dark"_s);
            QTest::keyClick(shown, Qt::Key_Escape);
        });
        cora.press(cora.window->actions().showStore);
        cora.window->speak(u"en"_s);
        cora.window->wear(Scheme::Light);
        QCOMPARE(grant(u"cora"_s, u"Rowing"_s, u"write"_s).exit, 0);
        cora.meet();
        QTRY_VERIFY2_WITH_TIMEOUT(cora.state().joined.waiting == 0 && !cora.state().trouble,
                                  qPrintable(cora.told()), soon);
        QTRY_COMPARE_WITH_TIMEOUT(dora.setsOf("Ada", 44).size(), 1U, soon);
    }

    void leaves(const Desk& cora) {
        bool asked = false;
        inNextDialog([&](QWidget* question) {
            keepPicture(*question, u"14-leave"_s);
            asked = true;
            QTest::keyClick(question, Qt::Key_L, Qt::AltModifier);
        });
        cora.press(cora.window->actions().leaveStore);
        QTRY_VERIFY(asked && !cora.line());
        QVERIFY(!meetings::joined(cora.log()));
        QCOMPARE(cora.setsOf("Ada", 80).size(), 2U);
        cora.enter("46 1.0");
        keepPicture(*cora.window, u"15-left"_s);
    }
};

QTEST_MAIN(TestPlaySeason)
#include "tst_playseason.moc"
