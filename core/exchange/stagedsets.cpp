// SPDX-License-Identifier: GPL-3.0-or-later
// What a tidy row says of a set and its rep, and a set once all its rows are there.
#include "core/exchange/cells.h"
#include "core/exchange/staging.h"
#include "core/exchange/tidycolumns.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

namespace slopebook::exchange {

StagedSet& Staging::runOfSet(const Cells& cells, int sessionAt, int liftAt) {
    if (m_run.setAt >= 0 && sessionAt == m_run.setSession && liftAt == m_run.setLift &&
        cells.raw(TidySet) == m_run.set && cells.raw(TidyLoad) == m_run.load)
        return sets[static_cast<std::size_t>(m_run.setAt)];
    const int number = need(cells, TidySet, cells.count(TidySet), setNumberExpected);
    const Mass load =
        need(cells, TidyLoad, cells.mass(TidyLoad, storableLoadLimit, loadWanted), loadWanted);
    const auto [it, isNew] =
        m_setAt.try_emplace(StagedPlace{sessionAt, liftAt, number}, static_cast<int>(sets.size()));
    if (isNew) {
        StagedSet& made = sets.emplace_back();
        made.session = sessionAt;
        made.lift = liftAt;
        made.number = number;
        made.load = {load, here(cells)};
        made.reps.reserve(4);
        if (load >= plausibleLoadLimit)
            flag(here(cells), say("a load of %1", asKilograms(load)));
    }
    StagedSet& held = sets[static_cast<std::size_t>(it->second)];
    if (held.load.value != load)
        cells.refuse(TidyLoad, say("%1, as %2 says of the same set: a set has one load",
                                   asKilograms(held.load.value), lineOf(held.load.place)));
    m_run.set = cells.raw(TidySet);
    m_run.load = cells.raw(TidyLoad);
    m_run.setSession = sessionAt;
    m_run.setLift = liftAt;
    m_run.setAt = it->second;
    return held;
}

StagedSet& Staging::set(const Cells& cells, int sessionAt, int liftAt) {
    constexpr Phrase ofSet = "%1, as %2 says of the set";
    StagedSet& held = runOfSet(cells, sessionAt, liftAt);
    if (const auto maximum = cells.flag(TidyMaximum))
        once(
            cells, TidyMaximum, held.maximum, *maximum,
            [](bool said) { return inWords(said ? 1 : 0); }, ofSet);
    onceText(cells, TidySetExcluded, held.excluded, ofSet);
    if (cells.said(TidyNote)) {
        WithPlace<std::string> note{cells.text(TidyNote), here(cells)};
        if (std::ranges::none_of(held.notes, [&](const auto& n) { return n.value == note.value; }))
            held.notes.push_back(std::move(note));
    }
    return held;
}

void Staging::takeRep(const Cells& cells, StagedSet& held) {
    if (!cells.said(TidyRep) && !cells.said(TidyVelocity)) {
        if (cells.said(TidyExcluded))
            cells.refuse(TidyRep, "the number of the rep that is excluded");
        return; // a set that was written down without a rep
    }
    const int number = need(cells, TidyRep, cells.count(TidyRep), repNumberExpected);
    const double velocity =
        need(cells, TidyVelocity,
             cells.number(TidyVelocity, 0, storableVelocityLimit, true, speedWanted), speedWanted);
    if (velocity >= plausibleVelocityLimit)
        flag(here(cells), say("a speed of %1", asSpeed(velocity)));
    held.reps.push_back({.number = number,
                         .excluded = text(cells.text(TidyExcluded)),
                         .velocity = velocity,
                         .place = here(cells)});
}

void Staging::finish() {
    for (StagedSet& held : sets)
        orRefuse([&] { finishSet(held); });
}

void Staging::finishSet(StagedSet& held) {
    const auto number = [](const StagedRep& rep) { return rep.number; };
    if (!std::ranges::is_sorted(held.reps, {}, number))
        std::ranges::stable_sort(held.reps, {}, number);
    const auto sameRep = [&](const StagedRep& a, const StagedRep& b) {
        if (a.number != b.number)
            return false;
        // Two files of one import may overlap; within one file a rep stands once.
        const bool same = a.velocity == b.velocity && a.excluded == b.excluded;
        if (a.place.file == b.place.file || !same)
            contradict(
                b.place, same ? "rep" : "velocity",
                say("rep %1 of the same set again (%2)", b.number, asSpeed(b.velocity)),
                say("each rep once; %1 has it with %2", lineOf(a.place), asSpeed(a.velocity)));
        return true;
    };
    if (held.outcome && held.outcome->value == Outcome::NotLifted && !held.reps.empty())
        contradict(held.reps.front().place, "velocity", asSpeed(held.reps.front().velocity),
                   say("none: %1 says that the set was not lifted", lineOf(held.outcome->place)));
    held.reps.erase(std::unique(held.reps.begin(), held.reps.end(), sameRep), held.reps.end());
}

Set asSet(const Staging& staging, const StagedSet& staged) {
    std::string note;
    for (const auto& each : staged.notes)
        note += (note.empty() ? "" : "; ") + each.value;
    Set set{.load = staged.load.value,
            .trueMaximum = staged.maximum && staged.maximum->value,
            .outcome = staged.outcome ? staged.outcome->value : Outcome::Lifted,
            .reason = staged.reason ? staged.reason->value : std::string{},
            .effort = staged.effort ? std::optional(staged.effort->value) : std::nullopt,
            .excluded = staged.excluded ? staged.excluded->value : std::string{},
            .note = note,
            .reps = {}};
    set.reps.reserve(staged.reps.size());
    for (const StagedRep& rep : staged.reps)
        set.reps.push_back({rep.velocity, staging.texts[static_cast<std::size_t>(rep.excluded)]});
    return set;
}

} // namespace slopebook::exchange
