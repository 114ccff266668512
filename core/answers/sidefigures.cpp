// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/sidefigures.h"

namespace slopebook::answers {

TwoFigures speedsOf(const Comparison& c, double load) {
    if (c.ofSeveral()) {
        const auto& sides = *c.uncertainty.sides;
        const auto before = figureAt(sides.earlier, load, c.uncertainty.day),
                   after = figureAt(sides.later, load, c.uncertainty.day);
        if (before && after)
            return {before->value, after->value};
    }
    return {c.from.line.at(load), c.to.line.at(load)};
}

std::optional<TwoFigures> maximaOf(const Comparison& c) {
    if (!c.from.oneRm || !c.to.oneRm)
        return std::nullopt;
    if (c.ofSeveral() && c.from.mvt) {
        const auto before = c.uncertainty.maxOfEarlier(c.from.mvt->value),
                   after = c.uncertainty.maxOfLater(c.from.mvt->value);
        if (before && after)
            return TwoFigures{*before, *after};
    }
    return TwoFigures{c.from.oneRm->estimate, c.to.oneRm->estimate};
}

} // namespace slopebook::answers
