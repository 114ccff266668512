// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/method.h"

#include "core/answers/bendwords.h"
#include "core/answers/comparisonnotes.h"
#include "core/answers/figures.h"
#include "core/answers/sources.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace slopebook::answers {

namespace {

Words levelFigure(double share) {
    return figure(loadText(100 * share));
}

Words lineWords(const Profile& p, MassUnit unit) {
    const double kg = unit == MassUnit::Pound ? gramsPerPound / 1000 : 1; // in one unit of load
    return say("%1: V0 %2 m/s, slope %3 m/s per %4, residual SD %5 m/s, R² %6, n %7",
               sessionWords(p.session.date, p.session.ordinal), figure(p.line.intercept, 3),
               figure(p.line.slope * kg, 5), word(unit), figure(p.line.s(), 3),
               figure(p.line.r2, 3), p.line.n);
}

/// "F(1, 8) = 0.52, p = 0.49".
Words testWords(const stats::FTest& t) {
    return say("F(%1, %2) = %3, %4", figure(shortFixed(t.df1, 2)), figure(shortFixed(t.df2, 2)),
               figure(t.f, 2), figure(pText(t.p)));
}

} // namespace

Words sessionWords(Date date, int ordinal) {
    return ordinal > 1 ? say("%1 (no. %2)", date, ordinal) : inWords(date);
}

namespace {
std::vector<Words> changeOfLines(const Comparison& c) {
    const Words parallel = testWords(c.lines.parallel()), one = testWords(c.lines.coincident());
    return {c.settings.variances == stats::Variances::Pooled
                ? say("Change: both lines in one model, one residual variance (%1 df). Parallel: "
                      "%2; one line for both: %3. Band over all loads: Working and Hotelling 1929.",
                      figure(c.lines.df(), 0), parallel, one)
                : say("Change: both lines, each with its own residual variance (Satterthwaite's "
                      "df). Parallel: %1; one line for both: %2. Band over all loads: Working and "
                      "Hotelling 1929.",
                      parallel, one),
            say("Estimated 1RM: the load at which a line reaches the MVT; interval: Fieller 1954; "
                "of the change: variance recovery, Zou and Donner 2008.")};
}

std::vector<Words> changeOfSides() {
    return {say("Change: of the sessions of a side that cover a load the mean, each weighed by "
                "what its line and its day are known by; the later side less the earlier one. The "
                "lines that are drawn are the heaviest day of each."),
            say("Estimated 1RM: the load at which the mean of a side reaches the MVT; interval of "
                "the change: delta method.")};
}
} // namespace

std::vector<Words> methodWords(const Comparison& c, PointRule rule, MassUnit perUnit) {
    const Words from = lineWords(c.from, perUnit), to = lineWords(c.to, perUnit);
    std::vector<Words> all{
        rule == PointRule::Fastest
            ? say("One least-squares line of velocity on load a session (fastest rep of each "
                  "counting set). %1. %2.",
                  from, to)
            : say("One least-squares line of velocity on load a session (mean of the reps of "
                  "each counting set). %1. %2.",
                  from, to)};
    std::ranges::move(c.ofSeveral() ? changeOfSides() : changeOfLines(c), std::back_inserter(all));
    all.push_back(say("Better or worse: the %1 % interval with day-to-day noise and bend leaves "
                      "out zero. Held: the %2 % interval lies within the smallest change that "
                      "matters. Else unclear.",
                      levelFigure(c.settings.level),
                      levelFigure(equivalenceLevel(c.settings.level))));
    return all;
}

std::vector<Words> sourceWords(const Comparison& c) {
    std::vector<Words> lines;
    const auto add = [&lines](Words words) {
        if (!words.empty())
            lines.push_back(asSentence(std::move(words)));
    };
    if (c.from.mvt)
        add(say("MVT (minimal-velocity threshold): %1", mvtWords(*c.from.mvt)));
    add(dayNoiseWords(c.settings.dayNoise));
    add(tiltWords(c.settings.dayNoise));
    add(bendSource(c.settings.bend));
    for (Words& smallest : smallestWords(c))
        add(std::move(smallest));
    if (c.from.mvt)
        add(citationOf(*c.from.mvt));
    add(citationOf(c.settings.dayNoise));
    for (Words& cited : smallestCitations(c))
        add(std::move(cited));
    return lines;
}

