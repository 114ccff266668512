// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/sentence.h"

#include <algorithm>
#include <cmath>
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
            c.lines.difference(x),
            [&](double level) { return std::optional(c.uncertainty.straight(x, level)); },
            c.uncertainty.bend.at(x), c.settings.level, std::nullopt));
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
        if (i + 1 < by.size())
            if (auto between = telling(c, by[i], by[i + 1]))
                all.push_back(std::move(*between));
    }
    return all;
}

/// The changes that the sentence tells of, by load.
std::vector<ChangeAt> told(const Comparison& c, const CommonLoads& common) {
    std::vector<ChangeAt> inside;
    std::ranges::copy_if(c.at, std::back_inserter(inside),
                         [](const ChangeAt& at) { return !at.extrapolated; });
    if (inside.size() >= 2)
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
                      .change = r.change,
                      .interval = r.interval,
                      .shows = r.shows(),
                      .leans = r.leans()};
    auto& most = clause.telling;
    if (!most || std::pair(own.leans != 0, outOf(own.change, own.shows)) >
                     std::pair(most->leans != 0, outOf(most->change, most->shows)))
        most = own;
}

void add(std::vector<Clause>& clauses, const ChangeAt& at) {
    const ReadChange& r = at.read;
    const double load = kilograms(at.load);
    if (clauses.empty() || clauses.back().reading != r.reading) {
        clauses.push_back({.reading = r.reading,
                           .fromLoad = load,
                           .toLoad = load,
                           .smallestChange = r.change,
                           .largestChange = r.change,
                           .beyondSmallest = r.beyondSmallest,
                           .withinSmallest = r.withinSmallest});
        tellMost(clauses.back(), load, r);
        return;
    }
    Clause& c = clauses.back();
    tellMost(c, load, r);
    c.toLoad = load;
    c.smallestChange = std::min(c.smallestChange, r.change);
    c.largestChange = std::max(c.largestChange, r.change);
    c.beyondSmallest = c.beyondSmallest && r.beyondSmallest;
    c.withinSmallest = c.withinSmallest && r.withinSmallest;
}

std::string join(const std::string& a, const std::string& b) {
    return a == b ? a : a + " to " + b;
}

/// "at 50 kg", "from 40 to 65 kg"; unclear stretches at an end of others: "below", "above".
std::string where(const std::vector<Clause>& clauses, std::size_t i) {
    const Clause& c = clauses[i];
    const bool single = c.fromLoad == c.toLoad;
    const bool plain = c.reading == Reading::Unclear || c.reading == Reading::NoFigure;
    if (plain && clauses.size() > 1 && i + 1 == clauses.size())
        return "above";
    if (plain && clauses.size() > 1 && i == 0)
        return single ? "at " + loadText(c.fromLoad) + " kg"
                      : "up to " + loadText(c.toLoad) + " kg";
    if (single)
        return "at " + loadText(c.fromLoad) + " kg";
    return "from " + loadText(c.fromLoad) + " to " + loadText(c.toLoad) + " kg";
}

std::string byHowMuch(const Clause& c) {
    const double a = std::abs(c.smallestChange);
    const double b = std::abs(c.largestChange);
    const std::string figures = join(fixed(std::min(a, b), 2), fixed(std::max(a, b), 2));
    const std::string matters = c.beyondSmallest   ? ", more than the smallest change that matters"
                                : c.withinSmallest ? ", less than the smallest change that matters"
                                                   : "";
    return " (by " + figures + " m/s" + matters + ")";
}

/// "+0.03 m/s, -0.02 to +0.08".
std::string tellingFigures(const Telling& t) {
    return signedFixed(t.change, 2) + " m/s (" + signedFixed(t.interval.low, 2) + " to " +
           signedFixed(t.interval.high, 2) + "; two such tests show changes from " +
           fixed(t.shows, 2) + " up)";
}

/// What an unclear stretch comes to; nothing of it where that is not known.
std::string tellingText(const Clause& c) {
    if (!c.telling)
        return {};
    const Telling& t = *c.telling;
    const std::string at = c.fromLoad == c.toLoad ? "" : " at " + loadText(t.load) + " kg";
    if (t.leans == 0)
        return (at.empty() ? std::string() : ", most" + at) + ": " + tellingFigures(t);
    return std::string(", leaning ") + (t.leans > 0 ? "faster" : "slower") + at + ": " +
           tellingFigures(t);
}

