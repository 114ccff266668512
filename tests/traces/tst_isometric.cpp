// SPDX-License-Identifier: GPL-3.0-or-later
// Half-sine pushes, where onset, peak, force, rate and impulse are known exactly. Bounds come from
// theory: an event lies within the sample step that brackets it; a chord misses a curve by
// f'' step^2 / 8; noise moves a level crossing by noise / slope.
#include "core/traces/isometric.h"
#include "tests/traces/knownmotion.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::traces;

namespace {

constexpr double level = 10; // the floor, N
/// Five SD of noise is not met by chance in a trace of this length and fixed seed.
constexpr double far = 5;

} // namespace

class TestIsometric : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void figuresOfExactMarks_data() { eachRate({0}); }
    void figuresOfExactMarks() {
        QFETCH(double, rate);
        const tests::HalfSinePush push;
        const Trace trace = tests::sampled([&](double t) { return push.force(t); }, 4, rate);
        const double onset = push.reaches(level);
        const IsometricMarks marks{.quietFrom = 0.5,
                                   .quietTo = 1.5,
                                   .onset = onset,
                                   .peak = push.at + push.seconds / 2,
                                   .end = push.at + push.seconds - (onset - push.at)};
        const auto found = isometricFigures(trace, marks);
        QVERIFY(std::holds_alternative<IsometricFigures>(found));
        const auto f = std::get<IsometricFigures>(found);
        const double chord = push.mostCurved() / (8 * rate * rate);
        // The corner where the push begins may lie in the onset's own step.
        const double corner = push.steepest() / rate;
        QCOMPARE(f.baseline, push.baseline);
        QVERIFY(std::abs(f.peakGross - push.baseline - push.amplitude) <= chord);
        QCOMPARE(f.peakNet, f.peakGross - f.baseline);
        QVERIFY(std::abs(f.impulse - push.impulse(marks.onset, marks.end)) <=
                1.2 * chord + corner / rate);
        QCOMPARE(f.windows.size(), isometricWindows.size());
        for (const WindowFigures& w : f.windows) {
            const double exact = push.force(onset + w.seconds);
            QVERIFY(std::abs(w.force - exact) <= chord + 1e-9);
            QVERIFY(std::abs(w.netForce - (exact - push.baseline)) <= chord + 1e-9);
            QVERIFY(std::abs(w.rfd - (exact - push.force(onset)) / w.seconds) <=
                    (chord + corner) / w.seconds);
            QVERIFY(std::abs(w.impulse - push.impulse(onset, onset + w.seconds)) <=
                    w.seconds * chord + corner / rate);
        }
    }

    void foundMarks_data() { eachRate({0, 2, 10}); }
    void foundMarks() {
        QFETCH(double, rate);
        QFETCH(double, noise);
        const tests::HalfSinePush push;
        const Trace trace =
            tests::sampled([&](double t) { return push.force(t); }, 4, rate, noise, 11);
        const auto marked = findIsometric(trace);
        QVERIFY(std::holds_alternative<IsometricMarks>(marked));
        const auto marks = std::get<IsometricMarks>(marked);
        const auto f = std::get<IsometricFigures>(isometricFigures(trace, marks));

        const double net = std::max(level, 5 * noise);
        const double exactOnset = push.reaches(net);
        // The SD comes from the quiet second: its own error is SD/sqrt(2 n), times 5 in the level;
        // the stretch chosen is among the quietest, 5 % again.
        const double levelError = 5 * noise * (far / std::sqrt(2 * rate) + 0.05);
        const double slope = push.amplitude * push.omega() * 0.95;
        const double onsetBound = 1 / rate + (far * noise + levelError) / slope;
        QVERIFY2(std::abs(marks.onset - exactOnset) <= onsetBound,
                 qPrintable(QString::number(marks.onset - exactOnset)));

        const double halfStep = 0.5 / rate;
        const double top = push.amplitude * (1 - std::cos(push.omega() * halfStep));
        const double forceNoise = far * noise;
        QVERIFY(std::abs(f.peakGross - push.baseline - push.amplitude) <= top + forceNoise);
        QVERIFY(std::abs(f.baseline - push.baseline) <=
                far * noise / std::sqrt(rate) + 2e-6 * push.amplitude);
        QVERIFY(std::abs(f.impulse - push.impulse(exactOnset, push.at + push.seconds -
                                                                  (exactOnset - push.at))) <=
                4 * (net + forceNoise) * onsetBound +
                    1.2 * (far * noise / std::sqrt(rate) + top + push.steepest() / rate / rate) +
                    far * noise * std::sqrt(1.2 / rate));
        double worst = 0;
        for (const WindowFigures& w : f.windows) {
            const double exact = push.force(exactOnset + w.seconds);
            const double bound = push.steepest() * onsetBound + top + forceNoise;
            QVERIFY2(
                std::abs(w.force - exact) <= bound,
                qPrintable(
                    QStringLiteral("%1 %2 %3").arg(w.seconds).arg(w.force - exact).arg(bound)));
            QVERIFY(std::abs(w.rfd - (exact - push.baseline - net) / w.seconds) <=
                    2 * bound / w.seconds);
            worst = std::max(worst, std::abs(w.force - exact));
        }
        qInfo(
            "TRACES isometric %6.0f Hz noise %4.1f N: onset %+7.3f ms (bound %.3f), after true "
            "start %.2f ms; peak %+7.2f N; force at 50-250 ms within %6.2f N; RFD 0-100 %+7.1f %%",
            rate, noise, 1000 * (marks.onset - exactOnset), 1000 * onsetBound,
            1000 * (marks.onset - push.at), f.peakGross - push.baseline - push.amplitude, worst,
            100 * (f.windows[1].rfd / ((push.force(exactOnset + 0.1) - push.baseline - net) / 0.1) -
                   1));
    }

    void movedMark() {
        const tests::HalfSinePush push;
        const Trace trace = tests::sampled([&](double t) { return push.force(t); }, 4, 1000);
        auto marks = std::get<IsometricMarks>(findIsometric(trace));
        const auto before = std::get<IsometricFigures>(isometricFigures(trace, marks));
        marks.onset += 0.02;
        const auto after = std::get<IsometricFigures>(isometricFigures(trace, marks));
        QVERIFY(after.windows[0].force > before.windows[0].force);
        QVERIFY(std::abs(before.secondsToPeak - after.secondsToPeak - 0.02) < 1e-12);
        marks.peak = marks.onset - 0.1;
        QVERIFY(std::holds_alternative<Fault>(isometricFigures(trace, marks)));
        marks.peak = 99;
        QVERIFY(std::holds_alternative<Fault>(isometricFigures(trace, marks)));
    }

    /// An earlier, smaller try and a spike do not draw the onset away from the push.
    void onsetIsThatOfThePush() {
        const tests::HalfSinePush push{.at = 3};
        Trace trace = tests::sampled(
            [&](double t) {
                const double warmUp =
                    t > 0.5 && t < 0.8 ? 300 * std::sin((t - 0.5) / 0.3 * 3.14159) : 0;
                return push.force(t) + warmUp;
            },
            6, 1000, 2, 5);
        trace.values[1500] += 60;
        const auto marks = std::get<IsometricMarks>(findIsometric(trace));
        QVERIFY(std::abs(marks.onset - push.reaches(10)) < 0.005);
    }

    void nothingToFind() {
        const Trace flat = tests::sampled([](double) { return 800.0; }, 4, 1000, 2, 1);
        QVERIFY(std::holds_alternative<Fault>(findIsometric(flat)));
        const tests::HalfSinePush push{.at = 0.05};
        const Trace late = tests::sampled([&](double t) { return push.force(t); }, 2, 1000);
        QVERIFY(std::holds_alternative<Fault>(findIsometric(late)));
    }

private:
    static void eachRate(const std::vector<double>& noises) {
        QTest::addColumn<double>("rate");
        QTest::addColumn<double>("noise");
        for (const double rate : tests::rates)
            for (const double noise : noises)
                QTest::addRow("%.0f Hz, noise %.0f N", rate, noise) << rate << noise;
    }
};
QTEST_APPLESS_MAIN(TestIsometric)
#include "tst_isometric.moc"
