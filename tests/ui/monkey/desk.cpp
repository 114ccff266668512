// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/log/builders.h"
#include "tests/ui/monkey/monkey.h"

namespace slopebook::monkey {

using test::day;
using test::ladderSet;

void fillDesk(const std::filesystem::path& file) {
    log::Log log = log::Log::create(file);
    log.together([&] {
        const LiftId pull = log.add(Lift{
            .name = "Bench pull",
            .mvt = Mvt{.value = 0.51, .sd = 0.04, .origin = Mvt::Origin::Coach, .source = {}}});
        const LiftId squat = log.add(Lift{.name = "Squat"});
        // Each begins with another letter, which is how one is chosen by a key.
        std::vector<DeviceId> devices;
        for (const char* name : {"Birch encoder", "Cedar belt", "Oak camera"})
            devices.push_back(log.add(Device{.name = name}));
        for (const auto& [name, sides] :
             {std::pair("Single hop for distance", true), {"Seated medicine-ball throw", false}}) {
            TestKind kind;
            kind.name = name;
            kind.unit = "m";
            kind.twoSided = sides;
            log.add(kind);
        }
        int next = 0;
        for (const char* name : {"Lane 1", "Lane 2", "Lane 3"}) {
            const AthleteId athlete = log.add(Athlete{.name = name});
            for (const Date when : {day(2026, 1, 12), day(2026, 2, 2), day(2026, 3, 9)}) {
                const SessionId session = log.add(
                    SessionHead{.athlete = athlete, .date = when, .bodyMass = Mass{74'500}});
                const DeviceId device = devices[static_cast<std::size_t>(next++) % devices.size()];
                for (const LiftId lift : {pull, squat})
                    log.setConditions(session, lift, {.device = device, .place = "boathouse"});
                for (const LiftId lift : {pull, squat})
                    for (const double kg : {40.0, 55.0, 70.0})
                        log.add(session, lift,
                                ladderSet(kg, {1.5 - 0.012 * kg, 1.48 - 0.012 * kg}));
            }
        }
    });
}

} // namespace slopebook::monkey
