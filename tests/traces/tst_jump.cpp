// SPDX-License-Identifier: GPL-3.0-or-later
// Jumps whose flight is exactly ballistic and whose impulses are known in closed form. Bounds: each
// crossing lies within the sample step that brackets it; noise moves it by noise / slope.
#include "core/traces/analysis.h"
#include "tests/traces/knownmotion.h"

#include <QTest>

#include <numbers>

using namespace slopebook;
using namespace slopebook::traces;
using std::numbers::pi;

namespace {

constexpr double g = standardGravity;

/// One stretch of contact or flight, with its force as a function of the time since its start.
struct Phase {
    double seconds;
    std::function<double(double)> force;
};

double forceOf(const std::vector<Phase>& phases, double t) {
    for (const Phase& phase : phases) {
        if (t < phase.seconds)
            return phase.force(t);
        t -= phase.seconds;
    }
    return phases.back().force(phases.back().seconds);
}

double total(const std::vector<Phase>& phases) {
    double sum = 0;
    for (const Phase& phase : phases)
        sum += phase.seconds;
    return sum;
}

Phase halfSine(double seconds, double base, double amplitude) {
    return {seconds, [=](double t) { return base + amplitude * std::sin(pi * t / seconds); }};
}
Phase steady(double seconds, double force) {
    return {seconds, [=](double) { return force; }};
}

/// Stands, dips, pushes, lets the force fall to nothing in a straight line, flies, lands, stands.
struct Jump {
    double mass = 80;
    double weight = mass * g;
    double dip = -450, dipSeconds = 0.35, push = 1300, pushSeconds = 0.30, release = 0.05;
    double landSeconds = 0.30;
    double speed() const {
        return (2 / pi * (dip * dipSeconds + push * pushSeconds) - weight * release / 2) / mass;
    }
    double flight() const { return 2 * speed() / g; }
    double takeOff() const { return 2 + dipSeconds + pushSeconds + release; }
    double landing() const { return takeOff() + flight(); }
    double landAmplitude() const {
        return (mass * speed() + weight * landSeconds) * pi / (2 * landSeconds);
    }
    std::vector<Phase> phases() const {
        const double w = weight, r = release;
        return {steady(2, w),
                halfSine(dipSeconds, w, dip),
                halfSine(pushSeconds, w, push),
                {r, [w, r](double t) { return w * (1 - t / r); }},
                steady(flight(), 0),
                halfSine(landSeconds, 0, landAmplitude()),
                steady(1.5, w)};
    }
    /// Force per second at the two crossings.
    double releaseSlope() const { return weight / release; }
    double landSlope() const { return landAmplitude() * pi / landSeconds; }
};

/// Drops from a box, rebounds from a half-sine contact, lands and stands.
struct Drop {
    double mass = 75, box = 0.30, contact = 0.20, up = 2.4, landSeconds = 0.30;
    double weight = mass * g;
    double flight() const { return 2 * up / g; }
    double amplitude() const {
        return (mass * (std::sqrt(2 * g * box) + up) + weight * contact) * pi / (2 * contact);
    }
    double landAmplitude() const {
        return (mass * up + weight * landSeconds) * pi / (2 * landSeconds);
    }
    double touch() const { return 0.8; }
    std::vector<Phase> phases() const {
        return {steady(0.8, 0), halfSine(contact, 0, amplitude()), steady(flight(), 0),
                halfSine(landSeconds, 0, landAmplitude()), steady(2.5, weight)};
    }
};

Trace traceOf(const std::vector<Phase>& phases, double rate, double noise, unsigned seed) {
    return tests::sampled([&](double t) { return forceOf(phases, t); }, total(phases), rate, noise,
                          seed);
}

} // namespace

class TestJump : public QObject {
    Q_OBJECT
private Q_SLOTS:
    /// published-values.md section 7: g t^2/8 with g = 9.80665.
    void heightOfFlight() {
        const double table[][2] = {{0.30, 0.110325},
                                   {0.40, 0.196133},
                                   {0.50, 0.306458},
                                   {0.55, 0.370814},
                                   {0.60, 0.441299}};
        for (const auto& row : table)
            QVERIFY(std::abs(heightFromFlight(row[0]) - row[1]) < 5e-7);
    }

