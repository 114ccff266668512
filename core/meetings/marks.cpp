// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/marks.h"

#include <algorithm>

namespace slopebook::meetings {

namespace {
constexpr std::size_t newest = 100, many = 500;
/// In one transaction, of a log that was never thinned.
constexpr std::size_t mostForgotten = 1000;
} // namespace

std::vector<std::int64_t> spareMarks(std::span<const log::Mark> marks) {
    std::vector<std::int64_t> spare;
    if (marks.size() <= newest)
        return spare;
    const std::int64_t highest = marks.back().n;
    std::int64_t kept = marks[marks.size() - newest].n;
    for (std::size_t i = marks.size() - newest;
         i-- > 1;) { // the first one stays: it is the last resort
        const std::int64_t behind = highest - kept;
        if (kept - marks[i - 1].n <= behind / 16)
            spare.push_back(marks[i].n);
        else
            kept = marks[i].n;
    }
    return spare;
}

void noteMark(log::Connection& db, const log::Mark& mark) {
    log::putMark(db, mark);
    const std::vector<log::Mark> all = log::marksIn(db);
    if (all.size() <= many)
        return;
    std::vector<std::int64_t> spare = spareMarks(all);
    spare.resize(std::min(spare.size(), mostForgotten));
    log::eraseMarks(db, spare);
}

} // namespace slopebook::meetings
