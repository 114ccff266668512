// SPDX-License-Identifier: GPL-3.0-or-later
// What a store has for a log is taken into it.
#pragma once

#include "core/desks/merge.h"
#include "core/log/log.h"
#include "core/meetings/footing.h"
#include "core/meetings/takeunit.h"
#include "core/model/progress.h"
#include "core/store/atom.h"

#include <cstdint>
#include <map>
#include <vector>

namespace slopebook::meetings {

struct Came {
    desks::MergeReport report{};
    /// What may not stand in a log, and why: it stays out, and is looked at again next time.
    std::vector<Words> leftOut{};
    /// The least version of them, by squad.
    std::map<store::Sixteen, std::int64_t> leftOutFrom{};
};

/// Takes them in small transactions while the log meets that store, and notes of each what the
/// store has. Throws LogError; WaitsForPause; Cancelled between two transactions: what was taken
/// stays.
Came takeIn(log::Log& log, Footing& footing, const std::vector<store::Atom>& atoms,
            const Progress& progress = {}, const How& how = {});

/// Something that was removed here lives again, as an edit of this log's, where it still is what it
/// was. how.usedUnseen: it, and what was brought back before. Throws LogError; WaitsForPause;
/// Cancelled.
desks::MergeReport bringBack(log::Log& log, Footing& footing, const store::Sixteen& uuid,
                             const How& how, const Progress& progress);

/// What more was told, of another take.
void add(desks::MergeReport& all, desks::MergeReport&& more);

} // namespace slopebook::meetings
