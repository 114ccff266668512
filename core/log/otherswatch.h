// SPDX-License-Identifier: GPL-3.0-or-later
// Whether another program, or a meeting beside the window, has changed what a log says.
#pragma once

#include "core/log/log.h"

#include <cstdint>
#include <optional>

namespace slopebook::log {

/// What a log knows of its store (what was sent, how far was taken) is written after every entry
/// and says nothing that a page shows: it is told apart by the tallies.
class OthersWatch {
public:
    /// Of what is written from now on. Throws LogError.
    explicit OthersWatch(const Log& log);

    /// Whether anything else than that was written by others since the last call that said so, or
    /// may have been: where this Log wrote as well since the last call. Each call reads two
    /// numbers, and after a write the tallies. Throws LogError, and has then noted nothing.
    bool wrote(const Log& log);
    /// All that stands in the log now is known.
    void pass(const Log& log);

private:
    struct State {
        long others = 0;                    ///< SQLite's data version
        long own = -1;                      ///< this Log's commits; -1: the sum is not read yet
        std::optional<std::uint64_t> sum{}; ///< of the tallies
    };
    State read(const Log& log) const;

    State m_known;
};

} // namespace slopebook::log
