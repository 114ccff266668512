// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tidyexport.h"

#include "core/exchange/batterycolumns.h"
#include "core/exchange/cells.h"
#include "core/exchange/equipmentcsv.h"
#include "core/exchange/tableout.h"
#include "core/exchange/tidycolumns.h"
#include "core/log/failure.h"
#include "core/log/newfolder.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <array>
#include <map>
#include <stdexcept>

namespace slopebook::exchange {

namespace {

constexpr std::array<std::string_view, 7> pointColumns{
    "date", "athlete", "lift", "session", "set", "load_kg", "point_velocity"};

template <class T>
Cell orBlank(const std::optional<T>& value) {
    return value ? Cell(*value) : Cell();
}

template <class Id, class Value>
std::map<Id, Value> byId(const std::vector<Stored<Id, Value>>& list) {
    std::map<Id, Value> map;
    for (const auto& stored : list)
        map.emplace(stored.id, stored.value);
    return map;
}

// Writes one log's tables into one folder.
class Exporter {
public:
    Exporter(const log::Log& log, const std::filesystem::path& folder, const Progress& progress)
        : m_log(log), m_folder(folder), m_progress(progress), m_book(folder / "log.xlsx"),
          m_athletes(log.athletes()), m_lifts(byId(log.lifts())), m_devices(byId(log.devices())),
          m_blocks(log.blocks()) {}

    void write() {
        people();
        lifts();
        blocks();
        sessions();
        checkLoads();
        tests();
        attempts();
        equipment();
        stations();
        rosters();
        m_book.close();
    }

private:
    void people() {
        TableOut athletes(m_folder, m_book, "athletes", athleteColumns);
        for (const auto& stored : m_athletes)
            athletes.row(std::array<Cell, 2>{stored.value.name, stored.value.note});
        athletes.close();
        TableOut devices(m_folder, m_book, "devices", deviceColumns);
        for (const auto& [id, device] : m_devices)
            devices.row(std::array<Cell, 2>{device.name, device.note});
        devices.close();
    }

    void lifts() {
        TableOut table(m_folder, m_book, "lifts", liftColumns);
        for (const auto& [id, lift] : m_lifts) {
            std::array<Cell, LiftCount> row;
            row[LiftName] = lift.name;
            row[LiftPointRule] = std::string(word(lift.rule));
            row[LiftKind] = std::string(word(lift.kind));
            row[LiftBallistic] = lift.ballistic ? 1 : 0;
            row[LiftMovesBody] = lift.movesBody ? 1 : 0;
            if (lift.mvt) {
                row[LiftMvt] = lift.mvt->value;
                row[LiftMvtSd] = orBlank(lift.mvt->sd);
                row[LiftMvtOrigin] =
                    std::string(lift.mvt->origin == Mvt::Origin::Published ? "published" : "coach");
                row[LiftMvtSource] = lift.mvt->source;
            }
            row[LiftSmallestVelocity] = orBlank(lift.smallestVelocity);
            row[LiftSmallestOneRm] = orBlank(lift.smallestOneRm);
            row[LiftNote] = lift.note;
            table.row(row);
        }
        table.close();
    }

    void blocks() {
        TableOut table(m_folder, m_book, "blocks", blockColumns);
        for (const auto& [id, block] : m_blocks) {
            std::array<Cell, BlockCount> row;
            row[BlockName] = block.name;
            row[BlockFirst] = block.first;
            row[BlockLast] = block.last;
            row[BlockCeiling] = orBlank(block.ceiling);
            row[BlockTrained] = block.trained;
            if (block.aWeek) {
                row[BlockFewest] = block.aWeek->fewest;
                row[BlockMost] = block.aWeek->most;
            }
            row[BlockNote] = block.note;
            table.row(row);
        }
        table.close();
    }

    void sessions() {
        TableOut heads(m_folder, m_book, "sessions", sessionColumns);
        TableOut reps(m_folder, m_book, "reps", tidyColumns);
        SheetOut points(m_book, "points", pointColumns);
        std::int64_t done = 0;
        for (const auto& athlete : m_athletes) {
            const auto ofAthlete = m_log.sessions(athlete.id);
            std::int64_t ofThis = 0;
            const auto byKey = byId(ofAthlete);
            for (const auto& stored : ofAthlete) {
                tell(m_progress,
                     1000 * done + 1000 * ofThis++ / static_cast<std::int64_t>(ofAthlete.size()),
                     1000 * static_cast<std::int64_t>(m_athletes.size()));
                heads.row(headRow(athlete.value.name, stored.value, byKey));
                const log::SessionRecord record = m_log.session(stored.id);
                dayRows(reps, athlete.value.name, record, byKey);
                for (const log::PlacedSet& placed : record.sets) {
                    setRows(reps, athlete.value.name, record, byKey, placed);
                    point(points, athlete.value.name, stored.value, placed);
                }
            }
            ++done;
        }
        heads.close();
        reps.close();
    }

