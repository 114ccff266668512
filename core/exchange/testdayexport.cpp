// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/attemptunit.h"
#include "core/exchange/batterycolumns.h"
#include "core/exchange/cells.h"
#include "core/exchange/equipmentcsv.h"
#include "core/exchange/exportparts.h"
#include "core/exchange/tablelist.h"
#include "core/exchange/tidycolumns.h"

#include <array>

namespace slopebook::exchange {

namespace {

class TestDay {
public:
    explicit TestDay(const ExportParts& parts) : m_of(parts) {}

    void tests() {
        TableOut table(m_of.folder, m_of.book, tables::tests);
        for (const auto& stored : m_of.log.testKinds()) {
            const TestKind& kind = stored.value;
            std::array<Cell, TestCount> row;
            row[TestName] = kind.name;
            row[TestUnit] = kind.unit;
            row[TestBetter] = std::string(kind.higherIsBetter ? "higher" : "lower");
            row[TestSides] = std::string(kind.bothToo    ? bothTooWord
                                         : kind.twoSided ? "two"
                                                         : "one");
            row[TestRule] = std::string(word(kind.rule));
            if (kind.bestOf > 0)
                row[TestBestOf] = kind.bestOf;
            row[TestPlanned] = kind.attempts;
            row[TestFormulaWord] = std::string(word(kind.formula));
            row[TestDecimals] = kind.decimals;
            if (kind.noise) {
                row[TestError] = kind.noise->value;
                row[TestErrorIn] = std::string(kind.noise->percent ? "percent" : "unit");
                row[TestErrorSource] = kind.noise->source;
            }
            row[TestSmallest] = orBlank(kind.smallest);
            row[TestSmallestSource] = kind.smallestSource;
            row[TestNote] = kind.note;
            table.row(row);
        }
        table.close();
    }

    void attempts() {
        const auto kinds = byId(m_of.log.testKinds());
        TableOut table(m_of.folder, m_of.book, tables::attempts);
        for (const auto& athlete : m_of.athletes)
            for (const BatterySession& session : m_of.log.batteries(athlete.id)) {
                std::array<Cell, AttemptCount> head;
                head[AttemptDate] = session.date;
                head[AttemptAthlete] = athlete.value.name;
                head[AttemptSession] = session.ordinal;
                batteryRows(table, head, session.battery, kinds);
            }
        table.close();
    }

    void stations() {
        const auto kinds = byId(m_of.log.testKinds());
        TableOut table(m_of.folder, m_of.book, tables::stations);
        for (const auto& stored : m_of.log.stations()) {
            const Station& station = stored.value;
            std::array<Cell, StationCount> row;
            row[StationName] = station.name;
            if (station.lift)
                row[StationLift] = m_of.lifts.at(*station.lift).name;
            std::string ladder;
            for (const Mass load : station.ladder)
                ladder += (ladder.empty() ? "" : " ") + writeKilograms(load);
            row[StationLadder] = ladder;
            if (station.sets > 0)
                row[StationSets] = station.sets;
            row[StationRotates] = station.rotates ? 1 : 0;
            row[StationDevice] = m_of.deviceName(station.conditions);
            row[StationSite] = station.conditions.place;
            row[StationSurface] = station.conditions.surface;
            row[StationFootwear] = station.conditions.footwear;
            row[StationTechnique] = station.conditions.technique;
            row[StationNotComparable] = station.conditions.notComparable;
            row[StationNote] = station.note;
            if (station.tests.empty())
                table.row(row);
            for (const TestKindId test : station.tests) {
                row[StationTest] = kinds.at(test).name;
                table.row(row);
            }
        }
        table.close();
    }

    void rosters() {
        const auto athletes = byId(m_of.athletes);
        TableOut table(m_of.folder, m_of.book, tables::rosters);
        for (const auto& station : m_of.log.stations()) // by name, whatever the keys are
            for (const Roster& roster : m_of.log.rosters(station.id)) {
                int turn = 0;
                for (const AthleteId athlete : roster.athletes)
                    table.row(std::array<Cell, RosterCount>{station.value.name, roster.day, ++turn,
                                                            athletes.at(athlete).name});
            }
        table.close();
    }

    // A mass in the unit in which it was typed has at most 14 digits, so a double keeps it exactly.
    void equipment() {
        TableOut table(m_of.folder, m_of.book, tables::equipment);
        for (const auto& stored : m_of.log.equipment()) {
            const Equipment& set = stored.value;
            const auto piece = [&](const char* kind, ExactMass mass, MassUnit unit,
                                   const Cell& pairs, const std::string& name) {
                const bool whole = mass.units % unitsPerMilliPound == 0;
                const MassUnit exact = whole ? unit : MassUnit::Kilogram;
                table.row(std::array<Cell, EquipmentColumnCount>{
                    set.name, std::string(kind), in(exact, mass), std::string(word(exact)), pairs,
                    name, set.note});
            };
            for (const Bar& bar : set.bars)
                piece("bar", bar.mass, bar.unit, {}, bar.name);
            for (const Plate& plate : set.plates)
                piece("plate", plate.mass, plate.unit, plate.pairs, {});
            for (const FixedMass& fixed : set.fixed)
                piece(word(fixed.use).data(), fixed.mass, fixed.unit, {}, fixed.name);
            if (set.ceiling)
                piece("ceiling", *set.ceiling, MassUnit::Kilogram, {}, {});
        }
        table.close();
    }

    // One row an attempt, one a gap.
    void batteryRows(TableOut& table, const std::array<Cell, AttemptCount>& head,
                     const Battery& battery, const std::map<TestKindId, TestKind>& kinds) {
        const auto side = [](BodySide of) {
            return of == BodySide::Both ? Cell() : Cell(std::string(word(of)));
        };
        for (const TestAttempts& test : battery.tests) {
            auto ofTest = head;
            ofTest[AttemptTest] = kinds.at(test.kind).name;
            ofTest[AttemptSurface] = test.conditions.surface;
            ofTest[AttemptDevice] = m_of.deviceName(test.conditions);
            ofTest[AttemptFootwear] = test.conditions.footwear;
            ofTest[AttemptTechnique] = test.conditions.technique;
            ofTest[AttemptPlace] = test.conditions.place;
            ofTest[AttemptNotComparable] = test.conditions.notComparable;
            if (test.attempts.empty())
                table.row(ofTest);
            for (const Attempt& attempt : test.attempts) {
                auto row = ofTest;
                row[AttemptValue] = attempt.value;
                row[AttemptUnit] = unitAsRead(kinds.at(test.kind));
                row[AttemptSide] = side(attempt.side);
                row[AttemptContact] = orBlank(attempt.contact);
                row[AttemptExcluded] = attempt.excluded;
                row[AttemptNote] = attempt.note;
                table.row(row);
            }
        }
        for (const Gap& gap : battery.gaps) {
            auto row = head;
            if (gap.kind)
                row[AttemptTest] = kinds.at(*gap.kind).name;
            if (gap.lift)
                row[AttemptLift] = m_of.lifts.at(*gap.lift).name;
            row[AttemptSide] = side(gap.side);
            row[AttemptLoad] = orBlank(gap.load);
            row[AttemptNotPossible] = gap.reason;
            table.row(row);
        }
    }

private:
    const ExportParts& m_of;
};

} // namespace

void exportTestDay(const ExportParts& parts) {
    TestDay day(parts);
    day.tests();
    day.attempts();
    day.equipment();
    day.stations();
    day.rosters();
}

} // namespace slopebook::exchange
