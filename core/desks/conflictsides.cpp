// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/conflictsides.h"

#include "core/desks/reading.h"
#include "core/desks/taking.h"
#include "core/desks/writing.h"
#include "core/log/conflicts.h"
#include "core/log/failure.h"
#include "core/model/errors.h"
#include "core/model/phrases/desks.h"

#include <algorithm>

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

/// A name or a day's number that another thing has now would be yielded again at once.
void requireFreeKey(const Desk& desk, Slot slot) {
    const Atom& wanted = desk.at(slot);
    if (!wanted.alive || (nameOf(*wanted.thing) == nullptr &&
                          !std::holds_alternative<log::SessionThing>(*wanted.thing)))
        return;
    const std::string key = keyOf(*wanted.thing);
    for (const auto& [other, atom] : desk)
        if (other != slot && atom.alive && keyOf(*atom.thing) == key)
            throw LogError(LogError::Kind::Conflict,
                           say("That name or number is taken by another: %1. Change that one "
                               "first. Nothing was changed.",
                               nameOnDesk(desk, other)));
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
    if (shown.known)
        lost = thingOf(known, conflict.content);
    const auto at = desk.find(about);
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
    for (const auto& [id, conflict] : open) {
        const Slot slot = known.find(log::conflictUuid(conflict.about, conflict.revision));
        if (desk.contains(slot))
            all.push_back(shownConflict(known, desk, slot));
    }
    return all;
}

std::size_t openConflictCount(const log::Log& log) {
    return log::conflictsIn(log).size();
}

void settle(log::Log& log, const Sixteen& conflict, Choice choice) {
    log.together([&] {
        Slots known;
        const ReadDesk before = readDesk(known, log);
        Desk after = before.desk;
        const Slot slot = known.find(conflict);
        const auto at = after.find(slot);
        if (at == after.end() || !at->second.alive)
            throw notOpen();
        const log::ConflictThing said = std::get<log::ConflictThing>(*at->second.thing);
        std::set<Slot> touched{slot};
        at->second.alive = false;
        extend(known, at->second);
        const Slot about = known.find(said.about);
        if (choice == Choice::WhatLost) {
            if (said.content.empty() || !after.contains(about))
                throw LogError(LogError::Kind::Conflict,
                               say("Nobody knows any more what the other side said. Nothing was "
                                   "changed."));
            Atom& atom = after.at(about);
            atom.thing = thingOf(known, said.content);
            atom.alive = said.lived;
            extend(known, atom);
            touched.insert(about);
            requireFreeKey(after, about);
            touched.merge(settleDesk(known, after, touched));
        }
        writeDesk(log, known, before, after, touched);
    });
}

} // namespace slopebook::desks
