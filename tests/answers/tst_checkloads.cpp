// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/checkloads.h"
#include "core/answers/method.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"

#include <QtTest>

#include <limits>

using namespace slopebook;
using namespace slopebook::answers;
using Why = NoAnswer::Why;

namespace {
const Mass sixty = massFromKilograms(60);
const Mass step = massFromKilograms(2.5);

/// v = 1.6 - L/100 moved by, with a scatter that leaves the line where it is.
LiftSession week(int id, double by) {
    return tests::session(id, {{40, 1.2 + by + 0.01},
                               {60, 1.0 + by - 0.01},
                               {80, 0.8 + by - 0.01},
                               {100, 0.6 + by + 0.01}});
}

ComparisonSettings withNoise(double te) {
    return {.dayNoise = {.variance = {te * te, std::numeric_limits<double>::infinity()},
                         .origin = DayNoise::Origin::Published,
                         .source = "a paper"}};
}

Follow followed(const std::vector<LiftSession>& sessions, std::size_t baseline = 0,
                const ComparisonSettings& settings = withNoise(0.02), Mass load = sixty) {
    return *follow(tests::benchPull(), tests::coachMvt(0.3, 0.04), sessions, load, baseline,
                   settings, step);
}
} // namespace

class TestCheckLoads : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void series();
    void trend();
    void trendNeedsThree();
    void whatIsNotComparableTakesNoPart();
    void seenIsWithinHalfAPair();
    void beyondTheLoads();
    void poorSessions();
    void poorBaseline();
    void smallestDetectable();
    void manyLooksAtOneBaseline();
    void devices();
    void conditionsAreTold();
    void refusals();
};

void TestCheckLoads::series() {
    const std::vector sessions{week(1, 0), week(2, 0.02), week(3, 0.07)};
    const Follow f = followed(sessions, 1);
    QCOMPARE(f.sessions.size(), std::size_t(3));
    QCOMPARE(f.baseline, std::size_t(1));
    CHECK_NEAR(*f.sessions[2].line, 1.07, 1e-12);
    QCOMPARE(f.sessions[2].seen, std::vector<double>{1.06});
    QVERIFY(!f.sessions[1].change);
    CHECK_NEAR(f.sessions[0].change->read.change, -0.02, 1e-12);
    CHECK_NEAR(f.sessions[2].change->read.change, 0.05, 1e-12);
    // The change is compare's own.
    auto settings = withNoise(0.02);
    settings.checkLoads = {sixty};
    const auto c =
        compare(tests::benchPull(), tests::coachMvt(0.3, 0.04), sessions[1], sessions[2], settings);
    QVERIFY(f.sessions[2].change->read.interval == c->at[1].read.interval);
    QVERIFY(f.sessions[2].oneRm);
    CHECK_NEAR(f.sessions[2].oneRm->estimate, 137, 1e-10);
    // By hand: residuals +-0.01, s2 = 0.0004 / 2; at 60 kg 1/4 + 10^2 / 2000 = 0.3.
    const double se = std::sqrt(0.0002 * 0.3);
    CHECK_NEAR(*f.sessions[0].se, se, 1e-15);
    CHECK_NEAR(f.sessions[0].interval->high - 1.0, 4.302652730 * se, 1e-10);
}

void TestCheckLoads::trend() {
    // 0, 0.02, 0.07 a week apart, days alike by 0.5: R's gls (reference/daytrend.R) has a slope of
    // 0.035, SE 0.01161895, 0.997 at the first; t(.975, 1) = 12.706205.
    const Follow f = followed({week(1, 0), week(2, 0.02), week(3, 0.07)});
    QVERIFY(f.trend);
    CHECK_NEAR(f.trend->perWeek, 0.035, 1e-12);
    CHECK_NEAR(f.trend->interval->high - 0.035, 12.706205 * 0.011618950039, 1e-8);
    QCOMPARE(f.trend->sessions, 3);
    CHECK_NEAR(f.trend->start, 0.997, 1e-12);
}

/// A day that the coach sets apart is shown, without a reading, and bends no trend.
void TestCheckLoads::whatIsNotComparableTakesNoPart() {
    LiftSession ill = week(4, 0.5);
    ill.conditions.notComparable = "felt ill";
    const std::vector<LiftSession> well{week(1, 0), week(2, 0.02), week(3, 0.07)};
    std::vector<LiftSession> all = well;
    all.push_back(ill);
    const Follow f = followed(all);
    QCOMPARE(f.trend->sessions, 3);
    CHECK_NEAR(f.trend->perWeek, followed(well).trend->perWeek, 1e-12);
    QCOMPARE(f.sessions[3].change->read.reading, Reading::NoFigure);
    QCOMPARE(f.sessions[3].change->read.notComparable, asIs(std::string("felt ill")));
}

