// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/leftright.h"

#include "core/answers/meansofdays.h"
#include "core/answers/readingwords.h"
#include "core/model/phrases/answers.h"
#include "core/stats/moderation.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

/// Positive where the left is ahead.
double signedPercent(const Asymmetry& a) {
    return a.better == BodySide::Left ? a.percent : -a.percent;
}

void readAsymmetry(LeftRight& sides, const TestChange& left, const TestChange& right,
                   double level) {
    if (!sides.before || !sides.after) {
        sides.noReading = (sides.before ? sides.after : sides.before).why().reason;
        return;
    }
    sides.change = signedPercent(*sides.after) - signedPercent(*sides.before);
    if (!left.noise || !right.noise) {
        sides.noReading = say("no typical error is known: repeat the test, or give the test one");
        return;
    }
    const auto mean = [](const TestChange& t) {
        return (t.before.value->value + t.after.value->value) / 2;
    };
    // Of a side of several days, so many as the side of the body that has fewer.
    const auto te = [&](const TestChange& side) {
        return std::sqrt(varianceOfMeans(side.noise->te,
                                         std::min(left.before.sessions, right.before.sessions),
                                         std::min(left.after.sessions, right.after.sessions)));
    };
    const auto half = [&](double at) {
        double worst = 0;
        for (const TestChange* side : {&left, &right}) {
            const bool prior = std::isinf(side->noise->df);
            const double better = std::max(mean(left), mean(right));
            const double weaker = std::min(mean(left), mean(right));
            const double se = asymmetryChangeSe(te(*side), better, weaker);
            worst = std::max(worst, prior ? stats::publishedShrink *
                                                stats::tCritical(at, stats::publishedDf) * se
                                          : stats::tCritical(at, side->noise->df) * se);
        }
        return worst;
    };
    const double size = sides.after->percent - sides.before->percent;
    const auto interval = [&](double at) {
        return stats::Interval{size - half(at), size + half(at)};
    };
    sides.read =
        read(size, interval(level), interval(equivalenceLevel(level)), std::nullopt, false);
    sides.read.at80 = interval(leaningLevel);
}

} // namespace

double asymmetryChangeSe(double te, double better, double weaker) {
    const double r = weaker / better;
    return 100 * te * std::sqrt(2 * (1 + r * r)) / better;
}

LeftRight leftRightOf(const TestChange& left, const TestChange& right, double level) {
    const auto of = [&](const SeenTest& l, const SeenTest& r) -> Answer<Asymmetry> {
        if (!l.value)
            return NoAnswer{l.value.why().why, say("left %1", l.value.why().reason)};
        if (!r.value)
            return NoAnswer{r.value.why().why, say("right %1", r.value.why().reason)};
        return asymmetry(l.value->value, r.value->value, left.kind.value.higherIsBetter);
    };
    LeftRight sides{.kind = left.kind,
                    .before = of(left.before, right.before),
                    .after = of(left.after, right.after)};
    readAsymmetry(sides, left, right, level);
    return sides;
}

Words asymmetryWords(const Asymmetry& asymmetry) {
    const Words percent = figure(asymmetry.percent, 1);
    switch (asymmetry.better) {
    case BodySide::Left:
        return say("left by %1 %", percent);
    case BodySide::Right:
        return say("right by %1 %", percent);
    case BodySide::Both:
        break;
    }
    return say("even");
}

Words asymmetryChangeWords(const LeftRight& row) {
    if (!row.change)
        return {};
    if (!row.noReading.empty())
        return row.noReading;
    const ReadChange& read = row.read;
    const Words by = signedFigure(read.change, 1);
    const Words low = signedFigure(read.interval.low, 1);
    const Words high = signedFigure(read.interval.high, 1);
    if (read.reading == Reading::Better)
        return say("%1 points (%2 to %3): less uneven", by, low, high);
    if (read.reading == Reading::Worse)
        return say("%1 points (%2 to %3): more uneven", by, low, high);
    const Words shows = clearFrom(read.clearSize(), 1);
    return read.leans() < 0 ? say("%1 points (%2 to %3): no clear change, leaning to more uneven; "
                                  "a change is clear from %4",
                                  by, low, high, shows)
           : read.leans() > 0
               ? say("%1 points (%2 to %3): no clear change, leaning to less uneven; a change is "
                     "clear from %4",
                     by, low, high, shows)
               : say("%1 points (%2 to %3): no clear change; a change is clear from %4", by, low,
                     high, shows);
}

} // namespace slopebook::answers
