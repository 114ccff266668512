// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/plates.h"
#include "core/model/errors.h"

#include <QTest>

#include <map>
#include <random>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

ExactMass kg(const char* text) {
    return *parseExactMass(text, MassUnit::Kilogram);
}
ExactMass lb(const char* text) {
    return *parseExactMass(text, MassUnit::Pound);
}

Equipment gym() {
    return {.name = "gym",
            .bars = {{.name = "bar", .mass = kg("20")}},
            .plates = parsePlates("20x2,10x2,5x2,2.5x1,1.25x1", MassUnit::Kilogram),
            .fixed = {},
            .ceiling = {},
            .note = {}};
}

/// Every way to load the equipment, one after the other: no cleverness, so that it can be trusted.
/// Gives the fewest pieces of each load.
std::map<std::int64_t, int> bruteForce(const Equipment& e) {
    std::map<std::int64_t, int> found;
    std::vector<std::pair<std::int64_t, int>> plateWays{{0, 0}};
    for (const Plate& plate : e.plates) {
        std::vector<std::pair<std::int64_t, int>> more;
        for (const auto& [units, pieces] : plateWays)
            for (int count = 0; count <= plate.pairs; ++count)
                more.emplace_back(units + 2 * count * plate.mass.units, pieces + 2 * count);
        plateWays = more;
    }
    std::vector<FixedMass> added, alone;
    for (const FixedMass& fixed : e.fixed)
        (fixed.use == FixedMass::Use::Added ? added : alone).push_back(fixed);
    const auto take = [&](std::int64_t units, int pieces) {
        if (units == 0 || (e.ceiling && units > e.ceiling->units))
            return;
        const auto [at, fresh] = found.try_emplace(units, pieces);
        if (!fresh)
            at->second = std::min(at->second, pieces);
    };
    for (unsigned subset = 0; subset < (1u << added.size()); ++subset) {
        std::int64_t extra = 0;
        int count = 0;
        for (unsigned i = 0; i < added.size(); ++i)
            if (subset >> i & 1u) {
                extra += added[i].mass.units;
                ++count;
            }
        for (const Bar& bar : e.bars)
            for (const auto& [units, pieces] : plateWays)
                take(bar.mass.units + units + extra, pieces + count);
        for (const FixedMass& fixed : alone)
            take(fixed.mass.units + extra, 1 + count);
        if (e.bars.empty() && alone.empty())
            take(extra, count);
    }
    return found;
}

Equipment randomEquipment(std::mt19937& random) {
    const auto roll = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    const char* const plates[] = {"25", "20", "15", "10", "5", "2.5", "1.25", "0.5"};
    const char* const poundPlates[] = {"45", "35", "25", "10", "5", "2.5", "1.25"};
    Equipment e{
        .name = "made up", .bars = {}, .plates = {}, .fixed = {}, .ceiling = {}, .note = {}};
    for (const char* plate : plates)
        if (roll(0, 2) == 0)
            e.plates.push_back({.mass = kg(plate), .pairs = roll(1, 3)});
    for (const char* plate : poundPlates)
        if (roll(0, 3) == 0)
            e.plates.push_back({.mass = lb(plate), .pairs = roll(1, 2), .unit = MassUnit::Pound});
    std::shuffle(e.plates.begin(), e.plates.end(), random);
    if (roll(0, 4) > 0)
        e.bars.push_back({.name = "long", .mass = kg("20")});
    if (roll(0, 1) > 0)
        e.bars.push_back({.name = "short", .mass = kg("15")});
    if (roll(0, 2) == 0)
        e.fixed.push_back({.name = "vest", .mass = kg("10"), .use = FixedMass::Use::Added});
    if (roll(0, 2) == 0)
        e.fixed.push_back({.name = "belt", .mass = lb("5"), .use = FixedMass::Use::Added});
    if (e.bars.empty() || roll(0, 2) == 0)
        e.fixed.push_back({.name = "dumbbell", .mass = kg("26")});
    if (roll(0, 1) == 0)
        e.ceiling = ExactMass{roll(15, 150) * unitsPerKilogram};
    return e;
}

} // namespace

class TestPlates : public QObject {
    Q_OBJECT
private slots:
    void the_gym_makes_every_step();
    void agrees_with_trying_everything();
    void what_is_put_on_makes_the_load();
    void fewest_plates_and_heaviest_first();
    void pounds_meet_kilograms_apart();
    void a_pound_bar_is_exact();
    void fixed_masses_are_used_or_not();
    void an_added_mass_alone_is_a_load_where_nothing_else_is();
    void the_ceiling_is_kept();
    void a_load_is_found_on_the_asked_side_data();
    void a_load_is_found_on_the_asked_side();
    void nothing_is_found_where_nothing_is();
    void too_many_kinds_are_refused();
    void the_order_of_typing_does_not_matter();
};

