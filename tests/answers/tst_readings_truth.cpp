// SPDX-License-Identifier: GPL-3.0-or-later
// Truth of the readings: with no true change better or worse is said in at most 5 % of cases, and
// held in at most 5 % where the true change is the smallest that matters. The longer table:
// slopebook_truth_readings in tests/bench; what it found: tests/README.md.
#include "tests/answers/readingstruth.h"

#include <QtTest>

#include <cmath>

using namespace slopebook::tests;

namespace {
constexpr double bound = 5; // per cent
#ifdef NDEBUG
constexpr long runs = 1500;
#else
constexpr long runs = 100; // a build without optimisation takes ten times as long for each
#endif

/// What counting may add: three standard errors of a share of 5 % in so many.
double allowed(long asked) {
    return bound + 3 * 100 * std::sqrt(0.05 * 0.95 / double(asked));
}
} // namespace

class TestReadingsTruth : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void errorRates_data();
    void errorRates();
    void bothAreSaidAtAll();
    void twoRepeatTestsAreNotUsed();
};

void TestReadingsTruth::errorRates_data() {
    QTest::addColumn<int>("index");
    int index = 0;
    for (const ReadingsCase& each : readingsCases())
        QTest::newRow(each.name().c_str()) << index++;
}

void TestReadingsTruth::errorRates() {
    QFETCH(int, index);
    const ReadingsCase played = readingsCases()[std::size_t(index)];
    // A known SD costs little and is where the rule was once too quick: more runs.
    const long times = played.repeatTests == 0 ? 6 * runs : runs;
    for (const ReadingsTally& tally : playReadings(played, times, 500 + std::uint64_t(index))) {
        const QByteArray said = QByteArray::fromStdString(tally.question) + ": changed " +
                                QByteArray::number(tally.changePercent(), 'f', 2) + " %, held " +
                                QByteArray::number(tally.heldPercent(), 'f', 2) + " %";
        QVERIFY2(tally.changePercent() <= allowed(tally.asked), said.constData());
        QVERIFY2(tally.heldPercent() <= allowed(tally.asked), said.constData());
    }
}

// A rule that never spoke would pass the bounds: near its nominal rate it must speak.
void TestReadingsTruth::bothAreSaidAtAll() {
    const auto tallies = playReadings({.points = 5, .daySd = 0, .repeatTests = 0}, 2 * runs, 3);
    for (const ReadingsTally& tally : tallies)
        QVERIFY2(tally.changePercent() > 1, tally.question.c_str());
    QVERIFY(tallies[1].falseHeld > 0);
}

void TestReadingsTruth::twoRepeatTestsAreNotUsed() {
    // With two, no day-to-day noise is used at all here, and a day's shift is called a change.
    const auto tallies = playReadings({.points = 5, .daySd = 0.025, .repeatTests = 2}, 2 * runs, 4);
    QVERIFY(tallies[0].changePercent() > 10);
}

QTEST_APPLESS_MAIN(TestReadingsTruth)
#include "tst_readings_truth.moc"
