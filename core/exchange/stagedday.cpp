// SPDX-License-Identifier: GPL-3.0-or-later
// What a tidy row says of a test day beside loads and velocities: conditions, outcomes, effort,
// what was not possible.
#include "core/exchange/cells.h"
#include "core/exchange/staging.h"
#include "core/exchange/tidycolumns.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <array>

namespace slopebook::exchange {

namespace {
constexpr std::string_view notPossible = "not possible";
constexpr std::array conditionCells{TidyDevice,   TidySite,      TidySurface,
                                    TidyFootwear, TidyTechnique, TidyNotComparable};
constexpr Phrase outcomeExpected = "lifted, not lifted, not possible or nothing";

Words inQuotation(std::string_view text) {
    return say("\"%1\"", text);
}
} // namespace

bool saysConditions(const Cells& cells) {
    return std::ranges::any_of(conditionCells, [&](Tidy cell) { return cells.said(cell); });
}

void Staging::takeConditions(const Cells& cells, int sessionAt, int liftAt) {
    if (!saysConditions(cells))
        return;
    const auto [it, isNew] = m_conditionsAt.try_emplace(StagedPlace{sessionAt, liftAt, 0},
                                                        static_cast<int>(conditions.size()));
    if (isNew)
        conditions.push_back({.session = sessionAt,
                              .lift = liftAt,
                              .device = {},
                              .place = {},
                              .surface = {},
                              .footwear = {},
                              .technique = {},
                              .notComparable = {}});
    StagedConditions& held = conditions[static_cast<std::size_t>(it->second)];
    constexpr Phrase of = "%1, as %2 says of the lift that day";
    onceText(cells, TidyDevice, held.device, of);
    onceText(cells, TidySite, held.place, of);
    onceText(cells, TidySurface, held.surface, of);
    onceText(cells, TidyFootwear, held.footwear, of);
    onceText(cells, TidyTechnique, held.technique, of);
    onceText(cells, TidyNotComparable, held.notComparable, of);
}

/// Whether the row is one of what was not possible, or of a lift's conditions alone.
bool Staging::holdsNoSet(const Cells& cells) const {
    const bool nothingLifted = !cells.said(TidySet) && !cells.said(TidyLoad) &&
                               !cells.said(TidyRep) && !cells.said(TidyVelocity);
    return cells.raw(TidyOutcome) == notPossible ||
           (nothingLifted && !cells.said(TidyOutcome) && saysConditions(cells));
}

/// What stands in a row of what was not possible, and may not.
void Staging::requireNotPossible(const Cells& cells) const {
    if (cells.raw(TidyOutcome) != notPossible)
        return;
    for (const Tidy cell : {TidySet, TidyRep, TidyVelocity})
        if (cells.said(cell))
            cells.refuse(cell, "nothing where the load or the lift was not possible");
    if (!cells.said(TidyReason))
        cells.refuse(TidyReason, "why it was not possible");
}

/// Whether the row holds no set.
bool Staging::takeNotPossible(const Cells& cells, int sessionAt, int liftAt) {
    if (cells.raw(TidyOutcome) != notPossible)
        return holdsNoSet(cells);
    requireNotPossible(cells);
    gaps.push_back({.session = sessionAt,
                    .lift = liftAt,
                    .load = cells.mass(TidyLoad, storableLoadLimit, loadWanted),
                    .reason = cells.text(TidyReason),
                    .place = here(cells)});
    return true;
}

void Staging::takeOutcome(const Cells& cells, StagedSet& held) {
    constexpr Phrase ofSet = "%1, as %2 says of the set";
    if (cells.said(TidyOutcome)) {
        const auto outcome =
            need(cells, TidyOutcome, outcomeFromWord(cells.raw(TidyOutcome)), outcomeExpected);
        once(
            cells, TidyOutcome, held.outcome, outcome,
            [](Outcome said) { return inQuotation(word(said)); }, ofSet);
    }
    const bool notLifted = held.outcome && held.outcome->value == Outcome::NotLifted;
    if (notLifted)
        for (const Tidy cell : {TidyRep, TidyVelocity})
            if (cells.said(cell))
                cells.refuse(cell, "nothing where the load was not lifted");
    if (cells.said(TidyReason) && !notLifted)
        cells.refuse(TidyReason, "nothing where the load was lifted");
    onceText(cells, TidyReason, held.reason, ofSet);
    if (!cells.said(TidyRpe))
        return;
    constexpr Phrase rpe = "an RPE from 1 to 10 in halves, such as 8.5";
    const auto number = cells.number(TidyRpe, 1, 10, false, rpe);
    const Effort said = need(cells, TidyRpe, effort(*number), rpe);
    once(
        cells, TidyRpe, held.effort, said,
        [](Effort one) { return figure(writeNumber(one.value())); }, ofSet);
}

} // namespace slopebook::exchange
