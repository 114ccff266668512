// SPDX-License-Identifier: GPL-3.0-or-later
// Lifts of known motion: least-jerk rises, constant acceleration with a braked end. Bounds come
// from the theory of the smoothing, not from what it gave:
// - a cubic over half-width h misses the velocity of a smooth rise by 5/21 h^4 x5/120;
// - a jump of the third derivative j (a least-jerk start) moves the velocity by at most 0.0076 j
// h^2
//   and the acceleration by 0.157 j h; a jump of the second derivative a by 0.079 a h (largest
//   responses of the cubic to t^3/6 and t^2/2 from a corner, by R's lm on 2001 points);
// - noise of SD e comes through as e rate sqrt(75/N^3) in velocity and e rate^2 sqrt(720/N^5) in
//   acceleration (Savitzky-Golay gains for long windows; 15 % more for short ones).
#include "core/traces/liftreps.h"
#include "tests/traces/knownmotion.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::traces;

namespace {

constexpr double h = 0.05; // half a window, s

/// Three equal reps: rest, rise, hold, lower slowly.
struct Reps {
    std::function<double(double)> rise; ///< position from 0 at 0
    double height = 0, seconds = 0;
    static constexpr double rest = 1.0, hold = 0.6, lower = 1.2, cycle = 4.0;
    double position(double t) const {
        const double s = t - std::floor(t / cycle) * cycle - rest;
        if (s <= 0)
            return 0;
        if (s < seconds)
            return rise(s);
        if (s < seconds + hold)
            return height;
        const double down = (s - seconds - hold) / lower;
        const double d = std::clamp(down, 0.0, 1.0);
        return height * (1 - d * d * d * (10 + d * (-15 + d * 6)));
    }
    double begins(int rep) const { return rep * cycle + rest; }
};

struct Gains {
    double velocity = 0, acceleration = 0;
};
Gains gains(double noise, double rate) {
    const double n = 2 * std::round(h * rate) + 1;
    return {1.15 * noise * rate * std::sqrt(75 / (n * n * n)),
            1.15 * noise * rate * rate * std::sqrt(720 / (n * n * n * n * n))};
}

} // namespace

