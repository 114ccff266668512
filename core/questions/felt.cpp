// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/felt.h"

#include "core/questions/stationday.h"

#include <cstdlib>

namespace slopebook::questions {

std::vector<std::vector<Effort>> feltAt(const log::Log& log, const Stored<LiftId, Lift>& lift,
                                        const answers::Follow& follow, Mass plateStep) {
    std::vector<std::vector<Effort>> all;
    for (const answers::Followed& each : follow.sessions) {
        std::vector<Effort>& felt = all.emplace_back();
        const LiftSession& session = each.session;
        const std::int64_t body = bodyMoved(lift.value, &session).grams;
        for (const log::PlacedSet& placed : log.sets(session.session, lift.id)) {
            const Set& set = placed.set;
            const std::int64_t away = set.load.grams + body - follow.load.grams;
            if (set.effort && set.outcome == Outcome::Lifted && set.excluded.empty() &&
                2 * std::llabs(away) <= plateStep.grams)
                felt.push_back(*set.effort);
        }
    }
    return all;
}

} // namespace slopebook::questions
