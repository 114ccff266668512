// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparisonnotes.h"

#include "core/answers/figures.h"
#include "core/answers/sources.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace slopebook::answers {

namespace {

constexpr double unequalP = 0.05;

void noteDevices(const Comparison& c, std::vector<Note>& notes) {
    if (c.settings.deviceBias) {
        const auto& [bias, variance] = *c.settings.deviceBias;
        notes.push_back({Note::Kind::DeviceCorrected,
                         say("the later session's device reads %1 m/s against the earlier one's: "
                             "taken off its speeds, line and estimate here, and its uncertainty "
                             "(SE %2) added to the readings",
                             signedFigure(bias, 3), figure(std::sqrt(variance.value), 3))});
        notes.insert(notes.end(), c.settings.ofTheDevice.begin(), c.settings.ofTheDevice.end());
        return;
    }
    if (!c.settings.ofTheDevice.empty()) { // why a study there is corrects nothing here
        notes.insert(notes.end(), c.settings.ofTheDevice.begin(), c.settings.ofTheDevice.end());
        return;
    }
    const auto& from = c.from.session.conditions.device;
    const auto& to = c.to.session.conditions.device;
    if (from != to)
        notes.push_back({Note::Kind::DifferentDevices,
                         from && to
                             ? say("some sets measured by both devices at once, a study of the "
                                   "two, make such days comparable")
                             : say("the device of one session is not known: part of the "
                                   "change may be the device's")});
}

void noteConditions(const Comparison& c, std::vector<Note>& notes) {
    for (const ConditionChange& change : c.under.changes)
        if (change.what != ConditionChange::Of::Device) // noteDevices() tells of it
            notes.push_back({Note::Kind::ContextChanged, conditionNote(change)});
}

void noteVariances(const Comparison& c, std::vector<Note>& notes) {
    if (c.ofSeveral())
        return;
    const auto ratio = c.lines.varianceRatio();
    if (!ratio || !(ratio->p < unequalP))
        return;
    const Words f = figure(ratio->f, 2);
    const Words p = figure(pText(ratio->p));
    notes.push_back(
        {Note::Kind::UnequalVariances,
         c.settings.variances == stats::Variances::Pooled
             ? say("the points of one day scatter more than the other's (F = %1, %2): separate "
                   "variances may be asked for",
                   f, p)
             : say("the points of one day scatter more than the other's (F = %1, %2): each line "
                   "has its own variance here",
                   f, p)});
}

} // namespace

Note asSeenNote() {
    return {Note::Kind::AsSeen,
            say("where a session has no line to judge by, the change at a load is told of what was "
                "seen there on both days, from the typical error of a point")};
}

Words dayNoiseWords(const DayNoise& noise) {
    if (noise.origin == DayNoise::Origin::None)
        return say("no day-to-day noise is known: the readings are made from these two days "
                   "alone, which calls too much a change");
    if (noneFound(noise))
        return say("no day-to-day noise was found beyond the scatter within a day (%1)",
                   sourceOf(noise));
    return say("day-to-day SD of a whole line, %1 m/s, is part of every reading (%2)",
               figure(std::sqrt(noise.variance.value), 3), sourceOf(noise));
}

Note dayNoiseNote(const DayNoise& noise) {
    return {Note::Kind::DayNoiseSource, dayNoiseWords(asCited(noise))};
}

namespace {

Words smallestSpeed(const Smallest& m) {
    return say("smallest change of speed that matters: %1 m/s (%2)", figure(m.value, 3),
               sourceOf(m));
}

} // namespace

std::vector<Words> smallestWords(const Comparison& c) {
    std::vector<Words> all;
    const bool byLoad = !c.settings.smallestAt.empty();
    if (byLoad)
        all.push_back(say("smallest change that matters, by load: %1",
                          sourceOf(c.settings.smallestAt.begin()->second)));
    if (const auto& m = c.settings.smallestVelocity)
        all.push_back(byLoad
                          ? say("smallest change of speed that matters, other loads: %1 m/s (%2)",
                                figure(m->value, 3), sourceOf(*m))
                          : smallestSpeed(*m));
    if (const auto& m = c.settings.smallestOneRm; m && c.oneRm)
        all.push_back(say("smallest change of the estimated max that matters: %1 (%2)",
                          massWords(m->value, asEstimate), sourceOf(*m)));
    return all;
}

std::vector<Words> smallestCitations(const Comparison& c) {
    std::vector<Words> all;
    const auto add = [&all](const std::optional<Smallest>& smallest) {
        if (Words words = smallest ? citationOf(*smallest) : Words();
            !words.empty() && std::ranges::find(all, words) == all.end())
            all.push_back(std::move(words));
    };
    add(c.settings.smallestVelocity);
    if (c.oneRm)
        add(c.settings.smallestOneRm);
    return all;
}

void citeDayNoise(const DayNoise& noise, std::vector<Note>& notes) {
    if (Words cited = citationOf(asCited(noise)); !cited.empty())
        notes.push_back({Note::Kind::DayNoiseSource, std::move(cited)});
}

Note smallestSpeedNote(const Smallest& smallest) {
    return {Note::Kind::SmallestSource, smallestSpeed(smallest)};
}

void citeSmallest(const Smallest& smallest, std::vector<Note>& notes) {
    Words words = citationOf(asCited(smallest));
    if (!words.empty() && std::ranges::find(notes, words, &Note::words) == notes.end())
        notes.push_back({Note::Kind::SmallestSource, std::move(words)});
}

Note levelNote(double level) {
    return {Note::Kind::LevelNot95,
            say("intervals are at %1 %, not 95 %", figure(loadText(100 * level)))};
}

std::vector<Note> comparisonNotes(const Comparison& c, std::vector<Note> ofTheOneRm) {
    std::vector<Note> notes;
    if (!commonLoads(c.from, c.to))
        notes.push_back({Note::Kind::NoOverlap,
                         say("the sessions share no stretch of loads: every change by load is "
                             "extrapolated")});
    noteDevices(c, notes);
    noteConditions(c, notes);
    notes.push_back(dayNoiseNote(c.settings.dayNoise));
    for (Words& words : smallestWords(c))
        notes.push_back({Note::Kind::SmallestSource, std::move(words)});
    noteVariances(c, notes);
    notes.insert(notes.end(), std::make_move_iterator(ofTheOneRm.begin()),
                 std::make_move_iterator(ofTheOneRm.end()));
    const auto leans = [](const ChangeAt& at) { return at.read.leans() != 0; };
    if (std::ranges::any_of(c.at, leans) || (c.oneRm && c.oneRm->read.leans() != 0))
        notes.push_back(
            {Note::Kind::Leaning, say("leaning is no reading: of nothing, up to one in four such "
                                      "tests leans one way or the other")});
    if (c.settings.level != 0.95)
        notes.push_back(levelNote(c.settings.level));
    if (c.settings.smallestVelocity)
        citeSmallest(*c.settings.smallestVelocity, notes);
    if (c.settings.smallestOneRm && c.oneRm)
        citeSmallest(*c.settings.smallestOneRm, notes);
    citeDayNoise(c.settings.dayNoise, notes);
    return notes;
}

} // namespace slopebook::answers
