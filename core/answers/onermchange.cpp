// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"
#include "core/model/phrases/answers.h"

#include <cmath>

namespace slopebook::answers {

namespace {

/// Of the two days alone: the scatter about the lines, by variance recovery; nothing where a side
/// cannot be bounded.
std::optional<stats::Interval> twoDaysAlone(const ChangeUncertainty& u, double mvt, double level) {
    if (u.sides && u.sides->earlier.lines.size() + u.sides->later.lines.size() > 2) {
        ChangeUncertainty still = u;
        still.day = {};
        still.device = {};
        still.critical = stats::tOf;
        return still.maxStraight(mvt, level);
    }
    std::vector<stats::Inverse> each;
    for (const stats::Line* line : {&u.lines.first(), &u.lines.second()}) {
        const stats::Scatter scatter = u.variances == stats::Variances::Pooled
                                           ? stats::Scatter{u.lines.s2(), u.lines.df()}
                                           : stats::Scatter{line->s2(), line->df()};
        each.push_back(stats::inversePrediction(*line, mvt, 0, scatter, level));
        if (each.back().shape != stats::Inverse::Shape::Bounded)
            return std::nullopt;
    }
    return stats::differenceInterval(each[0].estimate, each[0].interval, each[1].estimate,
                                     each[1].interval);
}

std::optional<double> measuredChange(const LiftSession& from, const LiftSession& to) {
    if (!from.measuredOneRm || !to.measuredOneRm)
        return std::nullopt;
    return kilograms(*to.measuredOneRm) - kilograms(*from.measuredOneRm);
}

void noteTheThreshold(const Profile& from, double residue, std::vector<Note>& notes) {
    if (!from.mvt->sd)
        return;
    notes.push_back({Note::Kind::MvtCancels,
                     say("both estimates use one MVT, so its uncertainty nearly cancels in their "
                         "change (what is left is %1) and is not in its interval",
                         massWords(residue, {.decimals = 2, .padded = true}))});
}

} // namespace

Answer<OneRmChange> oneRmChange(const Profile& from, const Profile& to,
                                const ChangeUncertainty& uncertainty,
                                const ComparisonSettings& settings, std::vector<Note>& notes) {
    for (const Profile* p : {&from, &to})
        if (!p->oneRm)
            return p->oneRm.why();
    const stats::TwoLines& lines = uncertainty.lines;
    const double mvt = from.mvt->value;
    const auto before = uncertainty.maxOfEarlier(mvt), after = uncertainty.maxOfLater(mvt);
    if (!before || !after)
        return NoAnswer{NoAnswer::Why::SlopeUncertain,
                        say("speed does not fall as load rises, so no maximum can be read off")};
    OneRmChange change{.estimate = *after - *before,
                       .mvtResidue = from.mvt->sd.value_or(0) *
                                     std::abs(1 / lines.first().slope - 1 / lines.second().slope),
                       .measured = measuredChange(from.session, to.session)};
    change.interval = twoDaysAlone(uncertainty, mvt, settings.level);
    change.read = readWithBend(
        change.estimate, [&](double level) { return uncertainty.maxStraight(mvt, level); },
        uncertainty.bendOfMax(mvt), settings.level, settings.smallestOneRm);
    if (!change.interval || change.read.reading == Reading::NoFigure) {
        change.read = {.change = change.estimate, .smallest = settings.smallestOneRm};
        notes.push_back({Note::Kind::SlopeUncertain,
                         say("a slope is not certain enough to bound the change of the estimated "
                             "max")});
    }
    const auto& smallest = settings.smallestOneRm;
    const bool single = !uncertainty.sides || (uncertainty.sides->earlier.lines.size() == 1 &&
                                               uncertainty.sides->later.lines.size() == 1);
    if (single && change.read.reading == Reading::Unclear && smallest && smallest->value > 0)
        change.unsettled = repeatsQuestion(uncertainty.ofMax(mvt), settings.dayNoise,
                                           smallest->value, settings.level);
    noteTheThreshold(from, change.mvtResidue, notes);
    return change;
}

} // namespace slopebook::answers
