// SPDX-License-Identifier: GPL-3.0-or-later
// Two windows on one log, each in a program of its own: both see the other's sets, none is lost,
// and no coach is told of a lock.
#include "tests/log/builders.h"
#include "tests/support/longrun.h"
#include "ui/edits/logbook.h"

#include <QElapsedTimer>
#include <QSignalSpy>

#include <sys/wait.h>
#include <unistd.h>

using namespace slopebook;
using namespace slopebook::test;
using ui::Logbook;

namespace {
constexpr int inASession = 50;

/// Types `count` sets of an athlete as a window does, looking for the other's writes in between;
/// gives how often it was told of some, or -1 where it was told of an error.
int typeSets(const std::filesystem::path& file, AthleteId athlete, LiftId lift, int count) {
    try {
        Logbook book(log::Log::open(file));
        int seen = 0;
        SessionId session{};
        QObject::connect(&book, &Logbook::changed, [&](Logbook::What what) {
            seen += what == Logbook::What::Everything ? 1 : 0;
        });
        for (int i = 0; i < count; ++i) {
            if (i % inASession == 0)
                session = book.addSession({.athlete = athlete,
                                           .date = Date{std::chrono::sys_days{day(2028, 1, 1)} +
                                                        std::chrono::days{i / inASession}}});
            book.addSets(session, lift, {ladderSet(40, {1.0, 0.9})});
            book.lookForOthersWrites();
        }
        return seen;
    } catch (const std::exception& error) {
        qWarning("%s", error.what());
        return -1;
    }
}
} // namespace

class TestTwoWindows : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void nothingIsLostAndBothSeeAll() {
        const int each = rounds("SLOPEBOOK_WRITES", 1000, 1000);
        const Folder folder;
        Season s;
        {
            log::Log log = log::Log::create(folder.path());
            s = fillSeason(log);
        }
        const pid_t other = ::fork();
        if (other == 0)
            ::_exit(typeSets(folder.path(), s.lane3, s.throwing, each) > 0 ? 0 : 1);
        QElapsedTimer clock;
        clock.start();
        const int seen = typeSets(folder.path(), s.stroke, s.throwing, each);
        int status = 0;
        ::waitpid(other, &status, 0);
        QVERIFY2(WIFEXITED(status) && WEXITSTATUS(status) == 0,
                 "the other window saw nothing or failed");
        QVERIFY(seen > 0);
        const log::Log log = log::Log::open(folder.path());
        std::size_t sets = 0;
        for (const auto athlete : {s.lane3, s.stroke})
            for (const auto& session : log.sessions(athlete))
                sets += log.session(session.id).sets.size();
        QCOMPARE(sets, static_cast<std::size_t>(15 + 2 * each)); // and those that were there
        VERIFY_SOUND(log);
        qInfo("%d sets from each window in %lld ms, none lost; told of the other's %d times", each,
              static_cast<long long>(clock.elapsed()), seen);
    }

    void aStepBackMeetsWhatTheOtherDid() {
        const Folder folder;
        log::Log log = log::Log::create(folder.path());
        const Season s = fillSeason(log);
        Logbook one(std::move(log));
        Logbook two(log::Log::open(folder.path()));
        const SetId set = one.addSets(s.winter, s.pull, {ladderSet(75, {0.7})}).front();
        two.lookForOthersWrites();
        two.changeSet(set, ladderSet(76, {0.71}));
        QSignalSpy failed(&one, &Logbook::failed);
        one.undoStack()->undo(); // takes nothing of the other's away
        QCOMPARE(failed.count(), 1);
        QCOMPARE(two.log().set(set).set, ladderSet(76, {0.71}));
    }
};

QTEST_GUILESS_MAIN(TestTwoWindows)
#include "tst_twowindows.moc"
