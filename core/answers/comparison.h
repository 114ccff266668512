// SPDX-License-Identifier: GPL-3.0-or-later
// Two sessions of one athlete and lift: what changed by load, what the estimated 1RM did, and the
// sentence.
#pragma once

#include "core/answers/profile.h"
#include "core/answers/reading.h"
#include "core/answers/testsneeded.h"
#include "core/answers/uncertainty.h"
#include "core/stats/twolines.h"

#include <functional>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace slopebook::answers {

/// Two sessions with their points made of as many reps (fairreps.h); nothing where they are
/// already.
using AsManyReps = std::function<std::optional<std::pair<LiftSession, LiftSession>>(
    const LiftSession& from, const LiftSession& to)>;

/// What one device reads against another, m/s, with its variance.
using DeviceBias = std::pair<double, stats::Variance>;

/// How the readings' intervals are made: ChangeUncertainty, half-width^2 = t1^2 V_lines + t0^2 2
/// V_day + t^2 V_device, each with the quantile of its own df (Banerjee 1960, from memory), widened
/// by what bent lines may make wrong. Satterthwaite's df for all together would say better or worse
/// of nothing in up to 7.8 % of cases (tests/README.md, 'Truth of the readings').
struct ComparisonSettings {
    double level = 0.95;
    stats::Variances variances = stats::Variances::Pooled;
    std::vector<Mass> checkLoads = {};
    DayNoise dayNoise = {};
    Bend bend = {}; ///< as the athlete may bend; none: lines are taken as straight
    std::optional<Smallest> smallestVelocity = {}; ///< m/s, at loads that smallestAt leaves out
    std::map<Mass, Smallest> smallestAt = {};      ///< m/s, where it differs by load
    std::optional<Smallest> smallestOneRm = {};    ///< kg
    /// Bias of the later session's device against the earlier one's, m/s, with its variance: taken
    /// off the later line; the variance enters the readings, not the intervals of the lines alone.
    std::optional<DeviceBias> deviceBias = {};
    std::vector<Note> ofTheDevice =
        {}; ///< what is to be said of that bias, or of why there is none
    /// The names of the log's devices.
    std::vector<Stored<DeviceId, Device>> devices = {};
    /// Of the readings; Student's unless one baseline is looked at many times.
    CriticalOf critical = stats::tOf;
    AsManyReps asManyReps = {}; ///< asked before anything is compared; none: points as they are
};

struct ChangeAt {
    Mass load = {};
    double se = 0;                    ///< of the lines alone, m/s
    stats::Interval interval = {};    ///< of the lines alone, pointwise
    stats::Interval band = {};        ///< of the lines alone, simultaneous
    stats::Interval readingBand = {}; ///< with day-to-day noise
    ReadChange read = {};             ///< with day-to-day noise
    bool extrapolated = false;        ///< outside the loads that both sessions cover
    bool checkLoad = false;
    std::optional<double> seenFrom = {}, seenTo = {}; ///< mean velocity seen at exactly that load
    /// Where the reading is unclear and a smallest change is known: the question of what would
    /// settle it, m/s (repeatsToSettle answers it).
    std::optional<RepeatsQuestion> unsettled = {};
};

/// Loads at which the lines differ, pointwise, from the lines alone.
struct Differs {
    stats::Stretch stretch = {}; ///< kg, cut to the lightest..heaviest of either session
    bool extrapolated = false;   ///< beyond the loads that both cover
};

struct OneRmChange {
    double estimate = 0; ///< kg, with the MVT taken as exact
    std::optional<stats::Interval> interval =
        {};                ///< of the lines alone; absent where either cannot be bounded
    ReadChange read = {};  ///< NoFigure where the interval is absent
    double mvtResidue = 0; ///< u |1/b1 - 1/b2|, kg
    std::optional<double> measured = {};           ///< change of the measured 1RM, kg
    std::optional<RepeatsQuestion> unsettled = {}; ///< as ChangeAt::unsettled, kg
};

