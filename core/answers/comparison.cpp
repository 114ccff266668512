// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/comparisonsentence.h"
#include "core/answers/devicecorrected.h"
#include "core/model/errors.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace slopebook::answers {

namespace {

void requireComparable(const LiftSession& from, const LiftSession& to) {
    if (from.athlete != to.athlete)
        throw BadInput(say("sessions of two athletes"), say("two sessions of one athlete"));
    if (from.lift != to.lift)
        throw BadInput(say("sessions of two lifts"), say("two sessions of one lift"));
}

NoAnswer inSession(const LiftSession& session, const NoAnswer& why) {
    return {why.why, say("%1: %2", sayDay(session.date, session.ordinal), why.reason)};
}

Answer<Profile> inferredProfile(const Lift& lift, const Answer<Mvt>& mvt,
                                const LiftSession& session, const ComparisonSettings& settings) {
    auto found = profile(lift, mvt, session, settings.level, {settings.dayNoise, settings.bend});
    if (!found)
        return inSession(session, found.why());
    if (!found->line.hasInference())
        return inSession(session, {NoAnswer::Why::NeedsThirdLoad,
                                   say("two points make a line without intervals, so no change "
                                       "can be judged: it needs a third load")});
    return found;
}

std::optional<double> seenAt(const LiftSession& session, Mass load) {
    double sum = 0;
    int count = 0;
    for (const Point& p : session.points)
        if (massFromKilograms(p.load) == load) {
            sum += p.velocity;
            ++count;
        }
    if (count == 0)
        return std::nullopt;
    return sum / count;
}

/// Check loads, and loads that both sessions lifted.
std::set<Mass> loadsToTell(const LiftSession& from, const LiftSession& to,
                           const std::vector<Mass>& checkLoads) {
    std::set<Mass> loads(checkLoads.begin(), checkLoads.end());
    for (const Point& p : from.points)
        if (const Mass load = massFromKilograms(p.load); seenAt(to, load))
            loads.insert(load);
    return loads;
}

ChangeUncertainty uncertaintyOf(const Profile& from, const Profile& to,
                                const stats::TwoLines& lines, const ComparisonSettings& settings) {
    const auto mvt = from.mvt ? std::optional(from.mvt->value) : std::nullopt;
    const auto earlier = referenceMax(lines.first(), mvt);
    const auto later = referenceMax(lines.second(), mvt);
    return {.lines = lines,
            .variances = settings.variances,
            .day = dayOf(settings.dayNoise, lines.first(), lines.second(), earlier),
            .device = settings.deviceBias ? settings.deviceBias->second : stats::Variance{},
            .bend = earlier && later
                        ? BendErrors(settings.bend, ladderOf(from.session, lines.first(), *earlier),
                                     ladderOf(to.session, lines.second(), *later))
                        : BendErrors(),
            .critical = settings.critical};
}

std::optional<Smallest> smallestFor(const ComparisonSettings& settings, Mass load) {
    const auto own = settings.smallestAt.find(load);
    return own != settings.smallestAt.end() ? own->second : settings.smallestVelocity;
}

std::vector<Differs> whereTheyDiffer(const Profile& from, const Profile& to,
                                     const stats::TwoLines& lines, double level) {
    const auto everywhere = lines.differs(level);
    const double least = std::min(from.lightest, to.lightest);
    const double most = std::max(from.heaviest, to.heaviest);
    std::vector<Differs> found;
    const auto add = [&](double low, double high, bool extrapolated) {
        if (low < high)
            for (const stats::Stretch& s : stats::clip(everywhere, low, high))
                found.push_back({.stretch = s, .extrapolated = extrapolated});
    };
    if (const auto common = commonLoads(from, to)) {
        add(least, common->low, true);
        add(common->low, common->high, false);
        add(common->high, most, true);
    } else {
        add(least, most, true);
    }
    return found;
}

} // namespace

