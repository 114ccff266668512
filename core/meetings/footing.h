// SPDX-License-Identifier: GPL-3.0-or-later
// What each write of a meeting stands on: the log that it began with. A meeting may hang in the
// network for long; meanwhile the log can leave the store, or be set back to a backup.
#pragma once

#include "core/log/log.h"
#include "core/log/storerows.h"

#include <optional>
#include <vector>

namespace slopebook::meetings {

class Footing {
public:
    explicit Footing(const log::Sixteen& store) : m_store(store) {}

    const log::Sixteen& store() const { return m_store; }

    /// Before anything is written, within its transaction. Throws LogError (Conflict): the log
    /// meets that store no more, or what this meeting wrote into it last, or how far it had taken
    /// the squads, is not there any more.
    void require(const log::Log& log) const;

    /// Throws what require() does where the log went back.
    [[noreturn]] static void wentBack(const log::Log& log);

    /// That is how far the log has taken its squads, by which the meeting asks.
    void asks(const std::vector<log::JoinedSquad>& squads) { m_squads = squads; }
    /// That was written; it is committed.
    void wrote(const std::optional<log::Sent>& last) {
        if (last)
            m_last = last;
    }
    /// What was written last may be gone soon by the meeting's own doing.
    void forgetLast() { m_last.reset(); }
    /// And how far squads were taken goes back by it.
    void forget() {
        m_last.reset();
        m_squads.clear();
    }

private:
    log::Sixteen m_store{};
    std::vector<log::JoinedSquad> m_squads;
    std::optional<log::Sent> m_last;
};

} // namespace slopebook::meetings