    void countermovement_data() { eachRate(); }
    void countermovement() {
        QFETCH(double, rate);
        QFETCH(double, noise);
        const Jump jump;
        const Trace trace = traceOf(jump.phases(), rate, noise, 21);
        const auto found = findJumps(trace);
        QVERIFY(std::holds_alternative<std::vector<JumpMarks>>(found));
        const auto& all = std::get<std::vector<JumpMarks>>(found);
        QCOMPARE(all.size(), std::size_t(1));
        const JumpMarks& marks = all[0];
        QVERIFY(!marks.contact);
        QVERIFY(marks.still && marks.still->to <= 2.02);

        const double level = std::max(10.0, 5 * noise);
        const double step = 1 / rate;
        // The level is 5 SD of the flight's middle half.
        const double levelError = 5 * noise * (5 / std::sqrt(jump.flight() * rate));
        const double offBound = step + (5 * noise + levelError) / jump.releaseSlope();
        const double onBound = step + (5 * noise + levelError) / jump.landSlope();
        const double exactOff = jump.takeOff() - level / jump.releaseSlope();
        const double exactOn = jump.landing() + level / jump.landSlope();
        QVERIFY(std::abs(marks.takeOff - exactOff) <= offBound);
        QVERIFY(std::abs(marks.landing - exactOn) <= onBound);

        const auto f = std::get<JumpFigures>(jumpFigures(trace, marks));
        const double weightBound = 5 * noise / std::sqrt(rate) + 1e-9;
        QVERIFY(std::abs(*f.weight - jump.weight) <= weightBound);
        const double flightBound = offBound + onBound;
        QVERIFY(std::abs(f.flightTime - (exactOn - exactOff)) <= flightBound);
        // The window of stillness ends at 2 s at the latest, so the integral is of the known
        // motion: weight error over its length, trapezia over curved halves (f'' step^2 / 12),
        // three corners (slope change times step^2 / 8 each), white noise.
        const double seconds = marks.takeOff - marks.still->to;
        const double curved = jump.push * (pi / jump.pushSeconds) * (pi / jump.pushSeconds);
        const double corners = (jump.push * pi / jump.pushSeconds + jump.releaseSlope()) / 2;
        const double speedBound = (weightBound * seconds + seconds * curved * step * step / 12 +
                                   corners * step * step + 5 * noise * std::sqrt(seconds * step) +
                                   level * level / jump.releaseSlope() + jump.weight * offBound) /
                                  jump.mass;
        // The found take-off comes before the true one, while the net force is already negative.
        const double early = level / jump.releaseSlope();
        const double speedThere = jump.speed() + (jump.weight - level / 2) * early / jump.mass;
        QVERIFY(std::abs(*f.takeOffSpeed - speedThere) <= speedBound);
        const double height = jump.speed() * jump.speed() / (2 * g);
        QVERIFY(std::abs(*f.impulseHeight - speedThere * speedThere / (2 * g)) <=
                (speedThere * speedBound + speedBound * speedBound / 2) / g);
        QVERIFY(marks.start && std::abs(*marks.start - (2 - 0.03)) <=
                                   step + 0.04); // leaves 1 % of the weight within 10 ms of the dip
        qInfo(
            "TRACES jump %6.0f Hz noise %4.1f N: flight time %+6.2f ms (bound %.2f), against true "
            "flight %+6.2f ms; height by flight %+6.2f mm, by impulse %+6.2f mm; weight %+5.2f N",
            rate, noise, 1000 * (f.flightTime - (exactOn - exactOff)), 1000 * flightBound,
            1000 * (f.flightTime - jump.flight()), 1000 * (f.flightHeight - height),
            1000 * (*f.impulseHeight - height), *f.weight - jump.weight);
    }

