// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/proposedroles.h"

#include "core/exchange/headings.h"
#include "core/model/session.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace slopebook::exchange {

namespace {

struct Candidate {
    std::size_t at = 0;
    Tidy role = TidyDate;
    std::optional<int> number{};
};

std::vector<Candidate> candidatesOf(const FileFacts& facts) {
    std::vector<Candidate> found;
    for (std::size_t i = 0; i < facts.columns.size(); ++i) {
        const ColumnFacts& column = facts.columns[i];
        const auto role = roleOfHeading(column.heading);
        const auto number = numberOfHeading(column.heading);
        if (!role && number && column.isNumbers() && column.heading == std::to_string(*number))
            found.push_back({i, TidyVelocity, number}); // "1", "2", "3": speeds side by side
        const bool lists = role == TidyVelocity && column.isLists();
        const bool listOfReps = role == TidyRep && column.isLists() && !column.isNumbers();
        if (listOfReps) { // "reps: 1.12 1.10 1.08"
            found.push_back({i, TidyVelocity, {}});
            continue;
        }
        if (!role || column.said == 0 || (isMeasure(*role) && !column.isNumbers() && !lists) ||
            (*role == TidyDate && !column.isDates() && !column.isSerialDays()))
            continue;
        found.push_back({i, *role, number});
    }
    return found;
}

// Columns of speeds side by side: headings that differ by a number, over numbers with decimals.
std::vector<ColumnUse> sideBySide(const std::vector<Candidate>& candidates,
                                  const FileFacts& facts) {
    for (const Tidy named : {TidyVelocity, TidyRep}) {
        std::set<int> numbers;
        std::vector<ColumnUse> uses;
        std::optional<VelocityKind> kind;
        for (const Candidate& c : candidates) {
            const ColumnFacts& column = facts.columns[c.at];
            if (c.role != named || !c.number || !column.isNumbers())
                continue;
            const auto ofColumn = kindOfHeading(column.heading);
            if (!uses.empty() && ofColumn != kind)
                continue; // another kind of velocity beside it
            if (numbers.insert(*c.number).second)
                uses.push_back({.at = c.at, .decimal = {}});
            kind = ofColumn;
        }
        if (uses.size() >= 2)
            return uses;
    }
    return {};
}

// A whole name, or its halves joined; a family name alone is nobody's: siblings share it, so that
// the column is the coach's to choose. "Name" beside a given name is its other half, unless it
// holds several words.
void takeAthlete(Shape& shape, const std::vector<Candidate>& candidates, const FileFacts& facts) {
    const Candidate *whole = nullptr, *given = nullptr, *family = nullptr;
    for (const Candidate& c : candidates) {
        if (c.role != TidyAthlete)
            continue;
        const auto part = namePartOf(facts.columns[c.at].heading);
        const Candidate*& held = !part ? whole : *part == NamePart::Given ? given : family;
        if (!held)
            held = &c;
    }
    const bool halved =
        whole && given && !family &&
        std::ranges::none_of(facts.columns[whole->at].samples,
                             [](const auto& cell) { return cell.find(' ') != std::string::npos; });
    auto& uses = shape.columns[TidyAthlete];
    if (given && (family || halved))
        uses = {{.at = given->at, .decimal = {}},
                {.at = (family ? family : whole)->at, .decimal = {}}};
    else if (whole)
        uses = {{.at = whole->at, .decimal = {}}};
    else if (given)
        uses = {{.at = given->at, .decimal = {}}};
}

// Of several columns of speeds, mean velocity before the others.
void takeOneSpeed(Shape& shape, const std::vector<Candidate>& candidates, const FileFacts& facts) {
    const Candidate* chosen = nullptr;
    const auto rank = [&](const Candidate& c) {
        const auto kind = kindOfHeading(facts.columns[c.at].heading);
        return !kind                               ? 1
               : *kind == VelocityKind::Mean       ? 0
               : *kind == VelocityKind::Propulsive ? 2
                                                   : 3;
    };
    for (const Candidate& c : candidates)
        if (c.role == TidyVelocity && (!chosen || rank(c) < rank(*chosen)))
            chosen = &c;
    if (chosen)
        shape.columns[TidyVelocity] = {{.at = chosen->at, .decimal = {}}};
}

// Without headings: days are days; speeds are below 4, loads are the numbers before them.
void proposeByValues(Shape& shape, const FileFacts& facts) {
    std::vector<std::size_t> numbers;
    for (std::size_t i = 0; i < facts.columns.size(); ++i) {
        if (facts.columns[i].isNumbers())
            numbers.push_back(i);
        else if (facts.columns[i].isDates() && shape.columns[TidyDate].empty())
            shape.columns[TidyDate] = {{.at = i, .decimal = {}}};
    }
    const auto mayBeSpeed = [&](std::size_t i) {
        return facts.columns[i].high() < plausibleVelocityLimit;
    };
    const auto isSpeed = [&](std::size_t i) {
        const bool whole =
            std::ranges::all_of(facts.columns[i].samples, [](const std::string& cell) {
                return cell.find_first_not_of("0123456789") == std::string::npos;
            });
        return mayBeSpeed(i) && !whole;
    };
    const auto first = std::ranges::find_if(numbers, isSpeed);
    if (first == numbers.end() || first == numbers.begin()) {
        // All above: still a load with what may be speeds in cm/s behind it.
        if (first == numbers.end() && numbers.size() >= 2 && shape.columns[TidyDate].empty()) {
            shape.columns[TidyLoad] = {{.at = numbers[0], .decimal = {}}};
            for (std::size_t k = 1; k < numbers.size(); ++k)
                shape.columns[TidyVelocity].push_back({.at = numbers[k], .decimal = {}});
        }
    } else {
        // "42.5 1 0.98": the 1 may be a speed or a number of the set, and is no load.
        auto load = first - 1;
        while (load != numbers.begin() && mayBeSpeed(*load))
            --load;
        shape.columns[TidyLoad] = {{.at = mayBeSpeed(*load) ? *(first - 1) : *load, .decimal = {}}};
        // A rep at 1 m/s is written without decimals: between others it is a speed.
        const auto end = std::find_if_not(first, numbers.end(), mayBeSpeed);
        const auto last =
            std::find_if(std::reverse_iterator(end), std::reverse_iterator(first), isSpeed).base();
        for (auto it = first; it != last; ++it)
            shape.columns[TidyVelocity].push_back({.at = *it, .decimal = {}});
    }
    shape.rowIsSet = shape.columns[TidyVelocity].size() > 1;
}

} // namespace

void proposeRoles(Shape& shape, const FileFacts& facts) {
    if (facts.layout.header) {
        const auto candidates = candidatesOf(facts);
        shape.columns[TidyVelocity] = sideBySide(candidates, facts);
        shape.rowIsSet = !shape.columns[TidyVelocity].empty();
        if (!shape.rowIsSet)
            takeOneSpeed(shape, candidates, facts);
        takeAthlete(shape, candidates, facts);
        for (const Candidate& c : candidates) {
            const bool sideways = shape.rowIsSet && c.role == TidyRep;
            if (c.role != TidyVelocity && c.role != TidyAthlete && !sideways &&
                shape.columns[c.role].empty())
                shape.columns[c.role] = {{.at = c.at, .decimal = {}}};
        }
    } else {
        proposeByValues(shape, facts);
    }
    shape.lists = std::ranges::any_of(shape.columns[TidyVelocity], [&](const ColumnUse& use) {
        return facts.columns[use.at].isLists();
    });
    shape.rowIsSet = shape.rowIsSet || shape.lists || facts.layout.loadsAsColumns;
    if (shape.rowIsSet)
        shape.columns[TidyRep].clear(); // how many there are, or what they are called
}

} // namespace slopebook::exchange