void TestPlates::the_gym_makes_every_step() {
    // By hand: 2 x (2 x 20 + 2 x 10 + 2 x 5 + 2.5 + 1.25) = 147.5 kg of plates; every multiple of
    // 2.5 kg can be made with these, so 20, 22.5, ... 167.5.
    const auto loads = buildableLoads(gym());
    QCOMPARE(loads.size(), std::size_t{60});
    for (std::size_t i = 0; i < loads.size(); ++i)
        QCOMPARE(loads[i].load, Mass{20'000 + 2'500 * static_cast<std::int64_t>(i)});
}

void TestPlates::agrees_with_trying_everything() {
    std::mt19937 random(20260314);
    int compared = 0;
    for (int round = 0; round < 400; ++round) {
        const Equipment e = randomEquipment(random);
        const auto expected = bruteForce(e);
        const auto loads = buildableLoads(e);
        QCOMPARE(loads.size(), expected.size());
        auto want = expected.begin();
        for (const BuiltLoad& load : loads) {
            QCOMPARE(load.exact.units, want->first);
            QCOMPARE(load.pieces(), want->second);
            ++want;
            ++compared;
        }
    }
    QVERIFY(compared > 10'000);
}

void TestPlates::what_is_put_on_makes_the_load() {
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        const Equipment e = randomEquipment(random);
        for (const BuiltLoad& load : buildableLoads(e)) {
            ExactMass sum = load.bar ? load.bar->mass : ExactMass{};
            ExactMass last{std::numeric_limits<std::int64_t>::max()};
            for (const PlateCount& plate : load.perSide) {
                QVERIFY(plate.perSide >= 1 && plate.perSide <= plate.plate.pairs);
                QVERIFY(plate.plate.mass < last); // heaviest first
                last = plate.plate.mass;
                sum = sum + 2 * plate.perSide * plate.plate.mass;
            }
            for (const FixedMass& fixed : load.fixed)
                sum = sum + fixed.mass;
            QCOMPARE(sum, load.exact);
            QCOMPARE(load.load, roundedToGrams(load.exact));
            QVERIFY(load.bar || load.perSide.empty());
        }
    }
}

void TestPlates::fewest_plates_and_heaviest_first() {
    const auto loads = buildableLoads(gym());
    const auto hundred = loads[*answers::find(loads, kg("100"), Side::Nearest)];
    QCOMPARE(english(loadWords(hundred)), std::string("bar 20 kg; per side 2 x 20 kg"));
    const auto odd = loads[*answers::find(loads, kg("72.5"), Side::Nearest)];
    QCOMPARE(english(putOnWords(odd)), std::string("20 + 5 + 1.25 kg"));
    QCOMPARE(english(loadWords(loads.front())), std::string("bar 20 kg, no plates"));
    // 15 + 15 or 20 + 10: two plates a side either way; the heavier first
    Equipment e = gym();
    e.plates = parsePlates("10x1,15x2,20x1", MassUnit::Kilogram);
    const auto tied = buildableLoads(e);
    QCOMPARE(english(putOnWords(tied[*answers::find(tied, kg("80"), Side::Nearest)])),
             std::string("20 + 10 kg"));
}