/// One side of a comparison of blocks.
struct BlockSide {
    std::string name = {};
    std::optional<Block> block = {};        ///< where it is a training block: its story
    std::vector<LiftSession> sessions = {}; ///< that stand for it, by date, as they were compared
    struct LeftOut {
        LiftSession session = {};
        Words why = {};
    };
    std::vector<LeftOut> leftOut = {};
};

/// What leads a page, and in smaller type under it: of what max nothing is said, under which other
/// conditions it was tested, what was not lifted; may be empty.
struct Headline {
    Words leads = {}, under = {};
};

struct Comparison {
    ComparisonSettings settings = {};
    /// What stands beside the change, in columns and charts, is what it was made from: the later
    /// session's speeds, line and estimate with the device's bias taken off, where there is one.
    Profile from, to;
    stats::TwoLines lines;         ///< of the two
    ChangeUncertainty uncertainty; ///< what the readings are made with
    /// What was different around the lift; where it may not be compared, every reading is NoFigure.
    Under under = {};
    std::vector<ChangeAt> at = {}; ///< by load
    std::vector<Differs> differs = {};
    std::optional<stats::TwoLines::Crossing> crossing = {};
    Answer<OneRmChange> oneRm;
    Words sentence = {};    ///< by comparisonsentence.h
    Headline headline = {}; ///< the same in two
    std::vector<Note> notes = {};
    /// Of two blocks (blockchange.h): from and to are then the session of each that went heaviest,
    /// to show; every change is of all sessions, and what lines of two days alone could say of the
    /// axis (differs, crossing) is not there.
    std::optional<std::pair<BlockSide, BlockSide>> blocks = {};
    /// Its readings are the season's, of all blocks at once (amongblocks.h).
    bool allAtOnce = false;
    /// Of two sessions: how tests beside the later one are compared with it as one.
    std::optional<MeanOfTests> mean = {};
    bool ofSeveral() const {
        return blocks && blocks->first.sessions.size() + blocks->second.sessions.size() > 2;
    }
};

/// Refused with the reason: no line on a side, a line without inference, one and the same session.
/// Throws BadInput for sessions of different athletes or lifts, and for a level that is none.
Answer<Comparison> compare(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& from,
                           const LiftSession& to, const ComparisonSettings& settings);

/// The change at any load, as in Comparison::at.
ChangeAt changeAt(const Comparison& comparison, Mass load);

/// What would settle each unclear reading, loads that the same would settle together; the 1RM last.
std::vector<Unsettled> unsettled(const Comparison& comparison);

/// The question of what would make the change at a load clear, whatever its reading is; nothing
/// where no smallest change is known.
std::optional<RepeatsQuestion> repeatsQuestion(const Comparison& comparison, Mass load);

/// Why sessions are no two sides of one comparison: throws BadInput.
void requireComparable(const LiftSession& from, const LiftSession& to);
/// The profile of a session whose line has inference, or why there is none, with its day.
Answer<Profile> inferredProfile(const Lift& lift, const Answer<Mvt>& mvt,
                                const LiftSession& session, const ComparisonSettings& settings);
/// Everything of a comparison that its lines, profiles and uncertainty determine: changes, 1RM,
/// notes, sentence.
void complete(Comparison& comparison, std::vector<Note> notes);

/// The loads that both sessions cover; nothing where they do not overlap.
struct CommonLoads {
    double low = 0, high = 0; ///< kg
};
std::optional<CommonLoads> commonLoads(const Profile& from, const Profile& to);

/// What the 1RM did, by the lines of the comparison; why there is no figure where a session has no
/// 1RM. Adds a note where an interval cannot be bounded.
Answer<OneRmChange> oneRmChange(const Profile& from, const Profile& to,
                                const ChangeUncertainty& uncertainty,
                                const ComparisonSettings& settings, std::vector<Note>& notes);

} // namespace slopebook::answers