void TestCheckLoads::trendNeedsThree() {
    const Follow two = followed({week(1, 0), week(2, 0.02)});
    QVERIFY(!two.trend && two.trend.why().why == Why::TooFewSessions);
    std::vector oneDay{week(1, 0), week(2, 0.02), week(3, 0.07)};
    for (int i = 0; i < 3; ++i) {
        oneDay[static_cast<std::size_t>(i)].date = tests::dayNumber(7);
        oneDay[static_cast<std::size_t>(i)].ordinal = i + 1;
    }
    QVERIFY(!followed(oneDay).trend);
}

void TestCheckLoads::seenIsWithinHalfAPair() {
    auto session = tests::session(
        1, {{40, 1.2}, {58.7, 0.99}, {58.75, 1.01}, {61.25, 0.98}, {61.3, 0.97}, {80, 0.8}});
    QCOMPARE(followed({session}).sessions[0].seen, (std::vector<double>{1.01, 0.98}));
}

void TestCheckLoads::beyondTheLoads() {
    const std::vector sessions{week(1, 0), tests::session(2, {{20, 1.41}, {30, 1.3}, {40, 1.19}}),
                               week(3, 0.02), week(4, 0.03)};
    const Follow f = followed(sessions);
    QVERIFY(f.sessions[1].extrapolated);
    QVERIFY(f.sessions[1].change->extrapolated);
    QVERIFY(!f.sessions[0].extrapolated);
    QCOMPARE(f.trend->sessions, 3);
    QVERIFY(hasNote(f.notes, Note::Kind::LoadNotReached));
}

void TestCheckLoads::poorSessions() {
    const Follow f = followed({week(1, 0), tests::session(2, {}), tests::session(3, {{60, 1.1}}),
                               tests::session(4, {{60, 1.0}, {80, 0.8}})});
    QVERIFY(!f.sessions[1].line && f.sessions[1].line.why().why == Why::NoPoints);
    QVERIFY(!f.sessions[2].line && f.sessions[2].line.why().why == Why::OneLoad);
    QCOMPARE(f.sessions[2].seen, std::vector<double>{1.1});
    QVERIFY(!f.sessions[2].oneRm);
    // Two points: a line, and nothing to judge it by.
    CHECK_NEAR(*f.sessions[3].line, 1.0, 1e-12);
    QVERIFY(!f.sessions[3].se && !f.sessions[3].interval && !f.sessions[3].change);
    QVERIFY(f.sessions[3].oneRm);
}

void TestCheckLoads::poorBaseline() {
    const std::vector none{tests::session(1, {{60, 1.1}}), week(2, 0)};
    const Follow f = followed(none);
    QVERIFY(!f.sessions[1].change);
    QVERIFY(hasNote(f.notes, Note::Kind::BaselineHasNoLine));
    QVERIFY(!f.smallestDetectable);
    const Follow two = followed({tests::session(1, {{60, 1.0}, {80, 0.8}}), week(2, 0)});
    QVERIFY(hasNote(two.notes, Note::Kind::TwoPointLine));
}

void TestCheckLoads::manyLooksAtOneBaseline() {
    // Five later sessions: all but the newest are judged family-wise, the newest as one look.
    std::vector<LiftSession> sessions;
    for (int i = 1; i <= 6; ++i)
        sessions.push_back(week(i, 0.01 * i));
    const Follow many = followed(sessions);
    const Follow two = followed({sessions[0], sessions[5]});
    const Follow early = followed({sessions[0], sessions[2]});
    const auto width = [](const Follow& f, std::size_t i) {
        const auto& r = f.sessions[i].change->read.interval;
        return r.high - r.low;
    };
    CHECK_NEAR(width(many, 5), width(two, 1), 1e-12);
    QVERIFY(width(many, 2) > 1.15 * width(early, 1));
    // Dunnett's quantile lies under Bonferroni's for five: t(.995) against t(.975).
    QVERIFY(width(many, 2) < 1.7 * width(early, 1));
}