void TestPlates::pounds_meet_kilograms_apart() {
    Equipment e = gym();
    e.plates = parsePlates("20x1,45lbx1", MassUnit::Kilogram);
    const auto loads = buildableLoads(e);
    QCOMPARE(loads.size(), std::size_t{4});
    QCOMPARE(loads[1].load, Mass{60'000});
    QCOMPARE(loads[2].load, Mass{60'823}); // 20 + 2 x 20.41165665
    QCOMPARE(english(putOnWords(loads[3])), std::string("45 lb + 20 kg"));
}

void TestPlates::a_pound_bar_is_exact() {
    Equipment e = gym();
    e.bars = {{.name = "bar", .mass = lb("45"), .unit = MassUnit::Pound}};
    e.plates = parsePlates("45x4,25x1,10x1,5x1,2.5x1", MassUnit::Pound);
    for (const BuiltLoad& load : buildableLoads(e)) {
        QCOMPARE(load.exact.units % (5 * unitsPerPound), std::int64_t{0});
        const std::int64_t whole = load.exact.units / unitsPerPound;
        QCOMPARE(load.load, massFromPounds(static_cast<double>(whole)));
    }
}

void TestPlates::fixed_masses_are_used_or_not() {
    Equipment e{.name = "travel", .bars = {}, .plates = {}, .fixed = {}, .ceiling = {}, .note = {}};
    e.fixed = {{.name = "dumbbell", .mass = kg("26")},
               {.name = "kettlebell", .mass = kg("16")},
               {.name = "vest", .mass = kg("10"), .use = FixedMass::Use::Added}};
    const auto loads = buildableLoads(e);
    // 16; 26 as the dumbbell alone rather than kettlebell and vest; 36
    QCOMPARE(loads.size(), std::size_t{3});
    QCOMPARE(loads[1].fixed.size(), std::size_t{1});
    QCOMPARE(english(loadWords(loads[2])), std::string("dumbbell 26 kg + vest 10 kg"));
}

void TestPlates::an_added_mass_alone_is_a_load_where_nothing_else_is() {
    Equipment e{
        .name = "pull-ups", .bars = {}, .plates = {}, .fixed = {}, .ceiling = {}, .note = {}};
    e.fixed = {{.name = "vest", .mass = kg("10"), .use = FixedMass::Use::Added},
               {.name = "belt", .mass = kg("20"), .use = FixedMass::Use::Added}};
    const auto loads = buildableLoads(e);
    QCOMPARE(loads.size(), std::size_t{3});
    QCOMPARE(loads[2].load, Mass{30'000});
}

void TestPlates::the_ceiling_is_kept() {
    Equipment e = gym();
    e.ceiling = kg("26");
    QCOMPARE(buildableLoads(e).back().load, Mass{25'000});
    QCOMPARE(buildableLoads(e, kg("22.5")).back().load, Mass{22'500}); // the lower one holds
    QCOMPARE(buildableLoads(e, kg("60")).back().load, Mass{25'000});
    QVERIFY(buildableLoads(e, kg("19")).empty());
}

void TestPlates::a_load_is_found_on_the_asked_side_data() {
    QTest::addColumn<QString>("target");
    QTest::addColumn<QString>("below");
    QTest::addColumn<QString>("above");
    QTest::addColumn<QString>("nearest");
    QTest::newRow("between") << "61"
                             << "60"
                             << "62.5"
                             << "60";
    QTest::newRow("nearer the upper") << "61.5"
                                      << "60"
                                      << "62.5"
                                      << "62.5";
    QTest::newRow("as near to both: the lighter") << "61.25"
                                                  << "60"
                                                  << "62.5"
                                                  << "60";
    QTest::newRow("exactly there") << "60"
                                   << "60"
                                   << "60"
                                   << "60";
    QTest::newRow("under the bar") << "5"
                                   << ""
                                   << "20"
                                   << "20";
    QTest::newRow("over all plates") << "300"
                                     << "167.5"
                                     << ""
                                     << "167.5";
}

void TestPlates::a_load_is_found_on_the_asked_side() {
    QFETCH(QString, target);
    const auto loads = buildableLoads(gym());
    for (const auto& [side, column] :
         {std::pair{Side::Below, "below"}, {Side::Above, "above"}, {Side::Nearest, "nearest"}}) {
        const QString expected =
            *static_cast<QString*>(QTest::qData(column, qMetaTypeId<QString>()));
        const auto found = answers::find(loads, kg(target.toLatin1().constData()), side);
        QCOMPARE(found.has_value(), !expected.isEmpty());
        if (found)
            QCOMPARE(loads[*found].exact, kg(expected.toLatin1().constData()));
    }
}

void TestPlates::nothing_is_found_where_nothing_is() {
    QVERIFY(!answers::find({}, kg("20"), Side::Nearest));
    Equipment nothing = gym();
    nothing.bars.clear();
    QVERIFY_THROWS_EXCEPTION(BadInput, buildableLoads(nothing));
}

void TestPlates::too_many_kinds_are_refused() {
    Equipment e = gym();
    e.plates.clear();
    for (int i = 0; i < 20; ++i) // powers of two: every sum differs
        e.plates.push_back({.mass = ExactMass{unitsPerKilogram / 1000 << i}, .pairs = 1});
    QVERIFY_THROWS_EXCEPTION(BadInput, buildableLoads(e));
}

void TestPlates::the_order_of_typing_does_not_matter() {
    Equipment e = gym();
    const auto loads = buildableLoads(e);
    std::mt19937 random(3);
    for (int round = 0; round < 10; ++round) {
        std::shuffle(e.plates.begin(), e.plates.end(), random);
        QVERIFY(buildableLoads(e) == loads);
    }
}

QTEST_APPLESS_MAIN(TestPlates)
#include "tst_plates.moc"
