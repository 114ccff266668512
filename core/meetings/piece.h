// SPDX-License-Identifier: GPL-3.0-or-later
// How many things one transaction writes, of how long those before it took: pure, and so tried in
// made-up time. A commit costs something of its own (there are disks that take 60 ms, however
// little is written) and something for each thing: only that becomes less where fewer are written.
#pragma once

#include <chrono>
#include <cstddef>

namespace slopebook::meetings {

class Piece {
public:
    using Duration = std::chrono::duration<double>; ///< s

    explicit Piece(std::size_t first) : m_aim(first) {}

    /// So many are to be written next: what takes some 20 ms beside the commit's own cost. Of every
    /// three transactions one has a third of that: were all alike, nobody could tell what is the
    /// commit's own.
    std::size_t things() const;
    /// So many were written: it took that long to write them, and that long to commit them.
    void note(std::size_t things, Duration work, Duration commit);

private:
    double workOfEach(double things, double work) const;
    double commitOfEach(double things, double commit) const;

    std::size_t m_aim;
    int m_noted = 0;
    // sums over the transactions so far, the older the less
    double m_count = 0, m_things = 0, m_work = 0, m_commit = 0;
    double m_square = 0, m_both = 0, m_commitSquare = 0;
};

} // namespace slopebook::meetings
