// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/taking.h"

#include "core/desks/ends.h"
#include "core/desks/meeting.h"
#include "core/desks/nowords.h"
#include "core/desks/numbers.h"
#include "core/desks/sameones.h"
#include "core/desks/twins.h"
#include "core/model/errors.h"
#include "core/model/phrases/desks.h"

#include <algorithm>

namespace slopebook::desks {

namespace {
Verdict verdictUnder(const Rules& rules, const Atom& mine, const Atom& theirs) {
    const Verdict verdict = verdictOn({mine.trail, mine.alive}, {theirs.trail, theirs.alive});
    if (!rules.trails && (verdict == Verdict::Theirs || verdict == Verdict::Mine))
        return mine.trail.back().revision > theirs.trail.back().revision ? Verdict::JoinMine
                                                                         : Verdict::JoinTheirs;
    if (!rules.alike && verdict == Verdict::ChooseMine)
        return Verdict::ChooseTheirs;
    return verdict;
}

bool theirsStands(Verdict verdict) {
    return verdict == Verdict::Theirs || verdict == Verdict::JoinTheirs ||
           verdict == Verdict::ChooseTheirs;
}

/// Attempts, gaps and turns are numbered anew with each write, and sets where two would have one
/// number: which of two numbers it has is nothing to choose.
bool differInNumberAlone(const Atom& mine, const Atom& theirs) {
    if (!mine.thing || !theirs.thing || mine.alive != theirs.alive ||
        (!isNumberedAnew(*mine.thing) && !std::holds_alternative<log::SetThing>(*mine.thing)))
        return false;
    Thing other = *theirs.thing;
    if (other.index() == mine.thing->index())
        *numberOf(other) = *numberOf(*mine.thing);
    return other == *mine.thing;
}

/// Mine and theirs: both went on from what they last agreed on.
bool bothWentOn(Verdict verdict) {
    return verdict != Verdict::Same && verdict != Verdict::Theirs && verdict != Verdict::Mine;
}

void count(Taken& taken, const Atom& before, const Atom& now) {
    if (before.alive != now.alive)
        ++(now.alive ? taken.added : taken.removed);
    else if (now.alive && before.thing != now.thing)
        ++taken.changed;
}

/// Of what was removed before logs kept contents the other may still know what it said: that is
/// taken where it is what the trail leads to. What else is known of it is kept for a return.
bool learnContent(Meeting& meeting, Slot slot, Atom& mine, const std::optional<Thing>& known) {
    if (mine.thing || !known)
        return false;
    if (log::stepHash(hashOf(meeting.known, *known), mine.alive) != mine.trail.back().hash) {
        meeting.lastKnown.insert_or_assign(slot, *known);
        return false;
    }
    mine.thing = known;
    return true;
}

/// One of those that others belong to and that may have become one with another.
bool mayHaveBecome(const std::optional<Thing>& thing) {
    return thing && (std::holds_alternative<log::SessionThing>(*thing) || isOneByName(*thing));
}

/// One state for each thing, of those that may have become another (noWords is nullptr then) or of
/// all else. Keys and what speaks of what come after.
void takeStates(Meeting& meeting, const Desk& theirs, bool thoseThatBecome,
                const NoWords* noWords) {
    for (const auto& [slot, other] : theirs) {
        if (mayHaveBecome(other.thing) != thoseThatBecome)
            continue;
        const auto held = meeting.desk.find(slot);
        if (held == meeting.desk.end() && !other.thing)
            continue; // of no use to who never had it
        if (held == meeting.desk.end()) {
            meeting.desk.emplace(slot, other);
            meeting.taken.touched.insert(slot);
            if (other.alive)
                meeting.arrived.insert(slot);
            continue;
        }
        Atom& mine = held->second;
        Weighed all{.verdict = verdictUnder(meeting.rules, mine, other)};
        if (noWords != nullptr && bothWentOn(all.verdict))
            all = noWords->weighed(all.verdict, mine, other);
        const auto& [verdict, number] = all;
        if ((verdict == Verdict::Same || verdict == Verdict::Mine) &&
            learn(mine.trail, other.trail)) // of one behind mine as well: it may know more of it
            meeting.taken.touched.insert(slot);
        if (verdict == Verdict::Same || verdict == Verdict::Mine)
            if (learnContent(meeting, slot, mine, other.thing))
                meeting.taken.touched.insert(slot);
        if (verdict == Verdict::Same || verdict == Verdict::Mine)
            continue;
        const bool chosen = verdict == Verdict::ChooseTheirs || verdict == Verdict::ChooseMine;
        if (chosen && !differInNumberAlone(mine, other))
            meeting.list(Why::BothChanged, slot, theirsStands(verdict) ? mine : other);
        const Atom before = mine;
        if (theirsStands(verdict)) {
            mine = other;
            count(meeting.taken, before, mine);
            if (before.alive && !mine.alive)
                meeting.gone.push_back(slot);
        }
        if (verdict == Verdict::Theirs)
            learn(mine.trail, before.trail);
        else
            mine.trail = theirsStands(verdict) ? joined(other.trail, before.trail)
                                               : joined(before.trail, other.trail);
        if (!learnContent(meeting, slot, mine, before.thing))
            learnContent(meeting, slot, mine, other.thing);
        if (number && *number != *numberOf(*mine.thing)) {
            *numberOf(*mine.thing) = *number;
            extend(meeting.known, mine);
        }
        meeting.taken.touched.insert(slot);
    }
}

/// A choice is named by what it is about, and can be shown.
void requireChoice(Slots& known, Slot slot, const log::ConflictThing& conflict) {
    if (known.uuid(slot) != log::conflictUuid(conflict.about, conflict.revision) ||
        !whyFromWord(conflict.why))
        throw BadInput(say("a choice that no meeting of two logs made"),
                       say("one under the identity of what it is about"));
    if (!conflict.content.empty())
        known.of(kindOf(thingOf(known, conflict.content)), conflict.about);
}

/// mine: what else is known to be there; nullptr: nothing.
void requireSense(Slots& known, const Desk& theirs, const Desk* mine) {
    for (const auto& [slot, atom] : theirs) {
        if (!atom.thing)
            continue;
        if (const auto* conflict = std::get_if<log::ConflictThing>(&*atom.thing))
            requireChoice(known, slot, *conflict);
        const std::string kind(kindOf(*atom.thing));
        eachReference(*atom.thing, [&, self = slot, lives = atom.alive](Slot of) {
            const auto spoken = theirs.find(of);
            const bool there = spoken == theirs.end() ? mine != nullptr && mine->contains(of)
                                                      : spoken->second.alive || !lives;
            if (!there || of == self)
                throw BadInput(say("a %1 that speaks of what is not there", kind),
                               say("what it speaks of in the same log"));
        });
        if (const int* number = numberOf(*atom.thing);
            number != nullptr && (*number < 1 || *number > mostNumbered))
            throw BadInput(say("number %1 of a %2", *number, kind),
                           say("a number from 1 to %1", mostNumbered));
    }
}

/// The removed things that it speaks of.
std::set<Slot> removedIn(const Meeting& meeting, const Atom& atom) {
    std::set<Slot> removed;
    if (atom.alive)
        eachReference(*atom.thing, [&](Slot of) {
            if (!meeting.desk.at(of).alive)
                removed.insert(of);
        });
    return removed;
}

/// Each test stands once at a station.
void eachTestOnce(Thing& thing) {
    auto* station = std::get_if<Station>(&thing);
    if (station == nullptr)
        return;
    std::vector<TestKindId> once;
    for (const TestKindId test : station->tests)
        if (std::ranges::find(once, test) == once.end())
            once.push_back(test);
    station->tests = std::move(once);
}

/// What belongs to something that became another goes there, behind what that has; what that has
/// already is removed.
void follow(Meeting& meeting) {
    std::vector<Slot> moving;
    for (const auto& [slot, atom] : meeting.desk)
        if (!removedIn(meeting, atom).empty())
            moving.push_back(slot);
    if (moving.empty())
        return;
    meeting.sort(moving);
    const Ends ends(meeting.known, meeting.desk);
    Twins twins(meeting, ends);
    for (const Slot slot : moving) {
        Thing now = *meeting.desk.at(slot).thing;
        bool moved = false;
        visitReferences(now, [&](Slot of) {
            const Slot end = ends.of(of);
            moved = moved || (end != 0 && end != of);
            return end == 0 ? of : end == slot ? Slot{0} : end; // a repeat of itself: of none
        });
        if (!moved)
            continue;
        meeting.free(slot);
        const Thing before = *meeting.desk.at(slot).thing;
        if (const Slot twin = twins.of(slot, now)) {
            meeting.isOneWith(slot, twin);
            meeting.edit(slot, before, false);
            continue;
        }
        eachTestOnce(now);
        putBehind(meeting, before, now);
        meeting.edit(slot, std::move(now), true);
        meeting.place(slot, Meeting::Join::Yes);
        twins.went(slot, before);
    }
}

/// What is removed and spoken of comes back.
void revive(Meeting& meeting) {
    for (;;) {
        std::set<Slot> wanted;
        for (const auto& [slot, atom] : meeting.desk)
            wanted.merge(removedIn(meeting, atom));
        if (wanted.empty())
            return;
        std::vector<Slot> order(wanted.begin(), wanted.end());
        meeting.sort(order);
        if (meeting.rules.follows &&
            std::erase_if(order, [&](Slot slot) { return meeting.joinsOneOfItsName(slot); }) > 0) {
            follow(meeting);
            continue;
        }
        for (const Slot slot : order) {
            const Atom& atom = meeting.desk.at(slot);
            const auto last = meeting.lastKnown.find(slot);
            if (!atom.thing && last == meeting.lastKnown.end())
                throw BadInput(say("something in use that was removed before logs kept what was"),
                               say("a log in which it still is"));
            meeting.list(Why::Revived, slot, atom);
            meeting.taken.told.push_back({.what = Told::What::Revived, .about = slot});
            Thing now = atom.thing ? *atom.thing : last->second;
            if (auto* session = std::get_if<log::SessionThing>(&now))
                session->into.reset();
            meeting.edit(slot, std::move(now), true);
            meeting.place(slot, Meeting::Join::No);
        }
    }
}
} // namespace

namespace {
/// Keys, and what speaks of what, once each thing has its state.
void putInPlace(Meeting& meeting) {
    meeting.placeAll();
    if (meeting.rules.follows)
        follow(meeting);
    if (meeting.rules.revives)
        revive(meeting);
    numberAnew(meeting);
    settleRepeats(meeting);
    meeting.writeList();
}
} // namespace

Taken take(Slots& known, Desk& mine, const Desk& theirs, const Rules& rules, const MetBefore* met) {
    requireSense(known, theirs, met == nullptr ? nullptr : &mine);
    Meeting meeting(known, mine, theirs, rules, met);
    if (met != nullptr)
        numberAsStored(meeting, theirs, met->asStored);
    takeStates(meeting, theirs, true, nullptr);
    const NoWords noWords(meeting);
    takeStates(meeting, theirs, false, rules.noWords ? &noWords : nullptr);
    if (!meeting.taken.touched.empty())
        putInPlace(meeting);
    if (!meeting.gone.empty())
        meeting.countJoined();
    meeting.taken.added += meeting.arrived.size();
    return std::move(meeting.taken);
}

std::set<Slot> settleDesk(Slots& known, Desk& desk, const std::set<Slot>& touched) {
    const Desk same = desk;                                        // nothing is new to anybody
    Meeting meeting(known, desk, same, {.lists = false}, nullptr); // the coach has just chosen
    meeting.taken.touched = touched;
    putInPlace(meeting);
    return std::move(meeting.taken.touched);
}

} // namespace slopebook::desks
