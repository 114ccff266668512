// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/session.h"

#include "core/model/phrases/model.h"

#include <algorithm>

namespace slopebook {

std::optional<double> pointVelocity(const Set& set, PointRule rule) {
    if (!set.excluded.empty())
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
