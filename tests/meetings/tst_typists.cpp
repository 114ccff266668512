// SPDX-License-Identifier: GPL-3.0-or-later
// What a meeting can only write in one long transaction, whose commit cannot give way and which is
// long to take back, is written only while nobody is in the middle of typing a set, in this program
// or another: who begins one has it taken back before he enters.
#include "core/log/asking.h"
#include "tests/log/child.h"
#include "tests/meetings/onelift.h"

#include <array>
#include <csignal>

using namespace slopebook;
using namespace slopebook::test;
using namespace std::chrono_literals;

namespace {
namespace fs = std::filesystem;

/// Another program, in whose window somebody types.
class OtherTypist {
public:
    explicit OtherTypist(const fs::path& log) {
        if (::pipe(m_down.data()) != 0 || ::pipe(m_up.data()) != 0)
            throw std::runtime_error("no pipe");
        m_child = ::fork();
        if (m_child != 0)
            return;
        log::Typist typist(log);
        for (char word = 0; ::read(m_down[0], &word, 1) == 1;) {
            typist.setTypes(word == 'y');
            if (::write(m_up[1], &word, 1) != 1)
                break;
        }
        ::_exit(0);
    }
    ~OtherTypist() {
        kill();
        for (const int end : {m_down[0], m_down[1], m_up[0], m_up[1]})
            ::close(end);
    }
    OtherTypist(const OtherTypist&) = delete;
    OtherTypist& operator=(const OtherTypist&) = delete;

    void setTypes(bool types) {
        char word = types ? 'y' : 'n';
        if (::write(m_down[1], &word, 1) != 1 || ::read(m_up[0], &word, 1) != 1)
            throw std::runtime_error("the other program is gone");
    }
    void kill() {
        if (m_child <= 0)
            return;
        ::kill(m_child, SIGKILL);
        ::waitpid(std::exchange(m_child, 0), nullptr, 0);
    }

private:
    std::array<int, 2> m_down{}, m_up{};
    pid_t m_child = 0;
};

/// What is committed of many rows through a log's connection, and whether somebody typed then.
class LongCommits {
public:
    /// Something is done in the middle of the first that changes many rows.
    explicit LongCommits(const log::Log& log, std::function<void()> inside)
        : m_db(log::connectionOf(log).database().getHandle()), m_typists(log.file()),
          m_inside(std::move(inside)), m_before(sqlite3_total_changes64(m_db)) {
        sqlite3_trace_v2(m_db, SQLITE_TRACE_STMT, &LongCommits::begins, this);
        sqlite3_commit_hook(m_db, &LongCommits::commits, this);
        sqlite3_rollback_hook(m_db, &LongCommits::rolledBack, this);
    }
    ~LongCommits() {
        sqlite3_trace_v2(m_db, 0, nullptr, nullptr);
        sqlite3_commit_hook(m_db, nullptr, nullptr);
        sqlite3_rollback_hook(m_db, nullptr, nullptr);
    }
    LongCommits(const LongCommits&) = delete;
    LongCommits& operator=(const LongCommits&) = delete;

    int count() const { return m_count; }
    int whileTyped() const { return m_whileTyped; }
    int takenBack() const { return m_takenBack; }
    bool isWriting() const { return sqlite3_txn_state(m_db, "main") == SQLITE_TXN_WRITE; }

private:
    static constexpr std::int64_t many = 800;

    static int begins(unsigned /*event*/, void* self, void* /*statement*/, void* /*sql*/) {
        auto& one = *static_cast<LongCommits*>(self);
        if (one.m_inside && sqlite3_total_changes64(one.m_db) - one.m_before >= many)
            std::exchange(one.m_inside, nullptr)();
        return 0;
    }
    bool wasLong() {
        const std::int64_t now = sqlite3_total_changes64(m_db);
        return now - std::exchange(m_before, now) >= many;
    }
    static int commits(void* self) {
        auto& one = *static_cast<LongCommits*>(self);
        if (one.wasLong()) {
            ++one.m_count;
            one.m_whileTyped += one.m_typists.now() ? 1 : 0;
        }
        return 0;
    }
    static void rolledBack(void* self) {
        auto& one = *static_cast<LongCommits*>(self);
        one.m_takenBack += one.wasLong() ? 1 : 0;
    }

    sqlite3* m_db;
    const log::Typists m_typists;
    std::function<void()> m_inside;
    std::int64_t m_before;
    int m_count = 0, m_whileTyped = 0, m_takenBack = 0;
};
} // namespace

class TestTypists : public OneLift {
    Q_OBJECT