    void offZero_data() {
        QTest::addColumn<double>("offset");
        QTest::addColumn<double>("rate");
        QTest::addColumn<double>("noise");
        for (const double offset : {-90.0, -24.5, -8.0, -3.0, 0.0, 3.0, 8.0, 24.5, 60.0})
            for (const double rate : {200.0, 1000.0})
                for (const double noise : {0.0, 6.0})
                    QTest::addRow("%.1f N, %.0f Hz, noise %.0f N", offset, rate, noise)
                        << offset << rate << noise;
    }
    /// The same jump of 80 kg on a plate that reads so much with nobody on it: 24.5 N more
    /// made 82.5 kg of 80. In flight the true force is zero, so what the plate reads then is known
    /// exactly.
    void offZero() {
        QFETCH(double, offset);
        QFETCH(double, rate);
        QFETCH(double, noise);
        const Jump jump;
        Trace trace = traceOf(jump.phases(), rate, noise, 23);
        for (double& force : trace.values)
            force += offset;
        const auto all = std::get<std::vector<JumpMarks>>(findJumps(trace));
        QCOMPARE(all.size(), std::size_t(1));
        const auto f = std::get<JumpFigures>(jumpFigures(trace, all[0]));
        QCOMPARE(f.plateOffset.has_value(), std::abs(offset) > 5);
        // White noise of the stillness (1 s) and of the middle half of the flight, 5 SE each.
        const double bound =
            5 * noise * (1 / std::sqrt(rate) + 1 / std::sqrt(jump.flight() / 2 * rate)) +
            (f.plateOffset ? 0 : std::abs(offset)) + 1e-6;
        QVERIFY(std::abs(*f.weight - jump.weight) <= bound);
        QVERIFY(std::abs(*f.mass - jump.mass) <= bound / g);
        // Flight and impulse do not see an offset: it stands in the weight and in the push alike.
        QVERIFY(std::abs(f.flightTime - jump.flight()) < 0.02);
        QVERIFY(std::abs(*f.takeOffSpeed - jump.speed()) < 0.08);
        // And it is said, with its figure.
        const auto made = std::get<Analysis>(Analysis::make(trace, TraceKind::Jump));
        const std::string said = english(made.remark(0));
        QCOMPARE(said.empty(), !f.plateOffset.has_value());
        if (f.plateOffset) {
            const auto whole = std::to_string(std::lround(*f.plateOffset));
            QVERIFY(said.find(whole + " N in flight") != std::string::npos);
        }
    }

    /// So far off that it is believed no more: words, and no figures.
    void refusesAPlateFarOffZero() {
        for (const double offset : {-400.0, -200.0, 400.0, 1500.0}) {
            Trace trace = traceOf(Jump().phases(), 1000, 2, 24);
            for (double& force : trace.values)
                force += offset;
            const auto found = findJumps(trace);
            const auto* none = std::get_if<Fault>(&found);
            std::string why = none ? english(none->what) : std::string();
            if (!none) {
                const auto figures =
                    jumpFigures(trace, std::get<std::vector<JumpMarks>>(found).at(0));
                QVERIFY(std::holds_alternative<Fault>(figures));
                why = english(std::get<Fault>(figures).what);
            }
            QVERIFY2(why.find("zero") != std::string::npos ||
                         why.find("under 150 N") != std::string::npos,
                     why.c_str());
        }
    }

    void drop_data() { eachRate(); }
    void drop() {
        QFETCH(double, rate);
        QFETCH(double, noise);
        const Drop drop;
        const Trace trace = traceOf(drop.phases(), rate, noise, 22);
        const auto all = std::get<std::vector<JumpMarks>>(findJumps(trace));
        QCOMPARE(all.size(), std::size_t(1));
        const auto f = std::get<JumpFigures>(jumpFigures(trace, all[0]));
        QVERIFY(f.contactTime && f.rsi);
        // Touch-down is found at 5 % of the largest force, take-off at the flight's own level.
        const double first = 0.05 * std::max(drop.amplitude(), drop.landAmplitude());
        const double slope = drop.amplitude() * pi / drop.contact * 0.9;
        const double bound = 2 / rate + (first + std::max(10.0, 5 * noise) + 10 * noise) / slope;
        QVERIFY(std::abs(*f.contactTime - drop.contact) <= bound);
        QVERIFY(std::abs(*f.rsi - f.flightHeight / *f.contactTime) < 1e-12);
        QVERIFY(std::abs(*f.flightContactRatio - f.flightTime / *f.contactTime) < 1e-12);
        QVERIFY(all[0].still && all[0].still->from > all[0].landing);
        const double speedBound =
            (5 * noise / std::sqrt(rate) * 2.5 + 5 * noise / std::sqrt(rate) * 1.6 +
             drop.landAmplitude() * pi / drop.landSeconds / rate / rate + 2 * drop.weight / rate +
             10 * 1 / rate) /
            drop.mass;
        QVERIFY(std::abs(*f.takeOffSpeed - drop.up) <= speedBound);
        qInfo("TRACES drop jump %6.0f Hz noise %4.1f N: contact %+6.2f ms (bound %.2f), flight "
              "%+6.2f "
              "ms, rsi %+6.3f m/s, take-off speed by impulse %+7.4f m/s",
              rate, noise, 1000 * (*f.contactTime - drop.contact), 1000 * bound,
              1000 * (f.flightTime - drop.flight()),
              *f.rsi - heightFromFlight(drop.flight()) / drop.contact, *f.takeOffSpeed - drop.up);
    }

