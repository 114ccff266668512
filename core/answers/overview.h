// SPDX-License-Identifier: GPL-3.0-or-later
// What the program shows of an athlete first: the last step of a season's matrix, by reading, and
// what is due.
#pragma once

#include "core/answers/seasonmatrix.h"

#include <optional>
#include <vector>

namespace slopebook::answers {

/// Where a measure stands after its last step. In the order in which they are shown.
enum class Standing { Better, Worse, Held, Unclear, NotComparable, NoFigure };
/// "better", "not comparable", "no figure".
Words standingWords(Standing standing);
Standing standingOf(const MatrixCell& cell);

struct OverviewRow {
    std::size_t row = 0; ///< of the matrix
    Standing standing = Standing::NoFigure;
    std::optional<CellChange> step =
        {}; ///< against the chosen block, else from the last with a figure
    std::optional<std::size_t> from = {}; ///< the block that it is counted from
    Words why = {};                       ///< of what has no reading; a clause
};

struct Overview {
    std::size_t to = 0;                 ///< the last block
    std::vector<OverviewRow> rows = {}; ///< by standing, the unclear by what they tell all the
                                        ///< same, then as the matrix has them
    std::vector<std::size_t> charts =
        {};                      ///< rows of the matrix whose steps are drawn, most telling first
    std::vector<Words> due = {}; ///< measured before and not in the last block
    std::vector<Words> missing = {}; ///< not possible in the last block, each with its reason
};

/// So many steps are drawn.
constexpr std::size_t overviewCharts = 4;

/// Of a matrix with a block or more; rows without any figure are told in `missing` alone.
Overview overviewOf(const SeasonMatrix& matrix);

} // namespace slopebook::answers
