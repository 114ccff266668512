// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"
#include "core/answers/comparisonnotes.h"
#include "core/answers/sources.h"
#include "core/model/errors.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"

#include <QtTest>

#include <algorithm>
#include <limits>

using namespace slopebook;
using namespace slopebook::answers;
using Why = NoAnswer::Why;
using Points = std::vector<std::pair<double, double>>;

namespace {
constexpr double infinity = std::numeric_limits<double>::infinity();

// Sessions A and B of published-values.md section 10.3 (invented numbers, figures by R 4.2.2).
const Points pointsA{{40, 1.22}, {60, 1.00}, {80, 0.79}, {100, 0.57}, {110, 0.47}, {120, 0.35}};
const Points pointsB{{40, 1.27}, {60, 1.07}, {80, 0.84}, {100, 0.64}, {110, 0.52}, {120, 0.43}};
const Points lightA{{20, 1.30}, {30, 1.21}, {40, 1.08}, {50, 0.99}};

Answer<Comparison> compared(const Points& from, const Points& to,
                            const ComparisonSettings& settings = {},
                            const Answer<Mvt>& mvt = tests::coachMvt(0.17, 0.04)) {
    return compare(tests::benchPull(), mvt, tests::session(1, from), tests::session(2, to),
                   settings);
}

DayNoise dayNoise(double te, double df = infinity,
                  DayNoise::Origin origin = DayNoise::Origin::Published) {
    return {.variance = {te * te, df}, .origin = origin, .source = "a source", .pairs = 5};
}

const ChangeAt& at(const Comparison& c, double load) {
    for (const ChangeAt& each : c.at)
        if (kilograms(each.load) == load)
            return each;
    throw std::out_of_range("no such load");
}

const Note* noteOf(const Comparison& c, Note::Kind kind) {
    for (const Note& note : c.notes)
        if (note.kind == kind)
            return &note;
    return nullptr;
}
} // namespace

class TestComparison : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void syntheticSessions();
    void dayNoiseWidensTheReadingAlone();
    void whichLoadsAreTold();
    void seenVelocities();
    void differsIsCutAtTheCommonLoads();
    void noCommonLoads();
    void oneCommonLoad();
    void oneRmChangeByRecovery();
    void oneRmNotBounded();
    void oneRmRefused();
    void measuredMaxima();
    void smallestByLoad();
    void devices();
    void deviceBias();
    void unequalScatter();
    void linesWithoutScatter();
    void refusals_data();
    void refusals();
    void badUse();
    void noteOfNoiseSource_data();
    void noteOfNoiseSource();
    void sharesStandWithoutTheirCitation();
    void smallestChangesAreCitedBehind();
    void order();
};

void TestComparison::syntheticSessions() {
    const auto c = compared(pointsA, pointsB);
    QVERIFY(c);
    // published-values.md sections 10.4 and 10.5, synthetic A/B.
    CHECK_NEAR(c->lines.s2(), 5.14035088e-05, 5e-14);
    QCOMPARE(c->lines.df(), 8.0);
    CHECK_NEAR(c->lines.c(), 0.046456140, 5e-10);
    CHECK_NEAR(c->lines.d(), 0.000178947368, 5e-13);
    const auto& sixty = at(*c, 60);
    CHECK_NEAR(sixty.read.change, 0.057192982, 5e-10);
    CHECK_NEAR(sixty.se, 0.005537305, 5e-10);
    CHECK_NEAR(sixty.interval.low, 0.044423935, 5e-10);
    CHECK_NEAR(sixty.interval.high, 0.069962030, 5e-10);
    const auto& hundred = at(*c, 100);
    CHECK_NEAR(hundred.interval.low, 0.053533700, 5e-10);
    CHECK_NEAR(hundred.interval.high, 0.075168055, 5e-10);
    CHECK_NEAR(c->lines.parallel().f, 1.47952, 5e-6);
    CHECK_NEAR(c->lines.coincident().f, 111.70819, 5e-6);
    CHECK_NEAR(c->crossing->x, -259.60784314, 5e-9);
    QVERIFY(!c->crossing->interval);
    QCOMPARE(c->differs.size(), std::size_t(1));
    QVERIFY(!c->differs[0].extrapolated);
    QCOMPARE(c->differs[0].stretch.from, 40.0);
    QCOMPARE(c->differs[0].stretch.to, 120.0);
    QCOMPARE(c->differs[0].stretch.sign, 1);
    QVERIFY(c->oneRm);
    CHECK_NEAR(c->oneRm->estimate, 6.684898, 5e-7);
    CHECK_NEAR(c->oneRm->mvtResidue, 0.062401, 5e-7);
    QVERIFY(hasNote(c->notes, Note::Kind::MvtCancels));
    // The band is wider than the pointwise interval: sqrt(2 F) > t.
    QVERIFY(sixty.band.low < sixty.interval.low && sixty.band.high > sixty.interval.high);
}

