// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/bendwords.h"

#include "core/answers/figures.h"
#include "core/answers/sources.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace slopebook::answers {

namespace {

Words endOfDoubt(double reach) {
    return reach < OneRm::farMark
               ? say("the same loads each time, or one load near 80 % of the max, end that doubt "
                     "in a change")
               : say("the same loads each time end that doubt in a change");
}

} // namespace

std::optional<ReadChange> maxIfStraight(const Comparison& c) {
    if (!c.oneRm || c.allAtOnce) // with all blocks at once its interval would be another
        return std::nullopt;
    // What is not comparable has its change and its interval, and no reading.
    const stats::Interval& bent = c.oneRm->read.interval;
    if (c.oneRm->read.reading == Reading::NoFigure &&
        (c.under.notComparable.empty() || !std::isfinite(bent.high - bent.low)))
        return std::nullopt;
    const double mvt = c.from.mvt->value;
    ReadChange straight = readWithBend(
        c.oneRm->read.change, [&](double level) { return c.uncertainty.maxStraight(mvt, level); },
        {0, 0}, c.settings.level, c.oneRm->read.smallest);
    setUnder(straight, c.under);
    return straight;
}

Words ifStraightWords() {
    return say("as if lines were straight");
}

Words bendInWords() {
    return say("bend allowance in");
}

Words bendWords(const Profile& profile) {
    if (!profile.oneRm || profile.oneRm->bend.width() < leastShownMass)
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
    const bool flatters = error.high >= leastShownMass, belittles = error.low <= -leastShownMass;
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
    const Words source = sourceWords(cited(bend.source()));
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

} // namespace slopebook::answers
