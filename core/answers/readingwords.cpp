// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/readingwords.h"

#include "core/model/phrases/answers.h"

#include <cmath>

namespace slopebook::answers {

namespace {

bool unclearWithFigures(const ReadChange& read) {
    return read.reading == Reading::Unclear && read.clearSize() > 0;
}

} // namespace

Words saidSpeed(double change) {
    const bool vanishes = std::abs(change) < std::pow(10, -saidSpeedDecimals) / 2;
    return signedFigure(change, vanishes ? saidSpeedDecimals + 1 : saidSpeedDecimals);
}

Words rangeOf(const std::string& a, const std::string& b) {
    return a == b ? figure(a) : say("%1 to %2", figure(a), figure(b));
}

Words clearFrom(double shows, int decimals) {
    // 0.07 in binary digits is a hair more than 0.07, and not to be said as 0.08
    constexpr double hair = 1e-9;
    const double ofLast = std::pow(10, decimals);
    return figure(std::ceil(shows * ofLast - hair) / ofLast, decimals);
}

Words speedReading(const ReadChange& read) {
    const Words reading = readingWords(read, 3);
    return unclearWithFigures(read) ? say("%1: a change is clear from %2 m/s up", reading,
                                          clearFrom(read.clearSize(), saidSpeedDecimals))
                                    : reading;
}

Words maxReading(const ReadChange& read) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read) ? say("%1: a change is clear from %2 up", reading,
                                          massWords(read.clearSize(), asEstimate))
                                    : reading;
}

Words speedCell(const ReadChange& read) {
    const Words reading = readingWords(read, 3);
    return unclearWithFigures(read)
               ? say("%1; clear from %2", reading, clearFrom(read.clearSize(), saidSpeedDecimals))
               : reading;
}

Words maxCell(const ReadChange& read) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read)
               ? say("%1; clear from %2", reading, massWords(read.clearSize(), asEstimate))
               : reading;
}

Words sizedCell(const ReadChange& read, int decimals) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read)
               ? say("%1; clear from %2", reading, clearFrom(read.clearSize(), decimals))
               : reading;
}

} // namespace slopebook::answers
