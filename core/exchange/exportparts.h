// SPDX-License-Identifier: GPL-3.0-or-later
// What the parts of an export share: the log, where its tables go, and its names.
#pragma once

#include "core/exchange/tableout.h"
#include "core/log/log.h"

#include <map>
#include <optional>
#include <vector>

namespace slopebook::exchange {

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

struct ExportParts {
    const log::Log& log;
    const std::filesystem::path& folder;
    Workbook& book;
    const std::vector<Stored<AthleteId, Athlete>>& athletes;
    const std::map<LiftId, Lift>& lifts;
    const std::map<DeviceId, Device>& devices;

    Cell deviceName(const Conditions& conditions) const {
        return conditions.device ? Cell(devices.at(*conditions.device).name) : Cell();
    }
};

/// The tables of tests, attempts, equipment, stations and rosters. Throws LogError, and
/// std::out_of_range where something refers to what is not there.
void exportTestDay(const ExportParts& parts);

} // namespace slopebook::exchange
