// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/session.h"

#include "core/model/phrases/model.h"

#include <algorithm>
#include <cmath>

namespace slopebook {

std::string_view word(Outcome outcome) {
    return outcome == Outcome::Lifted ? "lifted" : "not lifted";
}
std::optional<Outcome> outcomeFromWord(std::string_view word) {
    for (const Outcome outcome : {Outcome::Lifted, Outcome::NotLifted})
        if (word == slopebook::word(outcome))
            return outcome;
    return std::nullopt;
}

std::optional<Effort> effort(double value) {
    if (!(value >= 1 && value <= 10) || value * 2 != std::floor(value * 2))
        return std::nullopt;
    return Effort{static_cast<int>(value * 2)};
}

std::optional<double> pointVelocity(const Set& set, PointRule rule) {
    if (!set.excluded.empty() || set.outcome == Outcome::NotLifted)
        return std::nullopt;
    double sum = 0;
    double fastest = 0;
    int counting = 0;
    for (const Rep& rep : set.reps) {
        if (!rep.excluded.empty())
            continue;
        sum += rep.velocity;
        fastest = std::max(fastest, rep.velocity);
        ++counting;
    }
    if (counting == 0)
        return std::nullopt;
    return rule == PointRule::Fastest ? fastest : sum / counting;
}

std::string dateKey(Date date, int ordinal) {
    return ordinal > 1 ? isoDate(date) + "#" + std::to_string(ordinal) : isoDate(date);
}

Words sayDay(Date date, int ordinal) {
    return ordinal > 1 ? say("%1#%2", date, ordinal) : inWords(date);
}

} // namespace slopebook
