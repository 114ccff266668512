// SPDX-License-Identifier: GPL-3.0-or-later
// The critical values of a measure that is read in several blocks: together over its blocks, and
// not over measures.
#pragma once

#include "core/answers/uncertainty.h"
#include "core/stats/dunnett.h"
#include "core/stats/nothing.h"

#include <memory>
#include <span>

namespace slopebook::answers {

/// What is worked out once for a whole season.
struct FamilyTables {
    stats::DunnettTable dunnett = {};
    stats::Nothing nothing = {};
};
using Family = std::shared_ptr<FamilyTables>;

/// Variances of the figure of a baseline and of another block, in one unit.
struct BaselineShare {
    double baseline = 0, other = 0;
};
/// Dunnett's over all blocks that are read against the one baseline.
CriticalOf againstOne(const Family& family, std::span<const BaselineShare> shares);
/// Of so many changes, each from one block to the next.
CriticalOf ofAChain(const Family& family, int changes);

/// Had nothing changed, so likely would an interval as wide as this one, of a change made of these
/// parts, exclude zero: days as they are likely to vary in this athlete, which is less than
/// readings allow for. Of the 1RM the interval is Fieller's, wider than the parts by themselves
/// would make it.
double chanceOfNothing(const Family& family, const ChangeParts& parts,
                       const stats::Interval& interval);
/// So likely would a change as large as this, or larger, be found of nothing: by one look, days as
/// readings take them.
double pOfNothing(const Family& family, const ChangeParts& parts, double change);

} // namespace slopebook::answers
