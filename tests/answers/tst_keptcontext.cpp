// SPDX-License-Identifier: GPL-3.0-or-later
// What all sessions of a lift say together is kept and only the changed athletes' are read anew:
// after whatever was done to a log it must be what a plain pass over the whole log gathers, to the
// last bit.
#include "core/answers/threshold.h"
#include "core/log/snapshot.h"
#include "core/questions/keptcontext.h"
#include "tests/answers/keptworld.h"

#include <algorithm>
#include <set>

using namespace slopebook;
using namespace slopebook::test;
using questions::LiftContext;

namespace {

using tests::same;

/// All in one go and with nothing kept, from the sessions as the log lists them.
LiftContext gathered(const log::Log& log, LiftId lift) {
    LiftContext made;
    made.lift = log.lift(lift);
    made.devices = log.devices();
    answers::SquadLatest squad;
    std::map<AthleteId, std::vector<LiftSession>> all;
    for (const LiftSession& session : log.liftSessions({.athlete = {}, .lift = lift})) {
        all[session.athlete].push_back(session);
        squad.add(session);
        if (!session.points.empty())
            made.days.push_back({session.athlete, session.date});
    }
    made.days.erase(std::unique(made.days.begin(), made.days.end()), made.days.end());
    std::set<std::optional<DeviceId>> devices{std::nullopt};
    for (const auto& [athlete, sessions] : all) {
        for (const auto& pair : answers::repeatPairs(sessions)) {
            made.repeats.push_back(pair);
            devices.insert(pair.second.conditions.device);
        }
        for (const auto& pair : answers::estimatePairs(
                 made.lift.value, answers::mvtOf(made.lift.value, sessions), sessions))
            made.estimates.push_back(pair);
        for (const LiftSession& one : sessions)
            if (std::ranges::any_of(sessions, [&](const LiftSession& other) {
                    return one.conditions.device && other.conditions.device &&
                           one.conditions.device != other.conditions.device &&
                           one.date == other.date;
                }))
                made.twoDevices.push_back(one);
    }
    for (const auto& device : devices) {
        auto pairs = made.repeats;
        if (device)
            std::erase_if(
                pairs, [&](const auto& pair) { return pair.second.conditions.device != device; });
        made.sums.emplace(device, answers::repeatSums(pairs));
        made.noise.emplace(device, answers::liftNoise(made.lift.value,
                                                      answers::chooseMvt(made.lift.value, {}),
                                                      pairs, 0.95));
    }
    made.smallest = answers::smallestChanges(made.lift.value, squad, std::nullopt);
    return made;
}

bool same(const answers::RepeatPair& a, const answers::RepeatPair& b) {
    return a.first == b.first && a.second == b.second;
}
bool same(const answers::EstimatePair& a, const answers::EstimatePair& b) {
    return a.athlete == b.athlete && a.estimate == b.estimate && a.lifted == b.lifted;
}
bool same(const std::optional<answers::Smallest>& a, const std::optional<answers::Smallest>& b) {
    if (!a || !b)
        return !a && !b;
    return a->value == b->value && a->origin == b->origin && a->source == b->source &&
           a->athletes == b->athletes && a->interval.has_value() == b->interval.has_value() &&
           (!a->interval ||
            (a->interval->low == b->interval->low && a->interval->high == b->interval->high));
}
bool same(const Answer<answers::LiftNoise>& a, const Answer<answers::LiftNoise>& b) {
    if (!a || !b)
        return !a && !b;
    return a->day.variance.value == b->day.variance.value && a->atLoads.size() == b->atLoads.size();
}
template <class Map>
bool sameMaps(const Map& a, const Map& b) {
    return std::ranges::equal(a, b, [](const auto& x, const auto& y) {
        return x.first == y.first && same(x.second, y.second);
    });
}
template <class List>
bool sameLists(const List& a, const List& b) {
    return std::ranges::equal(a, b, [](const auto& x, const auto& y) { return same(x, y); });
}

QString difference(const LiftContext& kept, const LiftContext& wanted) {
    if (!(kept.lift == wanted.lift) || !(kept.devices == wanted.devices))
        return QStringLiteral("lift or devices");
    if (!sameLists(kept.repeats, wanted.repeats))
        return QStringLiteral("repeats");
    if (kept.twoDevices != wanted.twoDevices)
        return QStringLiteral("days with two devices");
    if (kept.days != wanted.days)
        return QStringLiteral("days");
    if (!sameLists(kept.estimates, wanted.estimates))
        return QStringLiteral("estimates");
    if (!sameMaps(kept.sums, wanted.sums))
        return QStringLiteral("sums");
    for (const auto& [device, noise] : wanted.noise)
        if (!same(questions::noiseOf(kept, device), noise))
            return QStringLiteral("noise");
    if (!sameMaps(kept.smallest.at, wanted.smallest.at) ||
        !same(kept.smallest.oneRm, wanted.smallest.oneRm) ||
        !same(kept.smallest.velocity, wanted.smallest.velocity))
        return QStringLiteral("smallest changes");
    return {};
}

class World : tests::TwoWindows {
public:
    explicit World(unsigned seed) : TwoWindows(seed) {
        m_log.together([&] {
            for (int i = 0; i < 10; ++i)
                m_athletes.push_back(
                    m_log.add(Athlete{.name = "Lane " + std::to_string(i), .note = {}}));
            addLiftsAndDevices();
            for (int i = 0; i < 40; ++i)
                addSession();
        });
        for (const LiftId lift : m_lifts)
            for (auto* kept : {&m_own, &m_others})
                kept->try_emplace(lift, lift);
    }

