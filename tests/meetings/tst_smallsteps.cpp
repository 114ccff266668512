// SPDX-License-Identifier: GPL-3.0-or-later
// Joining a store, leaving it, an athlete who moves away and one who is removed elsewhere: each is
// written in small transactions, whatever the log holds; ended before any of them, the same again,
// or the next meeting, comes to the same end.
#include "core/log/asking.h"
#include "core/log/newsessions.h"
#include "tests/meetings/twodesks.h"
#include "tests/meetings/watchedwrites.h"

using namespace slopebook;
using namespace slopebook::test;

namespace {
/// Rows that a transaction may change: of hundreds of things, a few each.
constexpr std::int64_t fewRows = 6000;

/// An athlete with many sessions of ten sets, each fifth a repeat of the one before; with
/// conditions and check loads, some sets removed again.
AthleteId addMany(log::Log& log, const std::string& name, int sessions) {
    const LiftId lift = log.lifts().front().id;
    const AthleteId who = log.add(Athlete{.name = name});
    const auto ids = log::addSessions(log, manySessions(who, lift, sessions));
    for (std::size_t i = 4; i < ids.size(); i += 5) {
        SessionHead head = log.session(ids[i]).head.value;
        head.repeatOf = ids[i - 1];
        log.change(ids[i], head);
        log.remove(log.session(ids[i]).sets.back().id);
    }
    log.setCheckLoads(who, lift, {massFromKilograms(40), massFromKilograms(60)});
    return who;
}

std::set<Sixteen> sentIn(const log::Log& log) {
    std::set<Sixteen> all;
    log::visitSent(log::connectionOf(log), -1, [&](const log::Sent& one) { all.insert(one.uuid); });
    return all;
}
std::set<Sixteen> unsentIn(const log::Log& log) {
    std::set<Sixteen> all;
    log::visitUnsent(log::connectionOf(log), [&](const log::Unsent& one) { all.insert(one.uuid); });
    return all;
}
std::set<Sixteen> namesIn(const log::Log& log) {
    std::set<Sixteen> all;
    for (const auto& [uuid, one] : heldBy(log))
        all.insert(uuid);
    return all;
}

/// At one of a log's commits somebody begins to wait for it, and is counted what is committed
/// before he waits no more.
class WaitsAt {
public:
    static constexpr std::chrono::milliseconds wanted{50};

    WaitsAt(const log::Log& log, int at)
        : m_db(log::connectionOf(log).database().getHandle()), m_asked(log.file()),
          m_file(log.file()), m_at(at) {
        sqlite3_commit_hook(m_db, &WaitsAt::committing, this);
    }
    ~WaitsAt() {
        sqlite3_commit_hook(m_db, nullptr, nullptr);
        if (m_somebody.joinable())
            m_somebody.join();
    }
    WaitsAt(const WaitsAt&) = delete;
    WaitsAt& operator=(const WaitsAt&) = delete;

    int commits() const { return m_commits; }
    int meanwhile() const { return m_meanwhile; }
    int afterwards() const { return m_afterwards; }
    /// Of a busy machine he may have waited for longer than anybody is waited for.
    bool tooLong() const { return m_took.load() > std::chrono::milliseconds(300); }

private:
    static int committing(void* self) {
        auto& one = *static_cast<WaitsAt*>(self);
        if (one.m_somebody.joinable())
            ++(one.m_asked.now() ? one.m_meanwhile : one.m_afterwards);
        if (++one.m_commits != one.m_at)
            return 0;
        std::atomic<bool> waits = false;
        one.m_somebody = std::thread([&] {
            const auto from = std::chrono::steady_clock::now();
            {
                const log::Asking asking(one.m_file);
                waits = true;
                std::this_thread::sleep_for(wanted);
            }
            one.m_took = std::chrono::steady_clock::now() - from;
        });
        while (!waits)
            std::this_thread::yield();
        return 0;
    }

