// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/log/builders.h"
#include "tests/log/child.h"
#include "tests/log/rawfile.h"
#include "tests/support/longrun.h"

#include <fcntl.h>
#include <random>
#include <set>
#include <sys/resource.h>
#include <tuple>

using namespace slopebook;
using namespace slopebook::test;
using log::Log;

namespace {
using Kind = LogError::Kind;

/// A child that enters sets one by one and tells of each that was acknowledged.
class Entering {
public:
    Entering(const std::filesystem::path& file, SessionId session, LiftId lift) {
        int ends[2] = {-1, -1};
        if (::pipe(ends) != 0)
            std::abort();
        m_child = ::fork();
        if (m_child == 0) {
            ::close(ends[0]);
            enter(file, session, lift, ends[1]);
        }
        ::close(ends[1]);
        m_read = ends[0];
    }
    ~Entering() { ::close(m_read); }
    Entering(const Entering&) = delete;
    Entering& operator=(const Entering&) = delete;

    /// Lets it enter that many, and then a little more, before it is killed.
    void killAfter(int count, unsigned microseconds) {
        for (int i = 0; i < count && readOne(); ++i) {
        }
        ::usleep(microseconds);
        ::kill(m_child, SIGKILL);
        int status = 0;
        ::waitpid(m_child, &status, 0);
        while (readOne()) {
        }
    }
    const std::set<SetId>& acknowledged() const { return m_acknowledged; }

private:
    [[noreturn]] static void enter(const std::filesystem::path& file, SessionId session,
                                   LiftId lift, int out) {
        try {
            Log log = Log::open(file);
            for (int i = 0;; ++i) {
                const SetId id = log.add(session, lift, ladderSet(40 + i % 50, {1.0, 0.9, 0.8}));
                if (::write(out, &id, sizeof id) != sizeof id)
                    ::_exit(1);
            }
        } catch (const std::exception&) {
            ::_exit(2);
        }
    }
    bool readOne() {
        SetId id{};
        if (::read(m_read, &id, sizeof id) != static_cast<ssize_t>(sizeof id))
            return false;
        m_acknowledged.insert(id);
        return true;
    }
    pid_t m_child = 0;
    int m_read = -1;
    std::set<SetId> m_acknowledged;
};
} // namespace

class TestDurability : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void killedWhileSetsAreEntered();
    void killedWhileMuchIsWrittenTogether();
    void killedWhileBackedUp();
    void noRoomLeft();
    void twoWriteAtOnce();
    void aWriterThatDoesNotLetGoIsWaitedForThenNamed();
};

void TestDurability::killedWhileSetsAreEntered() {
    const Folder folder;
    Season s;
    {
        Log log = Log::create(folder.path());
        s = fillSeason(log);
    }
    std::mt19937_64 random(7);
    std::size_t acknowledged = 0;
    std::size_t unasked = 0;
    for (int round = 0; round < rounds("SLOPEBOOK_KILLS", 50, 1000); ++round) {
        // Each round a session of its own: reading it back stays small.
        const SessionId session =
            Log::open(folder.path())
                .add(SessionHead{.athlete = s.lane3,
                                 .date = Date{std::chrono::sys_days{day(2027, 1, 1)} +
                                              std::chrono::days{round}}});
        Entering child(folder.path(), session, s.pull);
        child.killAfter(static_cast<int>(random() % 6), static_cast<unsigned>(random() % 3000));
        const Log log = Log::open(folder.path());
        VERIFY_SOUND(log);
        std::set<SetId> there;
        for (const auto& placed : log.session(session).sets) {
            QCOMPARE(placed.set.reps.size(), 3U);
            there.insert(placed.id);
        }
        for (const SetId id : child.acknowledged())
            QVERIFY2(there.contains(id), "an acknowledged set is lost");
        // At most the one that was under way.
        QVERIFY(there.size() <= child.acknowledged().size() + 1);
        acknowledged += child.acknowledged().size();
        unasked += there.size() - child.acknowledged().size();
    }
    qInfo("%zu sets acknowledged, all there; %zu more were on disk when the kill came",
          acknowledged, unasked);
    QVERIFY(acknowledged > 0);
}

