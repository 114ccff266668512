// SPDX-License-Identifier: GPL-3.0-or-later
// The test that would settle it: ladders of loads that the plates allow, judged before anybody
// lifts by the interval that they can be expected to give.
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/ladderrules.h"
#include "core/answers/planbounds.h"
#include "core/answers/plates.h"
#include "core/answers/profile.h"
#include "core/answers/reading.h"
#include "core/answers/testsneeded.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// The scatter of an athlete's points about their lines, pooled over sessions.
struct AthleteScatter {
    double s = 0; ///< m/s
    double df = 0;
    int sessions = 0;
};
/// From every session with three counting points or more; nothing where there is none.
std::optional<AthleteScatter> pooledScatter(std::span<const LiftSession> sessions);

/// What the interval of the coming test will be made with.
enum class ScatterKnown {
    Own,    ///< its own scatter alone, as a profile does
    Pooled, ///< its own and the athlete's earlier sessions'
    Known   ///< the athlete's scatter taken as known: the most that more history can give
};

/// The SD of a set's point when sets of repsNow reps are replaced by sets of repsNext: s holds what
/// reps average out (repSd, the SD of one rep about its set) and what they do not. Mean: repSd^2/r;
/// fastest: the variance of the largest of r normal values (Teichroew 1956, by integration here).
double scatterForReps(double s, double repSd, PointRule rule, int repsNow, int repsNext);

struct NextTestSettings {
    int steps = 5; ///< sets at their loads, 2 to 8
    Equipment equipment = {};
    std::optional<ExactMass> ceiling = {};
    std::vector<LoadBound> bounds = {}; ///< of the day of the test
    /// No load above this share of the estimated 1RM, nor above both the low end of its interval
    /// and the heaviest load lifted; without an estimate, none above the heaviest load lifted.
    double heaviestPercent = 90;
    std::vector<Mass> checkLoads = {};
    AthleteScatter scatter = {};
    ScatterKnown known = ScatterKnown::Own;
    DayNoise dayNoise = {};
    Bend bend = {};       ///< as the athlete may bend; none: lines are taken as straight
    bool withMvt = false; ///< the MVT's own SD in the 1RM's interval
};

/// A change at a check load from the profile's session to the coming test.
struct ChangeForecast {
    Mass load{};
    double halfWidth = 0; ///< m/s, of the lines alone
    /// m/s, with day-to-day noise and bend: what a reading will be made from, and the smallest
    /// change that these two tests can show.
    double reading = 0;
    stats::Interval bend = {}; ///< m/s, how far the change may be off where lines bend
};

struct LadderForecast {
    enum class Kind {
        BestForOneRm,
        BestForChange,
        TwoExtremes,
        Even,
        SameAsLast,
        BestInSteps ///< of those without flaws, for what ladders are ranked by
    };
    Kind kind = Kind::Even;
    std::vector<BuiltLoad> loads = {};        ///< ascending, with repeats
    std::optional<double> oneRm = {};         ///< expected half-width, kg; absent where unbounded
    std::vector<ChangeForecast> changes = {}; ///< by check load
    /// Of the change of the 1RM from the profile's session to that test, with days and bend, kg:
    /// the smallest that they can show; absent where unbounded.
    std::optional<double> oneRmChange = {};
    stats::Interval bend = {};       ///< kg, how far a straight line by this ladder may be off
    stats::Interval bendChange = {}; ///< kg, of the change
    int distinct = 0;
    LadderFlaws flaws = {};     ///< said wherever the ladder is shown
    double heaviestPercent = 0; ///< of the estimated 1RM; 0 without one
    double worstChange() const; ///< the largest half-width of the lines alone; infinite without any
};

struct CeilingPoint {
    BuiltLoad ceiling = {};
    double percent = 0;              ///< of the estimated 1RM; 0 without one
    std::optional<double> best = {}; ///< half-width of the best ladder under it; kg, or m/s
    std::optional<double> even = {}; ///< of an evenly spaced one from the lightest load
    bool withinCeiling = true;       ///< can be had today
};

struct NextTest {
    NextTestSettings settings = {};
    bool byOneRm = true; ///< ranked by the 1RM's half-width, else by worstChange()
    /// Best first: those with a figure before those without, those without flaws before those with
    /// one, then by the figure. So a first ladder with flaws says that none without was found.
    std::vector<LadderForecast> ladders = {};
    std::optional<double> oneRmNow = {}; ///< half-width of the profile's own interval, kg
    /// The same of what a ladder's forecast is of: line and days, as if the line were straight, and
    /// the MVT's own SD where the settings ask for it.
    std::optional<double> oneRmNowLike = {};
    /// What the interval of oneRmNow holds beside that, where both are of one estimate.
    enum class NowHolds {
        Unlike, ///< it is not made so: of a calibrated estimate, or without days and bend
        Bend,
        MvtAndBend, ///< the MVT's own SD too, which the settings leave out
    };
    NowHolds nowHolds = NowHolds::Unlike;
    /// Two extremes against the first ladder: half-width ratio; under 1 where only their flaws put
    /// them behind.
    std::optional<double> twoExtremesRatio = {};
    std::vector<CeilingPoint> curve = {}; ///< by ceiling
    double cap = 0;                       ///< kg: the heaviest load that the settings allow
};

/// The line is expected where the profile has it. Refused with the reason: no scatter known, under
/// two loads to choose from. Throws BadInput for settings that may not stand.
Answer<NextTest> nextTest(const Profile& profile, const NextTestSettings& settings);

/// The question of a change from the profile's session to a test by that ladder.
std::optional<RepeatsQuestion> repeatsQuestion(const Profile& profile,
                                               const NextTestSettings& settings,
                                               const LadderForecast& ladder, Mass load,
                                               double smallest);
/// The same of the 1RM, kg; nothing where there is none to be had.
std::optional<RepeatsQuestion> repeatsQuestionOfMax(const Profile& profile,
                                                    const NextTestSettings& settings,
                                                    const LadderForecast& ladder, double smallest);

/// What a line through a ladder that has not been lifted may be wrong by, from the profile's
/// session to it.
BendErrors bendErrors(const Profile& profile, const NextTestSettings& settings,
                      const std::vector<BuiltLoad>& ladder);

} // namespace slopebook::answers
