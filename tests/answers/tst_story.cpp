// SPDX-License-Identifier: GPL-3.0-or-later
// A block's story beside its figures, and what a season of such blocks can show.
#include "core/answers/story.h"
#include "tests/answers/builders.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::answers;
using namespace slopebook::literals;
using namespace Qt::Literals::StringLiterals;

namespace {

Date on(int year, unsigned month, unsigned day) {
    return Date{std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

/// Ten weeks from a Monday on.
Block winter() {
    return {.name = "Winter", .first = on(2025, 12, 1), .last = on(2026, 2, 8)};
}

QString all(const std::vector<Words>& words) {
    QStringList lines;
    for (const Words& each : words)
        lines << QString::fromStdString(english(each));
    return lines.join(u'\n');
}

SeasonMatrix trained(std::initializer_list<const char*> work) {
    SeasonMatrix matrix;
    int number = 0;
    for (const char* each : work) {
        Block block = winter();
        block.name = "B" + std::to_string(++number);
        block.trained = each;
        matrix.blocks.push_back({.block = block});
    }
    return matrix;
}

} // namespace

class TestStory : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatWasWrittenDown() {
        QVERIFY(storyWords(winter()).empty());
        Block told = winter();
        told.trained = "fast lifts";
        told.aWeek = SessionsAWeek{2, 3};
        told.ceiling = 70_kg;
        told.note = "flood";
        QCOMPARE(english(storyWords(told)),
                 "fast lifts; planned: 2 to 3 sessions a week; up to 70 kg; flood");
    }

    // 18 sessions in the 70 days of it are 1.8 a week; of what is still to come nothing is missed.
    void whatTheLogCounted_data() {
        QTest::addColumn<int>("sessions");
        QTest::addColumn<QDate>("until"); // the log's last day
        QTest::addColumn<double>("aWeek");
        QTest::addColumn<QString>("words");
        const QString of = u"in this log %1 with sets or tests"_s;
        QTest::newRow("all of it") << 18 << QDate(2026, 5, 1) << 1.8
                                   << of.arg(u"18 sessions"_s) + u", in 10 weeks: 1.8 a week"_s;
        QTest::newRow("to its last day")
            << 20 << QDate(2026, 2, 8) << 2.0
            << of.arg(u"20 sessions"_s) + u", in 10 weeks: 2.0 a week"_s;
        QTest::newRow("half of it") << 10 << QDate(2026, 1, 4) << 2.0
                                    << of.arg(u"10 sessions"_s) + u", in 5 weeks: 2.0 a week"_s;
        // of so few no number a week: they are days of tests
        QTest::newRow("one") << 1 << QDate(2026, 1, 4) << 0.2
                             << of.arg(u"1 session"_s) + u", in 5 weeks"_s;
        QTest::newRow("too soon to say")
            << 3 << QDate(2025, 12, 13) << -1.0 << of.arg(u"3 sessions"_s);
        QTest::newRow("one, too soon") << 1 << QDate(2025, 12, 1) << -1.0 << of.arg(u"1 session"_s);
        QTest::newRow("two weeks") << 3 << QDate(2025, 12, 14) << 1.5
                                   << of.arg(u"3 sessions"_s) + u", in 2 weeks: 1.5 a week"_s;
    }
    void whatTheLogCounted() {
        QFETCH(int, sessions);
        QFETCH(QDate, until);
        QFETCH(double, aWeek);
        QFETCH(QString, words);
        const MatrixBlock block{
            .block = winter(),
            .sessions = sessions,
            .countedTo = on(until.year(), unsigned(until.month()), unsigned(until.day()))};
        const auto counted = countedAWeek(block);
        QCOMPARE(counted.has_value(), aWeek > 0);
        if (counted)
            QVERIFY(std::abs(*counted - aWeek) < 1e-12);
        const QString told = QString::fromStdString(english(storyWords(block)));
        QVERIFY2(told.endsWith(words), qPrintable(told));
        QVERIFY2(told.startsWith(u"Winter, "), qPrintable(told));
    }

    // Whatever was planned: a number a week stands only where it may be of the training, and never
    // beside the plan's own.
    void testDaysAreNoTraining() {
        int with = 0, without = 0;
        for (const double fewest : {0.5, 1.0, 2.0, 4.0})
            for (int sessions = 1; sessions <= 60; ++sessions) {
                Block block = winter();
                block.aWeek = SessionsAWeek{fewest, fewest + 1};
                block.note = "flood";
                const QString told = QString::fromStdString(
                    english(storyWords(MatrixBlock{.block = block, .sessions = sessions})));
                const bool few = sessions / 10.0 < fewest / 2; // ten weeks
                QCOMPARE(told.contains(u" weeks: "_s), !few);
                QVERIFY2(told.contains(u" sessions a week; flood; in this log "_s),
                         qPrintable(told));
                (few ? without : with) += 1;
            }
        QVERIFY(with > 20 && without > 20);
    }

    void designSaysWhatItCannotShow() {
        const QString words = all(designWords(trained({"heavy", "fast"})));
        for (const char* part :
             {"nobody trained otherwise", "one order", "practice in the tests", "growth",
              "unusually bad tests", "going back to the first block's work", "second athlete",
              "another order or begun on another day", "Kazdin 2011"})
            QVERIFY2(words.contains(QLatin1String(part)), part);
        QVERIFY2(!words.contains(u"from memory"), qPrintable(words)); // where sources are listed
        QVERIFY2(!words.contains(u"went back to the work"), qPrintable(words));
        QVERIFY2(!words.contains(u"not written down"), qPrintable(words));
    }

    void designSeesAReturn_data() {
        QTest::addColumn<QStringList>("work");
        QTest::addColumn<QString>("words"); // empty: no return
        QTest::newRow("A B A") << QStringList{"heavy", "fast", "Heavy "}
                               << "B3 went back to the work of B1";
        QTest::newRow("A A B") << QStringList{"heavy", "heavy", "fast"} << "";
        QTest::newRow("A A A") << QStringList{"heavy", "heavy", "heavy"} << "";
        QTest::newRow("A, not told, A") << QStringList{"heavy", "", "heavy"} << "";
        QTest::newRow("nothing told") << QStringList{"", "fast", ""} << "";
        QTest::newRow("X A B A") << QStringList{"long", "heavy", "fast", "heavy"}
                                 << "B4 went back to the work of B2";
    }
    void designSeesAReturn() {
        QFETCH(QStringList, work);
        QFETCH(QString, words);
        SeasonMatrix matrix;
        int number = 0;
        bool untold = false;
        for (const QString& each : work) {
            Block block = winter();
            block.name = "B" + std::to_string(++number);
            block.trained = each.toStdString();
            untold = untold || each.isEmpty();
            matrix.blocks.push_back({.block = block});
        }
        const QString told = all(designWords(matrix));
        QCOMPARE(told.contains(u"went back to the work"), !words.isEmpty());
        QVERIFY2(told.contains(words), qPrintable(told));
        QCOMPARE(told.contains(u"not written down for every block"), untold);
    }
};

QTEST_APPLESS_MAIN(TestStory)
#include "tst_story.moc"
