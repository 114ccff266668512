// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/told.h"

#include "core/answers/figures.h"
#include "core/answers/planbounds.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace slopebook::answers {

namespace {

constexpr double leastMass = 0.05;     // kg: less is 0.0 as it is shown
constexpr double leastChange = 0.0005; // m/s: less is 0.000

bool unclearWithFigures(const ReadChange& read) {
    return read.reading == Reading::Unclear && read.shows() > 0;
}

double spanOf(const stats::Interval& error) {
    return error.high - error.low;
}

Words endOfDoubt(double reach) {
    return reach < OneRm::farMark
               ? say("the same loads each time, or one load near 80 % of the max, end that doubt "
                     "in a change")
               : say("the same loads each time end that doubt in a change");
}

} // namespace

Words toldSpeed(const ReadChange& read) {
    const Words reading = readingWords(read, 3);
    return unclearWithFigures(read)
               ? say("%1: such tests show from %2 m/s up", reading, figure(read.shows(), 3))
               : reading;
}

Words toldMax(const ReadChange& read) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read)
               ? say("%1: such tests show from %2 up", reading, massWords(read.shows(), asEstimate))
               : reading;
}

Words speedCell(const ReadChange& read) {
    const Words reading = readingWords(read, 3);
    return unclearWithFigures(read) ? say("%1; shows from %2", reading, figure(read.shows(), 3))
                                    : reading;
}

Words maxCell(const ReadChange& read) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read)
               ? say("%1; shows from %2", reading, massWords(read.shows(), asEstimate))
               : reading;
}

std::optional<ReadChange> maxIfStraight(const Comparison& c) {
    if (!c.oneRm || c.oneRm->read.reading == Reading::NoFigure)
        return std::nullopt;
    const double mvt = c.from.mvt->value;
    return readWithBend(
        c.oneRm->read.change, [&](double level) { return c.uncertainty.maxStraight(mvt, level); },
        {0, 0}, c.settings.level, c.oneRm->read.smallest);
}

Words ifStraightWords() {
    return say("as if lines were straight");
}

Words bendInWords() {
    return say("bend allowance in");
}

Words bendWords(const Profile& profile) {
    if (!profile.oneRm || spanOf(profile.oneRm->bend) < leastMass)
        return {};
    const OneRm& oneRm = *profile.oneRm;
    std::vector<Words> all{say(
        "lifts bend a little: a straight line through these loads may read the max %1 to %2 off",
        massWords(oneRm.bend.low, bareChange), massWords(oneRm.bend.high, asChange))};
    all.push_back(endOfDoubt(oneRm.reach));
    const Bend& bend = profile.beyond.bend;
    if (!bend.envelope && bend.ladders == 0)
        all.push_back(say("%1 own full ladders narrow it", laddersNeeded));
    return clauses(std::move(all));
}

Words bendWords(const Comparison& c) {
    if (!c.oneRm || c.oneRm->read.reading == Reading::NoFigure || c.settings.bend.relations.empty())
        return {};
    const stats::Interval& error = c.oneRm->read.bend;
    const bool flatters = error.high >= leastMass, belittles = error.low <= -leastMass;
    if (!flatters && !belittles)
        return say(
            "both ladders reach alike: what lines may bend cancels in the change of the max");
    const Words better = massWords(error.high, asEstimate);
    const Words worse = massWords(-error.low, asEstimate);
    const Words looks =
        flatters && belittles
            ? say("lines bend a little: the change of the max may look up to %1 better or "
                  "%2 worse than it is",
                  better, worse)
        : flatters
            ? say("lines bend a little: the change of the max may look up to %1 better than it is",
                  better)
            : say("lines bend a little: the change of the max may look up to %1 worse than it is",
                  worse);
    return clauses({looks, endOfDoubt(std::min(c.from.oneRm->reach, c.to.oneRm->reach))});
}

