// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/published.h"
#include "core/model/errors.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;

namespace {
const std::string header = "lift,kind,mvt,sd,mvt_source,day_noise,day_noise_source,"
                           "smallest_velocity,smallest_one_rm_percent,smallest_source\n";
}

class TestPublished : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void thresholds_data();
    void thresholds();
    void letterCaseIsNoMatter();
    void unknownLiftGetsDefaultsOnly();
    void peakHasNoThreshold();
    void sayFromMemory();
    void defaultsFollowFromTheirSources();
    void smallestSpeedFollowsFromItsEquation_data();
    void smallestSpeedFollowsFromItsEquation();
    void damagedTables_data();
    void damagedTables();
};

void TestPublished::thresholds_data() {
    QTest::addColumn<QString>("lift");
    QTest::addColumn<QString>("kind");
    QTest::addColumn<double>("mvt");
    QTest::addColumn<double>("sd"); // 0: not stated
    // Values: published-values.md sections 1 and 2, which name the papers.
    QTest::newRow("bench press") << "Bench press"
                                 << "mean" << 0.16 << 0.04;
    QTest::newRow("bench press, propulsive") << "Bench press"
                                             << "propulsive" << 0.16 << 0.04;
    QTest::newRow("back squat, free weight") << "Back squat"
                                             << "mean" << 0.24 << 0.06;
    QTest::newRow("full squat") << "Full squat (guided bar)"
                                << "mean" << 0.32 << 0.03;
    QTest::newRow("full squat, propulsive") << "Full squat (guided bar)"
                                            << "propulsive" << 0.32 << 0.03;
    QTest::newRow("deadlift") << "Deadlift"
                              << "mean" << 0.14 << 0.05;
    QTest::newRow("bench pull") << "Bench pull"
                                << "mean" << 0.52 << 0.04;
    QTest::newRow("bench pull, propulsive") << "Bench pull"
                                            << "propulsive" << 0.51 << 0.04;
    QTest::newRow("overhead press") << "Overhead press"
                                    << "mean" << 0.19 << 0.0;
    QTest::newRow("hip thrust") << "Hip thrust"
                                << "mean" << 0.25 << 0.03;
    QTest::newRow("pull-up") << "Pull-up"
                             << "mean" << 0.20 << 0.05;
}

void TestPublished::thresholds() {
    QFETCH(QString, lift);
    QFETCH(QString, kind);
    QFETCH(double, mvt);
    QFETCH(double, sd);
    const auto row = published(lift.toStdString(), *velocityKindFromWord(kind.toStdString()));
    QVERIFY(row && row->mvt);
    QCOMPARE(row->mvt->value, mvt);
    QCOMPARE(row->mvt->sd.value_or(0), sd);
    QVERIFY(row->mvt->origin == Mvt::Origin::Published);
    QVERIFY(!row->mvt->source.empty());
    QVERIFY(row->dayNoise && !row->dayNoiseSource.empty());
    QVERIFY(row->smallestVelocity && row->smallestOneRmPercent && !row->smallestSource.empty());
}

void TestPublished::letterCaseIsNoMatter() {
    const auto row = published("bENCH pULL", VelocityKind::Mean);
    QVERIFY(row && row->mvt);
    QCOMPARE(row->mvt->value, 0.52);
    QVERIFY(!published("Bench pull ", VelocityKind::Mean)->mvt);
}

void TestPublished::unknownLiftGetsDefaultsOnly() {
    const auto row = published("Zercher carry", VelocityKind::Mean);
    QVERIFY(row);
    QCOMPARE(row->lift, std::string("*"));
    QVERIFY(!row->mvt);
    QVERIFY(row->dayNoise && row->smallestVelocity && row->smallestOneRmPercent);
}

void TestPublished::peakHasNoThreshold() {
    for (const PublishedLift& row : publishedLifts())
        QVERIFY(row.kind != VelocityKind::Peak || !row.mvt);
    const auto row = published("Bench press", VelocityKind::Peak);
    QVERIFY(row && !row->mvt);
    // CV of peak velocity between sessions 3.50 to 6.03 % (published-values.md section 4), at 1
    // m/s.
    QVERIFY(std::abs(*row->dayNoise - (0.0350 + 0.0603) / 2) < 0.0005);
}

