// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparisonnotes.h"

#include "core/answers/figures.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace slopebook::answers {

namespace {

constexpr double unequalP = 0.05;

std::string origin(const Smallest& smallest) {
    switch (smallest.origin) {
    case Smallest::Origin::Squad:
        return "squad: " + cited(smallest.source);
    case Smallest::Origin::Coach:
        return "the coach's own";
    case Smallest::Origin::Published:
        return "published, not yours: " + cited(smallest.source);
    }
    return cited(smallest.source);
}

void noteDevices(const Comparison& c, std::vector<Note>& notes) {
    if (c.settings.deviceBias) {
        const auto& [bias, variance] = *c.settings.deviceBias;
        notes.push_back({Note::Kind::DeviceCorrected,
                         {bias, std::sqrt(variance.value)},
                         "the later session's device reads " + signedFixed(bias, 3) +
                             " m/s against the earlier one's: taken off its speeds, line and "
                             "estimate here, and its uncertainty (SE " +
                             fixed(std::sqrt(variance.value), 3) + ") added to the readings"});
        notes.insert(notes.end(), c.settings.ofTheDevice.begin(), c.settings.ofTheDevice.end());
        return;
    }
    if (!c.settings.ofTheDevice.empty()) { // why a study there is corrects nothing here
        notes.insert(notes.end(), c.settings.ofTheDevice.begin(), c.settings.ofTheDevice.end());
        return;
    }
    const auto& from = c.from.session.device;
    const auto& to = c.to.session.device;
    if (from != to)
        notes.push_back({Note::Kind::DifferentDevices,
                         {},
                         from && to ? "measured with different devices: part of the change may be "
                                      "theirs"
                                    : "the device of one session is not known: part of the change "
                                      "may be the device's"});
}

void noteSmallest(const Comparison& c, std::vector<Note>& notes) {
    if (!c.settings.smallestAt.empty())
        notes.push_back({Note::Kind::SmallestSource,
                         {},
                         "smallest change that matters, by load: " +
                             origin(c.settings.smallestAt.begin()->second)});
    if (const auto& m = c.settings.smallestVelocity)
        notes.push_back({Note::Kind::SmallestSource,
                         {m->value},
                         "smallest change of speed that matters" +
                             std::string(c.settings.smallestAt.empty() ? "" : ", other loads") +
                             ": " + fixed(m->value, 3) + " m/s (" + origin(*m) + ")"});
    if (const auto& m = c.settings.smallestOneRm; m && c.oneRm)
        notes.push_back({Note::Kind::SmallestSource,
                         {m->value},
                         "smallest change of the estimated max that matters: " +
                             fixed(m->value, 1) + " kg (" + origin(*m) + ")"});
}

void noteVariances(const Comparison& c, std::vector<Note>& notes) {
    const auto ratio = c.lines.varianceRatio();
    if (!ratio || !(ratio->p < unequalP))
        return;
    const bool pooled = c.settings.variances == stats::Variances::Pooled;
    notes.push_back({Note::Kind::UnequalVariances,
                     {ratio->f, ratio->p, pooled ? 1.0 : 0.0},
                     "the points of one day scatter more than the other's (F = " +
                         fixed(ratio->f, 2) + ", " + pText(ratio->p) + "): " +
                         (pooled ? "separate variances may be asked for"
                                 : "each line has its own variance here")});
}

} // namespace

Note asSeenNote() {
    return {
        Note::Kind::AsSeen,
        {},
        "where a session has no line to judge by, the change at a load is told of what was seen "
        "there on both days, from the typical error of a point"};
}

std::string sourcesOf(const DayNoise& noise) {
    const std::string published = "published, not yours: " + cited(noise.source);
    const std::string own = "the athlete's own: " + counted(noise.ownPairs, "repeat test");
    const std::string others = "this log's: " + counted(noise.othersPairs, "repeat test");
    const double rest = 1 - noise.ownShare - noise.othersShare;
    std::string text;
    int parts = 0;
    for (const auto& [share, source] :
         {std::pair{noise.ownShare, own}, std::pair{noise.othersShare, others},
          std::pair{rest, published}})
        if (share >= 0.005) {
            text += (text.empty() ? "" : ", ") + fixed(100 * share, 0) + " % " + source;
            ++parts;
        }
    if (parts > 1)
        return text;
    switch (noise.origin) {
    case DayNoise::Origin::Athlete:
        return "the athlete's own: " + counted(noise.pairs, "repeat test");
    case DayNoise::Origin::LogLift:
        return "this log's: " + counted(noise.pairs, "repeat test");
    case DayNoise::Origin::Published:
    case DayNoise::Origin::None:
        break;
    }
    return published;
}

Note dayNoiseNote(const DayNoise& noise) {
    const double te = std::sqrt(noise.variance.value);
    const bool none = noise.pairs > 0 && te < 0.0005;
    const std::string shown =
        none
            ? std::string("no day-to-day noise was found beyond the scatter within a day (")
            : "day-to-day SD of a whole line, " + fixed(te, 3) + " m/s, is part of every reading (";
    if (noise.origin != DayNoise::Origin::None)
        return {Note::Kind::DayNoiseSource, {te}, shown + sourcesOf(noise) + ")", noise};
    return {Note::Kind::DayNoiseSource,
            {0},
            "no day-to-day noise is known: the readings are made from these two days alone, which "
            "calls too much a change",
            noise};
}

Note smallestSpeedNote(const Smallest& smallest) {
    return {Note::Kind::SmallestSource,
            {smallest.value},
            "smallest change of speed that matters: " + fixed(smallest.value, 3) + " m/s (" +
                origin(smallest) + ")",
            {},
            smallest};
}

std::vector<Note> comparisonNotes(const Comparison& c, std::vector<Note> ofTheOneRm) {
    std::vector<Note> notes;
    if (!commonLoads(c.from, c.to))
        notes.push_back({Note::Kind::NoOverlap,
                         {},
                         "the sessions share no stretch of loads: every change by load is "
                         "extrapolated"});
    noteDevices(c, notes);
    notes.push_back(dayNoiseNote(c.settings.dayNoise));
    noteSmallest(c, notes);
    noteVariances(c, notes);
    notes.insert(notes.end(), std::make_move_iterator(ofTheOneRm.begin()),
                 std::make_move_iterator(ofTheOneRm.end()));
    const auto leans = [](const ChangeAt& at) { return at.read.leans() != 0; };
    if (std::ranges::any_of(c.at, leans) || (c.oneRm && c.oneRm->read.leans() != 0))
        notes.push_back(
            {Note::Kind::Leaning,
             {},
             "leaning is no reading: of nothing, up to one in four such tests leans one "
             "way or the other"});
    if (c.settings.level != 0.95)
        notes.push_back({Note::Kind::LevelNot95,
                         {c.settings.level},
                         "intervals are at " + loadText(100 * c.settings.level) + " %, not 95 %"});
    return notes;
}

} // namespace slopebook::answers