std::vector<Words> markWords(const Comparison& c) {
    std::vector<Words> marks;
    if (std::ranges::any_of(c.at, &ChangeAt::checkLoad))
        marks.push_back(say("† check load."));
    if (std::ranges::any_of(c.at, &ChangeAt::extrapolated))
        marks.push_back(say("* beyond the loads that both sessions lifted: extrapolated."));
    return marks;
}

std::vector<Words> maxRemarks(const Comparison& c) {
    const auto planned = [](const Profile& p) { return p.oneRm && p.oneRm->toPlan; };
    std::vector<Words> lines;
    if (Words bend = bendWords(c); !bend.empty())
        lines.push_back(asSentence(std::move(bend)));
    if (c.oneRm && c.from.mvt && c.from.mvt->sd && (planned(c.from) || planned(c.to)))
        lines.push_back(say("The interval of each estimate includes the MVT's own SD; that of the "
                            "change does not: both estimates use the same MVT, so it nearly "
                            "cancels (what is left is %1).",
                            massWords(c.oneRm->mvtResidue, {.decimals = 2, .padded = true})));
    if (!c.oneRm)
        lines.push_back(asSentence(c.oneRm.why().reason));
    else if (!c.oneRm->interval)
        lines.push_back(
            say("No figure for the change: a slope is not certain enough to bound it."));
    return lines;
}

Words mvtWords(const Mvt& mvt) {
    const Words value = figure(mvt.value, 2);
    return mvt.sd ? say("%1 m/s (SD %2; %3)", value, figure(*mvt.sd, 2), sourceOf(mvt))
                  : say("%1 m/s (%2)", value, sourceOf(mvt));
}

Words tooUncertainWords(const Profile& profile) {
    if (!profile.oneRm)
        return {};
    const Words read = massWords(profile.oneRm->estimate, toTenths);
    if (profile.line.hasInference() && !profile.oneRm->interval)
        return say("The line is too flat, or its points too scattered, to say where it ends (it "
                   "would read %1). Look at the typed speeds, or lift loads further apart.",
                   read);
    if (!profile.line.hasInference() && profile.oneRm->extrapolatedVeryFar())
        return say("Two loads, the heavier under half of what their line would read (%1): lift a "
                   "third, heavier load.",
                   read);
    return {};
}

Words allBlocksAtOnce() {
    return say("all blocks at once");
}

Words allStepsAtOnce() {
    return say("all steps at once");
}

Words eachChangeAlone() {
    return say("each change alone");
}

Words heldAgainst(bool allAtOnce) {
    return allAtOnce ? allBlocksAtOnce() : eachChangeAlone();
}

Words intervalsOfOneChange() {
    return say("Each change alone, for what was asked before it was seen. Overview, Whole season "
               "and Season read all blocks at once, for what stands out among many: their readings "
               "may differ.");
}

Words intervalsOf(bool allAtOnce) {
    return allAtOnce ? intervalsOfBlocks() : intervalsOfOneChange();
}

Words intervalsOfBlocks() {
    return say("All blocks at once, for what stands out among many; what is better or worse alone "
               "is so by itself, for what was asked before it was seen.");
}

Words daysAlike() {
    return say("the days of one block are taken as alike, 0.5 from one to the next; where they are "
               "as alike as 0.7, up to 15 % of what is no change is read as one, instead of 5 %");
}

std::vector<Words> cautionWords(bool restrictedFlow) {
    std::vector<Words> words{
        say("Loads are estimates, not clearance to lift."),
        say("Near-maximal lifts need a competent spotter or safeties, and a coach's eye.")};
    if (restrictedFlow)
        words.push_back(
            say("Restricted-flow training needs screening for vascular, cardiac, clotting and "
                "pressure problems, and trained supervision."));
    words.push_back(say("Pain, illness or return from injury: a qualified practitioner decides."));
    words.push_back(say("Local rules come first."));
    return words;
}

} // namespace slopebook::answers
