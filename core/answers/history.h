// SPDX-License-Identifier: GPL-3.0-or-later
// Lines that borrow strength: one athlete's sessions of a lift in one model (random intercept and
// slope, REML), so that a short or light session leans on the athlete's own history. Shown beside
// the session's own line, never instead.
#pragma once

#include "core/answers/profile.h"
#include "core/stats/mixedline.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

struct BorrowedOneRm {
    double estimate = 0; ///< kg
    /// Of the line, with what a few sessions leave open about how much lines vary between
    /// sessions (stats::openLines); absent where unbounded or not asked for.
    std::optional<stats::Interval> interval = {};
    std::optional<stats::Interval> withMvt = {}; ///< with the MVT's own SD
};

/// One session as the athlete's history sees it.
struct BorrowedLine {
    LiftSession session = {};
    stats::UncertainLine line = {}; ///< the shrunken line
    Answer<BorrowedOneRm> oneRm = NoAnswer{};
    /// How much of the own line is left at the middle of its loads, 0 (all borrowed) to 1; absent
    /// where the session has no line of its own.
    std::optional<double> ownShare = {};
};

struct History {
    stats::MixedLine model = {};
    std::vector<BorrowedLine> lines = {}; ///< by date; every session with a point
    double level = 0.95;
    const BorrowedLine* of(SessionId session) const;
};

/// Refused with the reason: fewer than three sessions with points, too few loads in them, no
/// scatter. The 1RM's intervals are worked out for one session, or, where none is named, for all.
Answer<History> borrow(const Lift& lift, const Answer<Mvt>& mvt,
                       std::span<const LiftSession> sessions, std::optional<SessionId> about = {},
                       double level = 0.95);

/// What the history says of the profile's session: its estimated 1RM, and beside it the session's
/// own, or why there is none.
Words borrowedWords(const History& history, const Profile& profile);

} // namespace slopebook::answers
