// SPDX-License-Identifier: GPL-3.0-or-later
// A change from one block to another is read alike on every page: as the season reads it, in which
// all blocks are read at once (method.md section 12), with what it is by itself beside it
// (ReadChange::byItself). This brings the season's readings to pages that compare two blocks.
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/seasonmatrix.h"

#include <utility>
#include <vector>

namespace slopebook::answers {

/// The season's readings of one block against the chosen one.
class AmongBlocks {
public:
    /// to: of the matrix' columns. A matrix of two blocks reads each change by itself: then nothing
    /// is told.
    AmongBlocks(const SeasonMatrix& matrix, std::size_t to);

    bool empty() const { return m_read.empty(); }
    /// Reads it so where the season reads the measure, which is found by its kind, lift or test,
    /// load and side; else it stays as it is.
    void tell(ReadChange& read, const Measure& measure) const;
    /// Its loads, its estimated 1RM and its sentence.
    void tell(Comparison& comparison, LiftId lift) const;

private:
    std::vector<std::pair<Measure, ReadChange>> m_read;
};

} // namespace slopebook::answers
