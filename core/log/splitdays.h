// SPDX-License-Identifier: GPL-3.0-or-later
// Days that stand as two sessions only because a session used to have one device: found, and made
// one where the coach wants it.
#pragma once

#include "core/log/log.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::log {

/// The later of two sessions of a day, and the one that it would go into.
struct SplitDay {
    SessionId into{}, from{};
    friend bool operator==(const SplitDay&, const SplitDay&) = default;
};

/// Those of an athlete, or of all, by athlete and day: two sessions of one day with other devices,
/// no lift and no test in both (a lift in both is a study of two devices), no body mass against
/// another, and neither repeated by, nor a repeat of, what the other is not. Throws LogError.
std::vector<SplitDay> splitDays(const Log& log, std::optional<AthleteId> athlete = {});

/// The first of these that a session is of; nothing where it is of none.
/// sessions: an athlete's, as Log::sessions gives them. Throws LogError.
std::optional<SplitDay> splitDayOf(const Log& log,
                                   std::span<const Stored<SessionId, SessionHead>> sessions,
                                   SessionId session);

/// Moves all that `from` holds into `into`, and removes it: one transaction, every set with its
/// key. Notes stand one after the other. LogError (Conflict), and nothing was changed, where the
/// two are not such a day any more.
void joinSessions(Log& log, const SplitDay& day);

/// Takes that back: both as they were.
void partSessions(Log& log, const SessionRecord& into, const SessionRecord& from);

} // namespace slopebook::log
