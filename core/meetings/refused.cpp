// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/refused.h"

#include "core/desks/names.h"
#include "core/meetings/units.h"
#include "core/model/phrases/meetings.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <string>

namespace slopebook::meetings {

namespace {
using Answer = store::Pushed::Answer;
using Give = std::function<Answer(std::span<const store::Atom>)>;

void giveAll(std::span<const store::Atom> atoms, const Give& give, std::vector<Refused>& refused);

void giveHalves(std::span<const store::Atom> atoms, Answer answer, const Give& give,
                std::vector<Refused>& refused) {
    if (atoms.size() == 1) {
        refused.push_back({.atom = atoms.front(), .answer = answer});
        return;
    }
    const std::size_t middle = atoms.size() / 2;
    giveAll(atoms.first(middle), give, refused);
    giveAll(atoms.subspan(middle), give, refused);
}

void giveAll(std::span<const store::Atom> atoms, const Give& give, std::vector<Refused>& refused) {
    if (const Answer answer = give(atoms); answer != Answer::Ok)
        giveHalves(atoms, answer, give, refused);
}

std::string nameHere(const log::Log& log, const store::Atom& atom) {
    const auto held = log::carried(log, atom.uuid);
    return held ? nameKeyOf(*held) : std::string();
}
} // namespace

std::vector<Refused> giveInPieces(std::vector<store::Atom> atoms, Answer answer, const Give& give) {
    std::vector<Refused> refused;
    giveHalves(atoms, answer, give, refused);
    if (atoms.size() == 1)
        return refused; // nothing has gone since
    for (std::size_t before = refused.size() + 1; !refused.empty() && refused.size() < before;) {
        before = refused.size();
        std::ranges::stable_sort(refused, {}, &Refused::answer);
        std::vector<Refused> still;
        for (auto from = refused.begin(); from != refused.end();) {
            const auto to = std::find_if(from, refused.end(), [&](const Refused& one) {
                return one.answer != from->answer;
            });
            atoms.clear();
            std::transform(from, to, std::back_inserter(atoms),
                           [](const Refused& one) { return one.atom; });
            giveAll(atoms, give, still);
            from = to;
        }
        refused = std::move(still);
    }
    return refused;
}

std::vector<store::Sixteen> inTheWay(const log::Log& log, const std::vector<Refused>& refused) {
    std::set<std::string> wanted;
    for (const auto& [atom, answer] : refused)
        if (answer == Answer::Taken && atom.alive && store::isEverybodys(atom.kind))
            wanted.insert(nameHere(log, atom));
    std::vector<store::Sixteen> all;
    for (const auto& [atom, answer] : refused)
        if (answer == Answer::Orphan && !atom.alive && store::isEverybodys(atom.kind) &&
            wanted.contains(nameHere(log, atom)))
            all.push_back(atom.uuid);
    return all;
}

bool isChoiceOfEverybodys(log::Connection& db, const log::Carried& one) {
    const auto about = log::aboutOf(one);
    const auto thing = about ? log::carried(db, *about) : std::nullopt;
    return thing && store::isEverybodys(thing->kind);
}

Words why(const Refused& refused) {
    const Words kind = desks::sayKind(refused.atom.kind);
    if (refused.answer == Answer::NotOurs)
        return say("%1: the store does not let this login write it", kind);
    if (refused.answer == Answer::Taken)
        return say("%1: its name or number is taken in the store, by what is not seen here", kind);
    if (refused.answer == Answer::Orphan)
        return say("%1: something in the store that is not seen here needs it, or it needs what is "
                   "not there",
                   kind);
    return say("%1: it waits for the next meeting", kind);
}

} // namespace slopebook::meetings
