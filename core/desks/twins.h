// SPDX-License-Identifier: GPL-3.0-or-later
// What both desks wrote down of one session, each for itself (the same file imported twice, say):
// once the two sessions are one it stands there once.
#pragma once

#include "core/desks/ends.h"
#include "core/desks/meeting.h"

namespace slopebook::desks {

/// The sets, attempts and gaps of each session, as things go from one session to another.
class Twins {
public:
    Twins(const Meeting& meeting, const Ends& ends);
    /// A living thing of another session that says what `moved` says but for its number; 0: none.
    /// moved: what slot says once it has gone there. One twin stands for one thing of each session:
    /// two sets alike on both desks are two.
    Slot of(Slot slot, const Thing& moved) const;
    /// Whether something living says what `moved` says in that session, but for its number.
    bool stands(const Thing& moved) const;
    /// The slot has gone: it said `before`.
    void went(Slot slot, const Thing& before);

private:
    const Meeting& m_meeting;
    const Ends& m_ends;
    std::map<Slot, std::vector<Slot>> m_held; ///< by session, the removed as well
    std::map<Slot, Slot> m_cameFrom;          ///< the session where it was before
};

} // namespace slopebook::desks
