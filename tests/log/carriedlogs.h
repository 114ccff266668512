// SPDX-License-Identifier: GPL-3.0-or-later
// Logs by dice, and what they carry to others.
#pragma once

#include "core/log/carried.h"
#include "tests/exchange/dicelog.h"
#include "tests/log/builders.h"

#include <filesystem>
#include <map>
#include <stdexcept>

namespace slopebook::test {

using Held = std::map<log::Sixteen, log::Carried>;

inline Held heldBy(const log::Log& from) {
    Held all;
    log::visitCarried(from, [&](const log::Carried& one) {
        if (!all.emplace(one.uuid, one).second)
            throw std::runtime_error("two things of one name");
    });
    return all;
}

/// A log of everything, made by dice.
inline log::Log diceLog(const std::filesystem::path& file, unsigned seed) {
    log::Log log = log::Log::create(file);
    slopebook::tests::Maker(seed).fill(log);
    const TestKindId test = log.testKinds().front().id;
    const auto athletes = log.athletes();
    for (const auto& station : log.stations()) {
        Roster roster{.station = station.id, .day = day(2026, 3, 14)};
        for (const auto& athlete : athletes)
            roster.athletes.push_back(athlete.id);
        log.setRoster(roster);
    }
    log.add(Equipment{
        .name = "hall",
        .bars = {{.name = "long", .mass = ExactMass{2'000'000'000}},
                 {.mass = ExactMass{1'000'000'000}, .unit = MassUnit::Pound}},
        .plates = {{.mass = ExactMass{500'000'000}, .pairs = 2}},
        .fixed = {{.name = "vest", .mass = ExactMass{100'000'000}, .use = FixedMass::Use::Added}},
        .ceiling = ExactMass{9'000'000'000}});
    for (const auto& athlete : athletes)
        for (const auto& session : log.sessions(athlete.id))
            log.setConditions(session.id, test, {.surface = "grass", .technique = "arms free"});
    return log;
}

/// Keys of this log by UUID.
inline log::KeyOf keysOf(const Held& held) {
    return [&held](const char* kind, const log::Sixteen& uuid) -> std::optional<std::int64_t> {
        const auto found = held.find(uuid);
        if (found == held.end() || found->second.kind != kind)
            return std::nullopt;
        return found->second.place.one;
    };
}

inline std::string saidAgain(const log::Log& in, const log::Thing& thing) {
    return log::contentOf(log::uuidsIn(log::connectionOf(in)), thing).bytes();
}

} // namespace slopebook::test
