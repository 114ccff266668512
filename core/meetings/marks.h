// SPDX-License-Identifier: GPL-3.0-or-later
// The moments of its store that a log has seen. By the highest one it notices that the store went
// back to a backup; of the others the highest that the store has says from where it tells again.
// Any of those may be missing: then a little more is told than the store forgot, and it knows that.
#pragma once

#include "core/log/storerows.h"

#include <cstdint>
#include <span>
#include <vector>

namespace slopebook::meetings {

/// Notes one; and where there are many, forgets some of those that need not be there. Within a
/// transaction.
void noteMark(log::Connection& db, const log::Mark& mark);

/// Of marks, ascending, those that need not be there: the newest hundred stay, and of the older
/// ones so many that the next one is never much further back than a sixteenth of the way.
std::vector<std::int64_t> spareMarks(std::span<const log::Mark> marks);

} // namespace slopebook::meetings
