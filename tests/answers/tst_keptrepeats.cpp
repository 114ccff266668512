// SPDX-License-Identifier: GPL-3.0-or-later
// What the repeat tests come to is kept beside a log that others write to as well: after whatever
// was done to it, it must be what a log that is opened anew finds, to the last bit.
#include "core/log/history.h"
#include "core/questions/questions.h"
#include "core/questions/repeats.h"
#include "tests/answers/keptworld.h"

using namespace slopebook;
using namespace slopebook::test;

namespace {

using tests::same;

class World : tests::TwoWindows {
public:
    explicit World(unsigned seed) : TwoWindows(seed) {
        m_log.together([&] {
            for (const char* name : {"Lane 1", "Lane 2", "Lane 3"})
                m_athletes.push_back(m_log.add(Athlete{.name = name}));
            addLiftsAndDevices();
        });
        for (int i = 0; i < 12; ++i)
            addSession();
    }

    /// One of all things that a coach does to sessions, by this window or by another.
    void act() {
        log::Log& by = anyWindow();
        const SessionId session = any(m_sessions);
        const LiftId lift = any(m_lifts);
        switch (upTo(8)) {
        case 0:
            addSession();
            break;
        case 1:
            makeARepeat(by, session);
            break;
        case 2:
            makeNoRepeat(by, session);
            break;
        case 3:
            by.setConditions(session, lift, {.device = any(m_devices)});
            break;
        case 4: {
            Lift changed = by.lift(lift).value;
            changed.rule =
                changed.rule == PointRule::Fastest ? PointRule::Mean : PointRule::Fastest;
            by.change(lift, changed);
            break;
        }
        case 5:
            removeASet(by, session, lift);
            break;
        case 6: // taken back as it is
            takenBack(by, [&] {
                addSetsTo(by, session, lift);
                asked(by);
            });
            break;
        default:
            addSetsTo(by, session, lift);
        }
    }

    /// Whether both windows say what a log opened anew does.
    bool agrees() {
        const log::Log anew = log::Log::open(m_folder.path());
        for (const auto& lift : anew.lifts()) {
            const auto wanted = questions::repeatsOfAll(anew, lift);
            m_pairs += wanted.pairs;
            for (const log::Log* by : {&m_log, &m_other}) {
                if (upTo(2) == 0) // who has read an athlete's own hands them on
                    questions::background(*by, any(m_athletes), lift.id);
                if (!same(questions::repeatsOfAll(*by, by->lift(lift.id)), wanted))
                    return false;
            }
        }
        return true;
    }
    double pairsSeen() const { return m_pairs; }

private:
    static void asked(const log::Log& by) {
        for (const auto& lift : by.lifts())
            questions::repeatsOfAll(by, lift);
    }
    void addSetsTo(log::Log& by, SessionId session, LiftId lift) {
        std::uniform_real_distribution<double> noise(-0.05, 0.05);
        for (int i = 0; i < 3; ++i)
            by.add(session, lift,
                   ladderSet(40 + 20 * i, {1.2 - 0.3 * i + noise(m_random), 1 - 0.3 * i}));
    }
    void addSession() {
        const SessionHead head{.athlete = any(m_athletes),
                               .date = day(2026, 1, 1 + static_cast<unsigned>(m_sessions.size())),
                               .ordinal = 1};
        SessionHead repeat = head;
        repeat.repeatOf = earlierOf(m_log, head);
        m_sessions.push_back(m_log.add(repeat));
        for (const LiftId lift : m_lifts)
            addSetsTo(m_log, m_sessions.back(), lift);
    }
    double m_pairs = 0;
};

} // namespace

class TestKeptRepeats : public QObject {
    Q_OBJECT
private slots:
    void keptIsWhatIsThere() {
        double pairs = 0;
        for (unsigned seed = 1; seed <= 4; ++seed) {
            World world(seed);
            const QString wrong = tests::firstWrong(
                world, 25, [&] { return world.agrees() ? QString() : QStringLiteral("sums"); });
            QVERIFY2(wrong.isEmpty(),
                     qPrintable(QStringLiteral("seed %1: %2").arg(seed).arg(wrong)));
            pairs += world.pairsSeen();
        }
        QVERIFY(pairs > 100);
    }
};

QTEST_APPLESS_MAIN(TestKeptRepeats)
#include "tst_keptrepeats.moc"
