// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squaddefaults.h"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <map>
#include <set>
#include <vector>

namespace slopebook::ui {

namespace {

using Athletes = std::vector<std::uint64_t>; ///< a bit each

int both(const Athletes& a, const Athletes& b) {
    int count = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        count += std::popcount(a[i] & b[i]);
    return count;
}

/// Who was tested around each day.
struct Around {
    std::vector<Date> days;
    std::vector<Athletes> athletes;

    Around(std::span<const questions::TestDay> tests, int within) {
        std::map<AthleteId, std::size_t> place;
        std::set<Date> dates;
        for (const questions::TestDay& test : tests) {
            place.try_emplace(test.athlete, place.size());
            dates.insert(test.date);
        }
        days.assign(dates.begin(), dates.end());
        athletes.assign(days.size(), Athletes(place.size() / 64 + 1));
        for (const questions::TestDay& test : tests) {
            const std::size_t at = place.at(test.athlete);
            auto day = std::ranges::lower_bound(
                days, test.date, [&](Date d, Date t) { return daysBetween(d, t) > within; });
            for (; day != days.end() && daysBetween(test.date, *day) <= within; ++day)
                athletes[static_cast<std::size_t>(day - days.begin())][at / 64] |= std::uint64_t{1}
                                                                                   << (at % 64);
        }
    }

    /// Calls visit(earlier, later, athletes tested both times) from the latest pair back, until it
    /// says enough.
    template <class Visit>
    void pairs(int within, const Visit& visit) const {
        for (std::size_t later = days.size(); later-- > 0;)
            for (std::size_t earlier = later; earlier-- > 0;)
                if (daysBetween(days[earlier], days[later]) > 2 * within &&
                    visit(earlier, later, both(athletes[earlier], athletes[later])))
                    return;
    }
};

std::optional<TwoTestDays> latest(std::span<const questions::TestDay> tests, int within) {
    const Around around(tests, within);
    int most = 0;
    around.pairs(within, [&](std::size_t, std::size_t, int count) {
        most = std::max(most, count);
        return false;
    });
    std::optional<TwoTestDays> found;
    if (most > 0)
        around.pairs(within, [&](std::size_t earlier, std::size_t later, int count) {
            if (4 * count < 3 * most)
                return false;
            found = {around.days[earlier], around.days[later], within};
            return true;
        });
    return found;
}

} // namespace

std::optional<std::pair<std::size_t, std::size_t>>
lastTwoBlocks(std::span<const Stored<BlockId, Block>> blocks,
              std::span<const questions::TestDay> days) {
    std::vector<std::size_t> used;
    for (std::size_t i = 0; i < blocks.size(); ++i)
        if (std::ranges::any_of(days, [&](const questions::TestDay& day) {
                return blocks[i].value.holds(day.date);
            }))
            used.push_back(i);
    if (used.size() < 2)
        return std::nullopt;
    std::ranges::stable_sort(used, {}, [&](std::size_t i) { return blocks[i].value.last; });
    return std::pair{used[used.size() - 2], used.back()};
}

std::optional<TwoTestDays> lastTwoTestDays(std::span<const questions::TestDay> days) {
    for (const int within : {14, 7, 3, 0})
        if (const auto found = latest(days, within))
            return found;
    return std::nullopt;
}

} // namespace slopebook::ui