class TestLiftReps : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void leastJerk_data() {
        QTest::addColumn<double>("rate");
        QTest::addColumn<double>("noise");
        QTest::addColumn<double>("seconds");
        for (const double rate : tests::rates)
            for (const double noise : {0.0, 0.0003})
                for (const double seconds :
                     rate > 5000 ? std::vector{0.8} : std::vector{0.5, 0.8, 1.6})
                    QTest::addRow("%.0f Hz, noise %.1f mm, 0.5 m in %.1f s", rate, 1000 * noise,
                                  seconds)
                        << rate << noise << seconds;
    }
    void leastJerk() {
        QFETCH(double, rate);
        QFETCH(double, noise);
        const int wanted = rate > 5000 ? 1 : 3; // a fast trace takes long
        QFETCH(double, seconds);
        const tests::MinimumJerk jerk{.height = 0.5, .seconds = seconds};
        const Reps lift{[&](double t) { return jerk.position(t); }, jerk.height, seconds};
        const Trace trace =
            tests::sampled([&](double t) { return lift.position(t); }, 4 * wanted, rate, noise, 31);
        const Motion moved = std::get<Motion>(motion(trace));
        const auto found = findReps(moved);
        QVERIFY(std::holds_alternative<std::vector<RepMarks>>(found));
        const auto& reps = std::get<std::vector<RepMarks>>(found);
        QCOMPARE(reps.size(), std::size_t(wanted));

        const Gains gain = gains(noise, rate);
        const double third = 60 * jerk.height / std::pow(seconds, 3);
        const double fifth = 720 * jerk.height / std::pow(seconds, 5);
        const double speedError =
            0.0076 * third * h * h + 5.0 / 21 * std::pow(h, 4) * fifth / 120 + 5 * gain.velocity;
        const double bend = 0.157 * third * h + 5 * gain.acceleration;
        // Rest speed: 0.02 m/s, or 5 SD of the quiet velocity (at most 1.3 of its true SD).
        const double highest = std::max(0.02, 5 * 1.3 * gain.velocity) + speedError;
        const double t1 = jerk.reaches(highest);
        // The true start lies at 0; the tangent from a speed on 30 A t^2/T^3 reaches half way back.
        const double startBound = t1 + 1 / rate;
        double worstMean = 0, worstPeak = 0, worstStart = 0;
        for (int i = 0; i < wanted; ++i) {
            const RepMarks& marks = reps[static_cast<std::size_t>(i)];
            const double start = marks.start - lift.begins(i);
            const double top = lift.begins(i) + seconds - marks.top;
            // Neither before the true start by more than the tangent can overshoot, nor after it by
            // more than the time to reach rest speed.
            const double overshoot =
                std::min(0.1, highest / std::max(1e-9, jerk.acceleration(t1) - bend));
            const double early = jerk.acceleration(t1) > bend ? overshoot : 0.1;
            QVERIFY2(start <= startBound && start >= -early, qPrintable(QString::number(start)));
            QVERIFY2(top <= startBound && top >= -early, qPrintable(QString::number(top)));
            const auto f = std::get<RepFigures>(repFigures(moved, marks));
            const double exactMean = jerk.height / seconds;
            // Given its own marks the mean must be that of the true motion between them.
            const double between = (jerk.position(marks.top - lift.begins(i)) -
                                    jerk.position(marks.start - lift.begins(i))) /
                                   (marks.top - marks.start);
            QVERIFY(std::abs(f.mean - between) <=
                    2 * (5 * noise * 3 / std::sqrt(h * rate) + 0.0053 * third * h * h * h) /
                        (marks.top - marks.start));
            QVERIFY(std::abs(f.peak - jerk.peak()) <=
                    1.1 * 5.0 / 21 * std::pow(h, 4) * fifth / 120 + 5 * gain.velocity +
                        30 * jerk.height / std::pow(seconds, 3) / (8 * rate * rate));
            // No braking: acceleration stays above -9.81 in the slower two.
            if (seconds > 0.6)
                QVERIFY(std::abs(f.propulsive - f.mean) < 1e-9);
            worstMean = std::max(worstMean, std::abs(f.mean - exactMean));
            worstPeak = std::max(worstPeak, std::abs(f.peak - jerk.peak()));
            worstStart = std::max({worstStart, std::abs(start), std::abs(top)});
        }
        qInfo("TRACES lift %6.0f Hz noise %.1f mm, 0.5 m in %.1f s: start and top within %5.1f ms, "
              "mean velocity within %.4f of %.3f m/s, peak within %.4f of %.3f m/s",
              rate, 1000 * noise, seconds, 1000 * worstStart, worstMean, jerk.height / seconds,
              worstPeak, jerk.peak());
    }

    void braked_data() {
        QTest::addColumn<double>("rate");
        QTest::addColumn<double>("noise");
        for (const double rate : tests::rates)
            for (const double noise : {0.0, 0.0003})
                QTest::addRow("%.0f Hz, noise %.1f mm", rate, 1000 * noise) << rate << noise;
    }
    /// 6 m/s2 for 0.25 s, 1.5 m/s for 0.2 s, braked at 15 m/s2 for 0.1 s: mean 0.5625/0.55,
    /// propulsive (to the brake) 0.4875/0.45, peak 1.5 m/s, all by hand.
    void braked() {
        QFETCH(double, rate);
        QFETCH(double, noise);
        const int wanted = rate > 5000 ? 1 : 3; // a fast trace takes long
        const Reps lift{[](double t) {
                            if (t < 0.25)
                                return 3 * t * t;
                            if (t < 0.45)
                                return 0.1875 + 1.5 * (t - 0.25);
                            const double u = t - 0.45;
                            return 0.4875 + 1.5 * u - 7.5 * u * u;
                        },
                        0.5625, 0.55};
        const Trace trace =
            tests::sampled([&](double t) { return lift.position(t); }, 4 * wanted, rate, noise, 32);
        const Motion moved = std::get<Motion>(motion(trace));
        const auto reps = std::get<std::vector<RepMarks>>(findReps(moved));
        QCOMPARE(reps.size(), std::size_t(wanted));
        const Gains gain = gains(noise, rate);
        double worstMean = 0, worstPropulsive = 0, worstPeak = 0;
        for (int i = 0; i < wanted; ++i) {
            const RepMarks& marks = reps[static_cast<std::size_t>(i)];
            const double begin = lift.begins(i);
            // Outside half a window of a corner the smoothing is exact, so each mark lies within
            // it.
            QVERIFY(std::abs(marks.start - begin) <= h + 1 / rate);
            QVERIFY(std::abs(marks.top - begin - 0.55) <= h + 1 / rate);
            QVERIFY(std::abs(marks.propulsiveEnd - begin - 0.45) <= h + 1 / rate);
            const auto f = std::get<RepFigures>(repFigures(moved, marks));
            // 1.5 m/s is held for longer than a window, so its middle is exact; a corner beside it
            // may lift the largest value by 0.079 a h.
            QVERIFY(f.peak >= 1.5 - 5 * gain.velocity - 1e-9);
            QVERIFY(f.peak <= 1.5 + 0.079 * 15 * h + 5 * gain.velocity);
            worstMean = std::max(worstMean, std::abs(f.mean - 0.5625 / 0.55));
            worstPropulsive = std::max(worstPropulsive, std::abs(f.propulsive - 0.4875 / 0.45));
            worstPeak = std::max(worstPeak, std::abs(f.peak - 1.5));
            QVERIFY(std::abs(f.mean - 0.5625 / 0.55) <= 0.5625 / 0.55 * 2 * (h + 1 / rate) / 0.45);
        }
        qInfo("TRACES braked lift %6.0f Hz noise %.1f mm: mean within %.4f of 1.0227, propulsive "
              "within %.4f of 1.0833, peak within %.4f of 1.5 m/s",
              rate, 1000 * noise, worstMean, worstPropulsive, worstPeak);
    }

    /// The figures at the true marks are exact to the smoothing alone.
    void figuresOfTrueMarks() {
        const tests::MinimumJerk jerk{.height = 0.6, .seconds = 0.35};
        const Reps lift{[&](double t) { return jerk.position(t); }, jerk.height, jerk.seconds};
        const Trace trace = tests::sampled([&](double t) { return lift.position(t); }, 4, 1000);
        const Motion moved = std::get<Motion>(motion(trace));
        // Least jerk falls under -9.81 m/s2 where 60 A/T^2 s(1-s)(1-2s) does, by halving.
        double low = 0.5, high = 0.7;
        for (int i = 0; i < 60; ++i)
            (jerk.acceleration((low + high) / 2 * 0.35) >= -9.81 ? low : high) = (low + high) / 2;
        const RepMarks marks{1, 1 + 0.35 * low, 1.35};
        const auto f = std::get<RepFigures>(repFigures(moved, marks));
        QVERIFY(std::abs(f.mean - 0.6 / 0.35) <
                2 * 0.0053 * 60 * 0.6 / std::pow(0.35, 3) * h * h * h / 0.35);
        QVERIFY(std::abs(f.propulsive - jerk.position(0.35 * low) / (0.35 * low)) < 0.005);
        // 5/21 h^4 x5/120 = 0.0012 m/s.
        QVERIFY(std::abs(f.peak - jerk.peak()) < 0.0013);
        const auto found = std::get<std::vector<RepMarks>>(findReps(moved));
        QCOMPARE(found.size(), std::size_t(1));
        QVERIFY(std::abs(found[0].propulsiveEnd - marks.propulsiveEnd) < 0.005);

        RepMarks bad = marks;
        bad.top = 0.5;
        QVERIFY(std::holds_alternative<Fault>(repFigures(moved, bad)));
        bad.top = 50;
        QVERIFY(std::holds_alternative<Fault>(repFigures(moved, bad)));
    }

    /// A rep that stalls for a moment on the way up is one rep; small fidgets are none.
    void stallsAndFidgets() {
        const tests::MinimumJerk part{.height = 0.2, .seconds = 0.6};
        const tests::MinimumJerk fidget{.height = 0.05, .seconds = 0.3};
        const auto x = [&](double t) {
            return fidget.position(t - 0.5) - fidget.position(t - 1.0) + part.position(t - 2) +
                   part.position(t - 2.9);
        };
        const Motion moved = std::get<Motion>(motion(tests::sampled(x, 5, 500, 0.0003, 6)));
        const auto reps = std::get<std::vector<RepMarks>>(findReps(moved));
        QCOMPARE(reps.size(), std::size_t(1));
        QVERIFY(std::abs(reps[0].start - 2) < 0.1 && std::abs(reps[0].top - 3.5) < 0.1);
    }

    void nothingRises() {
        const Trace still = tests::sampled([](double) { return 0.4; }, 3, 500, 0.0003, 2);
        QVERIFY(std::holds_alternative<Fault>(findReps(std::get<Motion>(motion(still)))));
        const Trace brief{.start = 0, .rate = 10'000, .values = std::vector<double>(500, 1.0)};
        QVERIFY(std::holds_alternative<Fault>(motion(brief)));
    }
};
QTEST_APPLESS_MAIN(TestLiftReps)
#include "tst_liftreps.moc"