void TestPublished::sayFromMemory() {
    for (const char* lift : {"Deadlift", "Bench pull", "Overhead press", "Pull-up"})
        QVERIFY2(published(lift, VelocityKind::Mean)->mvt->source.ends_with("from memory"), lift);
    for (const char* lift : {"Bench press", "Back squat", "Full squat (guided bar)", "Hip thrust"})
        QVERIFY2(published(lift, VelocityKind::Mean)->mvt->source.find("memory") ==
                     std::string::npos,
                 lift);
}

void TestPublished::defaultsFollowFromTheirSources() {
    const auto any = published("*", VelocityKind::Mean);
    QVERIFY(any);
    // Smallest detectable change 1.96 sqrt(2) SD (Hopkins 2000), 0.07 m/s (published-values.md 4).
    QVERIFY(std::abs(*any->dayNoise - 0.07 / (1.96 * std::sqrt(2.0))) < 0.0005);
    // 0.2 x between-athlete SD (Hopkins), squat 1RM 140.3 +/- 27.2 kg (Banyard 2017).
    QVERIFY(std::abs(*any->smallestOneRmPercent - 100 * 0.2 * 27.2 / 140.3) < 0.05);
    // Velocities at 50 and 70 % 1RM: published-values.md section 2, inverse table.
    const double at50 = 0.95199 + 0.91417 + 1.19458 + 1.16241 + 1.09713;
    const double at70 = 0.62001 + 0.60344 + 0.88909 + 0.84325 + 0.81513;
    QVERIFY(std::abs(*any->smallestVelocity - 3.9 * (at50 - at70) / 5 / 20) < 0.0005);
}

void TestPublished::smallestSpeedFollowsFromItsEquation_data() {
    QTest::addColumn<QString>("lift");
    QTest::addColumn<QString>("kind");
    QTest::addColumn<double>("at50");
    QTest::addColumn<double>("at70");
    // published-values.md section 2, inverse table.
    QTest::newRow("bench press, propulsive") << "Bench press"
                                             << "propulsive" << 0.95199 << 0.62001;
    QTest::newRow("bench press, mean") << "Bench press"
                                       << "mean" << 0.91417 << 0.60344;
    QTest::newRow("bench pull") << "Bench pull"
                                << "propulsive" << 1.19458 << 0.88909;
    QTest::newRow("squat, propulsive") << "Full squat (guided bar)"
                                       << "propulsive" << 1.16241 << 0.84325;
    QTest::newRow("squat, mean") << "Full squat (guided bar)"
                                 << "mean" << 1.09713 << 0.81513;
}

void TestPublished::smallestSpeedFollowsFromItsEquation() {
    QFETCH(QString, lift);
    QFETCH(QString, kind);
    QFETCH(double, at50);
    QFETCH(double, at70);
    const auto row = published(lift.toStdString(), *velocityKindFromWord(kind.toStdString()));
    QVERIFY(row && row->smallestVelocity);
    QVERIFY(std::abs(*row->smallestVelocity - 3.9 * (at50 - at70) / 20) < 0.0006);
}

void TestPublished::damagedTables_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("line");
    const QString first = QString::fromStdString(header);
    QTest::newRow("nothing") << "" << 1;
    QTest::newRow("another header") << "lift,kind\n" << 1;
    QTest::newRow("a column short") << first + "A,mean,0.2,,B,,,,\n" << 2;
    QTest::newRow("no such kind") << first + "A,fast,0.2,,B,,,,,\n" << 2;
    QTest::newRow("no lift") << first + ",mean,0.2,,B,,,,,\n" << 2;
    QTest::newRow("no figure") << first + "A,mean,0.2 m/s,,B,,,,,\n" << 2;
    QTest::newRow("a negative figure") << first + "A,mean,-0.2,,B,,,,,\n" << 2;
    QTest::newRow("a figure without its source")
        << first + "A,mean,0.2,,B,,,,,\nA,mean,0.2,,,,,,,\n"
        << 3;
    QTest::newRow("a threshold for peak velocity") << first + "A,peak,0.2,,B,,,,,\n" << 2;
    QTest::newRow("a stray quote") << first + "A\"B,mean,0.2,,B,,,,,\n" << 2;
}

void TestPublished::damagedTables() {
    QFETCH(QString, text);
    QFETCH(int, line);
    try {
        parsePublished(text.toStdString());
        QFAIL("taken");
    } catch (const BadInput& e) {
        QCOMPARE(e.where().line, long(line));
        QVERIFY(!e.expected().empty());
    }
}

QTEST_APPLESS_MAIN(TestPublished)
#include "tst_published.moc"
