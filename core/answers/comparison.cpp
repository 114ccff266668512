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

NoAnswer inSession(const LiftSession& session, const NoAnswer& why) {
    return {why.why, say("%1: %2", sayDay(session.date, session.ordinal), why.reason)};
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

/// The same of a block: the mean over the sessions that lifted it.
std::optional<double> seenOn(const Comparison& c, const LiftSession& session, Mass load,
                             bool later) {
    if (!c.ofSeveral())
        return seenAt(session, load);
    double sum = 0;
    int count = 0;
    for (const LiftSession& each : (later ? c.blocks->second : c.blocks->first).sessions)
        if (const auto seen = seenAt(each, load)) {
            sum += *seen;
            ++count;
        }
    return count > 0 ? std::optional(sum / count) : std::nullopt;
}

/// Check loads, and loads that both sides lifted.
std::set<Mass> loadsToTell(const Comparison& c) {
    std::set<Mass> loads(c.settings.checkLoads.begin(), c.settings.checkLoads.end());
    const auto add = [&](const LiftSession& session) {
        for (const Point& p : session.points)
            if (const Mass load = massFromKilograms(p.load); seenOn(c, c.to.session, load, true))
                loads.insert(load);
    };
    if (c.ofSeveral())
        for (const LiftSession& session : c.blocks->first.sessions)
            add(session);
    else
        add(c.from.session);
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

void requireComparable(const LiftSession& from, const LiftSession& to) {
    if (from.athlete != to.athlete)
        throw BadInput(say("sessions of two athletes"), say("two sessions of one athlete"));
    if (from.lift != to.lift)
        throw BadInput(say("sessions of two lifts"), say("two sessions of one lift"));
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
                .se = std::sqrt(c.uncertainty.aloneVariance(x).value),
                .interval = c.uncertainty.alone(x, level),
                .band = c.uncertainty.aloneBand(x, level),
                .readingBand = c.uncertainty.band(x, level),
                .read = readWithBend(
                    c.uncertainty.change(x),
                    [&](double of) { return std::optional(c.uncertainty.straight(x, of)); },
                    c.uncertainty.bendAt(x), level, smallestFor(c.settings, load)),
                .extrapolated = c.uncertainty.sides
                                    ? c.uncertainty.extrapolated(x)
                                    : !common || x < common->low || x > common->high,
                .checkLoad = std::ranges::count(c.settings.checkLoads, load) > 0,
                .seenFrom = seenOn(c, c.from.session, load, false),
                .seenTo = seenOn(c, c.to.session, load, true)};
    setUnder(at.read, c.under);
    if (at.read.reading == Reading::Unclear && !c.ofSeveral())
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
    c.under =
        underOf(from.conditions, to.conditions, settings.devices, settings.deviceBias.has_value());
    c.differs = whereTheyDiffer(c.from, c.to, lines, settings.level);
    complete(c, std::move(notes));
    return c;
}

void complete(Comparison& c, std::vector<Note> notes) {
    if (c.oneRm) {
        setUnder(c.oneRm->read, c.under);
        if (c.oneRm->read.reading != Reading::Unclear)
            c.oneRm->unsettled.reset();
    }
    for (const Mass load : loadsToTell(c))
        c.at.push_back(changeAt(c, load));
    c.notes = comparisonNotes(c, std::move(notes));
    tellSentence(c);
}

} // namespace slopebook::answers