void TestComparison::dayNoiseWidensTheReadingAlone() {
    ComparisonSettings settings;
    const auto without = compared(pointsA, pointsB, settings);
    settings.dayNoise = dayNoise(0.025);
    const auto with = compared(pointsA, pointsB, settings);
    for (std::size_t i = 0; i < with->at.size(); ++i) {
        QVERIFY(with->at[i].interval == without->at[i].interval);
        QVERIFY(with->at[i].band == without->at[i].band);
        // The session that scatters more than the pool stands with its own scatter: wider.
        QVERIFY(without->at[i].read.interval.low <= without->at[i].interval.low);
        QVERIFY(without->at[i].read.interval.high >= without->at[i].interval.high);
        QVERIFY(with->at[i].read.interval.low < with->at[i].interval.low);
        QVERIFY(with->at[i].readingBand.low < with->at[i].band.low);
    }
    // At 60 kg: two days' known variance 2 x 0.025^2 with z = 1.959964 beside the lines' own part
    // (Banerjee 1960, from memory).
    const auto& alone = at(*without, 60).read.interval;
    const double half = std::hypot((alone.high - alone.low) / 2, 1.959964 * std::sqrt(2.0) * 0.025);
    CHECK_NEAR(at(*with, 60).read.interval.low, 0.057192982 - half, 1e-7);
    CHECK_NEAR(at(*with, 60).read.interval.high, 0.057192982 + half, 1e-7);
    QVERIFY(with->oneRm->interval == without->oneRm->interval);
    QVERIFY(without->oneRm->read.interval.low <= without->oneRm->interval->low + 1e-12);
    QVERIFY(with->oneRm->read.interval.low < with->oneRm->interval->low);
    // Better by the two days alone; a day's shift explains it.
    QVERIFY(at(*without, 60).read.reading == Reading::Better);
    QVERIFY(at(*with, 60).read.reading == Reading::Unclear);
    QVERIFY(with->differs.size() == without->differs.size());
}

void TestComparison::whichLoadsAreTold() {
    ComparisonSettings settings;
    settings.checkLoads = {massFromKilograms(70), massFromKilograms(130), massFromKilograms(62.5)};
    const auto c = compared({{40, 1.2}, {60, 1.0}, {80, 0.79}, {100, 0.57}},
                            {{50, 1.15}, {60, 1.06}, {80, 0.84}, {120, 0.43}}, settings);
    std::vector<double> loads;
    for (const auto& each : c->at)
        loads.push_back(kilograms(each.load));
    QVERIFY((loads == std::vector<double>{60, 62.5, 70, 80, 130}));
    QVERIFY(at(*c, 130).extrapolated && at(*c, 130).checkLoad);
    QVERIFY(!at(*c, 60).extrapolated && !at(*c, 60).checkLoad);
    const auto fifty = changeAt(*c, massFromKilograms(45));
    QVERIFY(fifty.extrapolated); // lifted by one session alone
    CHECK_NEAR(fifty.read.change, c->lines.difference(45), 0);
}

void TestComparison::seenVelocities() {
    const auto c = compared({{40, 1.2}, {60, 1.0}, {60, 0.9}, {80, 0.79}, {100, 0.57}},
                            {{60, 1.06}, {80, 0.84}, {120, 0.43}});
    CHECK_NEAR(*at(*c, 60).seenFrom, 0.95, 1e-15);
    CHECK_NEAR(*at(*c, 60).seenTo, 1.06, 0);
    QVERIFY(!changeAt(*c, massFromKilograms(120)).seenFrom);
}