    sqlite3* m_db;
    const log::AskedFor m_asked;
    const std::filesystem::path m_file;
    int m_at;
    int m_commits = 0, m_meanwhile = 0, m_afterwards = 0;
    std::thread m_somebody;
    std::atomic<std::chrono::steady_clock::duration> m_took{};
};

/// All that a log says and knows of its store.
struct State {
    Said said{};
    std::set<Sixteen> sent{}, unsent{};
    friend bool operator==(const State&, const State&) = default;
};
State stateOf(const std::filesystem::path& file) {
    const log::Log log = log::Log::open(file);
    return {.said = saidBy(file), .sent = sentIn(log), .unsent = unsentIn(log)};
}
} // namespace

class TestSmallSteps : public TwoDesks {
    Q_OBJECT

    std::filesystem::path manySets(const char* name, int sessions) const {
        const auto file = m_folder->path(name);
        log::Log log = log::Log::create(file);
        log.add(Lift{.name = "Bench pull"});
        addMany(log, "Mover", sessions);
        addMany(log, "Stayer", 2);
        return file;
    }
    std::string address() const { return m_world->server.address("cora"); }
    void join(const std::filesystem::path& file) const {
        log::Log log = log::Log::open(file);
        meetings::joinStore(log, address(), "Rowing");
    }
    static meetings::MeetingReport meet(log::Log& log) {
        Connection store = Connection::open(meetings::addressOf(log));
        return meetings::meet(log, store, "2026-03-14T09:30:00Z");
    }
    static void meet(const std::filesystem::path& file) {
        log::Log log = log::Log::open(file);
        meet(log);
    }
    /// A copy of a log, with which the work is ended before each of its transactions in turn, then
    /// done again: the same comes of it.
    template <class Work>
    void cutEverywhere(const std::filesystem::path& from, const Work& work) const {
        const auto whole = m_folder->path("whole.slopebook");
        std::filesystem::copy_file(from, whole, std::filesystem::copy_options::overwrite_existing);
        int commits = 0;
        {
            log::Log log = log::Log::open(whole);
            const WatchedWrites watched(log);
            work(log);
            commits = watched.commits();
        }
        QVERIFY2(commits >= 4, std::to_string(commits).c_str());
        const State wanted = stateOf(whole);
        for (int at = 1; at <= commits; ++at) {
            const auto cut = m_folder->path("cut.slopebook");
            std::filesystem::copy_file(from, cut,
                                       std::filesystem::copy_options::overwrite_existing);
            {
                log::Log log = log::Log::open(cut);
                const WatchedWrites watched(log, at);
                bool wasCut = false;
                try {
                    work(log);
                } catch (const LogError&) {
                    wasCut = true;
                }
                if (watched.commits() < at) // a quick machine writes more in each
                    break;
                QVERIFY(wasCut);
            }
            QCOMPARE(findingsIn(cut), std::string());
            {
                log::Log log = log::Log::open(cut);
                try {
                    work(log);
                } catch (const LogError& error) { // it was done before the last transaction
                    QCOMPARE(error.kind(), LogError::Kind::Conflict);
                }
            }
            QCOMPARE(findingsIn(cut), std::string());
            const State now = stateOf(cut);
            const std::string where = difference(now.said, wanted.said);
            QVERIFY2(where.empty(), (std::to_string(at) + ": " + where).c_str());
            QVERIFY2(now == wanted, std::to_string(at).c_str());
        }
    }

private Q_SLOTS:
    void initTestCase() { startStore(); }
    void init() { beginEmpty(); }

    void joiningAndLeavingAreSmall() {
        const auto file = manySets("many.slopebook", 300);
        log::Log log = log::Log::open(file);
        const auto things = static_cast<std::int64_t>(namesIn(log).size());
        QVERIFY(things > 3000);
        {
            const WatchedWrites watched(log);
            meetings::joinStore(log, address(), "Rowing");
            QVERIFY(watched.commits() > 2);
            QVERIFY(watched.allRows() >= things);
            QVERIFY2(watched.mostRows() < fewRows, std::to_string(watched.mostRows()).c_str());
        }
        QCOMPARE(unsentIn(log), namesIn(log));
        {
            const WatchedWrites watched(log);
            meetings::leaveStore(log);
            QVERIFY(watched.commits() > 2);
            QVERIFY2(watched.mostRows() < fewRows, std::to_string(watched.mostRows()).c_str());
        }
        QVERIFY(unsentIn(log).empty() && sentIn(log).empty());
        QCOMPARE(findingsIn(file), std::string());
    }

