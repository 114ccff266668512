// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/seasonstep.h"

#include "core/questions/liftcontext.h"
#include "core/questions/seasonquestions.h"

#include <algorithm>

namespace slopebook::questions {

namespace {

answers::AmongBlocks stepTo(BlockId to, const log::Log& log, const ContextOf& contextOf,
                            AthleteId athlete, const SeasonQuestion& question,
                            const AskSettings& settings) {
    const auto season = seasonMatrixOf(log, contextOf, athlete, question, settings);
    const answers::SeasonMatrix none;
    if (!season)
        return {none, 0};
    const answers::SeasonMatrix& matrix = season->matrix;
    const auto at = std::ranges::find(matrix.blocks, to, &answers::MatrixBlock::id);
    if (at == matrix.blocks.end() || matrix.blocks[matrix.chosen].id != question.chosen)
        return {none, 0};
    return {matrix, static_cast<std::size_t>(at - matrix.blocks.begin())};
}

} // namespace

answers::AmongBlocks testsStep(const log::Log& log, const ContextOf& contextOf, AthleteId athlete,
                               BlockId from, BlockId to, const AskSettings& settings) {
    return stepTo(to, log, contextOf, athlete, {.testsAlone = true, .chosen = from}, settings);
}

void tellSeasonStep(answers::Comparison& comparison, const log::Log& log,
                    const LiftContext& context, AthleteId athlete, std::optional<BlockId> from,
                    std::optional<BlockId> to, const AskSettings& settings) {
    if (!from || !to)
        return;
    SeasonQuestion question{.lift = context.lift.id, .chosen = from};
    for (const answers::ChangeAt& at : comparison.at)
        question.loads.push_back(at.load);
    stepTo(
        *to, log, [&](LiftId) -> const LiftContext& { return context; }, athlete, question,
        settings)
        .tell(comparison, context.lift.id);
}

} // namespace slopebook::questions