    /// One of all things that a coach does, in this window or in another.
    void act() {
        log::Log& by = anyWindow();
        const SessionId session = any(m_sessions);
        const LiftId lift = any(m_lifts);
        switch (upTo(11)) {
        case 0:
            addSession();
            break;
        case 1:
            makeARepeat(by, session);
            break;
        case 2:
            by.setConditions(session, lift, {.device = any(m_devices)});
            break;
        case 3: {
            Lift changed = by.lift(lift).value;
            changed.smallestVelocity = 0.01 * (1 + upTo(5));
            changed.rule = upTo(2) == 0 ? PointRule::Fastest : PointRule::Mean;
            by.change(lift, changed);
            break;
        }
        case 4:
            removeASet(by, session, lift);
            break;
        case 5:
            if (const auto sets = by.sets(session, lift); !sets.empty()) {
                Set changed = sets.back().set;
                changed.excluded = changed.excluded.empty() ? "slipped" : "";
                by.change(sets.back().id, changed);
            }
            break;
        case 6: // taken back, and asked meanwhile
            takenBack(by, [&] {
                addSetsTo(by, session, lift);
                ask(by);
            });
            break;
        case 7:
            by.change(m_devices[0],
                      Device{.name = "Encoder " + std::to_string(upTo(100)), .note = {}});
            break;
        case 8:
            by.remove(session);
            std::erase(m_sessions, session);
            break;
        case 9: { // many at once: all is read in one pass
            by.together([&] {
                for (const SessionId one : m_sessions)
                    addSetsTo(by, one, lift);
            });
            break;
        }
        default:
            addSetsTo(by, session, lift);
        }
    }

    QString disagreement() {
        const log::Log anew = log::Log::open(m_folder.path());
        for (const LiftId lift : m_lifts) {
            const LiftContext wanted = gathered(anew, lift);
            m_seen += wanted.repeats.size() * 1000 + wanted.smallest.at.size();
            m_estimates += wanted.estimates.size();
            m_twoDevices += wanted.twoDevices.size();
            for (const QString& found : {difference(m_own.at(lift).of(m_log), wanted),
                                         difference(m_others.at(lift).of(m_other), wanted),
                                         difference(questions::liftContext(anew, lift), wanted)})
                if (!found.isEmpty())
                    return found;
        }
        return {};
    }
    bool hadSomeOfAll() const {
        return m_seen > 100'000 && m_seen % 1000 > 0 && m_estimates > 20 && m_twoDevices > 20;
    }

private:
    void ask(const log::Log& by) {
        for (const LiftId lift : m_lifts)
            (&by == &m_log ? m_own : m_others).at(lift).of(by);
    }
    void addSetsTo(log::Log& by, SessionId session, LiftId lift) {
        std::uniform_real_distribution<double> noise(-0.04, 0.04);
        for (int i = 0; i < 4; ++i)
            by.add(session, lift, ladderSet(40 + 20 * i, {1.2 - 0.25 * i + noise(m_random), 0.3}));
        if (upTo(3) == 0) {
            Set maximum = ladderSet(110, {0.4 + noise(m_random)});
            maximum.trueMaximum = true;
            by.add(session, lift, maximum);
        }
    }
    void addSession() {
        SessionHead head{.athlete = any(m_athletes),
                         .date = day(2026, 1, 1 + static_cast<unsigned>(upTo(28))),
                         .ordinal = 1};
        head.ordinal = log::freeOrdinal(m_log, head.athlete, head.date);
        if (upTo(2) == 0)
            head.repeatOf = earlierOf(m_log, head);
        m_sessions.push_back(m_log.add(head));
        for (const LiftId lift : m_lifts) {
            m_log.setConditions(m_sessions.back(), lift, {.device = any(m_devices)});
            addSetsTo(m_log, m_sessions.back(), lift);
        }
    }
    std::map<LiftId, questions::KeptContext> m_own, m_others;
    std::size_t m_seen = 0, m_estimates = 0, m_twoDevices = 0;
};

} // namespace

class TestKeptContext : public QObject {
    Q_OBJECT
private slots:
    void keptIsWhatIsThere() {
        for (unsigned seed = 1; seed <= 2; ++seed) {
            World world(seed);
            const QString wrong =
                tests::firstWrong(world, 30, [&] { return world.disagreement(); });
            QVERIFY2(wrong.isEmpty(),
                     qPrintable(QStringLiteral("seed %1: %2").arg(seed).arg(wrong)));
            QVERIFY(world.hadSomeOfAll());
        }
    }
};

QTEST_APPLESS_MAIN(TestKeptContext)
#include "tst_keptcontext.moc"
