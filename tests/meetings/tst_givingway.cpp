// SPDX-License-Identifier: GPL-3.0-or-later
// What a meeting can only write in one long transaction (hundreds of sets speak of a lift that
// becomes one with the store's) gives way to who enters a set meanwhile, at the same program or
// another: within so many of SQLite's statements it is taken back, whatever the clock says, and
// once nobody enters anything it is done.
#include "core/log/asking.h"
#include "core/log/newsessions.h"
#include "tests/meetings/twodesks.h"
#include "tests/meetings/watchedwrites.h"

#include <fstream>

using namespace slopebook;
using namespace slopebook::test;
using namespace std::chrono_literals;

namespace {
/// Of thousands; each is some hundredths of a millisecond.
constexpr int fewStatements = 400;

/// What a meeting does through its connection, statement by statement.
class Steps {
public:
    enum In { Reading = SQLITE_TXN_READ, Writing = SQLITE_TXN_WRITE };

    /// At that statement of a transaction in which it only reads, or writes, something is done.
    Steps(const log::Log& log, In in, int at, std::function<void()> what)
        : m_db(log::connectionOf(log).database().getHandle()), m_in(in), m_at(at),
          m_what(std::move(what)) {
        sqlite3_trace_v2(m_db, SQLITE_TRACE_STMT, &Steps::begins, this);
        sqlite3_rollback_hook(m_db, &Steps::rolledBack, this);
        sqlite3_commit_hook(m_db, &Steps::commits, this);
    }
    ~Steps() {
        sqlite3_trace_v2(m_db, 0, nullptr, nullptr);
        sqlite3_rollback_hook(m_db, nullptr, nullptr);
        sqlite3_commit_hook(m_db, nullptr, nullptr);
    }
    Steps(const Steps&) = delete;
    Steps& operator=(const Steps&) = delete;

    /// From then until the transaction ended, and how it did; -1: it was not done, or is under way.
    int statementsUntilEnd() const { return m_untilEnd; }
    bool wasTakenBack() const { return m_takenBack; }
    /// Of the longest transaction that was committed.
    int longest() const { return m_longest; }

private:
    static int begins(unsigned /*event*/, void* self, void* /*statement*/, void* /*sql*/) {
        auto& steps = *static_cast<Steps*>(self);
        const int in = sqlite3_txn_state(steps.m_db, "main");
        steps.m_here = in == steps.m_was ? steps.m_here + 1 : 0;
        steps.m_was = in;
        if (steps.m_since >= 0)
            ++steps.m_since;
        if (in == steps.m_in && steps.m_here == steps.m_at && steps.m_what) {
            steps.m_since = 0;
            std::exchange(steps.m_what, nullptr)();
        }
        return 0;
    }
    void end(bool takenBack) {
        if (m_since < 0 || m_untilEnd >= 0)
            return;
        m_untilEnd = m_since;
        m_takenBack = takenBack;
    }
    static void rolledBack(void* self) { static_cast<Steps*>(self)->end(true); }
    static int commits(void* self) {
        auto& steps = *static_cast<Steps*>(self);
        steps.m_longest = std::max(steps.m_longest, steps.m_here);
        steps.end(false);
        return 0;
    }

    sqlite3* m_db;
    In m_in;
    int m_at;
    std::function<void()> m_what;
    int m_was = -1, m_here = 0, m_since = -1, m_untilEnd = -1, m_longest = 0;
    bool m_takenBack = false;
};
} // namespace

class TestGivingWay : public TwoDesks {
    Q_OBJECT

    enum class Who { Window, Program };

    /// A log with a "Bench pull" of its own.
    static void fill(const MeetingDesk& desk, const std::string& name, int sessions) {
        log::Log log = log::Log::create(desk.file());
        const LiftId lift = log.add(Lift{.name = "Bench pull"});
        const AthleteId who = log.add(Athlete{.name = name});
        log::addSessions(log, manySessions(who, lift, sessions));
    }
    /// The office's lift is in the store; hundreds of the rack's sets are of one that will be it.
    void prepare() {
        beginEmpty();
        fill(*m_office, "Ada", 2);
        m_office->join("Rowing");
        m_office->meet();
        fill(*m_rack, "Bea", 40);
        m_rack->join("Rowing");
    }
    static meetings::MeetingReport meet(log::Log& log, const meetings::Patience& patience = {}) {
        Connection store = Connection::open(meetings::addressOf(log));
        return meetings::meet(log, store, "2026-03-14T09:30:00Z", {}, patience);
    }
    /// At the rack; throws where it is refused.
    void enter(Who who) const {
        if (who == Who::Window) {
            log::Log log = m_rack->open();
            log.add(aSession(log), log.lifts().front().id, ladderSet(77.5, {0.5}));
            return;
        }
        const auto file = m_folder->path("sets.csv");
        std::ofstream(file) << "athlete,date,lift,set,rep,load_kg,velocity\n"
                               "Bea,2020-03-01,Bench pull,1,1,77.5,0.5\n";
        const std::string command = std::string(SLOPEBOOK_PROGRAM) + " import '" +
                                    m_rack->file().string() + "' '" + file.string() +
                                    "' >/dev/null";
        if (std::system(command.c_str()) != 0)
            throw std::runtime_error(command);
    }
    static bool hasEntry(const MeetingDesk& desk) {
        const log::Log log = desk.open();
        for (const auto& athlete : log.athletes())
            for (const auto& session : log.sessions(athlete.id))
                for (const auto& placed : log.session(session.id).sets)
                    if (placed.set.load == massFromKilograms(77.5))
                        return true;
        return false;
    }

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
    void requireOneLift() const {
        for (int i = 0; i < 2; ++i) {
            m_office->meet();
            m_rack->meet();
        }
        requireSame();
        QCOMPARE(m_rack->open().lifts().size(), std::size_t(1));
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
