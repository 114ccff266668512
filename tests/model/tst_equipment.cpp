// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/equipment.h"
#include "core/model/errors.h"

#include <QTest>

using namespace slopebook;

namespace {
ExactMass kg(const char* text) {
    return *parseExactMass(text, MassUnit::Kilogram);
}
ExactMass lb(const char* text) {
    return *parseExactMass(text, MassUnit::Pound);
}
} // namespace

class TestEquipment : public QObject {
    Q_OBJECT
private slots:
    void masses_are_held_without_rounding();
    void masses_read_data();
    void masses_read();
    void six_pound_plates_do_not_drift();
    void masses_are_shown_short();
    void plates_read();
    void bad_plates_are_refused_data();
    void bad_plates_are_refused();
    void what_cannot_stand_is_refused();
    void the_step_is_two_of_the_lightest_plate();
};

// Source: 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959).
void TestEquipment::masses_are_held_without_rounding() {
    QCOMPARE(kg("1").units, std::int64_t{100'000'000'000});
    QCOMPARE(kg("0.45359237"), lb("1"));
    QCOMPARE(kg("20.41165665"), lb("45"));
    QCOMPARE(kg("1.133980925"), lb("2.5"));
    QCOMPARE(kg("0.56699046250"), lb("1.25"));
    QCOMPARE(kg("0.05669904625").units, lb("0.125").units);
    QCOMPARE(exactMass(Mass{20'412}), kg("20.412"));
    QCOMPARE(roundedToGrams(lb("45")), massFromPounds(45));
    QCOMPARE(roundedToGrams(kg("0.0005")), Mass{1});
    QCOMPARE(roundedToGrams(kg("0.0004999")), Mass{0});
    QCOMPARE(nearestExactMass(0.7 * 100, MassUnit::Kilogram), kg("70"));
    QCOMPARE(nearestExactMass(135, MassUnit::Pound), lb("135"));
}

void TestEquipment::masses_read_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<bool>("pound");
    QTest::addColumn<bool>("taken");
    QTest::newRow("whole kilograms") << "20" << false << true;
    QTest::newRow("eleven decimals of a kilogram") << "1.12345678901" << false << true;
    QTest::newRow("twelve decimals would round") << "1.123456789012" << false << false;
    QTest::newRow("a thousandth of a pound") << "0.001" << true << true;
    QTest::newRow("four decimals of a pound would round") << "0.0001" << true << false;
    QTest::newRow("the heaviest") << "9999" << false << true;
    QTest::newRow("ten tonnes") << "10000" << false << false;
    QTest::newRow("empty") << "" << false << false;
    QTest::newRow("a sign") << "-5" << false << false;
    QTest::newRow("an exponent") << "1e2" << false << false;
    QTest::newRow("a comma") << "2,5" << false << false;
    QTest::newRow("two points") << "2.5.1" << false << false;
    QTest::newRow("a point without decimals") << "2." << false << false;
    QTest::newRow("text") << "nan" << false << false;
}

void TestEquipment::masses_read() {
    QFETCH(QString, text);
    QFETCH(bool, pound);
    QFETCH(bool, taken);
    const auto read =
        parseExactMass(text.toStdString(), pound ? MassUnit::Pound : MassUnit::Kilogram);
    QCOMPARE(read.has_value(), taken);
}

void TestEquipment::six_pound_plates_do_not_drift() {
    // 45 lb bar and six 45 lb plates are 315 lb to the last unit; whole grams would give 142,884.
    const ExactMass load = lb("45") + 6 * lb("45");
    QCOMPARE(load, lb("315"));
    QCOMPARE(roundedToGrams(load), Mass{142'882}); // 315 x 453.59237 = 142,881.59655
}

void TestEquipment::masses_are_shown_short() {
    QCOMPARE(massText(kg("2.5"), MassUnit::Kilogram), std::string("2.5"));
    QCOMPARE(massText(kg("20"), MassUnit::Kilogram), std::string("20"));
    QCOMPARE(massText(lb("45"), MassUnit::Kilogram), std::string("20.412"));
    QCOMPARE(massText(lb("45"), MassUnit::Pound), std::string("45"));
    QCOMPARE(massText(kg("100"), MassUnit::Kilogram, 0), std::string("100"));
    QCOMPARE(massText(ExactMass{}, MassUnit::Pound), std::string("0"));
}

void TestEquipment::plates_read() {
    const auto plates = parsePlates("20x2, 10x2,2.5x1,1.25", MassUnit::Kilogram);
    QCOMPARE(plates.size(), std::size_t{4});
    QCOMPARE(plates[0], (Plate{.mass = kg("20"), .pairs = 2}));
    QCOMPARE(plates[2], (Plate{.mass = kg("2.5"), .pairs = 1}));
    QCOMPARE(plates[3], (Plate{.mass = kg("1.25"), .pairs = 1}));
    const auto mixed = parsePlates("45lbx2,20kgx1", MassUnit::Pound);
    QCOMPARE(mixed[0], (Plate{.mass = lb("45"), .pairs = 2, .unit = MassUnit::Pound}));
    QCOMPARE(mixed[1], (Plate{.mass = kg("20"), .pairs = 1}));
    QVERIFY(parsePlates(" ", MassUnit::Kilogram).empty());
}

void TestEquipment::bad_plates_are_refused_data() {
    QTest::addColumn<QString>("text");
    for (const char* text : {"20x", "x2", "20x0", "20x51", "20x2.5", "0x2", "20x2,,10x1", "abc",
                             "20x2,20x1", "-20x2", "20x2,"})
        QTest::newRow(text) << QString::fromLatin1(text);
}

void TestEquipment::bad_plates_are_refused() {
    QFETCH(QString, text);
    QVERIFY_THROWS_EXCEPTION(BadInput, parsePlates(text.toStdString(), MassUnit::Kilogram));
}

void TestEquipment::what_cannot_stand_is_refused() {
    const Equipment good{.name = "home",
                         .bars = {{.name = "bar", .mass = kg("20")}},
                         .plates = {{.mass = kg("10"), .pairs = 2}},
                         .fixed = {},
                         .ceiling = kg("60"),
                         .note = {}};
    validate(good);
    Equipment bad = good;
    bad.name = " ";
    QVERIFY_THROWS_EXCEPTION(BadInput, validate(bad));
    bad = good;
    bad.bars.clear();
    QVERIFY_THROWS_EXCEPTION(BadInput, validate(bad));
    bad = good;
    bad.bars[0].mass = {};
    QVERIFY_THROWS_EXCEPTION(BadInput, validate(bad));
    bad = good;
    bad.plates.push_back(bad.plates[0]);
    QVERIFY_THROWS_EXCEPTION(BadInput, validate(bad));
    bad = good;
    bad.plates[0].pairs = 0;
    QVERIFY_THROWS_EXCEPTION(BadInput, validate(bad));
    bad = good;
    bad.ceiling = ExactMass{};
    QVERIFY_THROWS_EXCEPTION(BadInput, validate(bad));
    bad = good;
    bad.fixed = {{.name = "dumbbell", .mass = kg("1000")}};
    QVERIFY_THROWS_EXCEPTION(BadInput, validate(bad));
}

void TestEquipment::the_step_is_two_of_the_lightest_plate() {
    Equipment equipment;
    QVERIFY(!plateStep(equipment));
    equipment.plates = parsePlates("20x2,1.25x1,2.5x1", MassUnit::Kilogram);
    QCOMPARE(*plateStep(equipment), kg("2.5"));
}

QTEST_APPLESS_MAIN(TestEquipment)
#include "tst_equipment.moc"
