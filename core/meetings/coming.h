// SPDX-License-Identifier: GPL-3.0-or-later
// What a store has for a log is taken into it.
#pragma once

#include "core/desks/merge.h"
#include "core/log/log.h"
#include "core/model/progress.h"
#include "core/store/atom.h"

#include <cstdint>
#include <vector>

namespace slopebook::meetings {

struct Came {
    desks::MergeReport report{};
    /// What may not stand in a log, and why: it stays out, and is looked at again next time.
    std::vector<Words> leftOut{};
    std::int64_t firstLeftOut = 0; ///< its version; 0: nothing was
};

/// Takes them in small transactions, and notes of each what the store has. Throws LogError;
/// Cancelled between two transactions: what was taken stays.
Came takeIn(log::Log& log, const std::vector<store::Atom>& atoms, const Progress& progress = {});

/// What more was told, of another take.
void add(desks::MergeReport& all, desks::MergeReport&& more);

} // namespace slopebook::meetings
