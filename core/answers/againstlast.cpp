// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/againstlast.h"

#include "core/answers/figures.h"
#include "core/answers/method.h"
#include "core/answers/readingwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

constexpr std::size_t fewestShared = 2;

std::vector<const ChangeAt*> liftedOnBoth(const Comparison& c) {
    std::vector<const ChangeAt*> loads;
    for (const ChangeAt& at : c.at)
        if (at.seenFrom && at.seenTo)
            loads.push_back(&at);
    return loads;
}

/// "60, 80 kg": the unit once.
Words massesOf(const std::vector<const ChangeAt*>& loads) {
    std::vector<Words> all;
    for (const ChangeAt* at : loads)
        all.push_back(massWords(kilograms(at->load), at == loads.back() ? MassForm{} : bareLoad));
    return listed(std::move(all));
}

/// All one way, or how far from one end to the other.
Words waysOf(const std::vector<const ChangeAt*>& loads) {
    const auto [least, most] = std::ranges::minmax(
        loads, {}, [](const ChangeAt* at) { return at->read.besideInterval(); });
    const double low = least->read.besideInterval(), high = most->read.besideInterval();
    if (high < 0)
        return say("by the lines slower at all %1 loads, by %2 m/s", loads.size(),
                   rangeOf(fixed(-high, saidSpeedDecimals), fixed(-low, saidSpeedDecimals)));
    if (low > 0)
        return say("by the lines faster at all %1 loads, by %2 m/s", loads.size(),
                   rangeOf(fixed(low, saidSpeedDecimals), fixed(high, saidSpeedDecimals)));
    const auto faster = std::ranges::count_if(
        loads, [](const ChangeAt* at) { return at->read.besideInterval() > 0; });
    return say("by the lines faster at %1 of %2 loads, by %3 to %4 m/s", faster, loads.size(),
               signedFigure(low, saidSpeedDecimals), signedFigure(high, saidSpeedDecimals));
}

/// What of them is clear, held and unclear.
void addReadings(std::vector<Words>& told, const std::vector<const ChangeAt*>& loads) {
    std::vector<const ChangeAt*> clear, held, open;
    double shows = 0;
    for (const ChangeAt* at : loads)
        switch (at->read.reading) {
        case Reading::Better:
        case Reading::Worse:
            clear.push_back(at);
            break;
        case Reading::Held:
            held.push_back(at);
            break;
        case Reading::Unclear:
            open.push_back(at);
            shows = std::max(shows, at->read.clearSize());
            break;
        case Reading::NoFigure:
            break;
        }
    const auto all = [&](const auto& some) { return some.size() == loads.size(); };
    if (!clear.empty())
        told.push_back(all(clear) ? say("clear at all of them")
                                  : say("clear at %1", massesOf(clear)));
    if (!held.empty())
        told.push_back(all(held) ? say("held at all of them") : say("held at %1", massesOf(held)));
    const Words from = clearFrom(shows, saidSpeedDecimals);
    if (!open.empty())
        told.push_back(
            all(open) ? say("but clear beyond the noise at none of them (clear from %1 m/s)", from)
                      : say("unclear at %1 (clear from %2 m/s)", massesOf(open), from));
}

} // namespace

Words againstLastWords(const Comparison& comparison) {
    const LiftSession& last = comparison.from.session;
    const Words day = sayDay(last.date, last.ordinal);
    if (!comparison.under.notComparable.empty())
        return say("Not comparable with %1: %2.", day, comparison.under.notComparable);
    const auto loads = liftedOnBoth(comparison);
    if (loads.size() < fewestShared)
        return {};
    std::vector<Words> told{waysOf(loads)};
    addReadings(told, loads);
    if (const Words under = underWords(comparison.under.changes); !under.empty())
        told.push_back(say("tested %1", under));
    return asSentence(say("Against %1, %2: %3", day, eachChangeAlone(), clauses(std::move(told))));
}

} // namespace slopebook::answers