void TestComparison::differsIsCutAtTheCommonLoads() {
    const auto c = compared(pointsA, {{20, 1.49}, {30, 1.37}, {40, 1.27}, {60, 1.07}});
    QVERIFY(c);
    // Common loads 40 to 60 kg; lifted by either 20 to 120 kg.
    QCOMPARE(c->differs.size(), std::size_t(3));
    QVERIFY(c->differs[0].extrapolated && c->differs[0].stretch.from == 20 &&
            c->differs[0].stretch.to == 40);
    QVERIFY(!c->differs[1].extrapolated && c->differs[1].stretch.to == 60);
    QVERIFY(c->differs[2].extrapolated && c->differs[2].stretch.from == 60);
    const auto common = commonLoads(c->from, c->to);
    QCOMPARE(common->low, 40.0);
    QCOMPARE(common->high, 60.0);
}

void TestComparison::noCommonLoads() {
    const auto c = compared(lightA, {{60, 1.00}, {80, 0.79}, {100, 0.57}, {120, 0.36}});
    QVERIFY(c);
    QVERIFY(!commonLoads(c->from, c->to));
    QVERIFY(hasNote(c->notes, Note::Kind::NoOverlap));
    QVERIFY(c->at.empty());
    for (const Differs& d : c->differs)
        QVERIFY(d.extrapolated);
    QVERIFY(english(c->sentence).find("the two sessions share no loads") != std::string::npos);
}

void TestComparison::oneCommonLoad() {
    const auto c = compared(lightA, {{50, 1.10}, {80, 0.79}, {100, 0.57}, {120, 0.36}});
    QVERIFY(c);
    QVERIFY(!hasNote(c->notes, Note::Kind::NoOverlap));
    QCOMPARE(c->at.size(), std::size_t(1));
    QVERIFY(!c->at.front().extrapolated);
    QVERIFY2(english(c->sentence).find("at 50 kg") != std::string::npos,
             english(c->sentence).c_str());
}

void TestComparison::oneRmChangeByRecovery() {
    // Separate variances: each session's own Fieller interval, published-values.md section 10.3;
    // put together as Zou and Donner 2008 do.
    ComparisonSettings settings;
    settings.variances = stats::Variances::Separate;
    const auto c = compared(pointsA, pointsB, settings);
    QVERIFY(c && c->oneRm && c->oneRm->interval);
    const double a = 137.160493827;
    const double b = 143.845391477;
    const double low = b - a - std::hypot(b - 141.704954269, 138.245585104 - a);
    const double high = b - a + std::hypot(146.120542481 - b, a - 136.109281236);
    CHECK_NEAR(c->oneRm->interval->low, low, 2e-9);
    CHECK_NEAR(c->oneRm->interval->high, high, 2e-9);
    QVERIFY(c->oneRm->read.reading == Reading::Better);
}

void TestComparison::oneRmNotBounded() {
    // The mirrored g >= 1 check of published-values.md section 10.3 against a clear line. Separate
    // variances: pooled, the clear line would lend its certainty.
    ComparisonSettings settings;
    settings.variances = stats::Variances::Separate;
    settings.smallestOneRm = Smallest{4};
    const auto c = compared({{1, 1.0}, {2, 0.6}, {3, 1.1}, {4, 0.5}},
                            {{1, 1.0}, {2, 0.9}, {3, 0.81}, {4, 0.7}}, settings);
    QVERIFY(c && c->oneRm);
    QVERIFY(!c->oneRm->interval);
    QVERIFY(c->oneRm->read.reading == Reading::NoFigure);
    QVERIFY(std::isfinite(c->oneRm->estimate));
    QVERIFY(hasNote(c->notes, Note::Kind::SlopeUncertain));
    QVERIFY2(english(c->sentence).find("no estimated max: a slope is not certain enough") !=
                 std::string::npos,
             english(c->sentence).c_str());
}

