// SPDX-License-Identifier: GPL-3.0-or-later
// What a meeting can only write in one long transaction (hundreds of sets speak of a lift that
// becomes one with the store's) gives way to who enters a set meanwhile, at the same program or
// another: within so many of SQLite's statements it is taken back, whatever the clock says, and
// once nobody enters anything it is done.
#include "core/log/asking.h"
#include "core/log/snapshot.h"
#include "tests/meetings/onelift.h"

using namespace slopebook;
using namespace slopebook::test;
using namespace std::chrono_literals;

namespace {
/// Of thousands; each is some hundredths of a millisecond.
constexpr int fewStatements = 400;
} // namespace

class TestGivingWay : public OneLift {
    Q_OBJECT

    struct Done {
        int statements = 0, longest = 0;
        bool takenBack = false;
        std::string refused{}; ///< of the entry
        bool waitedOn = false; ///< the meeting ended without it
    };
    /// The rack meets while somebody enters a set just then, and waits for it.
    Done meetWhile(Steps::In in, int at, Who who, const meetings::Patience& patience) const {
        Done done;
        std::thread entry;
        std::atomic<bool> entered = false;
        log::Log log = m_rack->open();
        const log::AskedFor asked(m_rack->file());
        {
            const Steps steps(log, in, at, [&] {
                entry = std::thread([&] {
                    try {
                        enter(who);
                    } catch (const std::exception& error) {
                        done.refused = error.what();
                    }
                    entered = true;
                });
                while (!asked.now() && !entered)
                    std::this_thread::sleep_for(1ms);
            });
            try {
                const auto report = meet(log, patience);
                if (report.taken.becameOne != 1)
                    done.refused = "nothing became one";
            } catch (const meetings::WaitsForPause&) {
                done.waitedOn = true;
            }
            done.statements = steps.statementsUntilEnd();
            done.takenBack = steps.wasTakenBack();
            done.longest = steps.longest();
        }
        if (entry.joinable())
            entry.join();
        return done;
    }

private Q_SLOTS:
    void initTestCase() { startStore(); }

    void anEntryIsWrittenMeanwhile_data() {
        QTest::addColumn<int>("in");
        QTest::addColumn<int>("at");
        QTest::addColumn<bool>("program");
        const int reading = Steps::Reading, writing = Steps::Writing;
        QTest::newRow("while it is read") << reading << 1500 << false;
        QTest::newRow("as it begins to be written") << writing << 1000 << false;
        QTest::newRow("while it is written") << writing << 5000 << false;
        QTest::newRow("before it ends") << writing << -100 << false;
        QTest::newRow("by another program") << writing << 5000 << true;
    }
    void anEntryIsWrittenMeanwhile() {
        QFETCH(int, in);
        QFETCH(int, at);
        QFETCH(bool, program);
        if (at < 0) { // from its end, which another like it shows
            prepare();
            at += meetWhile(Steps::Writing, -1, Who::Window, {}).longest;
        }
        prepare();
        const Done done = meetWhile(static_cast<Steps::In>(in), at,
                                    program ? Who::Program : Who::Window, {.pause = 100ms});
        QCOMPARE(done.refused, std::string());
        QVERIFY(done.takenBack);
        QVERIFY2(done.statements >= 0 && done.statements < fewStatements,
                 std::to_string(done.statements).c_str());
        QVERIFY2(done.longest > 20 * fewStatements, std::to_string(done.longest).c_str());
        QVERIFY(hasEntry(*m_rack));
        requireOneLift();
        QVERIFY(hasEntry(*m_office));
    }

    // Who enters on and on keeps it waiting; nothing of it stands meanwhile, and nothing is lost.
    void aPauseIsWaitedForAndNoLonger() {
        prepare();
        const auto before = saidBy(m_rack->file());
        const Done done =
            meetWhile(Steps::Writing, 3000, Who::Window, {.pause = 1h, .longest = 0s});
        QCOMPARE(done.refused, std::string());
        QVERIFY(done.takenBack && done.waitedOn);
        QVERIFY(hasEntry(*m_rack));
        QCOMPARE(m_rack->open().lifts().size(), std::size_t(1));
        const auto now = saidBy(m_rack->file());
        for (const auto& [uuid, said] : before)
            if (log::kindOfContent(std::get<0>(said)) == "set")
                QCOMPARE(now.at(uuid), said);
        QCOMPARE(findingsIn(m_rack->file()), std::string());
        requireOneLift();
    }

    // Of a hundred thousand reps that took longer than an entry.
    void itIsFreeBeforeWhatWasReadIsForgotten() {
        beginEmpty();
        fill(*m_rack, "Ada", 20);
        struct Forgotten {
            log::Log& by;
            std::optional<std::string>& refused;
            ~Forgotten() {
                try {
                    by.add(Lift{.name = "Sled"}); // by its own connection: SQLite waits for 2 s
                } catch (const std::exception& error) {
                    refused = error.what();
                }
            }
        };
        log::Log log = m_rack->open(), other = m_rack->open();
        std::optional<std::string> refused;
        log::GivesWay givesWay(log);
        const auto read = [&] {
            const log::Moment moment(log);
            std::ignore = log.athletes();
            const Forgotten forgotten{other, refused};
            const log::Asking asking(m_rack->file());
            for (int i = 0; i < 1'000'000; ++i)
                for (const auto& session : log.sessions(log.athletes().front().id))
                    std::ignore = log.session(session.id);
        };
        QVERIFY_THROWS_EXCEPTION(LogError, read());
        QVERIFY(givesWay.gaveWay());
        QVERIFY2(!refused, refused.value_or(std::string()).c_str());
        QCOMPARE(other.lifts().size(), std::size_t(2));
    }

    void whoAsksIsSeen() {
        beginEmpty();
        fill(*m_rack, "Ada", 1);
        fill(*m_office, "Bea", 1);
        const log::AskedFor rack(m_rack->file()), office(m_office->file()); // in one folder
        QVERIFY(!rack.now() && !office.now());
        {
            const log::Asking one(m_rack->file());
            const auto other = std::make_unique<log::Asking>(m_rack->file());
            QVERIFY(rack.now() && !office.now());
        }
        QVERIFY(!rack.now());
        const log::Asking nobody(m_folder->path("none.slopebook"));
        QVERIFY(!rack.now() && !log::AskedFor(m_folder->path("none.slopebook")).now());
    }
};

QTEST_GUILESS_MAIN(TestGivingWay)
#include "tst_givingway.moc"
