// SPDX-License-Identifier: GPL-3.0-or-later
// Under what the lifts and tests of a session were measured.
#include "core/log/atoms.h"
#include "core/log/impl.h"
#include "core/log/sessionrows.h"
#include "core/log/validity.h"
#include "core/model/phrases/log.h"

#include <algorithm>

namespace slopebook::log {

namespace {
void keepConditions(Connection& db, SessionId session, LiftId lift, const Conditions& conditions) {
    const AtomKey key{.kind = "lift conditions", .one = raw(session), .two = raw(lift)};
    if (conditions == Conditions{})
        dropAtom(db, key);
    else
        keepAtom(db, key, contentHash(uuidsIn(db), session, lift, conditions));
}
} // namespace

void Log::Impl::requireConditions(const Conditions& conditions) {
    requireValid(conditions);
    if (conditions.device &&
        !Query(db, "SELECT 1 FROM devices WHERE id = ?", *conditions.device).next())
        throw LogError(LogError::Kind::Conflict,
                       say("That device is not in the log any more. Nothing was changed."));
}

Conditions Log::conditions(SessionId session, LiftId lift) const {
    const SessionRecord record = this->session(session);
    const auto found = std::ranges::find(record.conditions, lift, &LiftConditions::lift);
    return found == record.conditions.end() ? Conditions{} : found->conditions;
}

Conditions Log::conditions(SessionId session, TestKindId test) const {
    const Battery all = battery(session);
    const TestAttempts* found = all.test(test);
    return found == nullptr ? Conditions{} : found->conditions;
}

void Log::setConditions(SessionId session, LiftId lift, const Conditions& conditions) {
    m_impl->write([&] {
        m_impl->requireConditions(conditions);
        if (!Query(m_impl->db, "SELECT 1 FROM lifts WHERE id = ?", lift).next())
            throw LogError(LogError::Kind::Conflict,
                           say("That lift is not in the log any more. Nothing was changed."));
        m_impl->touch(session);
        keepConditions(m_impl->db, session, lift, conditions); // while the old ones stand
        writeConditions(m_impl->db, session, lift, conditions);
    });
}

void Log::setConditions(SessionId session, TestKindId test, const Conditions& conditions) {
    m_impl->write([&] {
        Battery changed = battery(session);
        conditionsOf(changed, test) = conditions;
        setBattery(session, changed);
    });
}

} // namespace slopebook::log
