// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/meeting.h"

#include "core/desks/ends.h"
#include "core/desks/sameones.h"
#include "core/desks/twins.h"

#include <algorithm>
#include <tuple>

namespace slopebook::desks {

namespace {
/// Whether something of it would be lost if it became one with that.
bool saysMore(const Thing& lost, const Thing& holder) {
    if (const auto* session = std::get_if<log::SessionThing>(&lost)) {
        const SessionHead& one = session->head;
        const SessionHead& other = std::get<log::SessionThing>(holder).head;
        return (one.bodyMass && one.bodyMass != other.bodyMass) ||
               (!one.note.empty() && one.note != other.note) ||
               (one.repeatOf && one.repeatOf != other.repeatOf);
    }
    if (const auto* one = std::get_if<log::LiftConditionsThing>(&lost))
        return one->conditions != std::get<log::LiftConditionsThing>(holder).conditions;
    if (const auto* one = std::get_if<log::TestConditionsThing>(&lost))
        return one->conditions != std::get<log::TestConditionsThing>(holder).conditions;
    if (isOneByName(lost))
        return saysMoreThan(lost, holder);
    return false; // a check load and a turn are what their key says
}
} // namespace

Meeting::Meeting(Slots& theSlots, Desk& mine, const Desk& theirs, const Rules& theRules,
                 const MetBefore* met)
    : known(theSlots), desk(mine), rules(theRules) {
    for (const auto& [slot, atom] : mine)
        if (!theirs.contains(slot) && (met == nullptr || !met->things.contains(slot)))
            m_newlyMet.insert(slot);
    for (const auto& [slot, atom] : theirs)
        if (!mine.contains(slot))
            m_newlyMet.insert(slot);
    if (met == nullptr)
        return;
    m_stored = met->things;
    m_notOurs = met->notOurs;
    m_usedUnseen = met->usedUnseen;
    for (const auto& [slot, atom] : theirs)
        m_stored.insert(slot);
}

void Meeting::sort(std::vector<Slot>& some) const {
    std::ranges::sort(some, {}, [&](Slot slot) {
        const std::optional<Thing>& thing = desk.at(slot).thing;
        const int* number = thing ? numberOf(*thing) : nullptr;
        return std::tuple(thing ? thing->index() : 0, number == nullptr ? 0 : *number,
                          known.uuid(slot));
    });
}

// Who holds a key and in which order the others yield comes of what is there, not of whose it was:
// both desks come to the same.
void Meeting::placeAll() {
    if (!rules.yields)
        return;
    joinAgain();
    for (const auto& [slot, atom] : desk) {
        std::string key = atom.alive ? keyOf(*atom.thing) : std::string();
        if (key.empty())
            continue;
        const auto [at, isNew] = m_holders.emplace(std::move(key), slot);
        // what others may speak of already, in squads that are not seen here, stays what it is; and
        // what this desk may not write would wait for ever with another name
        const auto rank = [&](Slot one) {
            return std::tuple(!m_notOurs.contains(one), !m_usedUnseen.contains(one),
                              !m_stored.contains(one), known.uuid(one));
        };
        if (!isNew && rank(slot) < rank(at->second))
            at->second = slot;
    }
    std::vector<Slot> yielding;
    for (const auto& [slot, atom] : desk)
        if (atom.alive)
            if (const auto at = m_holders.find(keyOf(*atom.thing));
                at != m_holders.end() && at->second != slot &&
                (taken.touched.contains(slot) || taken.touched.contains(at->second)))
                yielding.push_back(slot);
    sort(yielding);
    for (const Slot slot : yielding)
        yield(slot, m_holders.at(keyOf(*desk.at(slot).thing)), Join::Yes);
}

void Meeting::place(Slot slot, Join join) {
    const std::string key = keyOf(*desk.at(slot).thing);
    if (key.empty() || !rules.yields)
        return;
    const auto [at, isNew] = m_holders.emplace(key, slot);
    if (!isNew && at->second != slot)
        yield(slot, at->second, join);
}

void Meeting::free(Slot slot) {
    const auto at = m_holders.find(keyOf(*desk.at(slot).thing));
    if (at != m_holders.end() && at->second == slot)
        m_holders.erase(at);
}

void Meeting::edit(Slot slot, Thing now, bool alive) {
    Atom& atom = desk.at(slot);
    atom.thing = std::move(now);
    atom.alive = alive;
    extend(known, atom);
    taken.touched.insert(slot);
}

void Meeting::yield(Slot slot, Slot holder, Join join) {
    const Thing& thing = *desk.at(slot).thing;
    if (mayBecomeOne(slot, holder, join)) {
        becomeOne(slot, holder);
    } else if (nameOf(thing) != nullptr) {
        giveAnotherName(slot);
    } else if (std::holds_alternative<log::SessionThing>(thing) ||
               std::holds_alternative<log::SetThing>(thing)) {
        renumber(slot);
    } else {
        becomeOne(slot, holder);
    }
}

bool Meeting::mayBecomeOne(Slot slot, Slot holder, Join join) const {
    const Thing& thing = *desk.at(slot).thing;
    if (join == Join::No)
        return false;
    if (std::holds_alternative<log::SessionThing>(thing))
        return rules.joins && m_newlyMet.contains(slot);
    return rules.joinsNamed && canBeOne(thing, *desk.at(holder).thing) &&
           (m_newlyMet.contains(slot) || m_newlyMet.contains(holder));
}

// What became one once is one, though a third desk went on with the other: what it changed there is
// listed. Of two that say so of each other the lesser UUID stays.
void Meeting::joinAgain() {
    if (!rules.joinsNamed)
        return;
    std::map<Sixteen, Slot> notes;
    std::vector<Slot> holders;
    for (const auto& [slot, atom] : desk)
        if (atom.alive && isOneByName(*atom.thing)) {
            notes.emplace(noteOf(known.uuid(slot)), slot);
            holders.push_back(slot);
        }
    sort(holders);
    for (const Slot holder : holders) {
        std::vector<Slot> noted;
        for (const log::Step& step : desk.at(holder).trail)
            if (const auto at = notes.find(step.revision); at != notes.end())
                noted.push_back(at->second);
        for (const Slot slot : noted) {
            const Atom& one = desk.at(holder);
            const Atom& lost = desk.at(slot);
            const bool mutual = known.uuid(slot) < known.uuid(holder) &&
                                log::holds(lost.trail, noteOf(known.uuid(holder)));
            if (slot == holder || !one.alive || !lost.alive || mutual ||
                !canBeOne(*lost.thing, *one.thing))
                continue;
            if (!m_usedUnseen.contains(slot))
                becomeOne(slot, holder);
            else if (!m_usedUnseen.contains(holder))
                becomeOne(holder, slot);
        }
    }
}

bool Meeting::joinsOneOfItsName(Slot slot) {
    const Atom& atom = desk.at(slot);
    if (!rules.joinsNamed || !rules.yields || !atom.thing || !isOneByName(*atom.thing))
        return false;
    const auto at = m_holders.find(keyOf(*atom.thing));
    if (at == m_holders.end() || !canBeOne(*atom.thing, *desk.at(at->second).thing))
        return false;
    becomeOne(slot, at->second);
    return true;
}

void Meeting::becomeOne(Slot slot, Slot holder) {
    const Atom& atom = desk.at(slot);
    if (saysMore(*atom.thing, *desk.at(holder).thing)) {
        Atom lost = atom;
        lost.alive = true; // what it says is in question, not whether it is there
        list(Why::Joined, slot, lost);
    }
    Thing now = *atom.thing;
    auto* session = std::get_if<log::SessionThing>(&now);
    if (session != nullptr)
        session->into = known.uuid(holder);
    if (isOneByName(now)) {
        noteOne(known, desk.at(holder), known.uuid(slot));
        taken.touched.insert(holder);
    }
    if (session != nullptr || isOneByName(now)) {
        taken.told.push_back({.what = Told::What::Joined, .about = slot, .into = holder});
    }
    if (!atom.alive)
        return; // it was removed before
    isOneWith(slot, holder);
    edit(slot, std::move(now), false);
}

void Meeting::isOneWith(Slot slot, Slot other) {
    ++taken.joined;
    if (arrived.erase(slot) == 0)
        arrived.erase(other);
}

// "Ada" of "Ada (2)" where there is an Ada: "Rower (2019)" is a name of its own.
std::string Meeting::rootOf(const Thing& named) const {
    Thing root = named;
    *nameOf(root) = withoutNumber(*nameOf(named));
    return isFree(root) ? *nameOf(named) : *nameOf(root);
}

void Meeting::giveAnotherName(Slot slot) {
    const Atom& atom = desk.at(slot);
    list(Why::SameName, slot, atom);
    Thing now = *atom.thing;
    std::string& name = *nameOf(now);
    taken.told.push_back({.what = Told::What::Renamed, .about = slot, .before = name});
    const std::string root = rootOf(now);
    for (int number = 2; !isFree(now); ++number)
        name = root + " (" + std::to_string(number) + ")";
    m_holders.emplace(keyOf(now), slot);
    edit(slot, std::move(now), true);
}

void Meeting::renumber(Slot slot) {
    const Atom& atom = desk.at(slot);
    Thing now = *atom.thing;
    if (std::holds_alternative<log::SessionThing>(now)) { // a set's number is no word of the coach
        list(Why::SameNumber, slot, atom);
        taken.told.push_back({.what = Told::What::Renumbered,
                              .about = slot,
                              .before = std::to_string(*numberOf(now))});
    }
    while (!isFree(now))
        ++*numberOf(now);
    m_holders.emplace(keyOf(now), slot);
    edit(slot, std::move(now), true);
}

void Meeting::countJoined() {
    const Ends ends(known, desk);
    const Twins twins(*this, ends);
    for (const Slot slot : gone) {
        const Atom& atom = desk.at(slot);
        if (atom.alive || !atom.thing)
            continue;
        const Thing led = ends.followed(*atom.thing);
        const auto holder = m_holders.find(keyOf(led));
        const bool sameKey = holder != m_holders.end() && nameOf(led) == nullptr &&
                             !std::holds_alternative<log::SessionThing>(led) &&
                             !std::holds_alternative<log::SetThing>(led);
        if (ends.of(slot) == 0 && !sameKey && (led == *atom.thing || !twins.stands(led)))
            continue;
        --taken.removed;
        ++taken.joined;
    }
}

void Meeting::list(Why why, Slot about, const Atom& lost) {
    if (rules.lists && !(lost.thing && std::holds_alternative<log::ConflictThing>(*lost.thing)))
        m_noted.push_back({why, about, lost});
}

// Named by what it is about and by the state that does not stand: listed on two desks it is one.
void Meeting::writeList() {
    for (const Noted& noted : m_noted) {
        if (!noted.lost.alive && !desk.at(noted.about).alive)
            continue; // gone on one desk, and one with another on both since: there is no choice
        const Sixteen about = known.uuid(noted.about); // known grows below
        const Sixteen& revision = log::revisionOf(noted.lost.trail);
        const Slot slot = known.of("conflict", log::conflictUuid(about, revision));
        if (desk.contains(slot))
            continue;
        log::ConflictThing conflict{.about = about,
                                    .revision = revision,
                                    .why = std::string(word(noted.why)),
                                    .lived = noted.lost.alive};
        if (noted.lost.thing)
            conflict.content = bytesOf(known, *noted.lost.thing);
        Atom& atom = desk.emplace(slot, Atom{.thing = std::move(conflict)}).first->second;
        extend(known, atom);
        taken.touched.insert(slot);
        taken.told.push_back({.what = Told::What::Listed, .about = slot});
    }
}

} // namespace slopebook::desks