    using Heads = std::map<SessionId, SessionHead>;

    std::array<Cell, SessionCount> headRow(const std::string& athlete, const SessionHead& head,
                                           const Heads& heads) const {
        std::array<Cell, SessionCount> row;
        row[SessionDate] = head.date;
        row[SessionAthlete] = athlete;
        row[SessionNumber] = head.ordinal;
        row[SessionBodyMass] = orBlank(head.bodyMass);
        if (head.repeatOf) {
            const SessionHead& repeated = heads.at(*head.repeatOf);
            row[SessionRepeatOf] = dateKey(repeated.date, repeated.ordinal);
        }
        row[SessionNote] = head.note;
        return row;
    }

    using TidyRow = std::array<Cell, TidyCount>;

    // What every row of a lift of a session says.
    TidyRow liftRow(const std::string& athlete, const log::SessionRecord& record,
                    const Heads& heads, LiftId of) const {
        const SessionHead& head = record.head.value;
        const auto session = headRow(athlete, head, heads);
        const Lift& lift = m_lifts.at(of);
        TidyRow row;
        row[TidyDate] = head.date;
        row[TidyAthlete] = athlete;
        row[TidyLift] = lift.name;
        row[TidySession] = head.ordinal;
        row[TidyKind] = std::string(word(lift.kind));
        row[TidyBlock] = blockName(head.date);
        row[TidyBodyMass] = session[SessionBodyMass];
        row[TidySessionNote] = head.note;
        row[TidyRepeatOf] = session[SessionRepeatOf];
        const auto found = std::ranges::find(record.conditions, of, &LiftConditions::lift);
        if (found != record.conditions.end()) {
            const Conditions& under = found->conditions;
            row[TidyDevice] = deviceName(under);
            row[TidySite] = under.place;
            row[TidySurface] = under.surface;
            row[TidyFootwear] = under.footwear;
            row[TidyTechnique] = under.technique;
            row[TidyNotComparable] = under.notComparable;
        }
        return row;
    }

    // Lifts with conditions and no set yet, and what was not possible of lifts with no side of it.
    void dayRows(TableOut& table, const std::string& athlete, const log::SessionRecord& record,
                 const Heads& heads) const {
        for (const LiftConditions& one : record.conditions)
            if (std::ranges::find(record.sets, one.lift, &log::PlacedSet::lift) ==
                record.sets.end())
                table.row(liftRow(athlete, record, heads, one.lift));
        for (const Gap& gap : record.battery.gaps) {
            if (!gap.lift || gap.side != BodySide::Both)
                continue;
            auto row = liftRow(athlete, record, heads, *gap.lift);
            row[TidyLoad] = orBlank(gap.load);
            row[TidyOutcome] = std::string("not possible");
            row[TidyReason] = gap.reason;
            table.row(row);
        }
    }

    // One row a rep; a set without reps is a row with no rep and no velocity.
    void setRows(TableOut& table, const std::string& athlete, const log::SessionRecord& record,
                 const Heads& heads, const log::PlacedSet& placed) {
        auto row = liftRow(athlete, record, heads, placed.lift);
        row[TidySet] = placed.ordinal;
        row[TidyLoad] = placed.set.load;
        if (placed.set.trueMaximum)
            row[TidyMaximum] = 1;
        row[TidySetExcluded] = placed.set.excluded;
        row[TidyNote] = placed.set.note;
        if (placed.set.outcome != Outcome::Lifted)
            row[TidyOutcome] = std::string(word(placed.set.outcome));
        row[TidyReason] = placed.set.reason;
        if (placed.set.effort)
            row[TidyRpe] = placed.set.effort->value();
        if (placed.set.reps.empty())
            table.row(row);
        for (std::size_t i = 0; i < placed.set.reps.size(); ++i) {
            row[TidyRep] = static_cast<int>(i) + 1;
            row[TidyVelocity] = placed.set.reps[i].velocity;
            row[TidyExcluded] = placed.set.reps[i].excluded;
            table.row(row);
        }
    }

    void point(SheetOut& sheet, const std::string& athlete, const SessionHead& head,
               const log::PlacedSet& placed) {
        const Lift& lift = m_lifts.at(placed.lift);
        if (const auto velocity = pointVelocity(placed.set, lift.rule))
            sheet.row(std::array<Cell, 7>{head.date, athlete, lift.name, head.ordinal,
                                          placed.ordinal, placed.set.load, *velocity});
    }

    Cell deviceName(const Conditions& conditions) const {
        return conditions.device ? Cell(m_devices.at(*conditions.device).name) : Cell();
    }