    /// A little of everything; however little is written counts as much.
    static meetings::Patience shortly() { return {.pause = 50ms, .longest = 1min, .many = 0}; }

    struct Done {
        int committed = 0, whileTyped = 0, takenBack = 0;
        int asked = 0; ///< looks of a wait at who types
        bool waitedOn = false;
    };
    using Looks = std::function<void(int times)>;
    /// The rack meets; told of each look at who types.
    Done meetBeside(const meetings::Patience& patience, const Looks& looks,
                    const std::function<void()>& inside = {}) const {
        Done done;
        log::Log log = m_rack->open();
        const LongCommits commits(log, inside);
        const log::Typists typists(m_rack->file());
        bool taking = false; // before that a network is waited for
        const Progress progress = [&](std::int64_t, std::int64_t total) {
            taking = taking || total > 0;
            if (!taking || total > 0 || !typists.now())
                return true;
            if (commits.isWriting())
                throw std::logic_error("it waits while it holds the log");
            looks(++done.asked);
            return true;
        };
        try {
            std::ignore = meet(log, patience, progress);
        } catch (const meetings::WaitsForPause&) {
            done.waitedOn = true;
        }
        done.committed = commits.count();
        done.whileTyped = commits.whileTyped();
        done.takenBack = commits.takenBack();
        return done;
    }

    static void types() {
        QTest::addColumn<bool>("elsewhere");
        QTest::newRow("in this program") << false;
        QTest::newRow("in another") << true;
    }
    /// Somebody at the rack, here or in another program.
    struct Somebody {
        Somebody(const MeetingDesk& desk, bool elsewhere)
            : other(elsewhere ? std::make_unique<OtherTypist>(desk.file()) : nullptr),
              here(desk.file()) {}
        void setTypes(bool types) {
            if (other)
                other->setTypes(types);
            else
                here.setTypes(types);
        }
        std::unique_ptr<OtherTypist> other;
        log::Typist here;
    };
    /// He begins to type while it is being written.
    Done meetTypedFrom(Somebody& who, const meetings::Patience& patience,
                       const Looks& looks) const {
        return meetBeside(patience, looks, [&] { who.setTypes(true); });
    }

private Q_SLOTS:
    void initTestCase() { startStore(); }

    // Read and worked out it may be, but not written.
    void itIsNotBegunWhileSomebodyTypes_data() { types(); }
    void itIsNotBegunWhileSomebodyTypes() {
        QFETCH(bool, elsewhere);
        prepare();
        Somebody who(*m_rack, elsewhere);
        who.setTypes(true);
        const Done done = meetBeside(shortly(), [&](int times) {
            if (times == 10)
                who.setTypes(false);
        });
        QCOMPARE(done.asked, 10);
        QCOMPARE(done.takenBack, 0);
        QVERIFY(done.committed > 0);
        QCOMPARE(done.whileTyped, 0);
        requireOneLift();
    }

    // Who then thinks better of it has kept it waiting.
    void whoBeginsHasItTakenBack_data() { types(); }
    void whoBeginsHasItTakenBack() {
        QFETCH(bool, elsewhere);
        prepare();
        Somebody who(*m_rack, elsewhere);
        const Done done = meetTypedFrom(who, shortly(), [&](int times) {
            if (times == 20)
                who.setTypes(false);
        });
        QCOMPARE(done.asked, 20);
        QCOMPARE(done.takenBack, 1);
        QVERIFY(done.committed > 0);
        QCOMPARE(done.whileTyped, 0);
        requireOneLift();
    }

    // The set that was typed goes in at once, whoever enters it.
    void whatWasTypedGoesInAtOnce_data() {
        QTest::addColumn<bool>("elsewhere");
        QTest::addColumn<bool>("program");
        QTest::newRow("in this program") << false << false;
        QTest::newRow("in another") << true << true;
    }
    void whatWasTypedGoesInAtOnce() {
        QFETCH(bool, elsewhere);
        QFETCH(bool, program);
        prepare();
        Somebody who(*m_rack, elsewhere);
        const Done done = meetTypedFrom(who, shortly(), [&](int times) {
            if (times != 5)
                return;
            enter(program ? Who::Program : Who::Window); // refused where the log is held
            who.setTypes(false);
        });
        QVERIFY(done.asked >= 5);
        QCOMPARE(done.takenBack, 1);
        QVERIFY(done.committed > 0);
        QCOMPARE(done.whileTyped, 0);
        QVERIFY(hasEntry(*m_rack));
        requireOneLift();
        QVERIFY(hasEntry(*m_office));
    }

