// SPDX-License-Identifier: GPL-3.0-or-later
// Makes an institute's log for the benches: any number of sessions, spread over athletes, lifts,
// blocks, devices and years as a squad's would be, written in one transaction, checksums and all.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

namespace slopebook::bench {

struct Institute {
    int sessions = 100'000;
    int sessionsAnAthlete = 20; ///< one every six weeks or so
    int setsASession = 6;
    int repsASet = 3;
    /// Only that athlete's sessions, the same as in the whole log (from 0).
    std::optional<int> only{};
    /// Only those who do that lift (from 0): the squad that a page of the lift shows, alone.
    std::optional<int> onlyLift{};

    int athletes() const;
    bool keeps(int athlete) const;
    /// "Athlete 00017": 17 counted from 0.
    static std::string nameOf(int athlete);
};

/// The file must not exist. The same institute is the same log, whatever the machine. Throws
/// LogError.
void writeInstitute(const std::filesystem::path& file, const Institute& institute);

} // namespace slopebook::bench
