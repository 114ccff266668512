// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squadmean.h"

#include "core/answers/familywise.h"
#include "core/model/phrases/answers.h"
#include "core/stats/moderation.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace slopebook::answers {

namespace {

constexpr double sharedDay = 0.5; // of a day's variance, by simulation (tests/README.md, 'Seasons')

bool stands(const SquadRow& row) {
    return row.read && row.read->reading != Reading::NoFigure && row.parts;
}

/// Variance of an athlete's change by lines and days, the shared day not in it.
double ownVariance(const ChangeParts& parts) {
    return parts.earlier.value + parts.later.value + 2 * (1 - sharedDay) * parts.day.value +
           parts.device.value;
}

struct OfOneAthlete {
    int figures = 0, changed = 0; ///< readings
    double chances = 0;           ///< the sum of theirs
};

std::map<AthleteId, OfOneAthlete> eachAthlete(const Squad& squad) {
    const Family family = std::make_shared<FamilyTables>();
    std::map<AthleteId, OfOneAthlete> all;
    for (const SquadPart& part : squad.parts)
        for (const SquadRow& row : part.rows) {
            OfOneAthlete& one = all[row.athlete];
            const Reading reading = row.read ? row.read->reading : Reading::NoFigure;
            one.figures += reading != Reading::NoFigure ? 1 : 0;
            one.changed += reading == Reading::Better || reading == Reading::Worse ? 1 : 0;
            if (stands(row))
                one.chances += chanceOfNothing(family, *row.parts, row.read->interval);
        }
    return all;
}

/// What matters of a mean of changes: the mean of what matters of each. Of a max it is a share of
/// each one's own, and whose row comes first says nothing of all.
std::optional<Smallest> smallestOfAll(const std::vector<const SquadRow*>& rows) {
    std::optional<Smallest> all;
    double sum = 0;
    int known = 0;
    bool alike = true;
    for (const SquadRow* row : rows) {
        const auto& one = row->read->smallest;
        if (!one)
            continue;
        if (!all)
            all = one;
        alike = alike && one->value == all->value;
        sum += one->value;
        ++known;
    }
    if (all && !alike) {
        all->value = sum / known;
        all->interval.reset(); // of one figure for all
    }
    return all;
}

} // namespace

std::optional<SquadMean> squadMean(const SquadPart& part, double level) {
    std::vector<const SquadRow*> rows;
    for (const SquadRow& row : part.rows)
        if (stands(row))
            rows.push_back(&row);
    if (rows.size() < leastAthletes)
        return std::nullopt;
    const auto n = static_cast<double>(rows.size());
    SquadMean made{.athletes = static_cast<int>(rows.size())};
    double day = 0, own = 0;
    for (const SquadRow* row : rows) {
        made.mean += row->read->change / n;
        day += row->parts->day.value / n;
        own += ownVariance(*row->parts) / n;
    }
    double square = 0;
    for (const SquadRow* row : rows)
        square += (row->read->change - made.mean) * (row->read->change - made.mean) / (n - 1);
    made.spread = std::sqrt(square);
    const double true2 = std::max(0.0, square - own);
    made.trueSpread = std::sqrt(true2);
    const auto interval = [&](double at) {
        const double half = std::sqrt(stats::squaredHalfWidth(
            std::array{stats::Variance{square / n, n - 1},
                       stats::Variance{2 * sharedDay * day, stats::publishedDf}},
            stats::tOf(at)));
        return stats::Interval{made.mean - half, made.mean + half};
    };
    made.interval = interval(level);
    made.read =
        read(made.mean, made.interval, interval(equivalenceLevel(level)), smallestOfAll(rows));
    made.read->at80 = interval(leaningLevel);
    for (const SquadRow* row : rows) {
        const double noise = ownVariance(*row->parts);
        const double share = true2 + noise > 0 ? true2 / (true2 + noise) : 1;
        const double drawn = made.mean + share * (row->read->change - made.mean);
        // what is left of the athlete's own, and what is not known of the mean it is drawn to
        const double left = share * noise + (1 - share) * (1 - share) * square / n;
        const double half = stats::tCritical(level, n - 1) * std::sqrt(left);
        made.each.push_back({.athlete = row->athlete,
                             .raw = row->read->change,
                             .drawn = drawn,
                             .interval = {drawn - half, drawn + half}});
    }
    return made;
}

std::optional<SquadMean::Drawn> drawnOf(const std::optional<SquadMean>& mean, AthleteId athlete) {
    if (mean)
        for (const SquadMean::Drawn& each : mean->each)
            if (each.athlete == athlete)
                return each;
    return std::nullopt;
}

double squadByChance(const Squad& squad) {
    double sum = 0;
    for (const auto& [athlete, of] : eachAthlete(squad))
        sum += of.chances;
    return sum;
}

SquadAthletes athletesOf(const Squad& squad) {
    SquadAthletes all;
    for (const auto& [athlete, of] : eachAthlete(squad)) {
        all.asked += of.figures > 0 ? 1 : 0;
        all.changed += of.changed > 0 ? 1 : 0;
        all.byChanceAtMost += std::min(1.0, of.chances);
    }
    return all;
}

Words squadMeanWords(const SquadPart& part, const SquadMean& mean) {
    const bool speed = part.load.has_value();
    const auto amount = [&](double value) {
        return speed ? signedFigure(value, 3) : massWords(value, bareChange);
    };
    const Words by =
        speed ? say("%1 m/s", signedFigure(mean.mean, 3)) : massWords(mean.mean, asChange);
    const Words reading = readingWords(*mean.read, speed ? 3 : 1);
    if (!(mean.trueSpread > 0))
        return say("Mean change of %1 athletes %2 (%3 to %4): %5. Their changes differ by no more "
                   "than the noise of their own tests.",
                   mean.athletes, by, amount(mean.interval.low), amount(mean.interval.high),
                   reading);
    return say("Mean change of %1 athletes %2 (%3 to %4): %5. With the noise of their own tests "
               "taken out, their changes still differ by an SD of %6.",
               mean.athletes, by, amount(mean.interval.low), amount(mean.interval.high), reading,
               speed ? say("%1 m/s", figure(mean.trueSpread, 3))
                     : massWords(mean.trueSpread, asEstimate));
}

Words squadChanceWords(const Squad& squad) {
    int found = 0, all = 0;
    for (const SquadPart& part : squad.parts) {
        found += part.read(Reading::Better) + part.read(Reading::Worse);
        all += part.figures();
    }
    const SquadAthletes athletes = athletesOf(squad);
    return say("Better or worse in something: %1 of %2 athletes (%3 of %4 readings; those of one "
               "athlete go together). Chance alone gives at most %5 such athletes.",
               athletes.changed, athletes.asked, found, all, figure(athletes.byChanceAtMost, 1));
}

} // namespace slopebook::answers
