// SPDX-License-Identifier: GPL-3.0-or-later
// Networks that break and servers that die: at whatever message, a push is all there or not at all,
// and sent again it counts once; a store that went back to a backup is noticed.
#include "tests/store/storeworld.h"
#include "tests/support/cuttingproxy.h"
#include "tests/support/longrun.h"

#include <atomic>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <memory>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <utility>

using namespace slopebook;
using namespace slopebook::test;
using Answer = Pushed::Answer;
using Kind = StoreError::Kind;

class TestStoreCuts : public QObject {
    Q_OBJECT
    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<CuttingProxy> m_proxy;
    std::unique_ptr<Connection> m_direct; ///< past the proxy
    unsigned m_next = 1000;

    std::vector<Atom> fresh() {
        m_next += 100;
        const std::string n = std::to_string(m_next);
        return smallSquad(m_world->rowing, m_next, "Ada " + n, "Bench pull " + n);
    }
    Connection throughProxy() const {
        return Connection::open(store::Address::read(Postgres::addressAt(m_proxy->port(), "cora") +
                                                     " sslmode=disable gssencmode=disable"));
    }
    std::int64_t standing(const std::vector<Atom>& batch) {
        std::vector<Sixteen> uuids;
        for (const Atom& one : batch)
            uuids.push_back(one.uuid);
        if (!m_direct || !m_direct->open())
            m_direct = std::make_unique<Connection>(m_world->as("cora"));
        return m_direct
            ->ask("SELECT count(*) FROM slopebook.atoms WHERE id = ANY ($1::uuid[])",
                  {store::uuidsText(uuids)})
            .integer(0, 0);
    }

private Q_SLOTS:
    void initTestCase() {
        try {
            m_world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        m_proxy = std::make_unique<CuttingProxy>(m_world->server.port());
    }

    // From the first message of the connection to the last of the push, in both directions.
    void cutAtEveryMessage_data() {
        QTest::addColumn<bool>("much");
        QTest::newRow("one statement") << false;
        QTest::newRow("by COPY") << true;
    }
    void cutAtEveryMessage() {
        QFETCH(bool, much);
        const auto more = [&](std::vector<Atom> batch) {
            for (unsigned i = 0; much && i < 500; ++i)
                batch.push_back(setOf(100'000 + m_next * 1000 + i, m_world->rowing, batch[2].uuid,
                                      batch[0].uuid, 10 + static_cast<int>(i), 1, "1"));
            return batch;
        };
        const auto tried = [&](const std::vector<Atom>& batch) -> std::optional<Pushed> {
            try {
                Connection cora = throughProxy();
                return store::push(cora, m_world->begin, batch);
            } catch (const StoreError& error) {
                if (error.kind() != Kind::Lost && error.kind() != Kind::Unreachable)
                    throw;
            }
            return std::nullopt;
        };
        m_proxy->cutAt(0);
        QVERIFY(tried(more(fresh())));
        const int messages = m_proxy->seen();
        QVERIFY2(messages > 30, qPrintable(QString::number(messages)));
        int arrived = 0, told = 0;
        // the handshake is cut everywhere once; of the long one a few of its middle
        const int step = much ? std::max(1, messages / rounds("SLOPEBOOK_STORE_CUTS", 6, 1000)) : 1;
        for (int at = much ? 25 : 1; at <= messages; at += step) {
            const auto batch = more(fresh());
            m_proxy->cutAt(at);
            std::optional<Pushed> first;
            const std::string said = refusal([&] { first = tried(batch); });
            QVERIFY2(said == "done", said.c_str());
            const auto there = standing(batch);
            QVERIFY2(
                there == 0 || there == std::int64_t(batch.size()),
                qPrintable(QStringLiteral("cut at %1 of %2: %3").arg(at).arg(messages).arg(there)));
            if (first) {
                ++told;
                QCOMPARE(there, std::int64_t(batch.size())); // what was acknowledged stands
            }
            arrived += there > 0;
            m_proxy->cutAt(0);
            const Pushed second = store::push(*m_direct, m_world->begin, batch);
            QCOMPARE(second.answer, Answer::Ok);
            QCOMPARE(standing(batch), std::int64_t(batch.size()));
            const Pushed third = store::push(*m_direct, m_world->begin, batch);
            QVERIFY(third.answer == Answer::Ok && third.wrote == 0);
        }
        if (!much)
            QVERIFY2(arrived > told, "no cut came after the commit: nothing was tried");
    }

    // The network swallows a push and spits it out later: before the second try, after it, and
    // after more has been written.
    void aPushThatComesLate() {
        for (const int when : {0, 1, 2}) {
            const auto batch = fresh();
            // the push's own messages come after those of the connection
            m_proxy->cutAt(0);
            auto cora = std::make_unique<Connection>(throughProxy());
            m_proxy->holdAt(1);
            QVERIFY_THROWS_EXCEPTION(StoreError, store::push(*cora, m_world->begin, batch));
            QCOMPARE(standing(batch), std::int64_t(0));
            Connection direct = m_world->as("cora");
            const auto again = [&] {
                const Pushed pushed = store::push(direct, m_world->begin, batch);
                QCOMPARE(pushed.answer, Answer::Ok);
            };
            const Atom later = edited(batch[1], named("Later " + std::to_string(m_next)));
            if (when >= 1)
                again();
            if (when == 2)
                QCOMPARE(store::push(direct, m_world->begin, std::vector{later}).wrote,
                         std::int64_t(1));
            const Mark before = StoreWorld::markOf(direct);
            m_proxy->deliverLate();
            if (when == 0) {
                QTRY_COMPARE(standing(batch), std::int64_t(batch.size()));
                QCOMPARE(StoreWorld::markOf(direct).n, before.n + 1);
                again();
                QCOMPARE(StoreWorld::markOf(direct).n, before.n + 1);
            } else {
                QTest::qWait(100);
                QCOMPARE(StoreWorld::markOf(direct), before);
                const Pulled now = pulled(direct, std::nullopt, {{.squad = m_world->rowing}});
                QCOMPARE(now.find(later.uuid)->trail.size(),
                         when == 2 ? std::size_t(2) : std::size_t(1));
            }
        }
    }

    // -9 to the whole server, while a desk pushes one batch after the other.
    void theServerIsKilledInTheMiddle() {
        std::mt19937 random(20);
        const int kills = rounds("SLOPEBOOK_STORE_KILLS", 2, 100);
        int late = 0;
        for (int kill = 0; kill < kills;) {
            std::vector<std::vector<Atom>> batches;
            for (int i = 0; i < 120; ++i)
                batches.push_back(fresh());
            std::atomic<int> acknowledged = 0;
            std::thread desk([&] {
                try {
                    Connection cora = m_world->as("cora");
                    for (const auto& batch : batches) {
                        if (store::push(cora, m_world->begin, batch).answer != Answer::Ok)
                            return;
                        ++acknowledged;
                    }
                } catch (const StoreError&) { // NOLINT(bugprone-empty-catch): the server is gone
                }
            });
            const int after = 1 + static_cast<int>(random() % 40);
            while (acknowledged < after)
                std::this_thread::sleep_for(std::chrono::microseconds(200));
            std::this_thread::sleep_for(std::chrono::microseconds(random() % 4000));
            m_world->server.killHard();
            desk.join();
            m_direct.reset();
            m_world->server.start();
            Connection cora = m_world->as("cora");
            const auto known = static_cast<std::size_t>(acknowledged.load());
            if (known == batches.size()) { // a busy machine slept over it
                QVERIFY(++late < 20);
                continue;
            }
            ++kill;
            for (std::size_t i = 0; i < batches.size() && i < known + 3; ++i) {
                const auto there = standing(batches[i]);
                QVERIFY(there == 0 || there == std::int64_t(batches[i].size()));
                QVERIFY2(i >= known || there > 0, "an acknowledged push is gone");
                QVERIFY(i <= known || there == 0);
            }
            QCOMPARE(store::push(cora, m_world->begin, batches[known]).answer, Answer::Ok);
        }
    }

    // Back to a dump, and grown again to the same number: the mark of before is not known.
    void aStoreThatWentBackIsNoticed() {
        Connection cora = m_world->as("cora");
        std::vector<Mark> marks;
        const auto note = [&](const std::vector<Atom>& batch) {
            marks.push_back(store::push(cora, m_world->begin, batch).now);
        };
        note(fresh());
        note(fresh());
        Postgres& server = m_world->server;
        const std::string dump = (server.folder() / "dump.sql").string();
        server.run("pg_dump", "--create -f " + dump + " squad");
        note(fresh());
        note(fresh());
        const auto after = pulled(cora, marks.back(), {{.squad = m_world->rowing}});
        m_direct.reset();
        server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
        server.run("psql", "-q -X -v ON_ERROR_STOP=1 -f " + dump + " postgres");

        Connection again = m_world->as("cora");
        QVERIFY(!store::lookAt(again, marks[3]).knowsMark);
        const auto other = fresh(), another = fresh();
        QCOMPARE(store::push(again, marks[3], other).answer, Answer::WentBack);
        QCOMPARE(standing(other), std::int64_t(0));
        QCOMPARE(store::push(again, marks[1], other).answer, Answer::Ok); // somebody else's
        QCOMPARE(store::push(again, marks[1], another).answer, Answer::Ok);
        const auto look = store::lookAt(again, marks[3]);
        QCOMPARE(look.now.n, marks[3].n); // as high as it was
        QVERIFY(!look.knowsMark);
        const Pulled nothing = pulled(again, marks[3], {{.squad = m_world->rowing}});
        QVERIFY(!nothing.look.knowsMark && nothing.atoms.empty());
        QCOMPARE(store::lastCommon(again, marks), std::optional(marks[1]));
        QCOMPARE(store::lastCommon(again, std::vector{marks[3]}), std::nullopt);
        // what stood above it is sent again, and all is there
        std::vector<Atom> unsent;
        for (const Atom& one : after.atoms)
            if (one.version > marks[1].n)
                unsent.push_back(one);
        Pulled lifts = pulled(again, std::nullopt, {{}});
        std::erase_if(unsent,
                      [&](const Atom& one) { return one.kind == "set"; }); // their lifts went too
        QCOMPARE(unsent.size(), std::size_t(4));
        QCOMPARE(store::push(again, look.now, unsent).answer, Answer::Ok);
        // the rights came back with it
        QVERIFY(m_world->server.tryPsql("dora", "SELECT count(*) FROM slopebook.points").out ==
                "0\n");
        QVERIFY(m_world->server.tryPsql("dora", "UPDATE slopebook.store SET n = 9").exit != 0);
    }

    // Nobody is kept waiting by who went away in the middle of a transaction.
    void whoWentAwayHoldsNobodyUp() {
        Connection gone = m_world->as("cora");
        gone.run("SET idle_in_transaction_session_timeout = '150ms'");
        gone.run("BEGIN ISOLATION LEVEL READ COMMITTED");
        QCOMPARE(store::push(gone, m_world->begin, fresh()).answer, Answer::Ok);
        Connection other = m_world->as("cora");
        QCOMPARE(store::push(other, m_world->begin, fresh()).answer, Answer::Ok);
        QCOMPARE(other.ask("SHOW idle_in_transaction_session_timeout").text(0, 0),
                 std::string_view("30s"));
        // no setting of the database or of anybody's login: of who holds the store at psql
        // tst_storerights tells (whoHoldsItUpIsEnded)
        QCOMPARE(m_world->server.sql("SELECT count(*) FROM pg_db_role_setting"), std::string("0"));
        QVERIFY(refusal([&] { gone.ask("SELECT 1"); }) != "done");
    }

    // A desk that reads for long, statement by statement, finds what stood there when it began.
    void whoReadsSeesOneMoment() {
        const auto batch = fresh();
        Connection cora = m_world->as("cora"), admin = m_world->as("admin");
        QCOMPARE(store::push(cora, m_world->begin, batch).answer, Answer::Ok);
        bool moved = false;
        std::size_t hers = 0, left = 0;
        const auto look = store::pull(
            cora, std::nullopt, std::vector<store::Cursor>{{.squad = m_world->rowing}},
            [&](Atom&& one) {
                if (!std::exchange(moved, true)) // before it asks who has left
                    admin.ask("SELECT slopebook.move_athlete($1, $2)",
                              {store::uuidText(batch[1].uuid), store::uuidText(m_world->judo)});
                hers += one.uuid == batch[1].uuid;
            },
            [&](const store::Departed&) { ++left; });
        QCOMPARE(hers, std::size_t(1));
        QCOMPARE(left, std::size_t(0));
        QCOMPARE(pulled(cora, look.now, {{m_world->rowing, look.now.n}}).departed.size(),
                 std::size_t(1));
    }

    // Nobody's folder and no server is left, also where a test dies.
    void nothingIsLeftBehind() {
        const pid_t child = ::fork();
        if (child == 0) {
            new Postgres(); // NOLINT: it dies with it
            ::kill(::getpid(), SIGKILL);
        }
        int status = 0;
        QCOMPARE(::waitpid(child, &status, 0), child);
        QVERIFY(WIFSIGNALED(status));
        const auto folders = [&] {
            int count = 0;
            for (const auto& one :
                 std::filesystem::directory_iterator(std::filesystem::temp_directory_path()))
                if (one.path().filename().string().starts_with("slopebook-pg-") &&
                    one.path() != m_world->server.folder()) {
                    std::ifstream owner(one.path() / "test");
                    pid_t pid = 0;
                    if (owner >> pid && pid == child)
                        ++count;
                }
            return count;
        };
        QTRY_COMPARE_WITH_TIMEOUT(folders(), 0, 10'000);
    }
};

QTEST_GUILESS_MAIN(TestStoreCuts)
#include "tst_storecuts.moc"
