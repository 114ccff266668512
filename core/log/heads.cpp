// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/heads.h"

#include "core/log/impl.h"

namespace slopebook::log {

std::vector<Stored<SessionId, SessionHead>> headsAsTheyStand(const Log& log, AthleteId athlete) {
    log.impl().settle();
    static constexpr auto standing = joined(headColumns, "WHERE athlete = ? ORDER BY day, ordinal");
    std::vector<Stored<SessionId, SessionHead>> all;
    for (Query rows(log.impl().db, standing.data(), athlete); rows.next();)
        all.push_back(readHead(rows));
    return all;
}

} // namespace slopebook::log