    Cell blockName(Date date) const {
        Cell name;
        for (const auto& [id, block] : m_blocks) // by date: the latest begun stays
            if (block.holds(date))
                name = block.name;
        return name;
    }

    void checkLoads() {
        TableOut table(m_folder, m_book, "check_loads", checkLoadColumns);
        for (const auto& athlete : m_athletes)
            for (const auto& [id, lift] : m_lifts)
                for (const Mass load : m_log.checkLoads(athlete.id, id))
                    table.row(std::array<Cell, CheckCount>{athlete.value.name, lift.name, load});
        table.close();
    }

    void tests() {
        TableOut table(m_folder, m_book, "tests", testColumns);
        for (const auto& stored : m_log.testKinds()) {
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
        const auto kinds = byId(m_log.testKinds());
        TableOut table(m_folder, m_book, "attempts", attemptColumns);
        for (const auto& athlete : m_athletes)
            for (const BatterySession& session : m_log.batteries(athlete.id)) {
                std::array<Cell, AttemptCount> head;
                head[AttemptDate] = session.date;
                head[AttemptAthlete] = athlete.value.name;
                head[AttemptSession] = session.ordinal;
                batteryRows(table, head, session.battery, kinds);
            }
        table.close();
    }

    void stations() {
        const auto kinds = byId(m_log.testKinds());
        TableOut table(m_folder, m_book, "stations", stationColumns);
        for (const auto& stored : m_log.stations()) {
            const Station& station = stored.value;
            std::array<Cell, StationCount> row;
            row[StationName] = station.name;
            if (station.lift)
                row[StationLift] = m_lifts.at(*station.lift).name;
            std::string ladder;
            for (const Mass load : station.ladder)
                ladder += (ladder.empty() ? "" : " ") + writeKilograms(load);
            row[StationLadder] = ladder;
            if (station.sets > 0)
                row[StationSets] = station.sets;
            row[StationRotates] = station.rotates ? 1 : 0;
            row[StationDevice] = deviceName(station.conditions);
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
        const auto stations = byId(m_log.stations());
        const auto athletes = byId(m_athletes);
        TableOut table(m_folder, m_book, "rosters", rosterColumns);
        for (const Roster& roster : m_log.rosters()) {
            int turn = 0;
            for (const AthleteId athlete : roster.athletes)
                table.row(std::array<Cell, RosterCount>{stations.at(roster.station).name,
                                                        roster.day, ++turn,
                                                        athletes.at(athlete).name});
        }
        table.close();
    }

    // A mass in the unit in which it was typed has at most 14 digits, so a double keeps it exactly.
    void equipment() {
        TableOut table(m_folder, m_book, "equipment", equipmentColumns);
        for (const auto& stored : m_log.equipment()) {
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
            ofTest[AttemptDevice] = deviceName(test.conditions);
            ofTest[AttemptFootwear] = test.conditions.footwear;
            ofTest[AttemptTechnique] = test.conditions.technique;
            ofTest[AttemptPlace] = test.conditions.place;
            ofTest[AttemptNotComparable] = test.conditions.notComparable;
            if (test.attempts.empty())
                table.row(ofTest);
            for (const Attempt& attempt : test.attempts) {
                auto row = ofTest;
                row[AttemptValue] = attempt.value;
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
                row[AttemptLift] = m_lifts.at(*gap.lift).name;
            row[AttemptSide] = side(gap.side);
            row[AttemptLoad] = orBlank(gap.load);
            row[AttemptNotPossible] = gap.reason;
            table.row(row);
        }
    }

    const log::Log& m_log;
    const std::filesystem::path& m_folder;
    const Progress& m_progress;
    Workbook m_book;
    std::vector<Stored<AthleteId, Athlete>> m_athletes;
    std::map<LiftId, Lift> m_lifts;
    std::map<DeviceId, Device> m_devices;
    std::vector<Stored<BlockId, Block>> m_blocks;
};

} // namespace

std::vector<std::filesystem::path> exportTables(const log::Log& log,
                                                const std::filesystem::path& folder,
                                                const Progress& progress, log::Existing existing) {
    log::NewFolder underWay(folder, existing);
    std::vector<std::filesystem::path> files;
    try {
        // It takes long: other programs that write are not kept waiting by it.
        const log::Log asItIs = log::privateCopy(log, underWay.path(), partOf(progress, 0, 50));
        Exporter(asItIs, underWay.path(), partOf(progress, 50, 1000)).write();
    } catch (const std::out_of_range&) {
        throw log::damagedLog(log.file(), say("something in it refers to what is not there"));
    }
    for (const auto& entry : std::filesystem::directory_iterator(underWay.path()))
        files.push_back((folder / "").parent_path() / entry.path().filename());
    underWay.giveName();
    std::ranges::sort(files);
    return files;
}

} // namespace slopebook::exchange
