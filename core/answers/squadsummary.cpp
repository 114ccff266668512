// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squadsummary.h"

#include "core/answers/comparisonsentence.h"
#include "core/answers/figures.h"
#include "core/answers/meansofdays.h"
#include "core/answers/noise.h"
#include "core/answers/readingwords.h"
#include "core/answers/sources.h"
#include "core/model/phrases/answers.h"
#include "core/stats/quantiles.h"

#include <cmath>
#include <numbers>

namespace slopebook::answers {

Words countWords(const SquadPart& part) {
    return say("Each change alone: %1 better, %2 worse, %3 held, %4 unclear, %5 without a figure.",
               part.read(Reading::Better), part.read(Reading::Worse), part.read(Reading::Held),
               part.read(Reading::Unclear), part.read(Reading::NoFigure));
}

Words squadUnderWords(const SquadPart& part) {
    int count = 0;
    Words under;
    bool alike = true;
    for (const SquadRow& row : part.rows)
        if (row.read && row.read->notComparable.empty() && !row.read->under.empty()) {
            ++count;
            alike = alike && (under.empty() || under == row.read->under);
            under = row.read->under;
        }
    if (count == 0)
        return {};
    return alike && ofOneCondition(under)
               ? say("%1 of %2 were tested %3 than before: part of their change may be its "
                     "doing.",
                     count, part.figures(), under)
               : say("%1 of %2 were tested under other conditions than before: part of their "
                     "change may be that.",
                     count, part.figures());
}

Words squadMethod() {
    return say(
        "Of a block or a stretch of days all sessions are made one, of a date the nearest "
        "that makes a line stands. Readings hold day-to-day noise; rows go better, worse, "
        "held, unclear, and by size in each. Drawn to all: an athlete's change moved towards "
        "the mean of all, the further the more of it the noise of tests may be.");
}

Words agreementWords(const AgreementStudy& study, const std::string& first,
                     const std::string& second) {
    const stats::Agreement& a = study.figures;
    const Words level = figure(loadText(100 * study.level));
    const Words size = figure(std::abs(a.bias), 3);
    const auto end = [](double value) { return signedFigure(value, 3); };
    const Words low = end(a.biasInterval.low), high = end(a.biasInterval.high);
    const Words least = end(a.limits.low), most = end(a.limits.high);
    if (a.biasInterval.low <= 0 && a.biasInterval.high >= 0)
        return say("No clear bias between %1 and %2: %3 m/s (%4 % %5 to %6); of twenty sets about "
                   "nineteen differ by %7 to %8.",
                   first, second, end(a.bias), level, low, high, least, most);
    return a.bias >= 0
               ? say("%1 reads %2 m/s more than %3 (%4 % %5 to %6); of twenty sets about nineteen "
                     "differ by %7 to %8.",
                     first, size, second, level, low, high, least, most)
               : say("%1 reads %2 m/s less than %3 (%4 % %5 to %6); of twenty sets about nineteen "
                     "differ by %7 to %8.",
                     first, size, second, level, low, high, least, most);
}

Words noAgreementWords() {
    return say("No sets of this lift were measured by two devices at once. Enter the same sets as "
               "two sessions of one athlete and day, each with its device: then they are compared "
               "here.");
}

Words inUseFigure(const DayNoise& noise, int decimals) {
    if (noise.origin == DayNoise::Origin::None)
        return say("no day-to-day noise is known");
    const double found = std::sqrt(noise.variance.value);
    if (noise.pairs > 0 && found < 0.5 * std::pow(10, -decimals)) // no SD of 0.000: it is the
        return say("none found beyond the scatter within a day"); // scatter
    return say("%1 m/s day to day", figure(found, decimals));
}

Words inUseWords(const DayNoise& noise, int decimals) {
    const Words in = inUseFigure(noise, decimals);
    return noise.origin == DayNoise::Origin::None ? in : say("%1 (%2)", in, sourceOf(noise));
}

namespace {
/// Between two means of so many tests.
Words clearBetween(int tests, const DayNoise& noise, double level) {
    const double t = stats::tCritical(level, noise.variance.df),
                 sd = std::sqrt(noise.variance.value);
    return clearFrom(t * std::sqrt(varianceOfMeans(sd, tests, tests)) * std::numbers::sqrt2,
                     saidSpeedDecimals);
}
bool hasRule(const DayNoise& noise) {
    return noise.origin != DayNoise::Origin::None && noise.variance.value > 0;
}
} // namespace

Words clearBetweenTests(const DayNoise& noise, double level) {
    if (!hasRule(noise))
        return {};
    return say("from one test to another a change is clear from about %1 m/s up",
               clearBetween(1, noise, level));
}

Words ruleOfThumb(const DayNoise& noise, double level) {
    constexpr int several = 3;
    if (!hasRule(noise))
        return {};
    return say("Rule of thumb: from one test to another a speed at a load has changed clearly from "
               "about %1 m/s up, of %2 tests against %2 from about %3; all blocks read at once ask "
               "for more.",
               clearBetween(1, noise, level), several, clearBetween(several, noise, level));
}

Words ruleOfThumbLimits() {
    return say("The rule of thumb is of days alone; beside a reading stands its own figure. Where "
               "blocks are read, their days count as repeats too, and the noise is a little "
               "other.");
}

Words noSpreadWords() {
    return say("No spread at this resolution: these repeat tests all differ alike, as far as the "
               "speeds were written down. That is no error of zero.");
}

Words repeatTestMethod() {
    return say("A repeat test is marked in the session's details: same conditions, within a few "
               "days. Readings use the athlete's own day-to-day noise from %1 repeat tests on, "
               "else the log's from as many, else the published figure.",
               pairsNeeded);
}

} // namespace slopebook::answers
