// SPDX-License-Identifier: GPL-3.0-or-later
// How much a meeting writes in one transaction: as much as takes some 20 ms on this machine, so
// that who enters a set meanwhile waits for no longer; and between two of them the log is free for
// as long as the last one took, at most 12 ms: SQLite lets in whoever asks first.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <span>
#include <thread>

namespace slopebook::meetings {

class Pace {
public:
    using Duration = std::chrono::steady_clock::duration;

    explicit Pace(std::size_t first) : m_things(first) {}

    /// So many things are to be written next.
    std::size_t things() const { return m_things; }

    /// Does the work, which writes so many things in one transaction, and is timed.
    template <class Work>
    void write(std::size_t things, const Work& work) {
        if (m_last != Duration{})
            std::this_thread::sleep_for(std::min<Duration>(m_last, longestRest));
        const auto from = std::chrono::steady_clock::now();
        work();
        m_last = std::chrono::steady_clock::now() - from;
        note(things);
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
    static constexpr Duration wanted = std::chrono::milliseconds(20);
    static constexpr Duration longestRest = std::chrono::milliseconds(12);
    static constexpr std::size_t least = 20, most = 4000;

    void note(std::size_t things) {
        if (things * 2 < m_things)
            return; // it says little of how many would do
        const double ratio =
            std::chrono::duration<double>(wanted) /
            std::max(std::chrono::duration<double>(m_last), std::chrono::duration<double>(1e-6));
        const auto next =
            static_cast<std::size_t>(static_cast<double>(things) * std::min(ratio, 2.0));
        m_things = std::clamp(next, least, most);
    }

    std::size_t m_things;
    Duration m_last{};
};

} // namespace slopebook::meetings
