// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/reading.h"

#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

std::string_view word(Reading reading) {
    switch (reading) {
    case Reading::Better:
        return "better";
    case Reading::Worse:
        return "worse";
    case Reading::Held:
        return "held";
    case Reading::Unclear:
        return "unclear";
    case Reading::NoFigure:
        return "no figure";
    }
    return "";
}

Words readingWords(Reading reading) {
    switch (reading) {
    case Reading::Better:
        return say("better");
    case Reading::Worse:
        return say("worse");
    case Reading::Held:
        return say("held");
    case Reading::Unclear:
        return say("unclear");
    case Reading::NoFigure:
        break;
    }
    return say("no figure");
}

Words leaningReading(const ReadChange& read) {
    if (const int alone = read.clearAlone(); alone != 0)
        return alone > 0 ? say("unclear, better alone") : say("unclear, worse alone");
    const int leans = read.leans();
    return leans > 0   ? say("unclear, leaning to better")
           : leans < 0 ? say("unclear, leaning to worse")
                       : readingWords(read.reading);
}

void setUnder(ReadChange& read, const Under& under) {
    read.under = underWords(under.changes);
    read.notComparable = under.notComparable;
    if (under.notComparable.empty())
        return;
    read.reading = Reading::NoFigure;
    read.beyondSmallest = read.withinSmallest = false;
}

namespace {

Words sized(const ReadChange& read, int decimals) {
    if (read.reading == Reading::Unclear)
        return leaningReading(read);
    if (!read.smallest || (read.reading != Reading::Better && read.reading != Reading::Worse))
        return readingWords(read.reading);
    const bool better = read.reading == Reading::Better;
    const Words m = figure(read.smallest->value, decimals);
    if (read.beyondSmallest)
        return better ? say("better, by over %1", m) : say("worse, by over %1", m);
    if (read.withinSmallest)
        return better ? say("better, but by less than matters (%1)", m)
                      : say("worse, but by less than matters (%1)", m);
    return readingWords(read.reading);
}

Words sized(const ReadChange& read) {
    if (read.reading == Reading::Unclear)
        return leaningReading(read);
    if (read.reading != Reading::Better && read.reading != Reading::Worse)
        return readingWords(read.reading);
    const bool better = read.reading == Reading::Better;
    if (read.beyondSmallest)
        return better ? say("better, by more than matters") : say("worse, by more than matters");
    if (read.withinSmallest)
        return better ? say("better, but by less than matters")
                      : say("worse, but by less than matters");
    return readingWords(read.reading);
}

} // namespace

Words withUnder(const ReadChange& read, const Words& reading) {
    if (!read.notComparable.empty())
        return say("not comparable");
    const bool told = read.reading == Reading::Better || read.reading == Reading::Worse ||
                      read.reading == Reading::Held;
    return told && !read.under.empty() ? say("%1, but tested %2", reading, read.under) : reading;
}

Words shortReading(const ReadChange& read) {
    return read.notComparable.empty() ? readingWords(read.reading) : say("not comparable");
}

Words readingWords(const ReadChange& read, int decimals) {
    return withUnder(read, sized(read, decimals));
}

Words sizedReading(const ReadChange& read) {
    return withUnder(read, sized(read));
}

namespace {
bool finite(const stats::Interval& interval) {
    return std::isfinite(interval.low) && std::isfinite(interval.high);
}
} // namespace

double DayNoise::slopeCv() const {
    constexpr double asPublished = 0.025;
    return published > 0 ? asPublished * std::sqrt(variance.value) / published : 0;
}

int ReadChange::leans() const {
    if (reading != Reading::Unclear || !at80)
        return 0;
    const int up = at80->low > 0 ? 1 : at80->high < 0 ? -1 : 0;
    return higherIsBetter ? up : -up;
}

int ReadChange::clearAlone() const {
    if (reading != Reading::Unclear || !byItself)
        return 0;
    return *byItself == Reading::Better ? 1 : *byItself == Reading::Worse ? -1 : 0;
}

double ReadChange::besideInterval() const {
    if (reading == Reading::NoFigure || (change >= interval.low && change <= interval.high))
        return change;
    return (interval.low + interval.high) / 2;
}

double ReadChange::clearSize() const {
    const double by = besideInterval();
    const double up = by - interval.low, down = interval.high - by;
    return by > 0 ? up : by < 0 ? down : std::max(up, down);
}

ReadChange read(double change, const stats::Interval& interval, const stats::Interval& equivalence,
                const std::optional<Smallest>& smallest, bool higherIsBetter) {
    ReadChange read{.change = change,
                    .interval = interval,
                    .equivalence = equivalence,
                    .smallest = smallest,
                    .higherIsBetter = higherIsBetter};
    if (!std::isfinite(change) || !finite(interval) || !finite(equivalence))
        return read;
    const bool up = interval.low > 0;
    const bool down = interval.high < 0;
    if (smallest) {
        const double m = smallest->value;
        read.beyondSmallest = interval.low > m || interval.high < -m;
        read.withinSmallest = equivalence.low > -m && equivalence.high < m;
    }
    if (up || down)
        read.reading = up == higherIsBetter ? Reading::Better : Reading::Worse;
    else
        read.reading = read.withinSmallest ? Reading::Held : Reading::Unclear;
    return read;
}

} // namespace slopebook::answers