    // What is entered by another program while the log joins waits to be sent as well.
    // Who waits for the log is let in before the next step, however long he takes to see that it is
    // free.
    void whoWaitsIsLetIn() {
        const auto file = manySets("many.slopebook", 300);
        for (int tries = 0; tries < 10; ++tries) {
            const auto copy = m_folder->path("copy.slopebook");
            std::filesystem::copy_file(file, copy,
                                       std::filesystem::copy_options::overwrite_existing);
            log::Log log = log::Log::open(copy);
            const WaitsAt waits(log, 2);
            meetings::joinStore(log, address(), "Rowing");
            if (waits.tooLong())
                continue;
            QCOMPARE(waits.meanwhile(), 0);
            QVERIFY(waits.afterwards() > 0);
            return;
        }
        QFAIL("this machine is too busy to tell");
    }

    void whoWaitsIsLetInAtAnyStepOfAMeeting_data() {
        QTest::addColumn<bool>("comes");
        QTest::newRow("all goes") << false;
        QTest::newRow("all comes") << true;
    }
    void whoWaitsIsLetInAtAnyStepOfAMeeting() {
        QFETCH(bool, comes);
        auto file = manySets("some.slopebook", 3);
        join(file);
        if (comes) {
            meet(file);
            file = m_folder->path("empty.slopebook");
            log::Log::create(file);
            join(file);
        }
        const auto copy = m_folder->path("copy.slopebook");
        int commits = 1, tries = 0;
        for (int at = 1; at <= commits;) {
            QVERIFY2(++tries < 100, "this machine is too busy to tell");
            std::filesystem::copy_file(file, copy,
                                       std::filesystem::copy_options::overwrite_existing);
            log::Log log = log::Log::open(copy);
            const WaitsAt waits(log, at);
            meet(log);
            if (waits.tooLong())
                continue;
            commits = std::max(commits, waits.commits());
            QVERIFY2(waits.meanwhile() == 0, std::to_string(at).c_str());
            ++at;
        }
        QVERIFY2(commits > 2, std::to_string(commits).c_str());
    }

    void whatIsEnteredMeanwhileIsNoted() {
        const auto file = manySets("many.slopebook", 120);
        log::Log log = log::Log::open(file);
        int entered = 0;
        meetings::joinStore(log, address(), "Rowing", [&](std::int64_t, std::int64_t) {
            if (entered >= 12)
                return true;
            log::Log other = log::Log::open(file);
            const auto who = other.athletes().front().id;
            other.add(other.sessions(who).front().id, other.lifts().front().id,
                      ladderSet(30 + ++entered, {0.8}));
            return true;
        });
        QCOMPARE(entered, 12);
        QCOMPARE(unsentIn(log), namesIn(log));
        QCOMPARE(findingsIn(file), std::string());
    }

    void joiningIsTakenUpAgain() {
        const auto file = manySets("many.slopebook", 90);
        cutEverywhere(file, [&](log::Log& log) {
            if (!meetings::joined(log))
                meetings::joinStore(log, address(), "Rowing");
        });
    }

    void leavingIsTakenUpAgainByWhoJoinsNext() {
        const auto file = manySets("many.slopebook", 90);
        join(file);
        meet(file);
        const auto left = [&](log::Log& log) {
            if (meetings::joined(log))
                meetings::leaveStore(log);
        };
        cutEverywhere(file, [&](log::Log& log) {
            left(log);
            meetings::joinStore(log, address(), "Rowing");
        });
    }

