// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/datedspeeds.h"

#include "core/model/phrases/answers.h"
#include "core/stats/daytrend.h"

#include <set>

namespace slopebook::answers {

void DatedSpeeds::add(Date date, double speed, double relative) {
    m_dates.push_back(date);
    m_speeds.push_back(speed);
    m_relative.push_back(relative);
}

int DatedSpeeds::distinct() const {
    return static_cast<int>(std::set(m_dates.begin(), m_dates.end()).size());
}

Answer<Trend> DatedSpeeds::trend(double level) const {
    std::vector<double> weeks;
    for (const Date date : m_dates)
        weeks.push_back(static_cast<double>(daysBetween(m_dates.front(), date)) / 7);
    const auto found = stats::dayTrend(weeks, m_speeds, m_relative);
    if (!found)
        return NoAnswer{NoAnswer::Why::TooFewSessions,
                        say("a trend needs sessions on more than one day")};
    return Trend{.perWeek = found->slope,
                 .interval = found->interval(level),
                 .sessions = found->n,
                 .start = found->at0};
}

} // namespace slopebook::answers
