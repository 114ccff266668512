// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/batterysummary.h"

#include "core/model/phrases/answers.h"

#include <algorithm>
#include <array>
#include <utility>

namespace slopebook::answers {

bool surelySmall(const ReadChange& read) {
    return read.withinSmallest &&
           (read.reading == Reading::Better || read.reading == Reading::Worse);
}

std::vector<Words> batterySummary(const BatteryComparison& battery) {
    constexpr std::array order{Reading::Better, Reading::Worse, Reading::Held, Reading::Unclear,
                               Reading::NoFigure};
    std::vector<Words> parts;
    for (const Reading reading : order) {
        std::vector<Words> names;
        for (const TestChange& test : battery.tests)
            if (test.read.reading == reading)
                names.push_back(testLabel(test.kind.value, test.side));
        if (!names.empty())
            parts.push_back(
                asSentence(say("%1: %2", readingWords(reading), listed(std::move(names)))));
    }
    if (parts.empty())
        parts.push_back(say("No test of the battery was done on either side."));
    return parts;
}

std::vector<Words> batteryRemarks(const BatteryComparison& battery) {
    const auto any = [&battery](const auto& of) { return std::ranges::any_of(battery.tests, of); };
    std::vector<Words> lines;
    for (const Note& note : battery.notes)
        lines.push_back(asSentence(note.words));
    if (any([](const TestChange& test) { return !test.context.empty(); }))
        lines.push_back(say("* compared over a changed context."));
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
            add(say("%1: typical error %2 %3, %4", kind.name, figure(test.noise->te, kind.decimals),
                    kind.unit, test.noise->source));
        if (test.read.smallest)
            add(say("%1: smallest change that matters %2 %3, %4", kind.name,
                    figure(test.read.smallest->value, kind.decimals), kind.unit,
                    test.read.smallest->source));
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