    // The log is not held for good, and nothing of it stands; it is said, and tried again.
    void aLineLeftHalfTyped_data() {
        QTest::addColumn<bool>("before");
        QTest::newRow("before it is written") << true;
        QTest::newRow("while it is written") << false;
    }
    void aLineLeftHalfTyped() {
        QFETCH(bool, before);
        prepare();
        const auto said = saidBy(m_rack->file());
        Somebody who(*m_rack, true);
        const meetings::Patience patience{.pause = 50ms, .longest = 300ms, .many = 0};
        if (before)
            who.setTypes(true);
        const auto nothing = [](int) {};
        const Done done =
            before ? meetBeside(patience, nothing) : meetTypedFrom(who, patience, nothing);
        QVERIFY(done.waitedOn);
        QCOMPARE(done.takenBack, before ? 0 : 1);
        QCOMPARE(done.committed, 0);
        const auto now = saidBy(m_rack->file());
        for (const auto& [uuid, one] : said)
            if (log::kindOfContent(std::get<0>(one)) == "set")
                QCOMPARE(now.at(uuid), one);
        QCOMPARE(findingsIn(m_rack->file()), std::string());
        enter(Who::Window);
        who.setTypes(false);
        requireOneLift();
        QVERIFY(hasEntry(*m_office));
    }

    void aWindowThatIsKilledWhileItTypes() {
        prepare();
        Somebody who(*m_rack, true);
        const Done done = meetTypedFrom(who, shortly(), [&](int times) {
            if (times == 5)
                who.other->kill();
        });
        QCOMPARE(done.asked, 5);
        QCOMPARE(done.takenBack, 1);
        QVERIFY(done.committed > 0);
        requireOneLift();
    }

    // What is short for any disk waits for nobody's typing.
    void aShortOneGoesOn() {
        prepare();
        Somebody who(*m_rack, false);
        who.setTypes(true);
        const Done done = meetBeside({.pause = 1h, .longest = 0s}, [](int) {});
        QVERIFY(!done.waitedOn);
        QCOMPARE(done.takenBack, 0);
        QVERIFY(done.committed > 0);
    }

    // Nobody is seen there, and nobody waited for: it is as if nobody typed.
    void aFolderThatCannotBeRead() {
        prepare();
        const fs::path folder = m_rack->file().parent_path();
        fs::permissions(m_rack->file(), fs::perms(0666));
        fs::permissions(folder, fs::perms(0333));
        log::Typist here(m_rack->file());
        here.setTypes(true);
        const int result = inChild([&] {
            dropRights();
            ::setenv("PGPASSWORD", Postgres::passwordOf("cora").c_str(), 1); // no file of root's
            if (log::Typists(m_rack->file()).now())
                return 1;
            log::Typist unseen(m_rack->file());
            unseen.setTypes(true);
            const Done done = meetBeside(shortly(), [](int) {});
            return done.committed > 0 && !done.waitedOn ? 0 : 2;
        });
        fs::permissions(folder, fs::perms(0755));
        QCOMPARE(result, 0);
        requireOneLift();
    }

    void whoTypesIsSeen() {
        beginEmpty();
        fill(*m_rack, "Ada", 1);
        fill(*m_office, "Bea", 1);
        const log::Typists rack(m_rack->file()), office(m_office->file()); // in one folder
        const log::AskedFor asked(m_rack->file());
        OtherTypist other(m_rack->file());
        log::Typist one(m_rack->file()), two(m_rack->file());
        QVERIFY(!rack.now());
        one.setTypes(true);
        two.setTypes(true);
        other.setTypes(true);
        QVERIFY(rack.now() && !office.now() && !asked.now());
        one.setTypes(false);
        QVERIFY(rack.now());
        two.setTypes(false);
        QVERIFY(rack.now());
        other.kill();
        QVERIFY(!rack.now());
        one.setTypes(true);
        {
            const log::Asking asking(m_rack->file());
            QVERIFY(asked.now());
        }
        QVERIFY(rack.now() && !asked.now());
        one.setTypes(false);
        // Another file under that name, as where somebody went back to a backup.
        fs::copy_file(m_rack->file(), m_folder->path("copy"));
        fs::rename(m_folder->path("copy"), m_rack->file());
        one.setTypes(true);
        QVERIFY(log::Typists(m_rack->file()).now());
        log::Typist nobody(m_folder->path("none.slopebook"));
        nobody.setTypes(true);
        QVERIFY(!log::Typists(m_folder->path("none.slopebook")).now());
    }
};

QTEST_GUILESS_MAIN(TestTypists)
#include "tst_typists.moc"
