// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/batterysummary.h"

#include "core/answers/sources.h"
#include "core/answers/testkinds.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <array>
#include <utility>

namespace slopebook::answers {

bool surelySmall(const ReadChange& read) {
    return read.withinSmallest &&
           (read.reading == Reading::Better || read.reading == Reading::Worse);
}

namespace {

/// So many unclear tests are led by with their figures; of more those alone that lean: the others'
/// stand in the table below.
constexpr std::ptrdiff_t fewUnclear = 3;

bool isUnclear(const TestChange& test) {
    return test.read.reading == Reading::Unclear;
}

} // namespace

Words batterySummary(const BatteryComparison& battery) {
    struct Saying {
        Reading reading;
        Phrase words;
    };
    constexpr Saying sayings[]{{Reading::Better, "%1 better (%2)"},
                               {Reading::Worse, "%1 worse (%2)"},
                               {Reading::Held, "%1 held (%2)"},
                               {Reading::Unclear, "%1 unclear (%2)"},
                               {Reading::NoFigure, "%1 without a figure (%2)"}};
    const bool few = std::ranges::count_if(battery.tests, isUnclear) <= fewUnclear;
    std::vector<Words> parts;
    for (const Saying& saying : sayings) {
        std::vector<Words> names;
        for (const TestChange& test : battery.tests)
            if (test.read.reading == saying.reading)
                names.push_back(isUnclear(test) && (few || test.read.leans() != 0)
                                    ? unclearTestWords(test)
                                    : testLabel(test.kind.value, test.side));
        if (const auto count = static_cast<int>(names.size()); count > 0)
            parts.push_back(say(saying.words, count, clauses(std::move(names))));
    }
    if (parts.empty())
        return say("No test of the battery was done on either side.");
    const auto count = static_cast<int>(battery.tests.size());
    return asSentence(count == 1 ? say("1 test: %1", clauses(std::move(parts)))
                                 : say("%1 tests: %2", count, clauses(std::move(parts))));
}

std::vector<Words> batteryRemarks(const BatteryComparison& battery) {
    const auto any = [&battery](const auto& of) { return std::ranges::any_of(battery.tests, of); };
    std::vector<Words> lines;
    for (const Note& note : battery.notes)
        lines.push_back(asSentence(note.words));
    if (std::ranges::any_of(battery.forest, &ForestRow::flagged))
        lines.push_back(say("* in the chart: under other conditions, or extrapolated."));
    if (any([](const TestChange& test) { return test.read.beyondSmallest; }))
        lines.push_back(say("> m: by more than the smallest change that matters."));
    if (any([](const TestChange& test) { return surelySmall(test.read); }))
        lines.push_back(say("< m: certain, but less than the smallest change that matters."));
    if (!battery.notDrawn.empty())
        lines.push_back(say("Not in the chart: %1.", clauses(battery.notDrawn)));
    return lines;
}

std::vector<Words> batterySources(const BatteryComparison& battery) {
    std::vector<Words> lines;
    const auto add = [&lines](Words line) {
        if (std::ranges::find(lines, line) == lines.end())
            lines.push_back(std::move(line));
    };
    for (const TestChange& test : battery.tests) {
        const TestKind& kind = test.kind.value;
        if (test.noise)
            add(say("%1: typical error %2 %3, %4", testName(kind.name),
                    figure(test.noise->te, kind.decimals), kind.unit, test.noise->source));
        if (test.read.smallest)
            add(say("%1: smallest change that matters %2 %3, %4", testName(kind.name),
                    figure(test.read.smallest->value, kind.decimals), kind.unit,
                    wholeSourceOf(*test.read.smallest)));
    }
    return lines;
}

Words leftOutWords(const Words& what) {
    return say("Left out, for it cannot be read: %1", what);
}

Words batteryMethod() {
    return say("Interval: change ± t √2 TE on the degrees of freedom of TE, the typical error. "
               "Better or worse: the interval excludes zero; held: the interval of two one-sided "
               "tests lies inside the smallest change that matters; else unclear.");
}

} // namespace slopebook::answers
