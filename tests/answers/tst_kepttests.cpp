// SPDX-License-Identifier: GPL-3.0-or-later
// What everybody's other tests say, and when each was last, is kept beside a log and only the
// changed athletes' are read anew: after whatever was done to a log it must be what one pass over
// all of it finds, to the last bit.
#include "core/answers/smallest.h"
#include "core/log/testedsessions.h"
#include "core/questions/duequestions.h"
#include "core/questions/kepttests.h"
#include "tests/answers/keptworld.h"

#include <algorithm>

using namespace slopebook;
using namespace slopebook::test;

namespace {

answers::SquadTests scanned(const log::Log& log, std::span<const TestKindId> kinds) {
    answers::SquadTests squad(log.testKinds());
    log::scanTested(log, kinds, [&](const BatterySession& session) { squad.add(session); });
    return squad;
}

bool same(const std::optional<answers::Smallest>& a, const std::optional<answers::Smallest>& b) {
    return a.has_value() == b.has_value() &&
           (!a || (a->value == b->value && a->source == b->source && a->athletes == b->athletes));
}

bool same(const std::vector<answers::RepeatedTest>& a,
          const std::vector<answers::RepeatedTest>& b) {
    return std::ranges::equal(a, b, [](const auto& x, const auto& y) {
        return x.athlete == y.athlete && x.first == y.first && x.second == y.second;
    });
}

QString difference(const answers::SquadTests& kept, const answers::SquadTests& wanted,
                   std::span<const TestKindId> kinds, std::span<const AthleteId> athletes) {
    for (const TestKindId kind : kinds)
        for (const BodySide side : {BodySide::Both, BodySide::Left, BodySide::Right}) {
            if (kept.latest(kind, side) != wanted.latest(kind, side))
                return QStringLiteral("latest");
            if (!same(kept.repeats(kind, side), wanted.repeats(kind, side)))
                return QStringLiteral("repeats");
            for (const AthleteId athlete : athletes)
                if (!same(kept.repeats(kind, side, athlete), wanted.repeats(kind, side, athlete)))
                    return QStringLiteral("one athlete's repeats");
            if (!same(kept.ownSmallest(kind, side),
                      answers::chooseSmallest(wanted.latest(kind, side), {}, {})))
                return QStringLiteral("smallest change");
        }
    return {};
}

/// Who is due for what, by names, on the last of the days.
std::vector<std::pair<std::string, std::optional<Date>>> dueOf(const log::Log& log) {
    std::vector<std::pair<std::string, std::optional<Date>>> all;
    for (const answers::DueRow& row : questions::squadDueOn(log, day(2027, 6, 1), {}, 1).rows)
        all.emplace_back(row.name + row.measure, row.last);
    return all;
}

class World : tests::TwoWindows {
public:
    explicit World(unsigned seed) : TwoWindows(seed) {
        m_log.together([&] {
            for (int i = 0; i < 10; ++i)
                m_athletes.push_back(
                    m_log.add(Athlete{.name = "Lane " + std::to_string(i), .note = {}}));
            for (const char* name : {"Hop", "Sprint"}) {
                TestKind kind;
                kind.name = name;
                kind.unit = "m";
                kind.twoSided = m_kinds.empty();
                m_kinds.push_back(m_log.add(kind));
            }
            for (int i = 0; i < 60; ++i)
                addSession();
        });
    }

    /// One of all things that a coach does to tests, by this window or by another.
    void act() {
        log::Log& by = anyWindow();
        const SessionId session = any(m_sessions);
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
            by.setBattery(session, {});
            break;
        case 4: {
            const TestKindId id = any(m_kinds);
            TestKind kind = kindOf(by, id);
            kind.higherIsBetter = !kind.higherIsBetter;
            by.change(id, kind);
            break;
        }
        case 5:
            takenBack(by, [&] {
                by.setBattery(session, thrown());
                questions::squadTests(by, m_kinds);
            });
            break;
        case 6:
            by.remove(session);
            std::erase(m_sessions, session);
            break;
        default:
            by.setBattery(session, thrown());
        }
    }

    QString wrong() {
        const log::Log anew = log::Log::open(m_folder.path());
        // Now and then one is asked before the other.
        const std::size_t asked = m_first ? 1 : m_kinds.size();
        m_first = false;
        const std::span<const TestKindId> kinds(m_kinds.data(), asked);
        const auto wanted = scanned(anew, kinds);
        for (const auto side : {BodySide::Both, BodySide::Left})
            for (const TestKindId kind : kinds)
                m_pairs += wanted.repeats(kind, side).size();
        for (const log::Log* by : {&m_log, &m_other})
            if (dueOf(*by) != dueOf(anew))
                return QStringLiteral("due");
        m_due += dueOf(anew).size();
        for (const log::Log* by : {&m_log, &m_other})
            if (const QString found =
                    difference(questions::squadTests(*by, kinds), wanted, kinds, m_athletes);
                !found.isEmpty())
                return found;
        return {};
    }
    std::size_t pairsSeen() const { return m_pairs; }
    std::size_t dueSeen() const { return m_due; }

private:
    static TestKind kindOf(const log::Log& by, TestKindId id) {
        for (const auto& kind : by.testKinds())
            if (kind.id == id)
                return kind.value;
        throw std::runtime_error("no such test");
    }
    Battery thrown() {
        std::uniform_real_distribution<double> value(1, 3);
        Battery battery;
        for (std::size_t i = 0; i < m_kinds.size(); ++i) {
            if (upTo(3) == 0)
                continue;
            TestAttempts test{.kind = m_kinds[i], .attempts = {}};
            for (const BodySide side : i == 0 ? std::vector{BodySide::Left, BodySide::Right}
                                              : std::vector{BodySide::Both})
                for (int k = upTo(3); k >= 0; --k)
                    test.attempts.push_back({side, value(m_random), {}, {}, {}});
            battery.tests.push_back(std::move(test));
        }
        return battery;
    }
    void addSession() {
        SessionHead head{.athlete = any(m_athletes),
                         .date = Date{std::chrono::sys_days{std::chrono::year{2027} / 1 / 1} +
                                      std::chrono::days{++m_day}}};
        if (upTo(3) == 0)
            head.repeatOf = earlierOf(m_log, head);
        m_sessions.push_back(m_log.add(head));
        m_log.setBattery(m_sessions.back(), thrown());
    }

    std::vector<TestKindId> m_kinds;
    int m_day = 0;
    bool m_first = true;
    std::size_t m_pairs = 0, m_due = 0;
};

} // namespace

class TestKeptTests : public QObject {
    Q_OBJECT
private slots:
    void keptIsWhatIsThere() {
        std::size_t pairs = 0;
        for (unsigned seed = 1; seed <= 3; ++seed) {
            World world(seed);
            const QString wrong = tests::firstWrong(world, 25, [&] { return world.wrong(); });
            QVERIFY2(wrong.isEmpty(),
                     qPrintable(QStringLiteral("seed %1: %2").arg(seed).arg(wrong)));
            pairs += world.pairsSeen();
            QVERIFY(world.dueSeen() > 50);
        }
        QVERIFY(pairs > 100);
    }
};

QTEST_APPLESS_MAIN(TestKeptTests)
#include "tst_kepttests.moc"
