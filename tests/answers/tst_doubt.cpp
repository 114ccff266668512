// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked about before a set is kept. Figures by hand: last time's line is v = 1.4 - 0.008 L,
// so 0.92 m/s at 60 kg.
#include "core/answers/doubt.h"
#include "tests/answers/builders.h"

#include <QtTest>

using namespace slopebook;
using namespace slopebook::answers;
using Kind = Doubt::Kind;
using Points = std::vector<std::pair<double, double>>;

Q_DECLARE_METATYPE(Points)

namespace {

const Points lastTime{{40, 1.08}, {60, 0.92}, {80, 0.76}, {100, 0.60}};

Set typedSet(double kg, const std::vector<double>& speeds) {
    Set set{.load = massFromKilograms(kg)};
    for (const double speed : speeds)
        set.reps.push_back({.velocity = speed});
    return set;
}

std::optional<Doubt> of(const Set& typed, const Points& today, const Points& last) {
    const LiftSession now = tests::session(2, today), before = tests::session(1, last);
    return doubt(typed, today.empty() ? nullptr : &now, last.empty() ? nullptr : &before);
}

} // namespace

class TestDoubt : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void asksAbout_data() {
        QTest::addColumn<double>("load");
        QTest::addColumn<QList<double>>("speeds");
        QTest::addColumn<Points>("today");
        QTest::addColumn<Points>("last");
        QTest::addColumn<int>("kind"); // -1: nothing is asked
        QTest::addColumn<double>("expected");
        const auto asked = [](const char* name, double load, const QList<double>& speeds,
                              const Points& today, const Points& last, Kind kind, double expected) {
            QTest::newRow(name) << load << speeds << today << last << int(kind) << expected;
        };
        const auto taken = [](const char* name, double load, const QList<double>& speeds,
                              const Points& today, const Points& last) {
            QTest::newRow(name) << load << speeds << today << last << -1 << 0.0;
        };
        asked("0.29 for 0.92", 60, {0.29}, {}, lastTime, Kind::Speed, 0.92);
        taken("as last time", 60, {0.92, 0.90}, {}, lastTime);
        taken("much faster than last time", 60, {1.19}, {}, lastTime);
        asked("faster than a training block makes", 60, {1.21}, {}, lastTime, Kind::Speed, 0.92);
        taken("a set to the end", 60, {0.92, 0.80, 0.60, 0.42}, {}, lastTime);
        asked("0.29 before 0.90", 60, {0.29, 0.90, 0.88}, {}, {}, Kind::WithinSet, 0.90);
        taken("an athlete who is slow today, by today's own line", 100, {0.30},
              {{40, 0.78}, {60, 0.62}, {80, 0.46}}, lastTime);
        asked("far from today's own line", 100, {0.65}, {{40, 0.78}, {60, 0.62}, {80, 0.46}},
              lastTime, Kind::Speed, 0.30);
        asked("faster with more load", 65, {0.90}, {{60, 0.80}}, {}, Kind::RisesWithLoad, 0.80);
        taken("a little faster with more load", 65, {0.85}, {{60, 0.80}}, {});
        taken("faster with the same load", 60, {0.90}, {{60, 0.80}}, {});
        asked("ten times the load", 600, {0.92}, {}, lastTime, Kind::Heavy, 100);
        taken("heavier than ever", 140, {0.30}, {}, lastTime);
        asked("a tenth of the load", 6, {0.92}, {}, lastTime, Kind::Light, 40);
        taken("the second set of a first session", 60, {0.80}, {{20, 1.2}}, {});
        asked("ten times the load, in a first session", 250, {0.92}, {{20, 1.2}, {25, 1.1}}, {},
              Kind::Heavy, 25);
        taken("nothing known", 600, {0.29}, {}, {});
        taken("no line of last time so far beyond its loads", 140, {0.02}, {}, lastTime);
    }
    void asksAbout() {
        QFETCH(double, load);
        QFETCH(QList<double>, speeds);
        QFETCH(Points, today);
        QFETCH(Points, last);
        QFETCH(int, kind);
        QFETCH(double, expected);
        const auto found = of(typedSet(load, {speeds.begin(), speeds.end()}), today, last);
        QCOMPARE(found ? int(found->kind) : -1, kind);
        if (found)
            QVERIFY(std::abs(found->expected - expected) < 1e-9);
    }

    void whatIsLeftOutIsNotAskedAbout() {
        Set set = typedSet(60, {0.29, 0.92});
        set.reps[0].excluded = "slipped";
        QVERIFY(!of(set, {}, lastTime));
        set.reps[1].excluded = "slipped";
        QVERIFY(!of(set, {}, lastTime));
    }

    void saysWhoseLineItIs() {
        QVERIFY(!of(typedSet(60, {0.29}), {}, lastTime)->today);
        QVERIFY(of(typedSet(100, {0.65}), {{40, 0.78}, {60, 0.62}, {80, 0.46}}, {})->today);
        QCOMPARE(of(typedSet(65, {0.90}), {{60, 0.80}}, {})->other, massFromKilograms(60));
    }
};

QTEST_APPLESS_MAIN(TestDoubt)
#include "tst_doubt.moc"
