// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/readingwords.h"

#include "core/model/phrases/answers.h"

namespace slopebook::answers {

namespace {

bool unclearWithFigures(const ReadChange& read) {
    return read.reading == Reading::Unclear && read.shows() > 0;
}

} // namespace

Words speedReading(const ReadChange& read) {
    const Words reading = readingWords(read, 3);
    return unclearWithFigures(read)
               ? say("%1: a change is clear from %2 m/s up", reading, figure(read.shows(), 3))
               : reading;
}

Words maxReading(const ReadChange& read) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read) ? say("%1: a change is clear from %2 up", reading,
                                          massWords(read.shows(), asEstimate))
                                    : reading;
}

Words speedCell(const ReadChange& read) {
    const Words reading = readingWords(read, 3);
    return unclearWithFigures(read) ? say("%1; clear from %2", reading, figure(read.shows(), 3))
                                    : reading;
}

Words maxCell(const ReadChange& read) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read)
               ? say("%1; clear from %2", reading, massWords(read.shows(), asEstimate))
               : reading;
}

Words sizedCell(const ReadChange& read, int decimals) {
    const Words reading = sizedReading(read);
    return unclearWithFigures(read)
               ? say("%1; clear from %2", reading, figure(read.shows(), decimals))
               : reading;
}

} // namespace slopebook::answers
