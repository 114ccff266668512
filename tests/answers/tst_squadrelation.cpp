// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squadrelation.h"
#include "tests/answers/builders.h"
#include "tests/answers/checking.h"
#include "tests/support/rscript.h"

#include <QtTest>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

/// Four athletes with a measured 1RM each; invented numbers.
std::vector<LiftSession> squad() {
    std::vector<LiftSession> all;
    const std::vector<std::pair<double, double>> oneRms{
        {80, 0.02}, {95, -0.03}, {110, 0.00}, {70, 0.04}};
    int id = 0;
    for (const auto& [oneRm, off] : oneRms) {
        std::vector<std::pair<double, double>> points;
        for (const double share : {0.3, 0.45, 0.6, 0.75, 0.9})
            points.emplace_back(oneRm * share, 1.75 - 1.25 * share + off * share);
        LiftSession session = tests::session(++id, points);
        session.athlete = AthleteId{id};
        session.measuredOneRm = massFromKilograms(oneRm);
        all.push_back(session);
    }
    LiftSession unmeasured = tests::session(9, {{40, 1.0}, {60, 0.8}, {80, 0.6}});
    unmeasured.athlete = AthleteId{9};
    all.push_back(unmeasured); // no measured 1RM: no part in it
    return all;
}

} // namespace

class TestSquadRelation : public QObject {
    Q_OBJECT
private slots:
    void agreesWithR();
    void publishedEquationsForward_data();
    void publishedEquationsForward();
    void namesAreFoundByLiftAndKind();
    void relatedLoadsAreNamed();
    void refusals();
};

void TestSquadRelation::agreesWithR() {
    if (!tests::haveR())
        QSKIP("R IS NOT INSTALLED: the squad's relation is not compared with lm");
    const auto relation = squadRelation(tests::benchPull(), squad());
    QVERIFY(relation);
    QCOMPARE(relation->athletes, 4);
    QCOMPARE(relation->sessions, 4);
    QCOMPARE(relation->points.size(), std::size_t{20});
    QByteArray input;
    for (const RelationPoint& point : relation->points)
        input += QByteArray::number(point.velocity, 'g', 17) + ' ' +
                 QByteArray::number(point.percent, 'g', 17) + '\n';
    const auto r = tests::runR(QStringLiteral("parabola.R"),
                               {QStringLiteral("0.7"), QStringLiteral("1.1")}, input);
    CHECK_NEAR(relation->linear.c[1], r[QStringLiteral("1 c1")], 1e-9);
    CHECK_NEAR(relation->quadratic->c[2], r[QStringLiteral("2 c2")], 1e-7);
    CHECK_NEAR(relation->quadratic->s(), r[QStringLiteral("2 s")], 1e-9);
    CHECK_NEAR(relation->predicted(0.7).low, r[QStringLiteral("2 low 1")], 1e-8);
    CHECK_NEAR(relation->predicted(1.1).high, r[QStringLiteral("2 high 2")], 1e-8);
}

// published-values.md section 2, forward and inverse check values [CALC].
void TestSquadRelation::publishedEquationsForward_data() {
    QTest::addColumn<int>("equation");
    QTest::addColumn<double>("velocity");
    QTest::addColumn<double>("percent");
    const double velocities[] = {0.20, 0.30, 0.50, 0.75, 1.00, 1.30};
    const double table[6][5] = {{97.967104, 98.150144, 127.846788, 106.619560, 106.523200},
                                {91.038634, 90.942574, 118.357573, 101.250510, 101.248700},
                                {77.687650, 76.982150, 100.493925, 90.154750, 89.927500},
                                {61.947587, 60.384213, 80.254581, 75.614438, 74.328125},
                                {47.261600, 44.733600, 62.337700, 60.329000, 57.120000},
                                {31.029794, 27.203334, 43.903093, 41.002910, 34.346700}};
    for (int row = 0; row < 6; ++row)
        for (int equation = 0; equation < 5; ++equation)
            QTest::addRow("equation %d at %.2f m/s", equation, velocities[row])
                << equation << velocities[row] << table[row][equation];
}

void TestSquadRelation::publishedEquationsForward() {
    QFETCH(int, equation);
    QFETCH(double, velocity);
    QFETCH(double, percent);
    const auto& relation = publishedRelations()[static_cast<std::size_t>(equation)];
    CHECK_NEAR(relation.percentAt(velocity), percent, 5.1e-7);
}

void TestSquadRelation::namesAreFoundByLiftAndKind() {
    QVERIFY(publishedRelation("bench PULL", VelocityKind::Propulsive));
    QVERIFY(!publishedRelation("Bench pull", VelocityKind::Mean));
    QVERIFY(!publishedRelation("Deadlift", VelocityKind::Mean));
    for (const PublishedRelation& relation : publishedRelations())
        QVERIFY(relation.source.find("from memory") != std::string_view::npos);
}

void TestSquadRelation::relatedLoadsAreNamed() {
    const auto relation = squadRelation(tests::benchPull(), squad());
    const auto p = profile(tests::benchPull(), tests::coachMvt(0.5), squad()[0]);
    PlanSettings settings;
    settings.equipment = {.name = "gym",
                          .bars = {{.name = "bar", .mass = exactMass(Mass{20'000})}},
                          .plates = parsePlates("10x2", MassUnit::Kilogram)};
    const auto plan = answers::plan(tests::benchPull(), *p, settings);
    QVERIFY(plan);
    const auto related = relatedLoads(*plan, *relation);
    QCOMPARE(related.size(), plan->loads.size());
    for (std::size_t i = 0; i < related.size(); ++i) {
        CHECK_NEAR(related[i].percent, relation->used().at(plan->loads[i].velocity), 1e-12);
        QVERIFY(related[i].interval->low < related[i].percent);
    }
    QVERIFY(english(relation->name()).find("4 athletes") != std::string::npos);
    QVERIFY(english(relationCaution(relation->name()).words).find("4 athletes") !=
            std::string::npos);
    const auto published = relatedLoads(*plan, publishedRelations()[0]);
    QVERIFY(!published[0].interval);
}

void TestSquadRelation::refusals() {
    auto few = squad();
    few.resize(2);
    const auto no = squadRelation(tests::benchPull(), few);
    QVERIFY(!no);
    QVERIFY(english(no.why().reason).find("2 athletes") != std::string::npos);
    Lift thrown = tests::benchPull();
    thrown.ballistic = true;
    QVERIFY(squadRelation(thrown, squad()).why().why == NoAnswer::Why::BallisticLift);
    QVERIFY(!squadRelation(tests::benchPull(), {}));
}

QTEST_APPLESS_MAIN(TestSquadRelation)
#include "tst_squadrelation.moc"
