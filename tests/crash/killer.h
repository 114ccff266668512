// SPDX-License-Identifier: GPL-3.0-or-later
// Work in a child that is killed (SIGKILL) at some moment of it.
#pragma once

#include "tests/log/child.h"

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdlib>
#include <random>
#include <set>
#include <vector>

namespace slopebook::test {

/// Ends a child after that time, unless it has ended by itself; true when the kill came in time.
inline bool killAfter(pid_t child, unsigned microseconds) {
    ::usleep(microseconds);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFSIGNALED(status);
}

/// Runs work in a child that is killed at some moment of the time that it takes, which is measured
/// first. How often the kill came in time.
class Killer {
public:
    explicit Killer(std::uint64_t seed) : m_random(seed) {}

    template <class Work>
    bool kill(const Work& work) {
        int ends[2] = {-1, -1};
        if (::pipe(ends) != 0)
            std::abort();
        const pid_t child = ::fork();
        if (child == 0) {
            ::close(ends[0]);
            try {
                const auto tell = [&](std::int64_t told) {
                    if (::write(ends[1], &told, sizeof told) != sizeof told)
                        ::_exit(1);
                };
                const auto begun = std::chrono::steady_clock::now();
                work(tell);
                const auto took = std::chrono::steady_clock::now() - begun;
                tell(-std::chrono::duration_cast<std::chrono::microseconds>(took).count());
            } catch (const std::exception&) {
                ::_exit(1);
            }
            ::_exit(0);
        }
        ::close(ends[1]);
        const bool inTime =
            m_took.empty()
                ? (::waitpid(child, nullptr, 0), false) // the first round runs to its end
                : killAfter(child, static_cast<unsigned>(m_random() % usual()));
        m_told.clear();
        std::int64_t one = 0;
        while (::read(ends[0], &one, sizeof one) == static_cast<ssize_t>(sizeof one))
            if (one >= 0)
                m_told.insert(one);
            else
                m_took.push_back(static_cast<std::uint64_t>(-one));
        ::close(ends[0]);
        m_killed += inTime ? 1 : 0;
        return inTime;
    }
    /// What the child had told of, as acknowledged, before its end.
    const std::set<std::int64_t>& told() const { return m_told; }
    int killed() const { return m_killed; }

private:
    /// Microseconds: the median of what ran to its end, for the machine may be busier or idler than
    /// it was.
    std::uint64_t usual() {
        const auto middle = m_took.begin() + static_cast<std::ptrdiff_t>(m_took.size() / 2);
        std::ranges::nth_element(m_took, middle);
        return std::max<std::uint64_t>(1, *middle);
    }

    std::mt19937_64 m_random;
    std::vector<std::uint64_t> m_took; // microseconds
    std::set<std::int64_t> m_told;
    int m_killed = 0;
};

} // namespace slopebook::test