void TestComparison::oneRmRefused() {
    const auto c =
        compared(pointsA, pointsB, {}, NoAnswer{Why::NoThreshold, asIs("no MVT is known")});
    QVERIFY(c && !c->oneRm);
    QVERIFY(c->oneRm.why().why == Why::NoThreshold);
    QVERIFY(english(c->sentence).ends_with("no estimated max: no MVT is known."));
    const auto rising = compared({{40, 0.5}, {60, 0.61}, {80, 0.7}}, pointsB);
    QVERIFY(rising && rising->oneRm.why().why == Why::SlopeNotNegative);
}

void TestComparison::measuredMaxima() {
    auto from = tests::session(1, pointsA);
    auto to = tests::session(2, pointsB);
    from.measuredOneRm = massFromKilograms(135);
    QVERIFY(!compare(tests::benchPull(), tests::coachMvt(0.17), from, to, {})->oneRm->measured);
    to.measuredOneRm = massFromKilograms(137.5);
    QCOMPARE(*compare(tests::benchPull(), tests::coachMvt(0.17), from, to, {})->oneRm->measured,
             2.5);
}

void TestComparison::smallestByLoad() {
    ComparisonSettings settings;
    settings.smallestVelocity = Smallest{0.06, Smallest::Origin::Published, "a paper"};
    settings.smallestAt[massFromKilograms(60)] =
        Smallest{0.03, Smallest::Origin::Squad, "0.2 x SD of 12 athletes", 12};
    const auto c = compared(pointsA, pointsB, settings);
    QCOMPARE(at(*c, 60).read.smallest->value, 0.03);
    QVERIFY(at(*c, 60).read.beyondSmallest);
    QCOMPARE(at(*c, 80).read.smallest->value, 0.06);
    QVERIFY(!at(*c, 80).read.beyondSmallest);
    QVERIFY(english(noteOf(*c, Note::Kind::SmallestSource)->words).find("12 athletes") !=
            std::string::npos);
}

void TestComparison::devices() {
    auto from = tests::session(1, pointsA);
    auto to = tests::session(2, pointsB);
    const auto same = compare(tests::benchPull(), tests::coachMvt(0.17), from, to, {});
    QVERIFY(!hasNote(same->notes, Note::Kind::DifferentDevices));
    to.conditions.device = DeviceId{2};
    QVERIFY(hasNote(compare(tests::benchPull(), tests::coachMvt(0.17), from, to, {})->notes,
                    Note::Kind::DifferentDevices));
    to.conditions.device.reset();
    const auto unknown = compare(tests::benchPull(), tests::coachMvt(0.17), from, to, {});
    QVERIFY(english(noteOf(*unknown, Note::Kind::DifferentDevices)->words).find("not known") !=
            std::string::npos);
}

void TestComparison::deviceBias() {
    ComparisonSettings settings;
    const auto raw = compared(pointsA, pointsB, settings);
    settings.deviceBias = {{0.02, {0.005 * 0.005, 10}}};
    const auto c = compared(pointsA, pointsB, settings);
    QVERIFY(hasNote(c->notes, Note::Kind::DeviceCorrected));
    QVERIFY(!hasNote(c->notes, Note::Kind::DifferentDevices));
    CHECK_NEAR(at(*c, 60).read.change, at(*raw, 60).read.change - 0.02, 1e-15);
    CHECK_NEAR(at(*c, 60).interval.low, at(*raw, 60).interval.low - 0.02, 1e-15);
    QVERIFY(at(*c, 60).read.interval.low < at(*c, 60).interval.low);
    // The later line is 0.02 m/s lower, so its 1RM is 0.02 / 0.010621052632 kg lower.
    CHECK_NEAR(c->oneRm->estimate, raw->oneRm->estimate - 0.02 / 0.010621052632, 1e-9);
    // What stands beside it is what it was made from, in every figure of the later session.
    CHECK_NEAR(c->to.oneRm->estimate - c->from.oneRm->estimate, c->oneRm->estimate, 1e-9);
    CHECK_NEAR(c->to.oneRm->interval->high, raw->to.oneRm->interval->high - 0.02 / 0.010621052632,
               0.1);
    CHECK_NEAR(c->to.line.intercept, raw->to.line.intercept - 0.02, 1e-12);
    CHECK_NEAR(*at(*c, 60).seenTo - *at(*c, 60).seenFrom,
               *at(*raw, 60).seenTo - *at(*raw, 60).seenFrom - 0.02, 1e-12);
    QCOMPARE(c->from.oneRm->estimate, raw->from.oneRm->estimate);
}

