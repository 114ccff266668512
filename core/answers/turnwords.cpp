// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/turnwords.h"

#include "core/model/phrases/answers.h"

namespace slopebook::answers {

Words notLiftedHint(Mass notLifted) {
    return say("%1 was not lifted today: type a load if it is meant.", notLifted);
}

Words ceilingHint(Mass load, Mass ceiling) {
    return say("%1 is above the block's ceiling of %2: type it if it is meant.", load, ceiling);
}

Words estimateHint(Mass load, double estimate) {
    return say("%1 is above the estimated 1RM of %2: type it if it is meant.", load,
               massWords(estimate, toTenths));
}

Words noNextNotLifted(Mass notLifted) {
    return say("No next load:\n%1 was not lifted", notLifted);
}

Words noNextCeiling(Mass ceiling) {
    return say("No next load: the ladder's is above\nthe block's ceiling of %1", ceiling);
}

Words noNextEstimate() {
    return say("No next load: the ladder's\nis above the estimated 1RM");
}

Words nextUnder(Mass next, Mass notLifted) {
    return say("Next load %1:\n%2 was not lifted", next, notLifted);
}

Words turnWords(const LiftDue& due, const std::optional<Mass>& notLifted, bool ownLadder) {
    switch (due.why) {
    case NoLoad::NotLifted:
        return notLifted ? say("%1 was not lifted, and no load is offered under it.", *notLifted)
                         : Words();
    case NoLoad::AboveCeiling:
        return say("The ladder goes on above the block's ceiling.");
    case NoLoad::AboveEstimate:
        return say("The ladder goes on above the estimated 1RM: type the load if it is meant.");
    case NoLoad::NoLadder:
        return say("No ladder is planned, and there is none of last time.");
    case NoLoad::None:
    case NoLoad::Out:
    case NoLoad::Done:
        break;
    }
    if (due.retry && notLifted)
        return say("%1 was not lifted.", *notLifted);
    return due.next && ownLadder ? say("By the ladder of last time.") : Words();
}

} // namespace slopebook::answers
