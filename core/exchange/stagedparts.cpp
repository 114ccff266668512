// SPDX-License-Identifier: GPL-3.0-or-later
// A file in order, session by session: those that are complete are handed over and forgotten, so
// that no file is too long to be held.
#include "core/exchange/staging.h"

#include <algorithm>
#include <utility>

namespace slopebook::exchange {

namespace {

/// Where each session goes: those that stay, or those that are handed over, and its number there.
struct Split {
    std::vector<bool> stays;
    std::vector<int> number;

    /// Leaves in the list what goes; gives what stays.
    template <class Of>
    std::vector<Of> part(std::vector<Of>& list) const {
        std::vector<Of> staying, going;
        for (Of& one : list) {
            const auto at = static_cast<std::size_t>(one.session);
            one.session = number[at];
            (stays[at] ? staying : going).push_back(std::move(one));
        }
        list = std::move(going);
        return staying;
    }
};

} // namespace

void Staging::handOverQuiet() {
    Split split;
    std::vector<StagedSession> staying, going;
    for (StagedSession& session : sessions) {
        const bool stays = rows - session.lastRow < static_cast<long>(setsHeld);
        auto& into = stays ? staying : going;
        split.stays.push_back(stays);
        split.number.push_back(static_cast<int>(into.size()));
        into.push_back(std::move(session));
    }
    sessions = std::move(going);
    auto setsStaying = split.part(sets);
    auto conditionsStaying = split.part(conditions);
    auto gapsStaying = split.part(gaps);
    for (StagedSet& held : sets)
        finishSet(held);
    handOver();
    sessions = std::move(staying);
    sets = std::move(setsStaying);
    conditions = std::move(conditionsStaying);
    gaps = std::move(gapsStaying);
    blocks.clear();
    findAgain();
    m_handOverAt = std::max(setsHeld, 2 * sets.size());
}

// The same things under their new numbers.
void Staging::findAgain() {
    m_run = {};
    m_sessionAt.clear();
    m_setAt.clear();
    m_conditionsAt.clear();
    int at = 0;
    for (const StagedSession& session : sessions)
        m_sessionAt.emplace(StagedDay{session.athlete, session.date, session.ordinal}, at++);
    at = 0;
    for (const StagedSet& held : sets)
        m_setAt.emplace(StagedPlace{held.session, held.lift, held.number}, at++);
    at = 0;
    for (const StagedConditions& held : conditions)
        m_conditionsAt.emplace(StagedPlace{held.session, held.lift, 0}, at++);
}

} // namespace slopebook::exchange