void TestComparison::unequalScatter() {
    const auto c =
        compared({{40, 1.220}, {60, 1.001}, {80, 0.780}, {100, 0.561}, {110, 0.449}, {120, 0.34}},
                 {{40, 1.37}, {60, 0.98}, {80, 0.93}, {100, 0.55}, {110, 0.58}, {120, 0.35}});
    const Note* note = noteOf(*c, Note::Kind::UnequalVariances);
    QVERIFY(note);
    QVERIFY(english(note->words).ends_with("separate variances may be asked for"));
    QVERIFY(!noteOf(*compared(pointsA, pointsB), Note::Kind::UnequalVariances));
}

void TestComparison::linesWithoutScatter() {
    // Exact in binary: v = 1.5 - L/128 and 1.625 - L/128.
    const auto c =
        compared({{32, 1.25}, {64, 1.0}, {96, 0.75}, {128, 0.5}},
                 {{32, 1.375}, {64, 1.125}, {96, 0.875}, {128, 0.625}}, {}, tests::coachMvt(0.25));
    QVERIFY(c && c->oneRm && c->oneRm->interval);
    QCOMPARE(at(*c, 64).read.change, 0.125);
    QVERIFY((at(*c, 64).interval == stats::Interval{0.125, 0.125}));
    QVERIFY(at(*c, 64).read.reading == Reading::Better);
    QCOMPARE(c->oneRm->estimate, 16.0);
    QVERIFY((*c->oneRm->interval == stats::Interval{16, 16}));
    QVERIFY(!c->crossing);
}

void TestComparison::refusals_data() {
    QTest::addColumn<int>("which");
    QTest::addColumn<int>("why");
    QTest::newRow("no points") << 0 << int(Why::NoPoints);
    QTest::newRow("one load") << 1 << int(Why::OneLoad);
    QTest::newRow("two points") << 2 << int(Why::NeedsThirdLoad);
}

void TestComparison::refusals() {
    QFETCH(int, which);
    QFETCH(int, why);
    const std::vector<Points> poor{{}, {{40, 1.2}, {40, 1.1}, {40, 1.3}}, {{40, 1.0}, {80, 0.5}}};
    const auto& points = poor[static_cast<std::size_t>(which)];
    const auto second = compared(pointsA, points);
    QVERIFY(!second);
    QCOMPARE(int(second.why().why), why);
    QVERIFY2(english(second.why().reason).starts_with("2026-01-15: "),
             english(second.why().reason).c_str());
    const auto first = compared(points, pointsA);
    QCOMPARE(int(first.why().why), why);
    QVERIFY2(english(first.why().reason).starts_with("2026-01-08: "),
             english(first.why().reason).c_str());
}

void TestComparison::badUse() {
    const auto from = tests::session(1, pointsA);
    auto to = tests::session(2, pointsB);
    const auto ask = [&] {
        return compare(tests::benchPull(), tests::coachMvt(0.17), from, to, {});
    };
    to.athlete = AthleteId{2};
    QVERIFY_THROWS_EXCEPTION(BadInput, ask());
    to.athlete = AthleteId{1};
    to.lift = LiftId{2};
    QVERIFY_THROWS_EXCEPTION(BadInput, ask());
    QVERIFY_THROWS_EXCEPTION(BadInput, compared(pointsA, pointsB, {.level = 1.5}));
    const auto self = compare(tests::benchPull(), tests::coachMvt(0.17), from, from, {});
    QVERIFY(!self);
}

void TestComparison::noteOfNoiseSource_data() {
    QTest::addColumn<int>("origin");
    QTest::addColumn<QString>("said");
    QTest::newRow("athlete") << int(DayNoise::Origin::Athlete)
                             << "the athlete's own: 5 repeat tests";
    QTest::newRow("log") << int(DayNoise::Origin::LogLift) << "this log's: 5 repeat tests";
    QTest::newRow("published") << int(DayNoise::Origin::Published) << "published, not yours)";
    QTest::newRow("none") << int(DayNoise::Origin::None) << "these two days alone";
}