    // To another squad, which this desk does not see.
    void anAthleteWhoMovesIsLetGoInSteps_data() {
        QTest::addColumn<int>("sessions");
        QTest::newRow("some hundred sets, cut everywhere") << 25;
        QTest::newRow("thousands") << 250;
    }
    void anAthleteWhoMovesIsLetGoInSteps() {
        QFETCH(int, sessions);
        const auto file = manySets("many.slopebook", sessions);
        join(file);
        meet(file);
        const auto before = stateOf(file);
        m_world->server.sql("SELECT slopebook.move_athlete(id, '" + store::uuidText(m_world->judo) +
                            "') FROM slopebook.atoms WHERE content ->> 'name' = 'Mover'");
        if (sessions < 100) {
            cutEverywhere(file, [](log::Log& log) { meet(log); });
            return;
        }
        log::Log log = log::Log::open(file);
        const WatchedWrites watched(log);
        const auto report = meet(log);
        QCOMPARE(report.departed.size(), std::size_t(1));
        QVERIFY(!report.departed.front().stayed);
        QVERIFY(watched.commits() > 20);
        QVERIFY2(watched.mostRows() < fewRows, std::to_string(watched.mostRows()).c_str());
        QCOMPARE(log.athletes().size(), std::size_t(1));
        QCOMPARE(findingsIn(file), std::string());
        QVERIFY(sentIn(log).size() < before.sent.size() / 10);
        QVERIFY(unsentIn(log).empty());
    }

    // A set that is entered between two of the steps stays here with what it belongs to, and goes
    // nowhere.
    void whatIsEnteredMeanwhileStays() {
        const auto file = manySets("many.slopebook", 40);
        join(file);
        meet(file);
        m_world->server.sql("SELECT slopebook.move_athlete(id, '" + store::uuidText(m_world->judo) +
                            "') FROM slopebook.atoms WHERE content ->> 'name' = 'Mover'");
        SessionId last{};
        {
            log::Log log = log::Log::open(file);
            const WatchedWrites watched(log, 4);
            QVERIFY_THROWS_EXCEPTION(LogError, meet(log));
        }
        {
            log::Log log = log::Log::open(file);
            for (const auto& athlete : log.athletes())
                if (athlete.value.name == "Mover")
                    last = log.sessions(athlete.id).back().id;
            QVERIFY(last != SessionId{});
            log.add(last, log.lifts().front().id, ladderSet(77, {0.5}));
        }
        log::Log log = log::Log::open(file);
        const auto report = meet(log);
        QCOMPARE(report.departed.size(), std::size_t(1));
        QVERIFY(report.departed.front().stayed);
        QCOMPARE(report.held, 1);
        QVERIFY(std::ranges::any_of(log.session(last).sets, [](const auto& one) {
            return one.set.load == massFromKilograms(77);
        }));
        QCOMPARE(meet(log).departed.size(), std::size_t(0));
        QCOMPARE(findingsIn(file), std::string());
    }

    // By another desk, with all that was his.
    void anAthleteWhoIsRemovedGoesInSteps_data() {
        QTest::addColumn<int>("sessions");
        QTest::newRow("some hundred sets, cut everywhere") << 25;
        QTest::newRow("thousands") << 150;
    }
    void anAthleteWhoIsRemovedGoesInSteps() {
        QFETCH(int, sessions);
        const auto rack = manySets("rack.slopebook", sessions);
        join(rack);
        meet(rack);
        const auto office = m_folder->path("office.slopebook");
        log::Log::create(office);
        join(office);
        meet(office);
        {
            log::Log log = log::Log::open(rack);
            for (const auto& athlete : log.athletes())
                if (athlete.value.name == "Mover")
                    removeAll(log, athlete.id);
            meet(log);
        }
        if (sessions < 100) {
            cutEverywhere(office, [](log::Log& log) { meet(log); });
        } else {
            log::Log log = log::Log::open(office);
            const WatchedWrites watched(log);
            meet(log);
            QVERIFY(watched.commits() > 10);
            QVERIFY2(watched.mostRows() < fewRows, std::to_string(watched.mostRows()).c_str());
            const std::string where = difference(saidBy(office), saidBy(rack));
            QVERIFY2(where.empty(), where.c_str());
        }
    }

private:
    static void removeAll(log::Log& log, AthleteId who) {
        log.together([&] {
            auto sessions = log.sessions(who);
            for (auto at = sessions.rbegin(); at != sessions.rend(); ++at)
                log.remove(at->id);
            log.setCheckLoads(who, log.lifts().front().id, {});
            log.remove(who);
        });
    }
};

QTEST_GUILESS_MAIN(TestSmallSteps)
#include "tst_smallsteps.moc"