Words bendSource(const Bend& bend) {
    if (bend.relations.empty())
        return say("no bend allowance is made: lines are taken as straight");
    if (bend.envelope)
        return say(
            "bend allowance: any of the shipped curves, for none is published for this lift");
    const Words source = asIs(cited(bend.source()));
    return bend.ladders > 0
               ? say("bend allowance: %1 to %2 times the published curve of the lift (%3), by %4 "
                     "own full ladders",
                     figure(bend.kappa.low, 2), figure(bend.kappa.high, 2), source, bend.ladders)
               : say("bend allowance: none up to all of the published curve of the lift (%1)",
                     source);
}

Words tiltWords(const DayNoise& noise) {
    const double percent = 100 * noise.slopeCv();
    return percent >= 0.05
               ? say("days tilt a line as well: its slope by %1 % (SD), about 60 % of the max",
                     figure(percent, 1))
               : Words();
}

Words liftedWords(const Profile& profile) {
    return say("%1 was lifted that day: the max is no less", massWords(profile.heaviestLifted()));
}

Words planWithWords(const Profile& profile) {
    if (!profile.oneRm)
        return {};
    const OneRm& oneRm = *profile.oneRm;
    const auto ends = [](const stats::Interval& held) {
        return std::pair(massWords(held.low, bareEstimate), massWords(held.high, asEstimate));
    };
    if (plansCalibrated(oneRm)) {
        const auto [low, high] = ends(*oneRm.calibratedToPlan);
        return say("estimated 1RM by the log's own maxima %1; to plan with %2 to %3",
                   massWords(*oneRm.calibrated, asEstimate), low, high);
    }
    const Words estimate = massWords(oneRm.estimate, asEstimate);
    if (const auto& bounded = toPlanWith(oneRm); !oneRm.toPlan && bounded) {
        const auto [low, high] = ends(*bounded);
        return oneRm.withMvt
                   ? say("estimated 1RM %1; to plan with %2 to %3, by the line and the MVT's own "
                         "SD "
                         "alone: days and bend leave it unbounded",
                         estimate, low, high)
                   : say("estimated 1RM %1; to plan with %2 to %3, by the line alone: days and "
                         "bend leave it unbounded",
                         estimate, low, high);
    }
    if (!oneRm.toPlan)
        return profile.line.hasInference()
                   ? say("estimated 1RM %1; to plan with not bounded: lift loads further apart, "
                         "and heavier ones",
                         estimate)
                   : say("estimated 1RM %1, without an interval", estimate);
    const auto [low, high] = ends(*oneRm.toPlan);
    if (!oneRm.straight)
        return say("estimated 1RM %1; to plan with %2 to %3", estimate, low, high);
    const auto [straightLow, straightHigh] = ends(*oneRm.straight);
    return say("estimated 1RM %1; to plan with %2 to %3 (as if straight %4 to %5)", estimate, low,
               high, straightLow, straightHigh);
}

Words canShowWords(const LadderForecast& ladder, bool byOneRm) {
    std::vector<Words> all;
    for (const ChangeForecast& change : ladder.changes) {
        const double bend = spanOf(change.bend) / 2;
        const Words from = figure(change.reading, 3);
        all.push_back(bend >= leastChange
                          ? say("at %1 changes from %2 m/s up, of which the bend takes %3",
                                change.load, from, figure(bend, 3))
                          : say("at %1 changes from %2 m/s up", change.load, from));
    }
    if (ladder.oneRmChange) {
        const double bend = spanOf(ladder.bendChange) / 2;
        const Words from = massWords(*ladder.oneRmChange, asEstimate);
        all.push_back(bend >= leastMass
                          ? say("of the estimated 1RM changes from %1 up, of which the bend takes "
                                "%2 (the same loads both times: none)",
                                from, massWords(bend, asEstimate))
                          : say("of the estimated 1RM changes from %1 up", from));
    } else if (byOneRm) {
        all.push_back(say("of the estimated 1RM none: it cannot be bounded"));
    }
    if (all.empty())
        return {};
    return say("this test and one by the first ladder can show: %1; smaller changes will stay "
               "unclear, whatever the athlete did",
               clauses(std::move(all)));
}

} // namespace slopebook::answers