void TestComparison::noteOfNoiseSource() {
    QFETCH(int, origin);
    QFETCH(QString, said);
    const auto c = compared(
        pointsA, pointsB, {.dayNoise = dayNoise(0.025, 5, static_cast<DayNoise::Origin>(origin))});
    const Note* note = noteOf(*c, Note::Kind::DayNoiseSource);
    QVERIFY(note);
    const std::string told = english(note->words);
    QVERIFY2(told.find(said.toStdString()) != std::string::npos, told.c_str());
    // What is published is cited behind, and nowhere else.
    const auto cites = [](const Note& each) {
        return english(each.words).find("a source") != std::string::npos;
    };
    QVERIFY(!cites(*note));
    const bool published = origin == int(DayNoise::Origin::Published);
    QCOMPARE(std::ranges::count_if(c->notes, cites), published ? 1 : 0);
    if (published)
        QCOMPARE(english(c->notes.back().words),
                 std::string("published day-to-day noise: a source"));
    // No origin, no noise, whatever the variance field says.
    if (origin == int(DayNoise::Origin::None))
        QVERIFY(at(*c, 60).read.interval == at(*compared(pointsA, pointsB), 60).read.interval);
}

/// 40 % the athlete's own, 25 the log's, 35 published: the shares in the sentence, the citation
/// behind.
void TestComparison::sharesStandWithoutTheirCitation() {
    DayNoise noise = dayNoise(0.025, 5, DayNoise::Origin::Athlete);
    noise.source = "A study 2018 (from memory)";
    noise.published = 0.03;
    noise.ownPairs = 4;
    noise.othersPairs = 2;
    noise.ownShare = 0.4;
    noise.othersShare = 0.25;
    QCOMPARE(english(sourceOf(noise)),
             std::string("40 % the athlete's own: 4 repeat tests \u00b7 25 % "
                         "this log's: 2 repeat tests \u00b7 35 % published, not yours"));
    QCOMPARE(english(citationOf(noise)),
             std::string("published day-to-day noise: A study 2018 (from memory)"));
    noise.ownShare = 0.75; // none of it is published any more
    QVERIFY(citationOf(noise).empty());
    QVERIFY(citationOf(DayNoise{}).empty());
}

/// A smallest change that is published says so; its publication stands behind, once for speed and
/// 1RM together, before that of the noise. What is the coach's own has none.
void TestComparison::smallestChangesAreCitedBehind() {
    const Smallest published{.value = 0.05,
                             .origin = Smallest::Origin::Published,
                             .source = "A study 2019 (from memory)"};
    QCOMPARE(english(sourceOf(published)), std::string("published, not yours"));
    QCOMPARE(english(citationOf(published)),
             std::string("published smallest change that matters: A study 2019 (from memory)"));
    const auto told = smallestTold(published);
    QCOMPARE(told.size(), std::size_t(2));
    QCOMPARE(english(told[0]), std::string("Smallest change that matters: published, not yours"));
    QCOMPARE(english(told[1]),
             std::string("Published smallest change that matters: A study 2019."));
    const Smallest own{.value = 0.04, .origin = Smallest::Origin::Coach, .source = "coach"};
    QVERIFY(citationOf(own).empty());
    QCOMPARE(smallestTold(own).size(), std::size_t(1));
    std::vector<Note> notes;
    for (const Smallest& each : {published, own, published})
        citeSmallest(each, notes);
    QCOMPARE(notes.size(), std::size_t(1));
    QCOMPARE(english(notes[0].words),
             std::string("published smallest change that matters: A study 2019"));
}

void TestComparison::order() {
    // Back in time, every sign turns.
    const auto forth = compared(pointsA, pointsB);
    const auto back = compared(pointsB, pointsA);
    CHECK_NEAR(at(*back, 60).read.change, -at(*forth, 60).read.change, 1e-15);
    CHECK_NEAR(back->oneRm->interval->low, -forth->oneRm->interval->high, 1e-10);
    QVERIFY(at(*back, 60).read.reading == Reading::Worse);
    QCOMPARE(back->differs.front().stretch.sign, -1);
}

QTEST_APPLESS_MAIN(TestComparison)
#include "tst_comparison.moc"
