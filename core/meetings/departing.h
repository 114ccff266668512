// SPDX-License-Identifier: GPL-3.0-or-later
// An athlete goes to a squad that is not in this log.
#pragma once

#include "core/log/log.h"
#include "core/meetings/footing.h"
#include "core/store/atom.h"

#include <optional>
#include <string>

namespace slopebook::meetings {

struct Departing {
    std::string name{};
    bool stayed = false; ///< some of what was written here of him was not sent
    friend bool operator==(const Departing&, const Departing&) = default;
};

/// Whether he is among what comes now.
enum class Comes { No, ByAnotherSquad };

/// Takes the athlete out of the log with all that was his: it is no removal, and nobody hears of
/// it. Where something of it was not sent yet, all of it stays, and is not sent any more. Nothing
/// where he is not here. Where he is here by way of another squad, or comes by it, he leaves this
/// one's rosters; where he is back in this one his turns, which the store has no more, wait to be
/// sent. Before what is new is taken: his name may be another's by now, and who is on a roster was
/// numbered anew without him. In small transactions; where it ends early, or something of his is
/// entered meanwhile, what is still there goes, or stays, when the next meeting hears of it again.
/// Throws LogError.
std::optional<Departing> letGo(log::Log& log, const Footing& footing,
                               const store::Departed& departed, Comes comes);

} // namespace slopebook::meetings
