// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/footing.h"

#include "core/log/failure.h"
#include "core/meetings/joining.h"
#include "core/model/phrases/meetings.h"

#include <algorithm>

namespace slopebook::meetings {

void Footing::require(const log::Log& log) const {
    requireMeets(log, m_store);
    log::Connection& db = log::connectionOf(log);
    const auto isBehind = [&](const log::JoinedSquad& now) {
        const auto asked = std::ranges::find(m_squads, now.id, &log::JoinedSquad::id);
        return asked != m_squads.end() && now.taken < asked->taken;
    };
    const auto last = m_last ? log::sentOf(db, m_last->uuid) : std::nullopt;
    if ((!m_last || (last && last->version >= m_last->version)) &&
        std::ranges::none_of(log::joinedSquads(db), isBehind))
        return;
    wentBack(log);
}

void Footing::wentBack(const log::Log& log) {
    throw LogError(LogError::Kind::Conflict,
                   say("'%1' is not the log any more that this meeting began with: it went back to "
                       "an earlier state. Nothing more was written into it; the next meeting goes "
                       "on from what is there.",
                       log::shown(log.file())));
}

} // namespace slopebook::meetings
