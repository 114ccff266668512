// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/nowords.h"

#include "core/desks/numbers.h"
#include "core/desks/sameones.h"

namespace slopebook::desks {

namespace {
using Became = std::multimap<Slot, Slot>;

/// What says that it is one with another, or of which another says so.
Became becameOn(const Slots& known, const Desk& desk) {
    std::map<Sixteen, Slot> notes;
    for (const auto& [slot, atom] : desk)
        if (atom.thing && isOneByName(*atom.thing))
            notes.emplace(noteOf(known.uuid(slot)), slot);
    Became became;
    for (const auto& [slot, atom] : desk) {
        if (!atom.thing)
            continue;
        const auto* session = std::get_if<log::SessionThing>(&*atom.thing);
        if (session != nullptr && session->into)
            became.emplace(slot, known.find(*session->into));
        if (isOneByName(*atom.thing))
            for (const log::Step& step : atom.trail)
                if (const auto at = notes.find(step.revision); at != notes.end())
                    became.emplace(at->second, slot);
    }
    return became;
}
} // namespace

NoWords::NoWords(const Meeting& meeting) : m_meeting(meeting) {
    const Became became = becameOn(meeting.known, meeting.desk);
    for (const auto& [first, second] : became) {
        std::vector<Slot> reached{first};
        for (std::size_t at = 0; at < reached.size(); ++at) {
            const auto [from, to] = became.equal_range(reached[at]);
            for (auto next = from; next != to; ++next)
                if (next->second != first && m_were[next->second].insert(first).second)
                    reached.push_back(next->second);
        }
    }
}

/// What it said before it was led where it is: of each thing that it speaks of one that became
/// that. The thing itself is the first.
std::vector<Thing> NoWords::ledBack(const Thing& thing) const {
    constexpr std::size_t mostTried = 16;
    std::vector<Thing> all{thing};
    std::size_t count = 0;
    eachReference(thing, [&](Slot) { ++count; });
    for (std::size_t which = 0; which < count; ++which)
        for (std::size_t i = 0, end = all.size(); i < end; ++i) {
            Slot of = 0;
            std::size_t at = 0;
            eachReference(all[i], [&](Slot slot) { of = at++ == which ? slot : of; });
            const auto were = m_were.find(of);
            if (were == m_were.end())
                continue;
            for (const Slot was : were->second) {
                if (all.size() >= mostTried)
                    return all;
                Thing back = all[i];
                at = 0;
                visitReferences(back, [&](Slot slot) { return at++ == which ? was : slot; });
                all.push_back(std::move(back));
            }
        }
    return all;
}

/// The number with which it says what both last agreed on, 0 of what has none; nothing: the coach
/// said something of it since. The trails hold hashes only, so that what it may have said is tried.
std::optional<int> NoWords::agreedNumber(const Atom& atom, const Atom& other) const {
    const log::Step* last = lastAgreed(atom.trail, other.trail);
    if (last == nullptr || !atom.thing)
        return std::nullopt;
    const auto agreed = [&](const Thing& said) {
        return log::stepHash(hashOf(m_meeting.known, said), atom.alive) == last->hash;
    };
    const std::vector<Thing> all = ledBack(*atom.thing);
    for (const Thing& said : all) {
        const int* number = numberOf(said);
        if (agreed(said))
            return number == nullptr ? 0 : *number;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool isItself = i == 0; // numbered otherwise than a log does it by the coach alone
        if (isItself && !isNumberedAnew(all[i]))
            continue;
        if (const auto number = numberAt(m_meeting.known, all[i], atom.alive, last->hash))
            return number;
    }
    return std::nullopt;
}

Weighed NoWords::weighed(Verdict verdict, const Atom& mine, const Atom& theirs) const {
    Weighed all{.verdict = verdict};
    const auto myNumber = agreedNumber(mine, theirs);
    const auto theirNumber = agreedNumber(theirs, mine);
    if (myNumber && theirNumber) // there is nothing to choose
        all.verdict = verdict == Verdict::ChooseMine     ? Verdict::JoinMine
                      : verdict == Verdict::ChooseTheirs ? Verdict::JoinTheirs
                                                         : verdict;
    if (myNumber.has_value() == theirNumber.has_value())
        return all;
    all.verdict = myNumber ? Verdict::JoinTheirs : Verdict::JoinMine;
    const Atom& stands = myNumber ? theirs : mine;
    const Atom& moved = myNumber ? mine : theirs;
    if (stands.alive && isNumberedAnew(*stands.thing) &&
        *numberOf(*stands.thing) == (myNumber ? *myNumber : *theirNumber))
        all.number = *numberOf(*moved.thing);
    return all;
}

} // namespace slopebook::desks
