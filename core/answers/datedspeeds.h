// SPDX-License-Identifier: GPL-3.0-or-later
// Speeds at one load on their days, for a trend through them.
#pragma once

#include "core/answers/checkloads.h"

#include <vector>

namespace slopebook::answers {

/// Days that a trend of a season needs, and one within a block: on three days an interval stands on
/// one degree of freedom and tells nothing of so short a stretch.
constexpr int daysOfASeasonsTrend = 3, daysOfABlocksTrend = 4;

class DatedSpeeds {
public:
    /// relative: the variance of that day's figure, in a unit that is the same for all.
    void add(Date date, double speed, double relative = 1);
    int distinct() const; ///< days
    Date first() const { return m_dates.front(); }
    Date last() const { return m_dates.back(); }
    /// A week, with its interval where there are more than two. NoAnswer where all was on one day.
    Answer<Trend> trend(double level) const;

private:
    std::vector<Date> m_dates;
    std::vector<double> m_speeds, m_relative;
};

} // namespace slopebook::answers
