// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/verdicts.h"

#include <algorithm>

namespace slopebook::desks {

namespace {
/// Of a step that is no state of the thing.
const Sixteen& choiceHash() {
    static const Sixteen hash = log::hashOf("chosen of two sides");
    return hash;
}

bool unchangedSince(const Trail& trail, const Trail& other) {
    const log::Step* last = lastAgreed(trail, other);
    return last != nullptr && last->hash == trail.back().hash;
}
} // namespace

const log::Step* lastAgreed(const Trail& trail, const Trail& other) {
    const log::Step* last = log::lastCommon(trail, other);
    const log::Step* const end = trail.data() + trail.size();
    const bool chosen = last != nullptr && std::any_of(last, end, [](const log::Step& step) {
                            return step.hash == choiceHash();
                        });
    return chosen ? nullptr : last;
}

Verdict verdictOn(const Side& mine, const Side& theirs) {
    const log::Step& m = mine.trail.back();
    const log::Step& t = theirs.trail.back();
    if (m.revision == t.revision)
        return Verdict::Same;
    const bool mineInTheirs = log::holds(theirs.trail, m.revision);
    const bool theirsInMine = log::holds(mine.trail, t.revision);
    if (mineInTheirs != theirsInMine)
        return mineInTheirs ? Verdict::Theirs : Verdict::Mine;
    if (m.hash == t.hash)
        return Verdict::Same;
    const bool mineStayed = unchangedSince(mine.trail, theirs.trail);
    const bool theirsStayed = unchangedSince(theirs.trail, mine.trail);
    if (mineStayed != theirsStayed)
        return theirsStayed ? Verdict::JoinMine : Verdict::JoinTheirs;
    if (mine.alive != theirs.alive)
        return mine.alive ? Verdict::ChooseMine : Verdict::ChooseTheirs;
    return m.hash > t.hash ? Verdict::ChooseMine : Verdict::ChooseTheirs;
}

void noteChoice(Trail& trail) {
    log::extend(trail, choiceHash());
}

bool learn(Trail& trail, const Trail& other) {
    const Trail more = log::missingIn(trail, other);
    trail.insert(trail.end() - 1, more.begin(), more.end());
    return !more.empty();
}

Trail joined(const Trail& winner, const Trail& loser) {
    Trail all = winner;
    const Trail more = log::missingIn(winner, loser);
    all.insert(all.end(), more.begin(), more.end());
    const Sixteen hash = winner.back().hash;
    all.push_back(
        {.revision = log::revisionOfBoth(log::revisionOf(winner), log::revisionOf(loser), hash),
         .hash = hash});
    return all;
}

} // namespace slopebook::desks