void TestCheckLoads::smallestDetectable() {
    // The half-width of a reading between two such tests: t(.975, 4) = 2.776445 of the lines'
    // variance, 2 x 0.0002 x 0.3, and 1.959964 of two days' known 0.02^2.
    const Follow f = followed({week(1, 0), week(2, 0.02)});
    CHECK_NEAR(*f.smallestDetectable,
               std::hypot(2.776445 * std::sqrt(0.00012), 1.959964 * std::sqrt(0.0008)), 1e-6);
    const auto noise = std::ranges::find(f.notes, Note::Kind::DayNoiseSource, &Note::kind);
    QVERIFY(noise != f.notes.end());
    QVERIFY2(english(noise->words).find("is part of every reading") != std::string::npos,
             english(noise->words).c_str());
    const Follow unknown = followed({week(1, 0), week(2, 0.02)}, 0, {});
    QVERIFY(!unknown.smallestDetectable);
    QVERIFY(hasNote(unknown.notes, Note::Kind::DayNoiseSource));
}

void TestCheckLoads::devices() {
    std::vector sessions{week(1, 0), week(2, 0.02), week(3, 0.07)};
    sessions[2].conditions.device = DeviceId{2};
    QVERIFY(hasNote(followed(sessions).notes, Note::Kind::DifferentDevices));
    auto settings = withNoise(0.02);
    settings.deviceBias = {{0.03, {0.0001, 10}}};
    const Follow f = followed(sessions, 0, settings);
    QVERIFY(hasNote(f.notes, Note::Kind::DeviceCorrected));
    // Taken off where the device is another one, and there alone.
    CHECK_NEAR(f.sessions[1].change->read.change, 0.02, 1e-12);
    CHECK_NEAR(f.sessions[2].change->read.change, 0.04, 1e-12);
    QVERIFY(!f.sessions[1].bias && f.sessions[2].bias == 0.03);
    // The trend as in trend(), with 0.04 in place of 0.07: 0.02 a week.
    CHECK_NEAR(f.trend->perWeek, 0.02, 1e-12);
    // What is known for a session of its own goes before the settings'.
    const Follow own =
        *follow(tests::benchPull(), tests::coachMvt(0.3), sessions, sixty, 0, withNoise(0.02), step,
                {{sessions[2].session, {0.01, {0.0001, 10}}}});
    CHECK_NEAR(own.sessions[2].change->read.change, 0.06, 1e-12);
    QVERIFY(!hasNote(own.notes, Note::Kind::DifferentDevices));
}

/// Days of another place or surface are named, each with what was different; those that are as the
/// baseline, or of which nothing is known, are not.
void TestCheckLoads::conditionsAreTold() {
    std::vector<LiftSession> sessions;
    for (int id = 1; id <= 5; ++id)
        sessions.push_back(week(id, 0.01 * id));
    const auto told = [&] {
        std::vector<std::string> all;
        for (const Note& note : followed(sessions).notes)
            if (note.kind == Note::Kind::ContextChanged)
                all.push_back(english(note.words));
        return all;
    };
    QVERIFY(told().empty());
    sessions[0].conditions.place = sessions[1].conditions.place = "hall";
    QVERIFY(told().empty());
    sessions[2].conditions.place = "bay";
    QCOMPARE(told(),
             std::vector<std::string>{
                 english(sessionWords(sessions[2].date, 1)) +
                 " was tested at another place than the baseline: part of its change may be "
                 "that"});
    sessions[3].conditions.place = sessions[4].conditions.place = "bay";
    sessions[0].conditions.surface = "boards";
    sessions[4].conditions.surface = "turf";
    const auto two = told();
    QCOMPARE(two.size(), std::size_t(2));
    QVERIFY(two[0].find(" and one more session were tested at another place than") !=
            std::string::npos);
    QVERIFY(two[1].find(" was tested on another surface, at another place than") !=
            std::string::npos);
}

void TestCheckLoads::refusals() {
    const auto ask = [](const std::vector<LiftSession>& sessions, std::size_t baseline) {
        return follow(tests::benchPull(), tests::coachMvt(0.3), sessions, sixty, baseline, {},
                      step);
    };
    QVERIFY(ask({}, 0).why().why == Why::TooFewSessions);
    QVERIFY(ask({week(1, 0)}, 1).why().why == Why::NoBaseline);
    QVERIFY(ask({week(1, 0)}, 0));
}

QTEST_APPLESS_MAIN(TestCheckLoads)
#include "tst_checkloads.moc"
