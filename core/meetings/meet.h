// SPDX-License-Identifier: GPL-3.0-or-later
// One meeting of a log with its store: takes what is new there, gives what is new here
// (../../DEVELOPERS.md, "Many desks").
#pragma once

#include "core/desks/merge.h"
#include "core/log/log.h"
#include "core/meetings/departing.h"
#include "core/meetings/patience.h"
#include "core/model/progress.h"
#include "core/store/connection.h"

#include <cstdint>
#include <string>
#include <vector>

namespace slopebook::meetings {

struct MeetingReport {
    std::int64_t came = 0;             ///< things that the store had for the log
    std::int64_t went = 0;             ///< that were new to the store
    desks::MergeReport taken{};        ///< what became of what came
    std::vector<Words> leftOut{};      ///< what may not stand in a log, which the store holds
    std::vector<Words> notTaken{};     ///< what the store refuses, and why: it waits
    std::vector<Departing> departed{}; ///< to squads that are not here
    std::vector<std::string> squadsCame{}, squadsWent{}; ///< opened to the login, or closed
    std::int64_t waiting = 0;                            ///< what has not been sent; with held
    std::int64_t held = 0; ///< of it, what is not this login's to write
    bool wentBack = false; ///< the store had gone back to a backup, and was told again
};

/// Meets. now: in UTC, as 2026-03-14T09:30:00Z. What was taken and given stays where it ends early;
/// the next meeting goes on from there. Throws StoreError; LogError; BadInput for what the log
/// itself knows and cannot be; WaitsForPause, where what can only be written in one go gave way to
/// what was entered for too long; Cancelled.
MeetingReport meet(log::Log& log, store::Connection& store, const std::string& now,
                   const Progress& progress = {}, const Patience& patience = {});

} // namespace slopebook::meetings
