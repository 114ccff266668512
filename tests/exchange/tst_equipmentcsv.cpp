// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of equipment as CSV: read exactly in kilograms and pounds, refused with line and column,
// brought into a log once, and out again without a gram lost.
#include "core/exchange/equipmentcsv.h"
#include "core/exchange/tidyexport.h"
#include "core/model/errors.h"
#include "tests/exchange/csvfiles.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::exchange;
using slopebook::tests::CsvFiles;

namespace {

const std::string header = "equipment,piece,mass,unit,pairs,piece_name,equipment_note\n";

/// Every kind of piece, in both units.
const std::string rooms = header + "Gym,bar,20,kg,,men's bar,by the river\n"
                                   "Gym,plate,20,kg,2,,\n"
                                   "Travel,alone,26.5,,,bell,\n"
                                   "Gym,plate,2.5,lb,1,,\n"
                                   "Gym,added,10,lb,,vest,\n"
                                   "Gym,ceiling,62.55,kg,,,\n"
                                   "Travel,alone,44.092,lb,,\"bell, blue\",\n";

Equipment gym() {
    return {.name = "Gym",
            .bars = {{.name = "men's bar", .mass = {20 * unitsPerKilogram}}},
            .plates = {{.mass = {20 * unitsPerKilogram}, .pairs = 2},
                       {.mass = {2500 * unitsPerMilliPound}, .unit = MassUnit::Pound}},
            .fixed = {{.name = "vest",
                       .mass = {10 * unitsPerPound},
                       .use = FixedMass::Use::Added,
                       .unit = MassUnit::Pound}},
            .ceiling = ExactMass{6'255'000'000'000},
            .note = "by the river"};
}

EquipmentTable read(const CsvFiles& files, const std::string& text) {
    EquipmentTable table;
    table.read(files.write("equipment.csv", text));
    return table;
}

} // namespace

class TestEquipmentCsv : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void readsEveryPieceExactly() {
        const CsvFiles files;
        const EquipmentTable table = read(files, rooms);
        QCOMPARE(table.sets.size(), std::size_t(2));
        QVERIFY(table.sets[0].equipment == gym());
        const Equipment& travel = table.sets[1].equipment;
        QCOMPARE(travel.fixed.size(), std::size_t(2));
        QCOMPARE(travel.fixed[0].mass.units, std::int64_t(2'650'000'000'000));
        QVERIFY(travel.fixed[0].use == FixedMass::Use::Alone);
        QCOMPARE(travel.fixed[1].mass.units, 44'092 * unitsPerMilliPound);
        QCOMPARE(travel.fixed[1].name, std::string("bell, blue"));
    }

    void goesInOnceByTheImport() {
        const CsvFiles files;
        log::Log log = files.newLog();
        const auto file = files.write("equipment.csv", rooms);
        const ImportReport first = importTidy(log, {file}, {});
        QCOMPARE(first.equipmentMade, (std::vector<std::string>{"Gym", "Travel"}));
        QVERIFY(!first.addedNothing());
        QVERIFY(log.equipment()[0].value == gym());
        QVERIFY(log.check().empty());
        const ImportReport again = importTidy(log, {file}, {});
        QVERIFY(again.addedNothing());
        QCOMPARE(log.equipment().size(), std::size_t(2));
    }

    void comesOutAsItWentIn() {
        const CsvFiles files;
        log::Log log = files.newLog();
        Equipment odd{.name = "Odd",
                      .bars = {{.name = "=1+1", .mass = {2'041'165'665'000}}},
                      .plates = {{.mass = {1}, .pairs = 3},
                                 {.mass = {99'999'999'999'999}, .pairs = 1},
                                 {.mass = {45 * unitsPerPound}, .unit = MassUnit::Pound}},
                      .ceiling = ExactMass{150 * unitsPerPound},
                      .note = "a, \"b\"\nc"};
        log.add(odd);
        log.add(gym());
        exportTables(log, files.path("out"));
        log::Log other = files.newLog("other.slopebook");
        importTidy(other, {files.path("out/equipment.csv")}, {});
        QCOMPARE(other.equipment().size(), std::size_t(2));
        QVERIFY(other.equipment()[0].value == gym());
        QVERIFY(other.equipment()[1].value == odd);
    }

    void whatContradictsTheLogIsRefused() {
        const CsvFiles files;
        log::Log log = files.newLog();
        log.add(gym());
        try {
            importTidy(log, {files.write("e.csv", header + "gym,bar,15,kg,,,\n")}, {});
            QFAIL("taken");
        } catch (const BadInput& bad) {
            QVERIFY(std::string(bad.what()).find("line 2") != std::string::npos);
        }
        QVERIFY(log.equipment()[0].value == gym());
    }

    void badRowsAreRefused_data() {
        QTest::addColumn<QString>("row");
        QTest::addColumn<QString>("column");
        QTest::newRow("a decimal comma") << "Gym,bar,\"2,5\",kg,,,\n"
                                         << "mass";
        QTest::newRow("nothing weighed") << "Gym,bar,,kg,,,\n"
                                         << "mass";
        QTest::newRow("no mass at all") << "Gym,bar,0,kg,,,\n"
                                        << "mass";
        QTest::newRow("more decimals than a pound has") << "Gym,bar,2.0005,lb,,,\n"
                                                        << "mass";
        QTest::newRow("an unknown unit") << "Gym,bar,20,stone,,,\n"
                                         << "unit";
        QTest::newRow("an unknown piece") << "Gym,rack,20,kg,,,\n"
                                          << "piece";
        QTest::newRow("a pair of bars") << "Gym,bar,20,kg,2,,\n"
                                        << "pairs";
        QTest::newRow("a named plate") << "Gym,plate,20,kg,2,blue,\n"
                                       << "piece_name";
        QTest::newRow("two ceilings") << "Gym,ceiling,20,kg,,,\nGym,ceiling,21,kg,,,\n"
                                      << "mass";
        QTest::newRow("two notes") << "Gym,bar,20,kg,,,one\nGym,bar,20,kg,,,two\n"
                                   << "equipment_note";
        QTest::newRow("nothing to lift") << "Gym,plate,20,kg,2,,\n"
                                         << "equipment";
        QTest::newRow("a plate twice") << "Gym,bar,20,kg,,,\nGym,plate,5,kg,1,,\nGym,plate,5,,2,,\n"
                                       << "equipment";
    }
    void badRowsAreRefused() {
        QFETCH(QString, row);
        QFETCH(QString, column);
        const CsvFiles files;
        log::Log log = files.newLog();
        const auto file = files.write("e.csv", header + row.toStdString());
        try {
            importTidy(log, {file}, {});
            QFAIL("taken");
        } catch (const BadInput& bad) {
            QCOMPARE(QString::fromStdString(english(bad.where().column)), column);
            QVERIFY(bad.where().line >= 2);
        }
        QVERIFY(log.equipment().empty());
    }
};

QTEST_APPLESS_MAIN(TestEquipmentCsv)
#include "tst_equipmentcsv.moc"
