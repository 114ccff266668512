// SPDX-License-Identifier: GPL-3.0-or-later
// Cautions and reasons in the window: English as core says them, word for word, and nothing that a
// translator cannot reach.
#include "core/answers/comparison.h"
#include "core/answers/restrictedflow.h"
#include "core/answers/squadrelation.h"
#include "tests/answers/builders.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QTest>
#include <QTranslator>

#include <algorithm>
#include <limits>
#include <set>

using namespace slopebook;
using namespace slopebook::answers;
using namespace slopebook::ui;
using Kind = Caution::Kind;

namespace {

const QString mark = QStringLiteral("\u00ab");

/// Speaks a language of its own: the source with a mark before it.
class Marking : public QTranslator {
public:
    QString translate(const char*, const char* source, const char*, int) const override {
        return mark + QString::fromUtf8(source);
    }
    bool isEmpty() const override { return false; }
};

using Points = std::vector<std::pair<double, double>>;
const Points toNearMaximum{{40, 1.22},  {60, 1.00},  {80, 0.79},
                           {100, 0.57}, {110, 0.47}, {120, 0.35}};

struct Asked {
    Points points = toNearMaximum;
    Target target = {Target::Kind::Percent, 73, 73};
    std::optional<double> loss = {};
    std::optional<double> ceiling = {}; // kg
    MassUnit unit = MassUnit::Kilogram;
    bool restrictedFlow = false, ballistic = false, meanOfReps = false, noThreshold = false,
         noNoise = false;
    std::optional<double> mvtSd = {};
    std::vector<LoadBound> bounds = {};
};

Plan planOf(const Asked& asked) {
    Lift lift = tests::benchPull();
    lift.ballistic = asked.ballistic;
    lift.rule = asked.meanOfReps ? PointRule::Mean : PointRule::Fastest;
    const Answer<Mvt> mvt =
        asked.noThreshold ? Answer<Mvt>(NoAnswer{
                                NoAnswer::Why::NoThreshold,
                                asIs("no minimal-velocity threshold (MVT) is known for this lift")})
                          : Answer<Mvt>(tests::coachMvt(0.17, asked.mvtSd));
    PlanSettings settings{
        .target = asked.target,
        .lossPercent = asked.loss,
        .equipment = {.name = "gym",
                      .bars = {{.name = "bar", .mass = exactMass(Mass{20'000})}},
                      .plates = parsePlates("25x2,20x1,10x1,5x1,2.5x1,1.25x1", MassUnit::Kilogram)},
        .bounds = asked.bounds,
        .restrictedFlow = asked.restrictedFlow,
        .unit = asked.unit};
    if (!asked.noNoise)
        settings.dayNoise = {.variance = {0.0004, std::numeric_limits<double>::infinity()},
                             .origin = DayNoise::Origin::Athlete,
                             .source = "test"};
    if (asked.ceiling)
        settings.ceiling = exactMass(massFromKilograms(*asked.ceiling));
    return *plan(lift, *profile(lift, mvt, tests::session(1, asked.points)), settings);
}

Target percent(double p) {
    return {Target::Kind::Percent, p, p};
}
Target speed(double v) {
    return {Target::Kind::Velocity, v, v};
}

/// Plans that, together, make every caution that there is.
std::vector<Asked> everyAsked() {
    const Points two{{40, 1.00}, {80, 0.50}};
    return {{},
            {.unit = MassUnit::Pound},
            {.target = percent(95)},
            {.target = percent(103), .mvtSd = 0.04},
            {.mvtSd = 0.08}, // its interval reaches beyond where the line ends
            {.bounds = {{.kind = LoadBound::Kind::Block, .load = Mass{110'000}, .name = "Flood"}}},
            {.bounds = {{.kind = LoadBound::Kind::NotLifted, .load = Mass{125'000}}}},
            {.target = percent(20)},
            {.target = percent(5)},
            {.target = percent(5), .unit = MassUnit::Pound},
            {.target = percent(92), .loss = 50},
            {.target = percent(90), .ceiling = 60},
            {.target = percent(90), .ceiling = 60, .unit = MassUnit::Pound},
            {.target = percent(30), .restrictedFlow = true},
            {.points = two},
            {.points = two, .target = percent(90), .ceiling = 60},
            {.target = percent(60), .loss = 20, .meanOfReps = true, .noNoise = true},
            {.points = {{40, 1.22}, {60, 1.00}, {80, 0.79}}},
            {.points = {{30, 1.33}, {40, 1.22}, {50, 1.115}, {60, 1.005}}},
            {.target = speed(0.80), .ballistic = true},
            {.target = speed(0.60), .ceiling = 60, .ballistic = true},
            {.target = speed(0.80), .noThreshold = true}};
}

std::vector<std::pair<Caution, LoadUnit>> everyCaution() {
    std::vector<std::pair<Caution, LoadUnit>> all;
    for (const Asked& asked : everyAsked())
        for (const Caution& caution : planOf(asked).cautions)
            all.emplace_back(caution, asked.unit == MassUnit::Pound ? LoadUnit::Pounds
                                                                    : LoadUnit::Kilograms);
    all.emplace_back(relationCaution(asIs("the squad's own relation (4 athletes, 20 points)")),
                     LoadUnit::Kilograms);
    return all;
}

QString shown(const Words& words, LoadUnit unit) {
    return said(asSentence(words), unit).replace(QChar(QChar::Nbsp), u' ');
}

NoAnswer comparedWithTwoPoints() {
    const Answer<Mvt> mvt = tests::coachMvt(0.17);
    return compare(tests::benchPull(), mvt, tests::session(1, toNearMaximum),
                   tests::session(2, {{40, 1.00}, {80, 0.50}}), {})
        .why();
}

} // namespace

class TestAnswerWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QLocale::setDefault(QLocale::c()); }

    void everyKindOfCautionIsAmongTheExamples() {
        std::set<Kind> seen;
        for (const auto& [caution, unit] : everyCaution())
            seen.insert(caution.kind);
        for (int kind = 0; kind < static_cast<int>(Kind::Other); ++kind)
            QVERIFY2(seen.contains(static_cast<Kind>(kind)),
                     qPrintable(QStringLiteral("no example of kind %1").arg(kind)));
    }

    void cautionsAreSaidWordForWord() {
        for (const auto& [caution, unit] : everyCaution())
            QCOMPARE(shown(caution.words, unit),
                     QString::fromStdString(
                         english(asSentence(caution.words),
                                 unit == LoadUnit::Pounds ? MassUnit::Pound : MassUnit::Kilogram)));
    }

    void everyCautionCanBeTranslated() {
        Marking marking;
        QVERIFY(QCoreApplication::installTranslator(&marking));
        for (const auto& [caution, unit] : everyCaution())
            QVERIFY2(said(caution.words, unit).startsWith(mark), english(caution.words).c_str());
    }

    void theRestrictedFlowTextIsShownWholeAndTranslated() {
        Marking marking;
        QVERIFY(QCoreApplication::installTranslator(&marking));
        const QString texts =
            said(restrictedFlowSentences(), LoadUnit::Kilograms).join(QLatin1Char('\n'));
        const RestrictedFlowText& t = restrictedFlowText();
        for (const auto& list : {std::vector{t.source, t.leading}, t.usualPractice, t.screening,
                                 t.stopAtOnce, t.afterwards})
            for (const Words& piece : list)
                QVERIFY(texts.contains(mark + QString::fromStdString(english(piece))));
    }

    /// The same words in the window's way of writing: marks of numbers, the unit of loads, joints.
    void partsAreWrittenAsTheWindowWrites() {
        QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
        const QChar minus(0x2212), dash(0x2013), space(QChar::Nbsp);
        QCOMPARE(said(signedFigure(-0.25, 2)), minus + QStringLiteral("0,25"));
        QCOMPARE(said(signedFigure(0.25, 2)), QStringLiteral("+0,25"));
        QCOMPARE(said(figure(std::numeric_limits<double>::infinity(), 2)), QString(dash));
        // 100 kg are 220.46 lb (1 lb = 0.45359237 kg, agreement of 1959).
        QCOMPARE(said(massWords(100, asEstimate), LoadUnit::Kilograms),
                 QStringLiteral("100,0") + space + QStringLiteral("kg"));
        QCOMPARE(said(massWords(100, asEstimate), LoadUnit::Pounds),
                 QStringLiteral("220,5") + space + QStringLiteral("lb"));
        QCOMPARE(said(massWords(-100, asChange), LoadUnit::Pounds),
                 minus + QStringLiteral("220,5") + space + QStringLiteral("lb"));
        QCOMPARE(said(massWords(72.46, toTenths), LoadUnit::Kilograms),
                 QStringLiteral("72,5") + space + QStringLiteral("kg"));
        QCOMPARE(said(massWords(40, bareLoad), LoadUnit::Kilograms), QStringLiteral("40"));
        // Without a unit at hand a mass is told in both, a bare one too.
        QCOMPARE(said(massWords(40, bareLoad)).replace(space, u' '),
                 QStringLiteral("40 kg (88,2 lb)"));
        QCOMPARE(said(listed({asIs("a"), figure("1.5"), asIs("%1")})),
                 QStringLiteral("a, 1,5, %1"));
        QCOMPARE(said(asSentence(clauses({asIs("\u00fcbel"), asIs("b")}))),
                 QStringLiteral("\u00dcbel; b."));
        QLocale::setDefault(QLocale::c());
    }

    void reasonsAreSaidWordForWord_data() {
        QTest::addColumn<NoAnswer>("why");
        const Lift lift = tests::benchPull();
        const Answer<Mvt> mvt = tests::coachMvt(0.17);
        const auto of = [&](const Points& points) {
            return profile(lift, mvt, tests::session(1, points));
        };
        QTest::newRow("no points") << of({}).why();
        QTest::newRow("one load") << of({{62.5, 1.0}, {62.5, 0.98}}).why();
        QTest::newRow("speed that rises") << of({{40, 0.5}, {60, 0.7}, {80, 0.8}})->oneRm.why();
        QTest::newRow("a line under the threshold")
            << of({{40, 0.10}, {60, 0.08}, {80, 0.07}})->oneRm.why();
        QTest::newRow("a session of two points in a comparison") << comparedWithTwoPoints();
        QTest::newRow("a speed that the line does not reach")
            << plan(lift, *of(toNearMaximum),
                    {.target = speed(2.5),
                     .equipment = {.name = "gym",
                                   .bars = {{.name = "bar", .mass = exactMass(Mass{20'000})}},
                                   .plates = parsePlates("20x4", MassUnit::Kilogram)}})
                   .why();
        QTest::newRow("no squad") << squadRelation(lift, {}).why();
    }
    void reasonsAreSaidWordForWord() {
        QFETCH(NoAnswer, why);
        // A window writes the days of sessions as it writes days, which the command line does not.
        QString expected = QString::fromStdString(english(why.reason));
        for (const int day : {8, 15})
            expected.replace(QStringLiteral("2026-01-%1").arg(day, 2, 10, QLatin1Char('0')),
                             QStringLiteral("%1 Jan 2026").arg(day));
        // The unit is never on a line of its own.
        QCOMPARE(said(why.reason, LoadUnit::Kilograms).replace(QChar(QChar::Nbsp), u' '), expected);
        Marking marking;
        QVERIFY(QCoreApplication::installTranslator(&marking));
        QVERIFY(said(why.reason, LoadUnit::Kilograms).contains(mark));
    }

    void aSidesReasonKeepsItsSide() {
        const NoAnswer why{NoAnswer::Why::NotTested, filled("left %1", filled("not tested"))};
        QCOMPARE(said(why.reason, LoadUnit::Kilograms), QStringLiteral("left not tested"));
    }
    void whatWasNotPossibleKeepsItsReason() {
        const NoAnswer why{NoAnswer::Why::NotPossible, filled("not possible: %1", "sore knee")};
        QCOMPARE(said(why.reason, LoadUnit::Kilograms), QStringLiteral("not possible: sore knee"));
    }
    void aReasonThatNobodyKnowsSaysItself() {
        const NoAnswer why{NoAnswer::Why::Other, asIs("the moon is full")};
        QCOMPARE(said(why.reason, LoadUnit::Kilograms), QStringLiteral("the moon is full"));
    }
};

QTEST_MAIN(TestAnswerWords)
#include "tst_answerwords.moc"
