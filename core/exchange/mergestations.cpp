// SPDX-License-Identifier: GPL-3.0-or-later
// Brings the stations and rosters of CSV files into a log.
#include "core/exchange/byname.h"
#include "core/exchange/faults.h"
#include "core/exchange/stationcsv.h"
#include "core/model/phrases/exchange.h"

namespace slopebook::exchange {

namespace {

class MergingStations {
public:
    MergingStations(log::Log& log, const WhoIsWho& who, const KnownThings& met)
        : m_log(log), m_who(who), m_stations(log.stations()), m_lifts(log.lifts()),
          m_tests(log.testKinds()), m_devices(log.devices()), m_athletes(log.athletes()) {
        met.each<StationId>("station",
                            [&](const auto& name, StationId id) { m_stations.also(name, id); });
        met.each<LiftId>("lift", [&](const auto& name, LiftId id) { m_lifts.also(name, id); });
        met.each<TestKindId>("test",
                             [&](const auto& name, TestKindId id) { m_tests.also(name, id); });
        met.each<DeviceId>("device",
                           [&](const auto& name, DeviceId id) { m_devices.also(name, id); });
    }

private:
    template <class Names>
    static auto known(Names& names, const std::string& name, const Where& where, const char* column,
                      Phrase expected) {
        const auto* held = names.find(name);
        if (held == nullptr)
            throw BadInput({.file = where.file, .line = where.line, .column = asIs(column)},
                           say("\"%1\"", name), say(expected));
        return held->id;
    }

public:
    void station(const StationTables::StationRow& row, std::vector<std::string>& made) {
        Station station = row.station;
        if (!row.lift.empty())
            station.lift = known(m_lifts, row.lift, row.where, "lift", "a lift of the log");
        for (const auto& [test, where] : row.tests)
            station.tests.push_back(known(m_tests, test, where, "test", "a test of the log"));
        if (!row.device.empty())
            station.conditions.device = deviceFor(row.device);
        const auto* held = m_stations.find(station.name);
        if (held == nullptr) {
            station.name = newName(station.name);
            m_stations.add(m_log.add(station), station);
            made.push_back(station.name);
            return;
        }
        station.name = held->value.name;
        if (station != held->value)
            throw BadInput(row.where, say("the station \"%1\" told otherwise", row.station.name),
                           say("that station as the log has it"));
    }

    bool roster(const StationTables::RosterRow& row) {
        Roster roster{.station = known(m_stations, row.station, row.where, "station",
                                       "a station of the log or of the files"),
                      .day = row.day};
        for (const std::string& name : row.athletes)
            roster.athletes.push_back(athleteFor(name));
        const Roster held = m_log.roster(roster.station, roster.day);
        if (held == roster)
            return false;
        if (!held.athletes.empty())
            throw BadInput(row.where, say("another roster of \"%1\"", row.station),
                           say("the roster of that day as the log has it"));
        m_log.setRoster(roster);
        return true;
    }

private:
    DeviceId deviceFor(const std::string& name) {
        if (const auto* held = m_devices.find(name))
            return held->id;
        const Device made{.name = newName(name)};
        return m_devices.add(m_log.add(made), made).id;
    }
    AthleteId athleteFor(const std::string& spelled) {
        const std::string& name = m_who.named(spelled);
        if (const auto* held = m_athletes.find(name))
            return held->id;
        const Athlete made{.name = newName(name)};
        return m_athletes.add(m_log.add(made), made).id;
    }

    log::Log& m_log;
    const WhoIsWho& m_who;
    ByName<StationId, Station> m_stations;
    ByName<LiftId, Lift> m_lifts;
    ByName<TestKindId, TestKind> m_tests;
    ByName<DeviceId, Device> m_devices;
    ByName<AthleteId, Athlete> m_athletes;
};

} // namespace

void mergeStations(log::Log& log, const StationTables& tables, const WhoIsWho& who,
                   const KnownThings& met, std::vector<std::string>& made, int& rosters) {
    if (tables.stations.empty() && tables.rosters.empty())
        return;
    MergingStations merging(log, who, met);
    FaultList faults;
    const auto placed = [&](const Where& where, const auto& work) {
        faults.collect([&] {
            try {
                work();
            } catch (const BadInput& bad) {
                if (bad.where().line > 0)
                    throw;
                throw BadInput(where, bad.found(), bad.expected());
            }
        });
    };
    for (const auto& row : tables.stations)
        placed(row.where, [&] { merging.station(row, made); });
    for (const auto& row : tables.rosters)
        placed(row.where, [&] { rosters += merging.roster(row) ? 1 : 0; });
    faults.throwIfAny();
}

} // namespace slopebook::exchange
