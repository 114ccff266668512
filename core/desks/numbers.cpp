// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/numbers.h"

#include <algorithm>
#include <functional>
#include <map>
#include <tuple>

namespace slopebook::desks {

namespace {
/// What numbers run in: the kind, and what they belong to.
using Row = std::tuple<std::size_t, Slot, std::string>;

std::optional<Row> rowOf(const Thing& thing) {
    if (const auto* attempt = std::get_if<log::AttemptThing>(&thing))
        return Row{thing.index(), raw(attempt->session), {}};
    if (const auto* gap = std::get_if<log::GapThing>(&thing))
        return Row{thing.index(), raw(gap->session), {}};
    if (const auto* turn = std::get_if<log::RosterThing>(&thing))
        return Row{thing.index(), raw(turn->station), isoDate(turn->day)};
    return std::nullopt;
}

/// In the order in which the log numbers them. Of two under one number what a store has keeps it: a
/// turn that is never sent (of another squad's athlete) would move what is for ever.
void putInOrder(const Meeting& meeting, std::vector<Slot>& row) {
    meeting.sort(row);
    std::ranges::stable_sort(row, {}, [&](Slot slot) {
        return std::pair(*numberOf(*meeting.desk.at(slot).thing), !meeting.isStored(slot));
    });
    const auto testOf = [&](Slot slot) {
        const auto* attempt = std::get_if<log::AttemptThing>(&*meeting.desk.at(slot).thing);
        return attempt == nullptr ? Slot{0} : raw(attempt->test);
    };
    std::map<Slot, std::size_t> tests; // by their first attempt
    for (const Slot slot : row)
        tests.emplace(testOf(slot), tests.size());
    std::ranges::stable_sort(row, {}, [&](Slot slot) { return tests.at(testOf(slot)); });
}

/// What it says; of one that comes without a word what it says here.
const Thing* turnOf(const Desk& desk, Slot slot, const Atom& atom) {
    const auto held = desk.find(slot);
    const std::optional<Thing>& thing =
        atom.thing || held == desk.end() ? atom.thing : held->second.thing;
    return thing && std::holds_alternative<log::RosterThing>(*thing) ? &*thing : nullptr;
}
} // namespace

bool isNumberedAnew(const Thing& thing) {
    return rowOf(thing).has_value();
}

std::optional<int> numberAt(const Slots& known, Thing thing, bool alive, const Sixteen& stepHash) {
    constexpr int mostNumbers = 200; // more than a session has attempts or sets of a lift
    if (int* number = numberOf(thing))
        for (*number = 1; *number <= mostNumbers; ++*number)
            if (log::stepHash(hashOf(known, thing), alive) == stepHash)
                return *number;
    return std::nullopt;
}

void numberAsStored(Meeting& meeting, const Desk& theirs, const std::map<Slot, Sixteen>& asStored) {
    std::set<Row> rows;
    for (const auto& [slot, atom] : theirs)
        if (const Thing* turn = turnOf(meeting.desk, slot, atom))
            rows.insert(*rowOf(*turn));
    for (const auto& [slot, revision] : asStored) {
        Atom& mine = meeting.desk.at(slot);
        const Thing* turn = mine.alive ? turnOf(meeting.desk, slot, mine) : nullptr;
        if (turn == nullptr || !rows.contains(*rowOf(*turn)) || !log::holds(mine.trail, revision))
            continue;
        const auto step = std::ranges::find(mine.trail, revision, &log::Step::revision);
        if (step + 1 == mine.trail.end())
            continue;
        const auto number = numberAt(meeting.known, *turn, true, step->hash);
        if (!number)
            continue;
        *numberOf(*mine.thing) = *number;
        mine.trail.erase(step + 1, mine.trail.end());
        meeting.taken.touched.insert(slot);
    }
}

void putBehind(const Meeting& meeting, const Thing& before, Thing& thing) {
    const auto row = rowOf(thing);
    if (!row || row == rowOf(before))
        return;
    int last = 0;
    for (const auto& [slot, atom] : meeting.desk)
        if (atom.alive && rowOf(*atom.thing) == row)
            last = std::max(last, *numberOf(*atom.thing));
    *numberOf(thing) = std::min(*numberOf(thing) + last, mostNumbered);
}

void numberAnew(Meeting& meeting) {
    std::set<Row> rows;
    for (const Slot slot : meeting.taken.touched)
        if (const auto& thing = meeting.desk.at(slot).thing)
            if (const auto row = rowOf(*thing))
                rows.insert(*row);
    if (rows.empty())
        return;
    std::map<Row, std::vector<Slot>> held;
    for (const auto& [slot, atom] : meeting.desk)
        if (const auto row = atom.alive ? rowOf(*atom.thing) : std::nullopt;
            row && rows.contains(*row))
            held[*row].push_back(slot);
    for (auto& [row, numbered] : held) {
        putInOrder(meeting, numbered);
        int number = 0;
        for (const Slot slot : numbered) {
            Thing now = *meeting.desk.at(slot).thing;
            *numberOf(now) = ++number;
            if (now != *meeting.desk.at(slot).thing)
                meeting.edit(slot, std::move(now), true);
        }
    }
}

void settleRepeats(Meeting& meeting) {
    const auto sessionOf = [&](Slot slot) {
        const Atom& atom = meeting.desk.at(slot);
        return atom.thing && atom.alive ? std::get_if<log::SessionThing>(&*atom.thing) : nullptr;
    };
    std::vector<Slot> repeats;
    for (const auto& [slot, atom] : meeting.desk)
        if (const auto* session = sessionOf(slot); session != nullptr && session->head.repeatOf)
            repeats.push_back(slot);
    std::ranges::sort(repeats, std::greater<>{},
                      [&](Slot slot) { return meeting.known.uuid(slot); });
    for (const Slot slot : repeats) {
        log::SessionThing now = *sessionOf(slot);
        const Slot of = raw(*now.head.repeatOf);
        const auto* first = sessionOf(of);
        if (first != nullptr && of != slot && first->head.athlete == now.head.athlete &&
            first->head.repeatOf != SessionId{slot})
            continue;
        meeting.list(Why::Repeat, slot, meeting.desk.at(slot));
        now.head.repeatOf.reset();
        meeting.edit(slot, now, true);
    }
}

} // namespace slopebook::desks
