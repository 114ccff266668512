// SPDX-License-Identifier: GPL-3.0-or-later
// Two people at two laptops and an analyst at psql: two programs, each with a screen, a home and a
// login of its own, driven by keys and clicks, and a store of another machine's name, over TLS.
// Whatever is waited for is a state, in a log or in the store. (A season of it in one program, with
// all that can go wrong: tst_playseason.)
#include "tests/log/builders.h"
#include "tests/meetings/laptop.h"
#include "tests/store/storeworld.h"

#include <fstream>

using namespace slopebook;
using namespace slopebook::test;
using namespace Qt::StringLiterals;

class TestTwoLaptops : public QObject {
    Q_OBJECT
    std::unique_ptr<StoreWorld> m_world;
    Folder m_folder;
    std::unique_ptr<Laptop> m_cora, m_dora;

    std::string address(const char* login) const {
        return "host=store.test hostaddr=127.0.0.1 port=" + std::to_string(m_world->server.port()) +
               " dbname=squad user=" + login;
    }
    /// Its authority's certificate, and the password as a line of ~/.pgpass.
    void furnish(const std::filesystem::path& home, const std::string& login) const {
        std::filesystem::create_directories(home / ".postgresql");
        std::filesystem::copy_file(m_world->server.folder() / "root.crt",
                                   home / ".postgresql" / "root.crt");
        const auto file = home / ".pgpass";
        std::ofstream(file) << "store.test:*:squad:" << login << ':' << Postgres::passwordOf(login)
                            << '\n';
        std::filesystem::permissions(file, std::filesystem::perms(0600));
    }
    std::unique_ptr<Laptop> laptopOf(const char* login) const {
        auto laptop = std::make_unique<Laptop>(m_folder.path(login));
        furnish(laptop->home(), login);
        return laptop;
    }