std::string clauseText(const std::vector<Clause>& clauses, std::size_t i) {
    const Clause& c = clauses[i];
    const std::string place = where(clauses, i);
    switch (c.reading) {
    case Reading::Better:
        return "faster " + place + byHowMuch(c);
    case Reading::Worse:
        return "slower " + place + byHowMuch(c);
    case Reading::Held:
        return "speed held " + place + " (" +
               join(signedFixed(c.smallestChange, 2), signedFixed(c.largestChange, 2)) + " m/s)";
    case Reading::Unclear:
        return "no clear change " + place + tellingText(c);
    case Reading::NoFigure:
        return "no figure " + place;
    }
    return {};
}

std::string reachText(const SentenceParts& parts) {
    const bool from = parts.reachFrom < OneRm::farMark;
    const bool to = parts.reachTo < OneRm::farMark;
    const std::string first = fixed(parts.reachFrom, 2);
    const std::string second = fixed(parts.reachTo, 2);
    if (from && to)
        return first == second ? " (reach " + first + " both times: extrapolations)"
                               : " (reach " + first + ", then " + second + ": extrapolations)";
    if (from)
        return " (the earlier one's reach " + first + ": an extrapolation)";
    if (to)
        return " (the later one's reach " + second + ": an extrapolation)";
    return {};
}

std::string_view verdict(Reading reading) {
    switch (reading) {
    case Reading::Better:
        return "estimated max up";
    case Reading::Worse:
        return "estimated max down";
    case Reading::Held:
        return "estimated max held";
    case Reading::Unclear:
    case Reading::NoFigure:
        break;
    }
    return "no clear change of the estimated max";
}

std::string maxTellingText(const ReadChange& r) {
    const int leans = r.leans();
    return std::string(leans > 0   ? ", leaning up"
                       : leans < 0 ? ", leaning down"
                                   : "") +
           "; two such tests show changes from " + fixed(r.shows(), 1) + " kg up";
}

std::string nothingOfMaxText(const SentenceParts& parts) {
    return std::string("the ") + (parts.lightLater ? "later" : "earlier") +
           " day's light loads say nothing of the max (" + signedFixed(parts.nothingOfMax->low, 0) +
           " to " + signedFixed(parts.nothingOfMax->high, 0) + " %; reach " +
           fixed(std::min(parts.reachFrom, parts.reachTo), 2) + ")";
}

std::string oneRmText(const SentenceParts& parts) {
    if (parts.nothingOfMax)
        return nothingOfMaxText(parts);
    if (!parts.oneRm)
        return "no estimated max: " + english(parts.oneRmReason);
    const ReadChange& r = parts.oneRm->read;
    std::string text = std::string(verdict(r.reading)) + ": " + signedFixed(r.change, 1) + " kg (" +
                       signedFixed(r.interval.low, 1) + " to " + signedFixed(r.interval.high, 1) +
                       ")";
    if (r.reading == Reading::Better || r.reading == Reading::Worse)
        text += r.beyondSmallest   ? ", more than the smallest change that matters"
                : r.withinSmallest ? ", less than the smallest change that matters"
                                   : "";
    if (r.reading == Reading::Unclear)
        text += maxTellingText(r);
    return text + reachText(parts);
}

std::string loadsText(const SentenceParts& parts) {
    if (parts.noOverlap)
        return "the two sessions share no loads, so nothing is said by load";
    if (parts.clauses.size() == 1 && parts.clauses.front().reading == Reading::Unclear &&
        parts.clauses.front().fromLoad != parts.clauses.front().toLoad)
        return "no clear change at any load from " + loadText(parts.clauses.front().fromLoad) +
               " to " + loadText(parts.clauses.front().toLoad) + " kg" +
               tellingText(parts.clauses.front());
    std::string text;
    for (std::size_t i = 0; i < parts.clauses.size(); ++i)
        text += (i == 0 ? "" : "; ") + clauseText(parts.clauses, i);
    return text;
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

} // namespace

SentenceParts sentenceParts(const Comparison& c) {
    SentenceParts parts;
    if (const auto common = commonLoads(c.from, c.to)) {
        for (const ChangeAt& at : told(c, *common))
            add(parts.clauses, at);
    } else {
        parts.noOverlap = true;
    }
    if (!c.oneRm) {
        parts.oneRmReason = c.oneRm.why().reason;
        return parts;
    }
    if (c.oneRm->read.reading == Reading::NoFigure)
        parts.oneRmReason = say("a slope is not certain enough to bound its change");
    else
        parts.oneRm = *c.oneRm;
    parts.reachFrom = c.from.oneRm->reach;
    parts.reachTo = c.to.oneRm->reach;
    tellOfNothing(parts, c);
    return parts;
}

std::string sentence(const SentenceParts& parts) {
    std::string text = loadsText(parts) + "; " + oneRmText(parts) + ".";
    if (text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

} // namespace slopebook::answers