std::optional<CommonLoads> commonLoads(const Profile& from, const Profile& to) {
    const CommonLoads common{.low = std::max(from.lightest, to.lightest),
                             .high = std::min(from.heaviest, to.heaviest)};
    if (common.low > common.high)
        return std::nullopt;
    return common;
}

ChangeAt changeAt(const Comparison& c, Mass load) {
    const double level = c.settings.level;
    const double x = kilograms(load);
    const auto common = commonLoads(c.from, c.to);
    ChangeAt at{.load = load,
                .se = std::sqrt(c.lines.variance(x).value),
                .interval = c.lines.interval(x, level),
                .band = c.lines.band(x, level),
                .readingBand = c.uncertainty.band(x, level),
                .read = readWithBend(
                    c.lines.difference(x),
                    [&](double of) { return std::optional(c.uncertainty.straight(x, of)); },
                    c.uncertainty.bend.at(x), level, smallestFor(c.settings, load)),
                .extrapolated = !common || x < common->low || x > common->high,
                .checkLoad = std::ranges::count(c.settings.checkLoads, load) > 0,
                .seenFrom = seenAt(c.from.session, load),
                .seenTo = seenAt(c.to.session, load)};
    setUnder(at.read, c.under);
    if (at.read.reading == Reading::Unclear)
        at.unsettled = repeatsQuestion(c, load);
    return at;
}

std::optional<RepeatsQuestion> repeatsQuestion(const Comparison& c, Mass load) {
    const auto smallest = smallestFor(c.settings, load);
    if (!smallest || !(smallest->value > 0))
        return std::nullopt;
    return repeatsQuestion(c.uncertainty.at(kilograms(load)), c.settings.dayNoise, smallest->value,
                           c.settings.level);
}

Answer<Comparison> compare(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& from,
                           const LiftSession& to, const ComparisonSettings& settings) {
    requireComparable(from, to);
    if (from.session == to.session)
        return NoAnswer{NoAnswer::Why::Other, say("one session is not compared with itself")};
    if (settings.asManyReps)
        if (const auto fair = settings.asManyReps(from, to)) {
            ComparisonSettings asTheyAre = settings;
            asTheyAre.asManyReps = {};
            auto compared = compare(lift, mvt, fair->first, fair->second, asTheyAre);
            if (compared)
                compared->notes.push_back(
                    {Note::Kind::AsManyReps, say("the days differ in reps: at each load the "
                                                 "fastest of as many reps is compared")});
            return compared;
        }
    auto first = inferredProfile(lift, mvt, from, settings);
    if (!first)
        return first.why();
    const double bias = settings.deviceBias ? settings.deviceBias->first : 0;
    auto second = inferredProfile(lift, mvt, withBiasOff(to, bias), settings);
    if (!second)
        return second.why();
    const stats::TwoLines lines(first->line, second->line, settings.variances);
    std::vector<Note> notes;
    const ChangeUncertainty uncertainty = uncertaintyOf(*first, *second, lines, settings);
    auto oneRm = oneRmChange(*first, *second, uncertainty, settings, notes);
    Comparison c{.settings = settings,
                 .from = std::move(*first),
                 .to = std::move(*second),
                 .lines = lines,
                 .uncertainty = uncertainty,
                 .differs = {},
                 .crossing = lines.crossing(settings.level),
                 .oneRm = std::move(oneRm)};
    c.under = underOf(from.conditions, to.conditions, settings.devices,
                      settings.deviceBias.has_value());
    if (c.oneRm) {
        setUnder(c.oneRm->read, c.under);
        if (c.oneRm->read.reading != Reading::Unclear)
            c.oneRm->unsettled.reset();
    }
    c.differs = whereTheyDiffer(c.from, c.to, lines, settings.level);
    for (const Mass load : loadsToTell(from, to, settings.checkLoads))
        c.at.push_back(changeAt(c, load));
    c.notes = comparisonNotes(c, std::move(notes));
    c.sentence = sentence(sentenceParts(c));
    return c;
}

} // namespace slopebook::answers
