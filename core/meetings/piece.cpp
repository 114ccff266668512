// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/piece.h"

#include <algorithm>
#include <cmath>

namespace slopebook::meetings {

namespace {
constexpr double wantedTime = 0.020; ///< s
constexpr std::size_t fewest = 20, mostAtATime = 4000;
/// Half of what is known is of the last fourteen.
constexpr double fadesBy = 0.95;
/// Of every so many one is that much smaller.
constexpr int smallOneOf = 3;
constexpr std::size_t smallerBy = 3;
/// What is committed was written before: it seldom takes less than that part of it.
constexpr double leastOfWork = 0.7;
} // namespace

std::size_t Piece::things() const {
    return m_noted % smallOneOf == smallOneOf - 1 ? std::max(fewest / 2, m_aim / smallerBy) : m_aim;
}

/// The greater of what it is now and what it is mostly: whoever waits now waits for that.
double Piece::workOfEach(double things, double work) const {
    return std::max(work / things, m_work / m_things);
}

/// By how much a commit of more things took longer: the slope of a line through all, less its
/// standard error. A disk that takes a second for any commit, now more and now less, says so little
/// of a slope that chance alone would have all written in crumbs, of which it could say still less.
/// Where they were all alike, as if a commit cost nothing of its own.
double Piece::commitOfEach(double things, double commit) const {
    const double mean = m_things / m_count;
    const double square = m_square - m_count * mean * mean;
    if (m_count < 2.5 || square < 0.01 * m_count * mean * mean)
        return commit / things;
    const double both = m_both - mean * m_commit, slope = both / square;
    const double left =
        std::max(m_commitSquare - m_commit * m_commit / m_count - slope * both, 0.0);
    const double error = std::sqrt(left / std::max(m_count - 2, 1.0) / square);
    return std::clamp(slope - error, 0.0, commit / things);
}

void Piece::note(std::size_t things, Duration work, Duration commit) {
    ++m_noted;
    if (things == 0)
        return;
    const double n = static_cast<double>(things);
    const double worked = std::max(work.count(), 1e-6), committed = std::max(commit.count(), 0.0);
    const auto addTo = [](double& sum, double more) { sum = sum * fadesBy + more; };
    addTo(m_count, 1);
    addTo(m_things, n);
    addTo(m_work, worked);
    addTo(m_commit, committed);
    addTo(m_square, n * n);
    addTo(m_both, n * committed);
    addTo(m_commitSquare, committed * committed);
    if (things * smallerBy < m_aim)
        return; // it says little of how many would do
    const double ofWork = workOfEach(n, worked);
    const double each = ofWork + std::max(commitOfEach(n, committed), leastOfWork * ofWork);
    m_aim = std::clamp(std::min(static_cast<std::size_t>(wantedTime / each), 2 * m_aim), fewest,
                       mostAtATime);
}

} // namespace slopebook::meetings
