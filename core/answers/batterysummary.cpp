// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/batterysummary.h"

#include "core/answers/method.h"
#include "core/answers/sources.h"
#include "core/answers/testkinds.h"
#include "core/answers/toldreadings.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <utility>

namespace slopebook::answers {

bool surelySmall(const ReadChange& read) {
    return read.withinSmallest &&
           (read.reading == Reading::Better || read.reading == Reading::Worse);
}

namespace {

/// Their names stand in the table, with the reason of each.
Words withoutFigure(const std::vector<Words>& names) {
    return names.size() == 1 ? say("without a figure: %1", names.front())
                             : say("%1 without a figure", names.size());
}

} // namespace

Words batterySummary(const BatteryComparison& battery) {
    std::vector<NamedReading> named;
    std::vector<Words> none;
    int apart = 0;
    for (const ForestRow& row : battery.forest)
        if (row.notComparable)
            ++apart;
        else if (row.reading == Reading::NoFigure)
            none.push_back(row.label);
        else
            named.push_back({row.reading, row.named, row.tells});
    std::vector<Words> parts = toldReadings(named);
    if (apart > 0)
        parts.push_back(say("not comparable: %1", apart));
    if (!none.empty())
        parts.push_back(withoutFigure(none));
    if (parts.empty())
        return say("No test of the battery was done on either side.");
    const auto count = static_cast<int>(battery.forest.size());
    return asSentence(count == 1 ? clauses(std::move(parts))
                                 : say("of %1 readings (%2), %3", count,
                                       heldAgainst(battery.allAtOnce), clauses(std::move(parts))));
}

std::vector<Words> batteryRemarks(const BatteryComparison& battery) {
    const auto any = [&battery](const auto& of) { return std::ranges::any_of(battery.tests, of); };
    std::vector<Words> lines;
    for (const Note& note : battery.notes)
        lines.push_back(asSentence(note.words));
    const ForestKey key = forestKey(battery.forest);
    for (Words& mark : forestMarkWords(key))
        lines.push_back(asSentence(say("in the chart %1", std::move(mark))));
    if (any([](const TestChange& test) { return test.read.beyondSmallest; }))
        lines.push_back(say("> m: by more than the smallest change that matters."));
    if (any([](const TestChange& test) { return surelySmall(test.read); }))
        lines.push_back(say("< m: certain, but less than the smallest change that matters."));
    std::vector<Words> withoutBar;
    for (const ForestRow& row : battery.forest)
        if (!row.noBar.empty())
            withoutBar.push_back(say("%1: %2", row.label, row.noBar));
    if (!withoutBar.empty())
        lines.push_back(say("Without a bar in the chart: %1.", clauses(std::move(withoutBar))));
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
            add(say("%1: typical error %2 %3, %4", testLabel(kind, test.side),
                    figure(test.noise->te, kind.decimals), kind.unit, test.noise->source));
        if (test.read.smallest)
            add(say("%1: smallest change that matters %2 %3, %4", testLabel(kind, test.side),
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
