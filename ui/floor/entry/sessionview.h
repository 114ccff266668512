// SPDX-License-Identifier: GPL-3.0-or-later
// Everything the session form shows of one session and lift, read from the log in one go.
#pragma once

#include "core/questions/planquestions.h"
#include "core/questions/stationday.h"
#include "ui/charts/linedata.h"
#include "ui/floor/entry/laddermodel.h"
#include "ui/floor/entry/setmodel.h"

#include <optional>
#include <vector>

namespace slopebook::ui {

struct SessionView {
    questions::Background about;        ///< day-to-day noise only where there is a profile
    std::optional<LiftSession> session; ///< absent while it holds no set of the lift
    std::optional<Answer<answers::Profile>> profile;
    std::vector<SetRow> rows;
    std::optional<LiftSession> last; ///< the athlete's session of the lift before it
    std::vector<LadderModel::Step> ladder;
    std::optional<Mass> notLifted;   ///< today, above all that were
    questions::NotToday gaps;        ///< what of the lift was not possible
    std::optional<Mass> next;        ///< what to put on the bar now; under notLifted
    std::optional<Mass> limit;       ///< what a maximum is estimated at, today or else last time
    std::optional<double> nextShare; ///< percent of that, with the body that moves
    /// The same of the ends of that estimate's interval to plan with, where it has one.
    std::optional<stats::Interval> nextShareWithin{};
    /// Of the fastest rep of one more set of it, by today's line where that has intervals, m/s.
    struct Expected {
        double speed = 0;
        stats::Interval within = {};
    };
    std::optional<Expected> expected{};
    bool nextIsMaximum = false;                ///< above that, but last time it was a true maximum
    bool nextHeldBack = false;                 ///< the ladder goes on, but above the estimate
    std::optional<answers::LoadBound> ceiling; ///< of the block on that day
    bool overCeiling = false;                  ///< the ladder goes on, but above it
    charts::LineData chart;

    /// Those that were lifted.
    std::vector<Mass> loadsToday() const;
    std::vector<Mass> loadsLast() const;
    /// Those of last time that were true maxima.
    std::vector<Mass> maximaLast() const;
    /// Which point of the chart a row is; nothing where it is not drawn as one of its own.
    std::optional<int> pointOfRow(int row) const;
};

/// session: absent before it is started; then `last` is the athlete's latest. earlier: how many
/// sessions before it the chart shows, `last` the newest of them. today: the day of a session that
/// is not started. Throws LogError.
SessionView readSession(const log::Log& log, AthleteId athlete, LiftId lift,
                        std::optional<SessionId> session, LoadUnit unit, int earlier = 1,
                        std::optional<Date> today = {});

} // namespace slopebook::ui
