// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/nexttestwords.h"

#include "core/answers/figures.h"
#include "core/answers/readingwords.h"
#include "core/model/phrases/answers.h"

#include <vector>

namespace slopebook::answers {

Words ladderWords(LadderForecast::Kind kind) {
    switch (kind) {
    case LadderForecast::Kind::BestForOneRm:
        return say("best for the 1RM");
    case LadderForecast::Kind::BestForChange:
        return say("best for the check loads");
    case LadderForecast::Kind::TwoExtremes:
        return say("two extremes");
    case LadderForecast::Kind::SameAsLast:
        return say("as last time");
    case LadderForecast::Kind::Even:
        return say("even steps");
    case LadderForecast::Kind::BestInSteps:
        break;
    }
    return say("best without a great step");
}

Words fewLoadsCaution(const LadderForecast& ladder) {
    return ladder.distinct < 3
               ? say("Two loads cannot show whether the points bend, and one slip of a set bends "
                     "the whole line")
               : Words();
}

Words canShowWords(const LadderForecast& ladder, bool byOneRm) {
    std::vector<Words> all;
    for (const ChangeForecast& change : ladder.changes) {
        const double bend = change.bend.width() / 2;
        const Words from = clearFrom(change.reading, saidSpeedDecimals);
        all.push_back(bend >= leastShownSpeed
                          ? say("at %1 changes from %2 m/s up, of which the bend takes %3",
                                change.load, from, figure(bend, 3))
                          : say("at %1 changes from %2 m/s up", change.load, from));
    }
    if (ladder.oneRmChange) {
        const double bend = ladder.bendChange.width() / 2;
        const Words from = massWords(*ladder.oneRmChange, asEstimate);
        all.push_back(bend >= leastShownMass
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
