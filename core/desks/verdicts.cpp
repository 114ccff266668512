// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/verdicts.h"

namespace slopebook::desks {

namespace {
bool unchangedSince(const Trail& trail, const Trail& other) {
    const log::Step* last = log::lastCommon(trail, other);
    return last != nullptr && last->hash == trail.back().hash;
}
} // namespace

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
