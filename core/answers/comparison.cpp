// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparison.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/devicecorrected.h"
#include "core/answers/sentence.h"
#include "core/model/errors.h"

#include <algorithm>
#include <cmath>
#include <limits>
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
                                const LiftSession& session, double level) {
    auto found = profile(lift, mvt, session, level);
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

/// What the readings add to the variance of D: two days, and the device's bias.
struct BeyondTheLines {
    stats::Variance estimated; ///< its df by Satterthwaite
    double known = 0;          ///< parts of infinite df
};

BeyondTheLines beyondTheLines(const ComparisonSettings& settings) {
    std::vector<stats::Variance> parts;
    const stats::Variance& day = settings.dayNoise.variance;
    if (settings.dayNoise.origin != DayNoise::Origin::None)
        parts.push_back({2 * day.value, day.df});
    if (settings.deviceBias)
        parts.push_back(settings.deviceBias->second);
    BeyondTheLines beyond;
    for (const stats::Variance& part : parts)
        if (std::isinf(part.df))
            beyond.known += part.value;
        else if (part.value > 0)
            beyond.estimated = stats::sum(beyond.estimated, part);
    return beyond;
}

stats::Interval widened(const stats::Interval& interval, double centre, double squared) {
    if (squared == 0)
        return interval;
    const double half = std::hypot(interval.high - centre, std::sqrt(squared));
    return {centre - half, centre + half};
}

constexpr double knownDf = std::numeric_limits<double>::infinity();

/// Banerjee's rule: see ComparisonSettings.
stats::Interval readingInterval(const stats::TwoLines& lines, double x, double level,
                                const BeyondTheLines& beyond) {
    const double z = stats::tCritical(level, knownDf);
    return widened(lines.interval(x, level, beyond.estimated), lines.difference(x),
                   z * z * beyond.known);
}

stats::Interval readingBand(const stats::TwoLines& lines, double x, double level,
                            const BeyondTheLines& beyond) {
    return widened(lines.band(x, level, beyond.estimated), lines.difference(x),
                   2 * stats::fQuantile(level, 2, knownDf) * beyond.known);
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
    const BeyondTheLines beyond = beyondTheLines(c.settings);
    const auto common = commonLoads(c.from, c.to);
    ChangeAt at{.load = load,
                .se = std::sqrt(c.lines.variance(x).value),
                .interval = c.lines.interval(x, level),
                .band = c.lines.band(x, level),
                .readingBand = readingBand(c.lines, x, level, beyond),
                .read = read(c.lines.difference(x), readingInterval(c.lines, x, level, beyond),
                             readingInterval(c.lines, x, equivalenceLevel(level), beyond),
                             smallestFor(c.settings, load)),
                .extrapolated = !common || x < common->low || x > common->high,
                .checkLoad = std::ranges::count(c.settings.checkLoads, load) > 0,
                .seenFrom = seenAt(c.from.session, load),
                .seenTo = seenAt(c.to.session, load)};
    if (at.read.reading == Reading::Unclear)
        at.unsettled = repeatsQuestion(c, load);
    return at;
}

std::optional<RepeatsQuestion> repeatsQuestion(const Comparison& c, Mass load) {
    const auto smallest = smallestFor(c.settings, load);
    if (!smallest || !(smallest->value > 0))
        return std::nullopt;
    const auto at = [&](const stats::Line& line) {
        const double off = kilograms(load) - line.xMean;
        return stats::Variance{c.lines.s2() * (1.0 / line.n + off * off / line.sxx), c.lines.df()};
    };
    return RepeatsQuestion{.earlier = at(c.lines.first()),
                           .later = at(c.lines.second()),
                           .day = c.settings.dayNoise.variance,
                           .standing = c.settings.deviceBias ? c.settings.deviceBias->second
                                                             : stats::Variance{},
                           .smallest = smallest->value,
                           .level = c.settings.level};
}

Answer<Comparison> compare(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& from,
                           const LiftSession& to, const ComparisonSettings& settings) {
    requireComparable(from, to);
    if (from.session == to.session)
        return NoAnswer{NoAnswer::Why::Other, say("one session is not compared with itself")};
    auto first = inferredProfile(lift, mvt, from, settings.level);
    if (!first)
        return first.why();
    const double bias = settings.deviceBias ? settings.deviceBias->first : 0;
    auto second = inferredProfile(lift, mvt, withBiasOff(to, bias), settings.level);
    if (!second)
        return second.why();
    const stats::TwoLines lines(first->line, second->line, settings.variances);
    std::vector<Note> notes;
    auto oneRm = oneRmChange(*first, *second, lines, settings, notes);
    Comparison c{.settings = settings,
                 .from = std::move(*first),
                 .to = std::move(*second),
                 .lines = lines,
                 .differs = {},
                 .crossing = lines.crossing(settings.level),
                 .oneRm = std::move(oneRm)};
    c.differs = whereTheyDiffer(c.from, c.to, lines, settings.level);
    for (const Mass load : loadsToTell(from, to, settings.checkLoads))
        c.at.push_back(changeAt(c, load));
    c.notes = comparisonNotes(c, std::move(notes));
    c.sentence = sentence(sentenceParts(c));
    return c;
}

} // namespace slopebook::answers
