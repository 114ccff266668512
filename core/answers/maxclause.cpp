// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/maxclause.h"

#include "core/answers/readingwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

/// The clause with how far its estimates lie beyond any load lifted, where they lie far.
Words withReach(Words clause, const SentenceParts& parts) {
    const bool from = parts.reachFrom < OneRm::farMark;
    const bool to = parts.reachTo < OneRm::farMark;
    const Words first = figure(parts.reachFrom, 2), second = figure(parts.reachTo, 2);
    if (from && to)
        return first == second
                   ? say("%1 (reach %2 both times: extrapolations)", clause, first)
                   : say("%1 (reach %2, then %3: extrapolations)", clause, first, second);
    if (from)
        return say("%1 (the earlier one's reach %2: an extrapolation)", clause, first);
    if (to)
        return say("%1 (the later one's reach %2: an extrapolation)", clause, second);
    return clause;
}

/// Of the estimated max: as it is, more and less than the smallest change that matters.
struct Maxima {
    Phrase plain, more, less;
};
constexpr Maxima up{"estimated max up: %1 (%2 to %3)",
                    "estimated max up: %1 (%2 to %3), more than the smallest change that matters",
                    "estimated max up: %1 (%2 to %3), less than the smallest change that matters"};
constexpr Maxima down{
    "estimated max down: %1 (%2 to %3)",
    "estimated max down: %1 (%2 to %3), more than the smallest change that matters",
    "estimated max down: %1 (%2 to %3), less than the smallest change that matters"};

Phrase unclearMax(int leans) {
    if (leans == 0)
        return "no clear change of the estimated max: %1 (%2 to %3; a change is clear from %4 up)";
    if (leans > 0)
        return "no clear change of the estimated max, leaning to better: %1 (%2 to %3; a change is "
               "clear from %4 up)";
    return "no clear change of the estimated max, leaning to worse: %1 (%2 to %3; a change is "
           "clear from %4 up)";
}

Words verdict(const ReadChange& r) {
    const Words by = massWords(r.besideInterval(), asChange);
    const Words low = massWords(r.interval.low, bareChange);
    const Words high = massWords(r.interval.high, bareChange);
    if (r.reading == Reading::Held)
        return say("estimated max held: %1 (%2 to %3)", by, low, high);
    if (r.reading != Reading::Better && r.reading != Reading::Worse)
        return say(unclearMax(r.leans()), by, low, high, massWords(r.clearSize(), asEstimate));
    const Maxima& max = r.reading == Reading::Better ? up : down;
    return say(r.beyondSmallest   ? max.more
               : r.withinSmallest ? max.less
                                  : max.plain,
               by, low, high);
}

Words nothingOfMax(const SentenceParts& parts) {
    const Words low = signedFigure(parts.nothingOfMax->low, 0);
    const Words high = signedFigure(parts.nothingOfMax->high, 0);
    const Words reach = figure(std::min(parts.reachFrom, parts.reachTo), 2);
    return parts.lightLater
               ? say("the later day's light loads say nothing of the max (%1 to %2 %; reach %3)",
                     low, high, reach)
               : say("the earlier day's light loads say nothing of the max (%1 to %2 %; reach %3)",
                     low, high, reach);
}

} // namespace

Words maxClause(const SentenceParts& parts) {
    if (parts.nothingOfMax)
        return nothingOfMax(parts);
    return parts.oneRm ? withReach(verdict(parts.oneRm->read), parts)
                       : say("no estimated max: %1", parts.oneRmReason);
}

} // namespace slopebook::answers
