// SPDX-License-Identifier: GPL-3.0-or-later
// One unit of what came is taken into a log: what hangs together, in one transaction.
#pragma once

#include "core/desks/merge.h"
#include "core/log/log.h"
#include "core/meetings/arrived.h"
#include "core/meetings/footing.h"
#include "core/meetings/patience.h"
#include "core/model/progress.h"
#include "core/model/words.h"

#include <optional>
#include <set>
#include <vector>

namespace slopebook::meetings {

/// What of the log is read for what comes: what it may touch (desks/part.h). A test takes all of
/// it, or all as where it is much, to hold the one against the other.
enum class Reads { Around, AroundAsMuch, Whole };
/// Whether what is taken is what the store has.
enum class InStore { Yes, NotYet };

struct How {
    Reads reads = Reads::Around;
    InStore stored = InStore::Yes;
    /// Used where nobody sees here (desks::MetBefore).
    std::set<store::Sixteen> usedUnseen{};
    Patience patience{};
};

/// Where it is much that comes, or very much speaks of what goes or becomes one with another, it is
/// read and worked out while others write, and the transaction gives way to who enters something
/// (log/asking.h): nothing of it stands then, and it begins anew in a pause. Throws BadInput for
/// what may not stand in a log; LogError; WaitsForPause; Cancelled.
desks::MergeReport takeUnit(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                            const Places& places, const How& how, const Progress& progress);

/// Whether it could be taken so: nothing; else why not. It is written and taken back. Throws as
/// takeUnit() does but for BadInput.
std::optional<Words> whyNotTaken(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                                 const Places& places, const How& how, const Progress& progress);

} // namespace slopebook::meetings
