// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/station.h"

#include "core/model/errors.h"
#include "core/model/phrases/model.h"

#include <algorithm>

namespace slopebook {

void validate(const Station& station) {
    if (station.lift.has_value() != station.tests.empty())
        throw BadInput(station.lift ? say("a lift and tests at one station")
                                    : say("a station at which nothing is done"),
                       say("a lift, or a test or a few"));
    auto tests = station.tests;
    std::ranges::sort(tests);
    if (std::ranges::adjacent_find(tests) != tests.end())
        throw BadInput(say("a test twice"), say("each test once at a station"));
    if (!station.lift && !station.ladder.empty())
        throw BadInput(say("a ladder without a lift"), say("loads for a lift only"));
    if (std::ranges::adjacent_find(station.ladder, std::greater_equal{}) != station.ladder.end())
        throw BadInput(say("a ladder that does not rise"), say("loads from light to heavy"));
    if (station.sets < 0 || station.sets > mostPlanned)
        throw BadInput(inWords(station.sets), say("1 to 50 sets, or none said"));
}

void validate(const Roster& roster) {
    auto athletes = roster.athletes;
    std::ranges::sort(athletes);
    if (std::ranges::adjacent_find(athletes) != athletes.end())
        throw BadInput(say("an athlete twice"), say("each athlete once on a roster"));
}

} // namespace slopebook