    /// What the analyst reads, a row a line.
    QString asks(const QString& sql) const {
        QProcess psql;
        auto surroundings = QProcessEnvironment::systemEnvironment();
        surroundings.remove(u"PGPASSFILE"_s);
        surroundings.insert(u"HOME"_s, QString::fromStdString(m_folder.path("ana").string()));
        psql.setProcessEnvironment(surroundings);
        psql.setProcessChannelMode(QProcess::MergedChannels);
        psql.start(u"psql"_s, {u"-X"_s, u"-A"_s, u"-t"_s, u"-q"_s, u"-F"_s, u", "_s, u"-c"_s, sql,
                               QString::fromStdString(address("ana"))});
        psql.waitForFinished(60'000);
        return QString::fromUtf8(psql.readAll()).trimmed();
    }

    /// By the menu and the dialog. Its default button asks the store first, and then joins.
    void join(Laptop& laptop, const char* login) const {
        QVERIFY(laptop.focus(Laptop::mainWindow));
        laptop.keys({u"alt+l"_s, u"a"_s, u"j"_s});
        const QString dialog = u"^Join a shared store"_s;
        QVERIFY2(laptop.focus(dialog), "the dialog to join does not come");
        laptop.type(QString::fromStdString(address(login)));
        laptop.keepPicture(QLatin1String(login) + u"-joins"_s);
        QVERIFY(comes([&] {
            if (laptop.joined())
                return true;
            if (laptop.shows(dialog))
                laptop.keys({u"Return"_s});
            return false;
        }));
        QVERIFY(comes([&] { return !laptop.joined()->met.empty(); }));
    }
    bool nothingWaits(const Laptop& laptop) const {
        return comes([&] { return laptop.joined()->waiting == 0; });
    }

private Q_SLOTS:
    void initTestCase() {
        if (const QString tool = Laptop::missing(); !tool.isEmpty())
            QSKIP(qPrintable(tool + u" is not installed (tests/packages.txt): two laptops have "
                                    "no screen or no hands"_s));
        try {
            m_world = std::make_unique<StoreWorld>(PostgresOptions{.tls = true});
            const auto admin = store::Address::read(m_world->server.address("admin"));
            store::grant(admin, "dora", "Rowing", store::May::Write);
            store::grant(admin, "dora", "Judo", store::May::Nothing);
            furnish(m_folder.path("ana"), "ana");
            m_cora = laptopOf("cora");
            m_dora = laptopOf("dora");
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        {
            log::Log log = log::Log::create(m_cora->log());
            log.add(Lift{.name = "Bench pull"});
            log.add(Athlete{.name = "Ada"});
        }
        log::Log::create(m_dora->log());
    }
    void cleanup() {
        if (!QTest::currentTestFailed() || !m_dora)
            return;
        m_cora->keepPicture(u"cora-failed"_s);
        m_dora->keepPicture(u"dora-failed"_s);
        qInfo() << m_cora->trouble() << m_dora->trouble();
    }

    void aDay() {
        QVERIFY2(m_cora->open(), qPrintable(m_cora->trouble()));
        QVERIFY2(m_dora->open(), qPrintable(m_dora->trouble()));

        // Cora has a log already; Dora begins with an empty one, and has all of it.
        for (const char* line : {"40 1.1 1.05", "60 0.88 0.9"})
            m_cora->enter(QLatin1String(line));
        QVERIFY(comes([&] { return m_cora->setsOf("Ada", 60) == 1; }));
        QCOMPARE(m_cora->setsOf("Ada", 40), std::size_t(1));
        join(*m_cora, "cora");
        QVERIFY(nothingWaits(*m_cora));
        m_cora->keepPicture(u"cora-joined"_s);
        join(*m_dora, "dora");
        QVERIFY(comes([&] { return m_dora->setsOf("Ada", 60) == 1; }));
        m_dora->keepPicture(u"dora-joined"_s);

        // What is typed at one comes to the other by itself.
        m_cora->enter(u"80 0.6"_s);
        QVERIFY(comes([&] { return m_dora->setsOf("Ada", 80) == 1; }));
        m_dora->enter(u"50 1.0"_s);
        QVERIFY(comes([&] { return m_cora->setsOf("Ada", 50) == 1; }));
        // Taken back by a key at one, it is gone at both.
        QVERIFY(m_dora->focus(Laptop::mainWindow));
        m_dora->keys({u"ctrl+z"_s});
        QVERIFY(comes([&] { return m_cora->setsOf("Ada", 50) == 0; }));
        m_cora->keepPicture(u"cora-taken-back"_s);

        // The analyst, of 40, 60, 80 kg at 1.1, 0.9, 0.6 m/s: as DEVELOPERS.md has it.
        const QString lines = asks(u"SELECT athlete, n, round(v0::numeric, 4), "
                                   "round(slope::numeric, 4) FROM slopebook.lines"_s);
        QCOMPARE(lines, u"Ada, 3, 1.6167, -0.0125"_s);
        QVERIFY(
            asks(u"UPDATE slopebook.atoms SET alive = false"_s).contains(u"permission denied"_s));

        // The store is gone: work goes on, and what it wrote goes when the store is back. Dora asks
        // for it by a click and a key.
        m_world->server.stop();
        m_dora->enter(u"70 0.75"_s);
        QVERIFY(comes([&] { return m_dora->setsOf("Ada", 70) == 1; }));
        QVERIFY(m_dora->joined()->waiting > 0);
        const QString dialog = u"^Shared store"_s;
        QVERIFY(comes([&] {
            if (!m_dora->shows(dialog))
                m_dora->click(Laptop::mainWindow, -60, -12);
            return m_dora->shows(dialog);
        }));
        QVERIFY(m_dora->focus(dialog));
        m_dora->keepPicture(u"dora-store-gone"_s);
        m_world->server.start();
        QVERIFY(comes([&] {
            if (m_dora->joined()->waiting > 0)
                m_dora->keys({u"alt+m"_s});
            return m_dora->joined()->waiting == 0;
        }));
        m_dora->keepPicture(u"dora-store-back"_s);
        m_dora->keys({u"Escape"_s});
        QVERIFY(comes([&] { return !m_dora->shows(dialog); }));
        QVERIFY(m_cora->focus(Laptop::mainWindow));
        QVERIFY(comes([&] { return m_cora->setsOf("Ada", 70) == 1; }));
        QCOMPARE(asks(u"SELECT n FROM slopebook.lines"_s), u"4"_s);
        m_cora->keepPicture(u"cora-at-last"_s);

        for (Laptop* laptop : {m_cora.get(), m_dora.get()}) {
            QCOMPARE(laptop->quit(), std::optional(0));
            QCOMPARE(laptop->trouble(), QString());
            const auto findings = laptop->says([](const log::Log& log) { return log.check(); });
            QVERIFY2(findings.empty(), findings.empty() ? "" : english(findings.front()).c_str());
        }
    }
};

QTEST_GUILESS_MAIN(TestTwoLaptops)
#include "tst_twolaptops.moc"