    /// Five hops in a row: five flights, all but the first with a contact before them.
    void hops() {
        const double mass = 70, w = mass * g, up = 1.5, contact = 0.2;
        const double amplitude = (mass * 2 * up + w * contact) * pi / (2 * contact);
        const double out = (mass * up + w * 0.3) * pi / 0.6;
        std::vector<Phase> phases{steady(1.5, w), halfSine(0.3, w, mass * up * pi / 0.6)};
        for (int i = 0; i < 4; ++i) {
            phases.push_back(steady(2 * up / g, 0));
            phases.push_back(halfSine(contact, 0, amplitude));
        }
        phases.push_back(steady(2 * up / g, 0));
        phases.push_back(halfSine(0.3, 0, out));
        phases.push_back(steady(1, w));
        const auto all = std::get<std::vector<JumpMarks>>(findJumps(traceOf(phases, 1000, 2, 4)));
        QCOMPARE(all.size(), std::size_t(5));
        QVERIFY(!all[0].contact);
        for (std::size_t i = 1; i < 5; ++i) {
            QVERIFY(all[i].contact);
            QVERIFY(std::abs(all[i].takeOff - *all[i].contact - contact) < 0.012);
            QVERIFY(std::abs(all[i].landing - all[i].takeOff - 2 * up / g) < 0.012);
        }
    }

    /// published-values.md section 7: t 0.50 s, contact 0.20 s: RSI 1.53229, ratio 2.5.
    void movedMarks() {
        const Drop drop;
        const Trace trace = traceOf(drop.phases(), 1000, 0, 1);
        JumpMarks marks{.still = {}, .start = {}, .contact = 1.0, .takeOff = 1.2, .landing = 1.7};
        const auto f = std::get<JumpFigures>(jumpFigures(trace, marks));
        QVERIFY(std::abs(*f.rsi - 1.53229) < 5e-6);
        QVERIFY(std::abs(*f.flightContactRatio - 2.5) < 1e-9);
        QVERIFY(!f.weight && !f.impulseHeight);
        marks.landing = 1.1;
        QVERIFY(std::holds_alternative<Fault>(jumpFigures(trace, marks)));
        marks.landing = 99;
        QVERIFY(std::holds_alternative<Fault>(jumpFigures(trace, marks)));
        // The empty plate is no stillness to weigh anybody by.
        marks = {.still = JumpMarks::Still{0.1, 0.6},
                 .start = {},
                 .contact = {},
                 .takeOff = 1.0,
                 .landing = 1.4};
        QVERIFY(std::holds_alternative<Fault>(jumpFigures(trace, marks)));
    }

    void noJump() {
        QVERIFY(std::holds_alternative<Fault>(findJumps(traceOf({steady(3, 800)}, 1000, 2, 1))));
        QVERIFY(std::holds_alternative<Fault>(findJumps(traceOf({steady(3, 0)}, 1000, 2, 1))));
        // Stepping off the plate is no flight: nobody lands.
        QVERIFY(std::holds_alternative<Fault>(
            findJumps(traceOf({steady(2, 800), steady(2, 0)}, 1000, 2, 1))));
    }

private:
    static void eachRate() {
        QTest::addColumn<double>("rate");
        QTest::addColumn<double>("noise");
        for (const double rate : tests::rates)
            for (const double noise : {0.0, 2.0, 6.0})
                QTest::addRow("%.0f Hz, noise %.0f N", rate, noise) << rate << noise;
    }
};
QTEST_APPLESS_MAIN(TestJump)
#include "tst_jump.moc"
