// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tidyexport.h"

#include "core/exchange/cells.h"
#include "core/exchange/datapackage.h"
#include "core/exchange/exportparts.h"
#include "core/exchange/identitycsv.h"
#include "core/exchange/tablelist.h"
#include "core/exchange/tidycolumns.h"
#include "core/log/durable.h"
#include "core/log/failure.h"
#include "core/log/newfolder.h"
#include "core/log/snapshot.h"
#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"
#include "resources/embedded.h"

#include <algorithm>
#include <array>
#include <map>
#include <stdexcept>

namespace slopebook::exchange {

namespace {

// Writes one log's tables into one folder.
class Exporter {
public:
    Exporter(const log::Log& log, const std::filesystem::path& folder, const Progress& progress,
             std::span<const AddedTable> added)
        : m_log(log), m_folder(folder), m_progress(partOf(progress, 0, added.empty() ? 1000 : 500)),
          m_addedProgress(partOf(progress, 500, 1000)), m_added(added), m_book(folder / "log.xlsx"),
          m_athletes(log.athletes()), m_lifts(byId(log.lifts())), m_devices(byId(log.devices())),
          m_blocks(log.blocks()) {}

    void write() {
        people();
        lifts();
        blocks();
        sessions();
        checkLoads();
        exportTestDay({.log = m_log,
                       .folder = m_folder,
                       .book = m_book,
                       .athletes = m_athletes,
                       .lifts = m_lifts,
                       .devices = m_devices});
        TableOut identities(m_folder, m_book, tables::identities);
        exportIdentities(m_log, identities);
        identities.close();
        for (const AddedTable& added : m_added) {
            TableOut table(m_folder, m_book, added.table);
            added.rows(
                m_log, [&](std::span<const Cell> cells) { table.row(cells); }, m_addedProgress);
            table.close();
        }
        describe();
        m_book.close();
    }

private:
    // What all that is, for people and for programs.
    void describe() {
        std::vector<TableSpec> all(tables::all().begin(), tables::all().end());
        for (const AddedTable& added : m_added)
            all.push_back(added.table);
        all.push_back(tables::dictionary);
        TableOut table(m_folder, m_book, tables::dictionary);
        for (const TableSpec& each : all)
            for (const ColumnSpec& column : each.columns)
                table.row(dictionaryRow(each, column));
        table.close();
        put("datapackage.json", dataPackage(all));
        if (m_added.empty())
            return; // the scripts read what is worked out
        for (const resources::File& script : resources::exportScripts())
            put(std::string(script.name), std::string(script.text));
    }

    void put(const std::string& name, const std::string& text) const {
        log::writeWhole({m_folder / name, log::Existing::Refuse}, text);
    }

    void people() {
        TableOut athletes(m_folder, m_book, tables::athletes);
        for (const auto& stored : m_athletes)
            athletes.row(std::array<Cell, 2>{stored.value.name, stored.value.note});
        athletes.close();
        TableOut devices(m_folder, m_book, tables::devices);
        for (const auto& [id, device] : m_devices)
            devices.row(std::array<Cell, 2>{device.name, device.note});
        devices.close();
    }

    void lifts() {
        TableOut table(m_folder, m_book, tables::lifts);
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
        TableOut table(m_folder, m_book, tables::blocks);
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
        TableOut heads(m_folder, m_book, tables::sessions);
        TableOut reps(m_folder, m_book, tables::reps);
        TableOut points(m_folder, m_book, tables::points);
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
        points.close();
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

    void point(TableOut& table, const std::string& athlete, const SessionHead& head,
               const log::PlacedSet& placed) {
        const Lift& lift = m_lifts.at(placed.lift);
        const auto velocity = pointVelocity(placed.set, lift.rule);
        if (!velocity)
            return;
        Cell onLine = placed.set.load;
        if (lift.movesBody)
            onLine =
                head.bodyMass ? Cell(Mass{placed.set.load.grams + head.bodyMass->grams}) : Cell();
        table.row(std::array<Cell, PointCount>{head.date, athlete, lift.name, head.ordinal,
                                               placed.ordinal, placed.set.load, *velocity, onLine});
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
        TableOut table(m_folder, m_book, tables::checkLoads);
        for (const auto& athlete : m_athletes)
            for (const auto& [id, lift] : m_lifts)
                for (const Mass load : m_log.checkLoads(athlete.id, id))
                    table.row(std::array<Cell, CheckCount>{athlete.value.name, lift.name, load});
        table.close();
    }

    const log::Log& m_log;
    const std::filesystem::path& m_folder;
    Progress m_progress, m_addedProgress;
    std::span<const AddedTable> m_added;
    Workbook m_book;
    std::vector<Stored<AthleteId, Athlete>> m_athletes;
    std::map<LiftId, Lift> m_lifts;
    std::map<DeviceId, Device> m_devices;
    std::vector<Stored<BlockId, Block>> m_blocks;
};

} // namespace

std::vector<std::filesystem::path> exportTables(const log::Log& log,
                                                const std::filesystem::path& folder,
                                                const Progress& progress, log::Existing existing,
                                                std::span<const AddedTable> added) {
    log::NewFolder underWay(folder, existing);
    std::vector<std::filesystem::path> files;
    try {
        // It takes long: other programs that write are not kept waiting by it.
        const log::Log asItIs = log::privateCopy(log, underWay.path(), partOf(progress, 0, 50));
        Exporter(asItIs, underWay.path(), partOf(progress, 50, 1000), added).write();
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
