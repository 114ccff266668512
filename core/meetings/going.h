// SPDX-License-Identifier: GPL-3.0-or-later
// What a log has for its store.
#pragma once

#include "core/log/log.h"
#include "core/log/storerows.h"
#include "core/meetings/footing.h"
#include "core/store/atom.h"

#include <cstdint>
#include <span>
#include <vector>

namespace slopebook::meetings {

using store::Sixteen;

struct Going {
    std::vector<store::Atom> atoms{}; ///< what others hang on before them
    std::int64_t held = 0;            ///< in squads that are not this login's to write
    std::vector<Sixteen> untold{};    ///< of which there is nothing to tell
};
/// Everything that waits, read piece by piece: each thing as it was at some moment of that. Throws
/// LogError.
Going whatGoes(const log::Log& log);

/// What is still removed of those of which there was nothing to tell waits no more. In one
/// transaction. Throws LogError.
void forgetUntold(log::Log& log, const Footing& footing, std::span<const Sixteen> untold);

/// Notes that the store has them, at that version: what has changed here since waits on, and of
/// what is not here as it was sent nothing is noted. In small transactions. Throws LogError.
void noteSent(log::Log& log, Footing& footing, std::span<const store::Atom> atoms,
              std::int64_t version);

/// The store went back to what it was at n: what it had later waits again, and all squads are to be
/// taken from their beginning. In small transactions; where it ends early the next meeting begins
/// it anew. Throws LogError.
void noteWentBack(log::Log& log, Footing& footing, std::int64_t n);

/// They stay in this log and are sent nowhere any more. Within a transaction.
void keepHere(log::Log& log, std::span<const Sixteen> uuids);
/// Whether that was done with it.
bool isKeptHere(const log::Sent& sent);

} // namespace slopebook::meetings
