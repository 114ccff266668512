// SPDX-License-Identifier: GPL-3.0-or-later
// The sets of a lift's sessions for as long as one question lasts, however often it asks for them.
#pragma once

#include "core/questions/liftcontext.h"

#include <map>
#include <vector>

namespace slopebook::questions {

/// Reads each session's when they are first asked for; all sessions of one lift. Kept no longer
/// than the log.
class SetsOnce {
public:
    explicit SetsOnce(const log::Log& log) : m_log(log) {}
    /// As setsOf(); stays where it is. Throws LogError.
    const std::vector<Set>& of(const LiftSession& session) {
        const auto known = m_read.find(session.session);
        return known != m_read.end()
                   ? known->second
                   : m_read.emplace(session.session, setsOf(m_log, session)).first->second;
    }

private:
    const log::Log& m_log;
    std::map<SessionId, std::vector<Set>> m_read;
};

} // namespace slopebook::questions
