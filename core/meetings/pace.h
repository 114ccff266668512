// SPDX-License-Identifier: GPL-3.0-or-later
// A meeting writes in transactions that are as great as who enters a set meanwhile can wait for
// (piece.h); and between two of them the log is free for as long as the last one took, at most
// 12 ms, and until nobody waits any more.
#pragma once

#include "core/log/asking.h"
#include "core/log/connection.h"
#include "core/log/snapshot.h"
#include "core/meetings/piece.h"

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <span>
#include <thread>

namespace slopebook::meetings {

class Pace {
public:
    Pace(const log::Log& log, std::size_t first)
        : m_db(log::connectionOf(log)), m_letsIn(log), m_piece(first) {}

    /// So many things are to be written next.
    std::size_t things() const { return m_piece.things(); }

    /// Does the work, which writes so many things in one transaction of the log.
    template <class Work>
    void write(std::size_t things, const Work& work) {
        std::this_thread::sleep_for(std::min<Duration>(m_last, longestRest));
        const long before = m_db.lastWrite().before;
        work();
        const log::WriteTook& took = m_db.lastWrite();
        if (took.before == before)
            return; // it found nothing to write
        m_last = took.work + took.commit;
        m_piece.note(things, took.work, took.commit);
    }
    /// The work with all of them, as many at a time as are to be written next.
    template <class Each, class Work>
    void inPieces(std::span<const Each> all, const Work& work) {
        for (std::size_t from = 0; from < all.size();) {
            const auto some = all.subspan(from, std::min(things(), all.size() - from));
            write(some.size(), [&] { work(some); });
            from += some.size();
        }
    }

private:
    using Duration = std::chrono::steady_clock::duration;
    static constexpr Duration longestRest = std::chrono::milliseconds(12);

    const log::Connection& m_db;
    const log::LetsIn m_letsIn;
    Piece m_piece;
    Duration m_last{};
};

} // namespace slopebook::meetings
