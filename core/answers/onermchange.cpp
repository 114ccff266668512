// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"
#include "core/model/phrases/answers.h"

#include <cmath>

namespace slopebook::answers {

namespace {

/// Of the two days alone: the scatter about the lines, by variance recovery; nothing where a side
/// cannot be bounded.
std::optional<stats::Interval> twoDaysAlone(const ChangeUncertainty& u, double mvt, double level) {
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

/// In kg on each side, by the delta method; a day's variance is that of the two lines' mean.
std::optional<RepeatsQuestion> questionOf(const ChangeUncertainty& u, double mvt,
                                          const ComparisonSettings& settings) {
    const auto& smallest = settings.smallestOneRm;
    if (!smallest || !(smallest->value > 0))
        return std::nullopt;
    const auto inKg = [](double variance, const stats::Line& line) {
        return variance / (line.slope * line.slope);
    };
    const auto estimate = [&](const stats::Line& line) {
        return line.xMean + (mvt - line.yMean) / line.slope;
    };
    const auto ofLine = [&](const stats::Line& line) {
        const double d = (mvt - line.yMean) / line.slope;
        return stats::Variance{inKg(u.scatter(line).s2 * (1.0 / line.n + d * d / line.sxx), line),
                               u.lines.df()};
    };
    const auto ofDay = [&](const stats::Line& line) {
        return inKg(u.day.at(estimate(line)), line);
    };
    const double day = (ofDay(u.lines.first()) + ofDay(u.lines.second())) / 2;
    return RepeatsQuestion{.earlier = ofLine(u.lines.first()),
                           .later = ofLine(u.lines.second()),
                           .day = {day, u.day.df},
                           .dayExpected = day * settings.dayNoise.expectedRatio(),
                           .span = u.bend.ofMax().high - u.bend.ofMax().low,
                           .standing = {inKg(u.device.value, u.lines.second()), u.device.df},
                           .smallest = smallest->value,
                           .level = settings.level};
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
    const auto estimate = [&](const stats::Line& l) { return l.xMean + (mvt - l.yMean) / l.slope; };
    OneRmChange change{.estimate = estimate(lines.second()) - estimate(lines.first()),
                       .mvtResidue = from.mvt->sd.value_or(0) *
                                     std::abs(1 / lines.first().slope - 1 / lines.second().slope),
                       .measured = measuredChange(from.session, to.session)};
    change.interval = twoDaysAlone(uncertainty, mvt, settings.level);
    change.read = readWithBend(
        change.estimate, [&](double level) { return uncertainty.maxStraight(mvt, level); },
        uncertainty.bend.ofMax(), settings.level, settings.smallestOneRm);
    if (!change.interval || change.read.reading == Reading::NoFigure) {
        change.read = {.change = change.estimate, .smallest = settings.smallestOneRm};
        notes.push_back({Note::Kind::SlopeUncertain,
                         say("a slope is not certain enough to bound the change of the estimated "
                             "max")});
    }
    if (change.read.reading == Reading::Unclear)
        change.unsettled = questionOf(uncertainty, mvt, settings);
    noteTheThreshold(from, change.mvtResidue, notes);
    return change;
}

} // namespace slopebook::answers