void TestDurability::killedWhileMuchIsWrittenTogether() {
    const Folder folder;
    Season s;
    {
        Log log = Log::create(folder.path());
        s = fillSeason(log);
    }
    std::mt19937_64 random(11);
    int whole = 0;
    const int all = std::max(1, rounds("SLOPEBOOK_KILLS", 50, 1000) / 2);
    for (int round = 0; round < all; ++round) {
        const auto before = Log::open(folder.path()).sessions(s.stroke).size();
        const pid_t child = ::fork();
        if (child == 0) {
            try {
                Log log = Log::open(folder.path());
                log.together([&] {
                    for (int i = 0; i < 40; ++i) {
                        const SessionId id = log.add(
                            SessionHead{.athlete = s.stroke,
                                        .date = Date{std::chrono::sys_days{day(2028, 1, 1)} +
                                                     std::chrono::days{round * 40 + i}},
                                        .note = std::string(2000, 'n')});
                        log.add(id, s.pull, ladderSet(40, {1.0, 0.9, 0.8}));
                    }
                });
            } catch (const std::exception&) {
                ::_exit(1);
            }
            ::_exit(0);
        }
        ::usleep(static_cast<unsigned>(random() % 30'000));
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        const Log log = Log::open(folder.path());
        VERIFY_SOUND(log);
        const auto added = log.sessions(s.stroke).size() - before;
        QVERIFY2(added == 0 || added == 40, "half of what belongs together is there");
        whole += added == 40 ? 1 : 0;
    }
    qInfo("%d of %d were whole, the others not begun", whole, all);
}

void TestDurability::killedWhileBackedUp() {
    const Folder folder;
    {
        Log log = Log::create(folder.path());
        fillSeason(log);
    }
    const std::string bytes = readBytes(folder.path());
    std::mt19937_64 random(13);
    for (int round = 0; round < std::max(1, rounds("SLOPEBOOK_KILLS", 50, 1000) / 2); ++round) {
        const auto copy = folder.path(("copy" + std::to_string(round)).c_str());
        const pid_t child = ::fork();
        if (child == 0) {
            try {
                std::ignore = Log::open(folder.path()).backup(copy);
            } catch (const std::exception&) {
                ::_exit(1);
            }
            ::_exit(0);
        }
        ::usleep(static_cast<unsigned>(random() % 12'000));
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        QCOMPARE(readBytes(folder.path()), bytes);
        if (std::filesystem::exists(copy)) {
            const Log log = Log::open(copy);
            VERIFY_SOUND(log);
            QCOMPARE(log.liftSessions({}).size(), 6U);
        }
    }
}

void TestDurability::noRoomLeft() {
    const Folder folder;
    Season s;
    {
        Log log = Log::create(folder.path());
        s = fillSeason(log);
    }
    const auto size = std::filesystem::file_size(folder.path());
    const int result = inChild([&] {
        ::signal(SIGXFSZ, SIG_IGN);
        Log log = Log::open(folder.path());
        rlimit limit{};
        ::getrlimit(RLIMIT_FSIZE, &limit);
        limit.rlim_cur = size + 8192;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        std::set<SetId> acknowledged;
        std::optional<Kind> kind;
        for (int i = 0; i < 2000 && !kind; ++i)
            kind = errorOf([&] {
                acknowledged.insert(log.add(s.winter, s.pull, ladderSet(40, {1.0, 0.9, 0.8})));
            });
        if (kind != Kind::Full)
            return 1;
        if (errorOf([&] { std::ignore = log.backup(folder.path("copy")); }) != Kind::Full &&
            size + 8192 < std::filesystem::file_size(folder.path()))
            return 2;
        if (log.sets(s.winter, s.pull).size() != 4 + acknowledged.size() || !log.check().empty())
            return 3;
        limit.rlim_cur = limit.rlim_max;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        log.add(s.winter, s.pull, ladderSet(41, {1.0})); // there is room again
        return log.check().empty() ? 0 : 4;
    });
    QCOMPARE(result, 0);
    VERIFY_SOUND(Log::open(folder.path()));
}

void TestDurability::twoWriteAtOnce() {
    const int each = rounds("", 200, 1000);
    const Folder folder;
    Season s;
    {
        Log log = Log::create(folder.path());
        s = fillSeason(log);
    }
    const auto enter = [&](SessionId session) {
        Log log = Log::open(folder.path());
        for (int i = 0; i < each; ++i)
            log.add(session, s.throwing, ladderSet(40, {1.0, 0.9, 0.8}));
        return 0;
    };
    const pid_t child = ::fork();
    if (child == 0)
        ::_exit(inChild([&] { return enter(s.autumn); }) == 0 ? 0 : 1);
    long seen = 0;
    {
        Log log = Log::open(folder.path());
        const long before = log.dataVersion();
        for (int i = 0; i < each; ++i)
            log.add(s.winter, s.throwing, ladderSet(40, {1.0, 0.9, 0.8}));
        seen = log.dataVersion() - before;
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    QVERIFY(WIFEXITED(status) && WEXITSTATUS(status) == 0);
    QVERIFY(seen >= each);
    const Log log = Log::open(folder.path());
    QCOMPARE(log.sets(s.autumn, s.throwing).size(), static_cast<std::size_t>(each) + 1);
    QCOMPARE(log.sets(s.winter, s.throwing).size(), static_cast<std::size_t>(each) + 1);
    VERIFY_SOUND(log);
}

void TestDurability::aWriterThatDoesNotLetGoIsWaitedForThenNamed() {
    const Folder folder;
    Log log = Log::create(folder.path());
    fillSeason(log);
    Log other = Log::open(folder.path());
    log.together([&] {
        log.add(Athlete{.name = "Cox"});
        QCOMPARE(errorOf([&] { other.add(Athlete{.name = "Bow"}); }), Kind::Busy);
        QCOMPARE(other.athletes().size(), 2U); // reading goes on
    });
    other.add(Athlete{.name = "Bow"});
    QCOMPARE(log.athletes().size(), 4U);
}

QTEST_APPLESS_MAIN(TestDurability)
#include "tst_durability.moc"
