// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/comparisonsentence.h"

#include "core/answers/maxclause.h"
#include "core/answers/readingwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <tuple>
#include <utility>

namespace slopebook::answers {

namespace {

/// By how much the interval excludes zero; negative where it holds it.
double clearance(const ReadChange& r) {
    return std::max(r.interval.low, -r.interval.high);
}

/// Between two loads that are unclear, or held, lies a load that may be told best of all: neither
/// reading is sure to hold between its ends. The clearest such load, half kilograms asked.
std::optional<ChangeAt> telling(const Comparison& c, const ChangeAt& from, const ChangeAt& to) {
    const Reading r = from.read.reading;
    if (r != to.read.reading || (r != Reading::Unclear && r != Reading::Held))
        return std::nullopt;
    constexpr std::int64_t half = 500; // g
    const std::int64_t first = from.load.grams / half + 1;
    const std::int64_t last = (to.load.grams - 1) / half;
    const std::int64_t step = std::max<std::int64_t>(1, (last - first) / 64);
    std::optional<Mass> clearest;
    double most = 0;
    for (std::int64_t at = first; at <= last; at += step) {
        const double x = kilograms(Mass{at * half});
        const double clear = clearance(readWithBend(
            c.uncertainty.change(x),
            [&](double level) { return std::optional(c.uncertainty.straight(x, level)); },
            c.uncertainty.bendAt(x), c.settings.level, std::nullopt));
        if (clear > most) {
            most = clear;
            clearest = Mass{at * half};
        }
    }
    return clearest ? std::optional(changeAt(c, *clearest)) : std::nullopt;
}

std::vector<ChangeAt> withTelling(const Comparison& c, const std::vector<ChangeAt>& by) {
    std::vector<ChangeAt> all;
    for (std::size_t i = 0; i < by.size(); ++i) {
        all.push_back(by[i]);
        if (i + 1 < by.size() && !c.allAtOnce) // between them each load is read by itself
            if (auto between = telling(c, by[i], by[i + 1]))
                all.push_back(std::move(*between));
    }
    return all;
}

/// The changes that the sentence tells of, by load.
std::vector<ChangeAt> changesWithin(const Comparison& c, const CommonLoads& common) {
    std::vector<ChangeAt> inside;
    std::ranges::copy_if(c.at, std::back_inserter(inside),
                         [](const ChangeAt& at) { return !at.extrapolated; });
    if (inside.size() >= 2 || c.allAtOnce) // what else there is was read by itself
        return withTelling(c, inside);
    for (const double end : {common.low, common.high}) {
        const Mass load = massFromKilograms(end);
        if (std::ranges::find(inside, load, &ChangeAt::load) == inside.end())
            inside.push_back(changeAt(c, load));
    }
    std::ranges::sort(inside, {}, &ChangeAt::load);
    return withTelling(c, inside);
}

/// How far a change stands out of its interval.
double outOf(double change, double shows) {
    return shows > 0 ? std::abs(change) / shows : 0;
}

void tellMost(Clause& clause, double load, const ReadChange& r) {
    if (r.reading != Reading::Unclear)
        return;
    const Telling own{.load = load,
                      .change = r.besideInterval(),
                      .interval = r.interval,
                      .shows = r.clearSize(),
                      .leans = r.leans(),
                      .alone = r.clearAlone()};
    auto& most = clause.telling;
    const auto tells = [](const Telling& one) {
        return std::tuple(one.alone != 0, one.leans != 0, outOf(one.change, one.shows));
    };
    if (!most || tells(own) > tells(*most))
        most = own;
}

std::optional<double> smallestOf(const ReadChange& r) {
    return r.smallest ? std::optional(r.smallest->value) : std::nullopt;
}

void add(std::vector<Clause>& clauses, const ChangeAt& at) {
    const ReadChange& r = at.read;
    const double load = kilograms(at.load);
    if (clauses.empty() || clauses.back().reading != r.reading) {
        clauses.push_back({.reading = r.reading,
                           .fromLoad = load,
                           .toLoad = load,
                           .smallestChange = r.besideInterval(),
                           .largestChange = r.besideInterval(),
                           .beyondSmallest = r.beyondSmallest,
                           .withinSmallest = r.withinSmallest,
                           .smallest = smallestOf(r)});
        tellMost(clauses.back(), load, r);
        return;
    }
    Clause& c = clauses.back();
    tellMost(c, load, r);
    c.toLoad = load;
    c.smallestChange = std::min(c.smallestChange, r.besideInterval());
    c.largestChange = std::max(c.largestChange, r.besideInterval());
    c.beyondSmallest = c.beyondSmallest && r.beyondSmallest;
    c.withinSmallest = c.withinSmallest && r.withinSmallest;
    if (const auto own = smallestOf(r))
        c.smallest = std::min(c.smallest.value_or(*own), *own);
}

/// Where the loads of a clause lie: at one, from one to another; unclear stretches at an end of
/// others are above, or up to one.
enum class Place { At, FromTo, Above, UpTo };

Place placeOf(const std::vector<Clause>& clauses, std::size_t i) {
    const Clause& c = clauses[i];
    const bool single = c.fromLoad == c.toLoad;
    const bool plain = c.reading == Reading::Unclear || c.reading == Reading::NoFigure;
    if (plain && clauses.size() > 1 && i + 1 == clauses.size())
        return Place::Above;
    if (plain && clauses.size() > 1 && i == 0 && !single)
        return Place::UpTo;
    return single ? Place::At : Place::FromTo;
}

/// A change of speed at one load or from one to another, against the smallest that matters.
struct Speeds {
    Phrase at, fromTo, atMore, fromToMore, atLess, fromToLess;
};
constexpr Speeds faster{
    "faster at %1 (by %2 m/s)",
    "faster from %1 to %2 (by %3 m/s)",
    "faster at %1 (by %2 m/s, more than the smallest change that matters)",
    "faster from %1 to %2 (by %3 m/s, more than the smallest change that matters)",
    "faster at %1 (by %2 m/s, less than the smallest change that matters)",
    "faster from %1 to %2 (by %3 m/s, less than the smallest change that matters)"};
constexpr Speeds slower{
    "slower at %1 (by %2 m/s)",
    "slower from %1 to %2 (by %3 m/s)",
    "slower at %1 (by %2 m/s, more than the smallest change that matters)",
    "slower from %1 to %2 (by %3 m/s, more than the smallest change that matters)",
    "slower at %1 (by %2 m/s, less than the smallest change that matters)",
    "slower from %1 to %2 (by %3 m/s, less than the smallest change that matters)"};

Words changed(const Clause& c, const Speeds& speeds) {
    const double a = std::abs(c.smallestChange), b = std::abs(c.largestChange);
    const auto shown = [&c](double by) { return fixed(by, decimalsBeside(by, c.smallest, 2)); };
    const Words by = rangeOf(shown(std::min(a, b)), shown(std::max(a, b)));
    const Words from = massWords(c.fromLoad, bareLoad), to = massWords(c.toLoad);
    if (c.fromLoad == c.toLoad)
        return say(c.beyondSmallest   ? speeds.atMore
                   : c.withinSmallest ? speeds.atLess
                                      : speeds.at,
                   to, by);
    return say(c.beyondSmallest   ? speeds.fromToMore
               : c.withinSmallest ? speeds.fromToLess
                                  : speeds.fromTo,
               from, to, by);
}

/// What is not told of a stretch, by where it lies.
struct Places {
    Phrase at, fromTo, above, upTo;
};
constexpr Places unclear{"no clear change at %1", "no clear change from %1 to %2",
                         "no clear change above", "no clear change up to %1"};
constexpr Places noFigure{"no figure at %1", "no figure from %1 to %2", "no figure above",
                          "no figure up to %1"};

Words untold(const Clause& c, Place place, const Places& places) {
    const Words to = massWords(c.toLoad);
    switch (place) {
    case Place::At:
        return say(places.at, to);
    case Place::FromTo:
        return say(places.fromTo, massWords(c.fromLoad, bareLoad), to);
    case Place::Above:
        return say(places.above);
    case Place::UpTo:
        break;
    }
    return say(places.upTo, to);
}

/// "+0.03 m/s (-0.02 to +0.08; a change is clear from 0.05 up)".
Words tellingFigures(const Telling& t) {
    return say("%1 m/s (%2 to %3; a change is clear from %4 up)", saidSpeed(t.change),
               saidSpeed(t.interval.low), saidSpeed(t.interval.high),
               clearFrom(t.shows, saidSpeedDecimals));
}

/// The clause with what its unclear stretch comes to, where that is known.
Words withFigures(Words clause, const Clause& c) {
    if (!c.telling)
        return clause;
    const Telling& t = *c.telling;
    const Words figures = tellingFigures(t);
    if (c.fromLoad == c.toLoad)
        return t.alone > 0   ? say("%1, better alone: %2", clause, figures)
               : t.alone < 0 ? say("%1, worse alone: %2", clause, figures)
               : t.leans > 0 ? say("%1, leaning to better: %2", clause, figures)
               : t.leans < 0 ? say("%1, leaning to worse: %2", clause, figures)
                             : say("%1: %2", clause, figures);
    const Words load = massWords(t.load);
    return t.alone > 0   ? say("%1, better alone at %2: %3", clause, load, figures)
           : t.alone < 0 ? say("%1, worse alone at %2: %3", clause, load, figures)
           : t.leans > 0 ? say("%1, leaning to better at %2: %3", clause, load, figures)
           : t.leans < 0 ? say("%1, leaning to worse at %2: %3", clause, load, figures)
                         : say("%1, most at %2: %3", clause, load, figures);
}

Words clauseWords(const std::vector<Clause>& clauses, std::size_t i) {
    const Clause& c = clauses[i];
    switch (c.reading) {
    case Reading::Better:
        return changed(c, faster);
    case Reading::Worse:
        return changed(c, slower);
    case Reading::Held: {
        const Words by = rangeOf(signedFixed(c.smallestChange, 2), signedFixed(c.largestChange, 2));
        return c.fromLoad == c.toLoad
                   ? say("speed held at %1 (%2 m/s)", massWords(c.toLoad), by)
                   : say("speed held from %1 to %2 (%3 m/s)", massWords(c.fromLoad, bareLoad),
                         massWords(c.toLoad), by);
    }
    case Reading::Unclear:
        return withFigures(untold(c, placeOf(clauses, i), unclear), c);
    case Reading::NoFigure:
        break;
    }
    return untold(c, placeOf(clauses, i), noFigure);
}

std::vector<Words> loadClauses(const SentenceParts& parts) {
    if (parts.noOverlap)
        return {say("the two sessions share no loads, so nothing is said by load")};
    const auto& all = parts.clauses;
    if (all.size() == 1 && all.front().reading == Reading::Unclear &&
        all.front().fromLoad != all.front().toLoad)
        return {withFigures(say("no clear change at any load from %1 to %2",
                                massWords(all.front().fromLoad, bareLoad),
                                massWords(all.front().toLoad)),
                            all.front())};
    std::vector<Words> words;
    for (std::size_t i = 0; i < all.size(); ++i)
        words.push_back(clauseWords(all, i));
    return words;
}

/// Where one day's line is drawn far beyond its loads and leaves the change wide open.
void tellOfNothing(SentenceParts& parts, const Comparison& c) {
    const bool far = std::min(parts.reachFrom, parts.reachTo) < OneRm::farMark;
    if (!parts.oneRm || parts.oneRm->read.reading != Reading::Unclear || !far)
        return;
    const double percent = 100 / c.from.oneRm->estimate;
    const stats::Interval& of = parts.oneRm->read.interval;
    if ((of.high - of.low) / 2 * percent < saysNothingFrom)
        return;
    parts.nothingOfMax = stats::Interval{of.low * percent, of.high * percent};
    parts.lightLater = parts.reachTo < parts.reachFrom;
}

/// What the days bound their maxima by, and under which other conditions they were compared.
void tellOfTheDays(SentenceParts& parts, const Comparison& c) {
    for (const Profile* p : {&c.from, &c.to})
        if (const auto& load = p->session.lightestNotLifted)
            parts.notLifted.push_back({*load, p->session.date, p->session.ordinal});
    parts.under = underWords(c.under.changes);
    parts.notComparable = c.under.notComparable;
}

} // namespace

bool ofOneCondition(const Words& under) {
    return under.parts.empty(); // several are said in the places of a phrase that joins them
}

SentenceParts sentenceParts(const Comparison& c) {
    SentenceParts parts;
    parts.heldAgainst = c.allAtOnce ? say("block against block, all blocks at once")
                        : c.blocks  ? say("block against block, each change alone")
                                    : say("day against day, each change alone");
    tellOfTheDays(parts, c);
    if (const auto common = commonLoads(c.from, c.to)) {
        for (const ChangeAt& at : changesWithin(c, *common))
            add(parts.clauses, at);
    } else {
        parts.noOverlap = true;
    }
    if (!c.oneRm) {
        parts.oneRmReason = c.oneRm.why().reason;
        return parts;
    }
    if (c.oneRm->read.reading == Reading::NoFigure && c.under.notComparable.empty())
        parts.oneRmReason = say("a slope is not certain enough to bound its change");
    else
        parts.oneRm = *c.oneRm;
    parts.reachFrom = c.from.oneRm->reach;
    parts.reachTo = c.to.oneRm->reach;
    tellOfNothing(parts, c);
    return parts;
}

namespace {
std::vector<Words> leading(const SentenceParts& parts) {
    if (!parts.notComparable.empty())
        return {say("not comparable: %1", parts.notComparable)};
    std::vector<Words> all = loadClauses(parts);
    if (!parts.nothingOfMax)
        all.push_back(maxClause(parts));
    return all;
}

std::vector<Words> underneath(const SentenceParts& parts) {
    std::vector<Words> all;
    if (parts.notComparable.empty()) {
        if (parts.nothingOfMax)
            all.push_back(maxClause(parts));
        if (!parts.under.empty())
            all.push_back(ofOneCondition(parts.under)
                              ? say("tested %1 than before", parts.under)
                              : say("tested under other conditions than before (%1)", parts.under));
    }
    for (const LoadNotLifted& tried : parts.notLifted)
        all.push_back(
            say("%1 was not lifted on %2", tried.load, sayDay(tried.date, tried.ordinal)));
    return all;
}

Words asTold(const SentenceParts& parts, std::vector<Words> all) {
    const Words told = clauses(std::move(all));
    // Where nothing is read nothing is held against anything.
    const bool reads = parts.notComparable.empty() && !parts.heldAgainst.empty();
    return asSentence(reads ? say("%1: %2", parts.heldAgainst, told) : told);
}
} // namespace

Words sentence(const SentenceParts& parts) {
    std::vector<Words> all = leading(parts);
    std::ranges::move(underneath(parts), std::back_inserter(all));
    return asTold(parts, std::move(all));
}

Headline headline(const SentenceParts& parts) {
    Headline told{.leads = asTold(parts, leading(parts))};
    if (auto under = underneath(parts); !under.empty())
        told.under = asSentence(clauses(std::move(under)));
    return told;
}

void tellSentence(Comparison& comparison) {
    const SentenceParts parts = sentenceParts(comparison);
    comparison.sentence = sentence(parts);
    comparison.headline = headline(parts);
}

} // namespace slopebook::answers
