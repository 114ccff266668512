// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/conflictsides.h"

#include "core/desks/ends.h"
#include "core/desks/reading.h"
#include "core/desks/sameones.h"
#include "core/desks/writing.h"
#include "core/log/conflicts.h"
#include "core/log/failure.h"
#include "core/model/errors.h"
#include "core/model/phrases/desks.h"

#include <algorithm>
#include <map>
#include <utility>

namespace slopebook::desks {

namespace {
/// The fields in which two sides differ; of one that says nothing all of the other's.
std::vector<SideBySide> differing(const Desk& desk, const Thing* stands, const Thing* lost) {
    std::vector<SideBySide> rows;
    const auto left = stands != nullptr ? fieldsOf(desk, *stands) : std::vector<SaidField>{};
    const auto right = lost != nullptr ? fieldsOf(desk, *lost) : std::vector<SaidField>{};
    const std::size_t count = std::max(left.size(), right.size());
    for (std::size_t i = 0; i < count; ++i) {
        SideBySide row;
        if (i < left.size()) {
            row.field = left[i].field;
            row.stands = left[i].value;
        }
        if (i < right.size()) {
            row.field = right[i].field;
            row.lost = right[i].value;
        }
        if (row.stands != row.lost)
            rows.push_back(std::move(row));
    }
    return rows;
}

LogError notOpen() {
    return {LogError::Kind::Conflict,
            say("That choice is not open any more. Nothing was changed.")};
}

[[noreturn]] void refuseAt(const Desk& desk, Slot slot, Phrase phrase) {
    throw LogError(LogError::Kind::Conflict, say(phrase, nameOnDesk(desk, slot)));
}

/// A name or a day's number that another thing has now would be yielded again at once.
void requireFreeKey(const Desk& desk, Slot slot) {
    const Atom& wanted = desk.at(slot);
    if (!wanted.alive || (nameOf(*wanted.thing) == nullptr &&
                          !std::holds_alternative<log::SessionThing>(*wanted.thing)))
        return;
    const std::string key = keyOf(*wanted.thing);
    for (const auto& [other, atom] : desk)
        if (other != slot && atom.alive && keyOf(*atom.thing) == key)
            refuseAt(desk, other,
                     "That name or number is taken by another: %1. Change that one first. Nothing "
                     "was changed.");
}

/// What is removed while something that lives speaks of it would come back at once.
void requireUnused(const Desk& desk, Slot slot) {
    for (const auto& [other, atom] : desk)
        if (other != slot && atom.alive)
            eachReference(*atom.thing, [&, user = other](Slot of) {
                if (of == slot)
                    refuseAt(desk, user,
                             "It cannot be removed while it is in use: %1. Remove that first. "
                             "Nothing was changed.");
            });
}

/// A session that cannot repeat that one would be no repeat again at once.
void requireRepeat(const Desk& desk, Slot slot) {
    const auto* session = std::get_if<log::SessionThing>(&*desk.at(slot).thing);
    if (session == nullptr || !session->head.repeatOf)
        return;
    const Slot of = raw(*session->head.repeatOf);
    const auto at = desk.find(of);
    const auto* first = at == desk.end() || !at->second.thing
                            ? nullptr
                            : std::get_if<log::SessionThing>(&*at->second.thing);
    if (first == nullptr || of == slot || first->head.athlete != session->head.athlete ||
        first->head.repeatOf == SessionId{slot})
        refuseAt(desk, of,
                 "It cannot repeat that session: %1. Change that one first. Nothing was changed.");
}

/// Of such things there is one for each key, and its key is all that it is known by.
bool isKnownByKey(const Thing& thing) {
    return nameOf(thing) == nullptr && !std::holds_alternative<log::SessionThing>(thing) &&
           !std::holds_alternative<log::SetThing>(thing) && !keyOf(thing).empty();
}

/// What counts where the thing itself is gone since it became one with another; else itself.
Slot standingFor(const Slots& known, const Desk& desk, Slot about, const Thing& lost) {
    if (const Slot end = livingEnd(known, desk, about))
        return end;
    if (isKnownByKey(lost)) {
        const std::string key = keyOf(Ends(known, desk).followed(lost));
        for (const auto& [slot, atom] : desk)
            if (atom.alive && keyOf(*atom.thing) == key)
                return slot;
    }
    return about;
}

/// What lost, said by what counts in its place: that keeps its day and number, and its name but for
/// another one that a coach gave.
Thing saidBy(const Slots& known, const Desk& desk, Slot slot, Slot about, Thing lost) {
    lost = Ends(known, desk).followed(std::move(lost));
    if (std::string* name = slot == about ? nullptr : nameOf(lost))
        if (const std::string& now = *nameOf(*desk.at(slot).thing); sameRoot(*name, now))
            *name = now;
    if (const int* number = slot == about ? nullptr : numberOf(*desk.at(slot).thing))
        *numberOf(lost) = *number;
    if (auto* session = std::get_if<log::SessionThing>(&lost)) {
        session->into.reset();
        if (session->head.repeatOf == SessionId{slot})
            session->head.repeatOf.reset();
    }
    return lost;
}

Why whyOf(const log::ConflictThing& conflict) {
    return whyFromWord(conflict.why).value_or(Why::BothChanged);
}
} // namespace

ShownConflict shownConflict(Slots& known, const Desk& desk, Slot slot) {
    const auto& conflict = std::get<log::ConflictThing>(*desk.at(slot).thing);
    const Slot about = known.of(conflict.about);
    ShownConflict shown{.uuid = known.uuid(slot),
                        .why = whyOf(conflict),
                        .about = nameOnDesk(desk, about),
                        .lived = conflict.lived,
                        .known = !conflict.content.empty()};
    std::optional<Thing> lost;
    try {
        if (shown.known)
            lost = thingOf(known, conflict.content);
    } catch (const BadInput&) { // in a log that was meddled with: it can still be settled
        shown.known = false;
    }
    Slot standing = about;
    if (lost && shown.lived) {
        standing = standingFor(known, desk, about, *lost);
        lost = saidBy(known, desk, standing, about, std::move(*lost));
    }
    const auto at = desk.find(standing);
    const Atom* atom = at == desk.end() ? nullptr : &at->second;
    shown.stands = atom != nullptr && atom->alive;
    const Thing* stands = atom != nullptr && atom->thing ? &*atom->thing : nullptr;
    if (const Thing* one = stands != nullptr ? stands : lost ? &*lost : nullptr)
        shown.kind = kindOf(*one);
    shown.fields = differing(desk, stands, lost ? &*lost : nullptr);
    return shown;
}

std::vector<ShownConflict> openConflicts(const log::Log& log) {
    std::vector<ShownConflict> all;
    const auto open = log::conflictsIn(log);
    if (open.empty())
        return all;
    Slots known;
    const Desk desk = readDesk(known, log).desk;
    std::map<std::pair<Sixteen, Sixteen>, Slot> held;
    for (const auto& [slot, atom] : desk)
        if (atom.alive)
            if (const auto* conflict = std::get_if<log::ConflictThing>(&*atom.thing))
                held.emplace(std::pair(conflict->about, conflict->revision), slot);
    for (const auto& [id, conflict] : open)
        if (const auto at = held.find({conflict.about, conflict.revision}); at != held.end())
            all.push_back(shownConflict(known, desk, at->second));
    return all;
}

std::size_t openConflictCount(const log::Log& log) {
    return log::conflictsIn(log).size();
}

std::set<Slot> settleOn(Slots& known, Desk& desk, Slot conflict, Choice choice) {
    const auto at = desk.find(conflict);
    if (at == desk.end() || !at->second.alive)
        throw notOpen();
    const log::ConflictThing said = std::get<log::ConflictThing>(*at->second.thing);
    std::set<Slot> touched{conflict};
    at->second.alive = false;
    extend(known, at->second);
    if (choice == Choice::AsItStands)
        return touched;
    const Slot about = known.find(said.about);
    if (said.content.empty() || !desk.contains(about))
        throw LogError(LogError::Kind::Conflict,
                       say("Nobody knows any more what the other side said. Nothing was "
                           "changed."));
    Thing lost = thingOf(known, said.content);
    const Slot chosen = said.lived ? standingFor(known, desk, about, lost) : about;
    if (said.lived)
        lost = saidBy(known, desk, chosen, about, std::move(lost));
    else
        requireUnused(desk, chosen);
    Atom& atom = desk.at(chosen);
    atom.thing = std::move(lost);
    atom.alive = said.lived;
    noteChoice(atom.trail);
    extend(known, atom);
    touched.insert(chosen);
    if (said.lived) {
        requireFreeKey(desk, chosen);
        requireRepeat(desk, chosen);
    }
    touched.merge(settleDesk(known, desk, touched));
    return touched;
}

void settle(log::Log& log, const Sixteen& conflict, Choice choice) {
    log.together([&] {
        Slots known;
        const ReadDesk before = readDesk(known, log);
        Desk after = before.desk;
        const auto touched = settleOn(known, after, known.find(conflict), choice);
        writeDesk(log, known, before, after, touched);
    });
}

} // namespace slopebook::desks
