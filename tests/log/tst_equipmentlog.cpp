// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/layout.h"
#include "tests/log/builders.h"
#include "tests/log/olderlog.h"

#include <QTest>

#include <sqlite3.h>

using namespace slopebook;
using namespace slopebook::test;

namespace {

Equipment gym() {
    return {.name = "gym",
            .bars = {{.name = "long bar", .mass = *parseExactMass("20", MassUnit::Kilogram)},
                     {.name = "old bar",
                      .mass = *parseExactMass("45", MassUnit::Pound),
                      .unit = MassUnit::Pound}},
            .plates = parsePlates("20x2,2.5lbx1,0.25x3", MassUnit::Kilogram),
            .fixed = {{.name = "vest",
                       .mass = *parseExactMass("10", MassUnit::Kilogram),
                       .use = FixedMass::Use::Added},
                      {.name = "dumbbell", .mass = *parseExactMass("26", MassUnit::Kilogram)}},
            .ceiling = *parseExactMass("60", MassUnit::Kilogram),
            .note = "café"};
}

void execute(const std::filesystem::path& file, const char* sql) {
    sqlite3* db = nullptr;
    QCOMPARE(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    QCOMPARE(sqlite3_exec(db, sql, nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(db);
}

} // namespace

class TestEquipmentLog : public QObject {
    Q_OBJECT
private slots:
    void everyPieceIsThereAfterReopening();
    void aSetIsChangedAndRemoved();
    void aRemovedSetComesBackUnderItsKey();
    void namesAreTakenOnce();
    void whatCannotStandIsRefused();
    void whatIsNotThereCannotBeChanged();
    void damageIsNoticed();
    void theFirstLayoutIsLedHere();
};

void TestEquipmentLog::everyPieceIsThereAfterReopening() {
    const Folder folder;
    Equipment travel{.name = "Travel"};
    travel.fixed = {{.name = "band", .mass = *parseExactMass("7.25", MassUnit::Kilogram)}};
    {
        auto log = log::Log::create(folder.path());
        log.add(travel);
        log.add(gym());
    }
    const auto log = log::Log::open(folder.path(), log::Access::ReadOnly);
    const auto all = log.equipment();
    QCOMPARE(all.size(), std::size_t{2});
    QVERIFY(all[0].value == gym()); // letter case aside: gym before Travel
    QVERIFY(all[1].value == travel);
    QVERIFY(log.check().empty());
}

void TestEquipmentLog::aSetIsChangedAndRemoved() {
    const Folder folder;
    auto log = log::Log::create(folder.path());
    const EquipmentId id = log.add(gym());
    Equipment changed = gym();
    changed.name = "boathouse";
    changed.bars.pop_back();
    changed.plates = parsePlates("5x1", MassUnit::Kilogram);
    changed.fixed.clear();
    changed.ceiling.reset();
    log.change(id, changed);
    QVERIFY(log.equipment().at(0).value == changed);
    log.remove(id);
    QVERIFY(log.equipment().empty());
    QVERIFY(log.check().empty());
}

void TestEquipmentLog::aRemovedSetComesBackUnderItsKey() {
    const Folder folder;
    auto log = log::Log::create(folder.path());
    const EquipmentId id = log.add(gym());
    log.remove(id);
    QCOMPARE(log.add(gym(), id), id);
    QCOMPARE(errorOf([&] { log.add(gym(), id); }), std::optional(LogError::Kind::Conflict));
    Equipment other = gym();
    other.name = "other";
    QVERIFY(raw(log.add(other)) > raw(id));
}

void TestEquipmentLog::namesAreTakenOnce() {
    const Folder folder;
    auto log = log::Log::create(folder.path());
    log.add(gym());
    QVERIFY(refuses([&] { log.add(gym()); }));
    Equipment other = gym();
    other.name = "other";
    const EquipmentId id = log.add(other);
    QVERIFY(refuses([&] { log.change(id, gym()); }));
    QVERIFY(log.equipment().at(1).value == other);
    log.change(id, other); // its own name is its own
}

void TestEquipmentLog::whatCannotStandIsRefused() {
    const Folder folder;
    auto log = log::Log::create(folder.path());
    Equipment bad = gym();
    bad.plates[0].pairs = 0;
    QVERIFY(refuses([&] { log.add(bad); }));
    bad = gym();
    bad.bars[0].name = std::string("a\0b", 3);
    QVERIFY(refuses([&] { log.add(bad); }));
    bad = gym();
    bad.name = " ";
    QVERIFY(refuses([&] { log.add(bad); }));
    QVERIFY(log.equipment().empty());
}

void TestEquipmentLog::whatIsNotThereCannotBeChanged() {
    const Folder folder;
    auto log = log::Log::create(folder.path());
    QCOMPARE(errorOf([&] { log.change(EquipmentId{7}, gym()); }),
             std::optional(LogError::Kind::Conflict));
    QCOMPARE(errorOf([&] { log.remove(EquipmentId{7}); }), std::optional(LogError::Kind::Conflict));
}

void TestEquipmentLog::damageIsNoticed() {
    const Folder folder;
    {
        auto log = log::Log::create(folder.path());
        log.add(gym());
    }
    execute(folder.path(), "UPDATE equipment_pieces SET pairs = 3 WHERE ordinal = 3");
    const auto log = log::Log::open(folder.path());
    QCOMPARE(errorOf([&] { log.equipment(); }), std::optional(LogError::Kind::Damaged));
    const auto findings = log.check();
    QCOMPARE(findings.size(), std::size_t{2}); // its entry, and the hash of its content
    QVERIFY(english(findings[0]).find("gym") != std::string::npos);
}

void TestEquipmentLog::theFirstLayoutIsLedHere() {
    const Folder folder;
    {
        auto log = log::Log::create(folder.path("new.slopebook"));
        log.add(Athlete{.name = "Ada"});
        log.add(Athlete{.name = "Bela"});
    }
    writeAsOlder(folder.path("new.slopebook"), folder.path(), 1);
    auto log = log::Log::open(folder.path());
    QVERIFY(log.check().empty());
    QVERIFY(log.equipment().empty());
    QCOMPARE(log.athletes().size(), std::size_t{2});
    log.add(gym());
    QCOMPARE(log.equipment().size(), std::size_t{1});
}

QTEST_APPLESS_MAIN(TestEquipmentLog)
#include "tst_equipmentlog.moc"
