// SPDX-License-Identifier: GPL-3.0-or-later
// Sampling found from the times and uneven times refused with where; the sums that figures are made
// of.
#include "core/traces/trace.h"
#include "tests/traces/knownmotion.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::traces;

class TestTrace : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void rateIsFound_data() {
        QTest::addColumn<double>("rate");
        QTest::addColumn<int>("decimals");
        QTest::newRow("100 Hz in hundredths") << 100.0 << 2;
        QTest::newRow("300 Hz rounded to milliseconds") << 300.0 << 3;
        QTest::newRow("1000 Hz") << 1000.0 << 3;
        QTest::newRow("2000 Hz") << 2000.0 << 4;
        QTest::newRow("10 kHz") << 10'000.0 << 6;
    }
    void rateIsFound() {
        QFETCH(double, rate);
        QFETCH(int, decimals);
        std::vector<double> times, values;
        const double unit = std::pow(10.0, decimals);
        for (int i = 0; i < 3000; ++i) {
            times.push_back(std::round((2 + i / rate) * unit) / unit);
            values.push_back(i);
        }
        const auto made = makeTrace(times, values);
        QVERIFY(std::holds_alternative<Trace>(made));
        // Both ends are off by half a unit at the most.
        const double bound = rate * (1 / unit) / (2999 / rate);
        QVERIFY(std::abs(std::get<Trace>(made).rate - rate) <= bound + 1e-9 * rate);
        QCOMPARE(std::get<Trace>(made).values.size(), std::size_t(3000));
    }

    void refused_data() {
        QTest::addColumn<int>("fault");
        QTest::addColumn<QString>("says");
        QTest::addColumn<int>("sample");
        QTest::newRow("a sample is missing") << 0 << "uneven times" << 500;
        QTest::newRow("the clock changes") << 1 << "uneven times" << -1;
        QTest::newRow("a time runs back") << 2 << "do not rise" << 500;
        QTest::newRow("a value is not a number") << 3 << "not a number" << 500;
        QTest::newRow("milliseconds taken for seconds") << 4 << "seconds" << -1;
        QTest::newRow("slower than 100 Hz") << 5 << "expected 100 to 10000 Hz" << -1;
        QTest::newRow("too short") << 6 << "fewer than 20" << -1;
        QTest::newRow("values missing") << 7 << "as many values" << -1;
    }
    void refused() {
        QFETCH(int, fault);
        QFETCH(QString, says);
        QFETCH(int, sample);
        std::vector<double> t, v;
        for (int i = 0; i < 1000; ++i) {
            double time = i * 0.001;
            if (fault == 0 && i >= 500)
                time += 0.001;
            if (fault == 1 && i >= 500)
                time = 0.5 + (i - 500) * 0.0012;
            if (fault == 2 && i == 500)
                time = 0.4;
            if (fault == 4)
                time *= 1000;
            if (fault == 5)
                time *= 20;
            t.push_back(time);
            v.push_back(fault == 3 && i == 500 ? std::nan("") : 1);
        }
        if (fault == 6) {
            t.resize(19);
            v.resize(19);
        }
        if (fault == 7)
            v.resize(999);
        const auto made = makeTrace(t, v);
        QVERIFY(std::holds_alternative<Fault>(made));
        const Fault& why = std::get<Fault>(made);
        QVERIFY2(QString::fromStdString(english(why.what)).contains(says),
                 english(why.what).c_str());
        if (sample >= 0)
            QCOMPARE(static_cast<int>(why.sample.value_or(0)), sample);
    }

    void betweenSamples() {
        Trace trace{.start = 1, .rate = 10, .values = {0, 1, 3}};
        QCOMPARE(valueAt(trace, 1.05), 0.5);
        QCOMPARE(valueAt(trace, 1.15), 2.0);
        QCOMPARE(valueAt(trace, 0), 0.0);
        QCOMPARE(valueAt(trace, 9), 3.0);
        // Trapezia by hand: 0.05 to 0.15 s: (0.5+1)/2*0.05 + (1+2)/2*0.05.
        QCOMPARE(integral(trace, 1.05, 1.15), 0.1125);
        QCOMPARE(integral(trace, 1.15, 1.05), -0.1125);
        QCOMPARE(integral(trace, 1.0, 1.2, 1.0), 0.25 - 0.2);
        QCOMPARE(crossing(trace, 1, 2.5), 1.175);
    }

    void quietStretch() {
        // Loud, quiet (SD 1), loud; the quiet second must be found inside 2 to 4 s.
        const auto loud = tests::sampled([](double) { return 700.0; }, 6, 1000, 1, 3);
        Trace trace = loud;
        for (std::size_t i = 0; i < trace.values.size(); ++i) {
            const double t = trace.timeOf(static_cast<double>(i));
            if (t < 2 || t > 4)
                trace.values[i] += 50 * std::sin(20 * t);
        }
        const auto quiet = quietest(trace, 0, 6, 1.0);
        QVERIFY(quiet);
        QVERIFY(quiet->from >= 2 && quiet->to <= 4);
        QVERIFY(std::abs(quiet->mean - 700) < 5 / std::sqrt(1000.0));
        QVERIFY(std::abs(quiet->sd - 1) < 5 / std::sqrt(2000.0));
        QVERIFY(!quietest(trace, 0, 6, 1.0, 900.0));
        QVERIFY(!quietest(trace, 3, 3.1, 1.0));
    }
};
QTEST_APPLESS_MAIN(TestTrace)
#include "tst_trace.moc"
