// SPDX-License-Identifier: GPL-3.0-or-later
// A meeting writes in transactions that are as great as who enters a set meanwhile can wait for
// (piece.h); and between two of them the log is free for as long as the last one took, at most
// 12 ms, and until nobody waits any more: SQLite lets in whoever asks first, and on a busy machine
// who waits may sleep for longer than that.
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
        : m_db(log::connectionOf(log)), m_asked(log.file()), m_piece(first) {}

    /// So many things are to be written next.
    std::size_t things() const { return m_piece.things(); }

    /// Does the work, which writes so many things in one transaction of the log.
    template <class Work>
    void write(std::size_t things, const Work& work) {
        if (m_last != Duration{})
            rest();
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
    /// Others may meet a store as well, and always wait.
    static constexpr Duration longestLetIn = std::chrono::milliseconds(500);

    void rest() const {
        std::this_thread::sleep_for(std::min<Duration>(m_last, longestRest));
        const auto from = std::chrono::steady_clock::now();
        while (m_asked.now() && std::chrono::steady_clock::now() - from < longestLetIn)
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }

    const log::Connection& m_db;
    const log::AskedFor m_asked;
    Piece m_piece;
    Duration m_last{};
};

} // namespace slopebook::meetings
