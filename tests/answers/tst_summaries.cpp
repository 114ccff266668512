// SPDX-License-Identifier: GPL-3.0-or-later
// What pages say over and under an answer's figures, in English as a command would. Expected texts
// by hand.
#include "core/answers/doubt.h"
#include "core/answers/method.h"
#include "core/answers/plansummary.h"
#include "core/answers/squadsummary.h"
#include "tests/support/ladders.h"

#include <QtTest>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

Date on(int year, unsigned month, unsigned day) {
    return Date{std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

std::string told(const std::vector<Words>& all, MassUnit unit = MassUnit::Kilogram) {
    std::string text;
    for (const Words& one : all)
        text += (text.empty() ? "" : " ") + english(one, unit);
    return text;
}

bool has(const std::string& text, std::string_view part) {
    if (text.find(part) != std::string::npos)
        return true;
    qWarning() << text.c_str();
    return false;
}

} // namespace

class TestSummaries : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLineAges() {
        const auto age = [](int days) {
            const std::chrono::sys_days today{on(2026, 3, 14)};
            return told(lineAge(on(2026, 3, 14), Date{today + std::chrono::days{days}}));
        };
        QCOMPARE(told(lineAge(on(2026, 3, 14), {})), std::string("The line is of 2026-03-14."));
        QCOMPARE(age(-1), std::string("The line is of 2026-03-14."));
        QCOMPARE(age(1), std::string("The line is of 2026-03-14, 1 day old."));
        QCOMPARE(age(6), std::string("The line is of 2026-03-14, 6 days old."));
        QCOMPARE(age(7), std::string("The line is of 2026-03-14, 1 week old."));
        QCOMPARE(age(27), std::string("The line is of 2026-03-14, 3 weeks old."));
        QVERIFY(has(age(28), "4 weeks old. That is old: over 4 weeks"));
    }

    /// 22.0 kg is 48.5 lb, 0.45359237 kg to the pound.
    void aTypedSetIsDoubtedInTheUnitAsked() {
        const Doubt rises{.kind = Doubt::Kind::RisesWithLoad,
                          .typed = 0.985,
                          .expected = 0.6,
                          .other = Mass{22'000}};
        QCOMPARE(english(doubtWords(rises)),
                 std::string("0.985 m/s? The lighter 22 kg went up at 0.60 m/s today: speed falls "
                             "as load rises."));
        QVERIFY(has(english(doubtWords(rises), MassUnit::Pound), "48.5 lb"));
        const Doubt heavy{
            .kind = Doubt::Kind::Heavy, .typed = 620, .expected = 62.5, .today = false};
        QCOMPARE(english(doubtWords(heavy)),
                 std::string("620 kg? The heaviest load of today and last time is 62.5 kg."));
    }

    void noiseInUse() {
        QCOMPARE(english(inUseWords({}, 3)), std::string("no day-to-day noise is known"));
        DayNoise noise{.variance = {.value = 0.03 * 0.03, .df = 10},
                       .origin = DayNoise::Origin::Published,
                       .source = "a paper"};
        QVERIFY(has(english(inUseWords(noise, 3)), "0.030 m/s day to day (published"));
        QVERIFY(has(english(inUseWords(noise, 4)), "0.0300 m/s day to day"));
        // Repeat tests that leave nothing over: no SD of 0.000.
        noise = {.variance = {.value = 0.0004 * 0.0004, .df = 5},
                 .origin = DayNoise::Origin::Athlete,
                 .pairs = 5,
                 .ownPairs = 5,
                 .ownShare = 1};
        QVERIFY(has(english(inUseWords(noise, 3)), "none found beyond the scatter within a day"));
        QVERIFY(has(english(inUseWords(noise, 4)), "0.0004 m/s day to day"));
    }

    /// t of 10 df is 2.228 (any table of Student's t): 2.228 x sqrt 2 x 0.02 = 0.063, and of three
    /// days with correlations 0.5 and 0.25 (1 + 2 (2/3 0.5 + 1/3 0.25)) / 3 = 0.611 of the
    /// variance: 0.0493.
    void aRuleOfThumb() {
        QVERIFY(ruleOfThumb({}).empty());
        const DayNoise noise{.variance = {.value = 0.02 * 0.02, .df = 10},
                             .origin = DayNoise::Origin::Published};
        QCOMPARE(
            english(ruleOfThumb(noise)),
            std::string("Rule of thumb: from one test to another a speed at a load has changed "
                        "clearly from about 0.07 m/s up, of 3 tests against 3 from about "
                        "0.05; all blocks read at once ask for more."));
    }

    /// The slope a pound is 0.45359237 times that a kilogram.
    void aSlopeIsToldInTheUnitAsked() {
        const Comparison c = test::usualComparison();
        const auto slope = [](double value) { return english(figure(value, 5)) + " m/s per "; };
        const std::string kg = told(methodWords(c, PointRule::Fastest, MassUnit::Kilogram));
        const std::string lb = told(methodWords(c, PointRule::Fastest, MassUnit::Pound));
        QVERIFY(has(kg, slope(c.from.line.slope) + "kg"));
        QVERIFY(has(lb, slope(c.from.line.slope * 0.45359237) + "lb"));
        QVERIFY(has(kg, "fastest rep of each counting set"));
        QVERIFY(has(told(methodWords(c, PointRule::Mean, MassUnit::Kilogram)), "mean of the reps"));
    }

    void cautionsAreWholeSentences() {
        for (const bool restricted : {false, true})
            for (const Words& each : cautionWords(restricted))
                QVERIFY(english(each).ends_with('.'));
        QCOMPARE(cautionWords(true).size(), cautionWords(false).size() + 1);
    }
};

QTEST_APPLESS_MAIN(TestSummaries)
#include "tst_summaries.moc"
