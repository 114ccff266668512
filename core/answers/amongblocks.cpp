// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/amongblocks.h"

#include "core/answers/comparisonsentence.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

bool sameMeasure(const Measure& one, const Measure& other) {
    return one.kind == other.kind && one.lift == other.lift && one.test == other.test &&
           one.load == other.load && one.side == other.side;
}

} // namespace

AmongBlocks::AmongBlocks(const SeasonMatrix& matrix, std::size_t to) {
    if (!matrix.allAtOnce() || to >= matrix.blocks.size())
        return;
    for (const MatrixRow& row : matrix.rows)
        if (const auto& change = row.cells[to].against;
            change && change->comparable() && change->read.reading != Reading::NoFigure)
            m_read.emplace_back(row.measure, change->read);
}

void AmongBlocks::tell(ReadChange& read, const Measure& measure) const {
    if (read.reading == Reading::NoFigure)
        return;
    const auto found = std::ranges::find_if(
        m_read, [&](const auto& each) { return sameMeasure(each.first, measure); });
    if (found != m_read.end())
        read = found->second;
}

void AmongBlocks::tell(Comparison& comparison, LiftId lift) const {
    if (empty())
        return;
    comparison.allAtOnce = true;
    for (ChangeAt& at : comparison.at)
        tell(at.read, {.kind = Measure::Kind::Speed, .lift = lift, .load = at.load});
    if (comparison.oneRm)
        tell(comparison.oneRm->read, {.kind = Measure::Kind::OneRm, .lift = lift});
    tellSentence(comparison);
}

} // namespace slopebook::answers
