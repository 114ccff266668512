// SPDX-License-Identifier: GPL-3.0-or-later
// Loads for a session, from a session's line and what the weights room holds: plates, share of the
// 1RM, expected speed, the speed at which to stop, and what must be said beside them.
#pragma once

#include "core/answers/caution.h"
#include "core/answers/planbounds.h"
#include "core/answers/plates.h"
#include "core/answers/profile.h"
#include "core/answers/reading.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// The speed at which a set ends: fastest (1 - loss / 100), the loss being from the fastest rep,
/// not the first (Sanchez-Medina and Gonzalez-Badillo 2011).
constexpr double stopVelocity(double fastest, double lossPercent) {
    return fastest * (1 - lossPercent / 100);
}

/// What the load is aimed at; from == to for a single figure, from < to for a window.
struct Target {
    enum class Kind {
        Percent, ///< of the estimated 1RM
        Velocity ///< m/s of the fastest rep; a window from fast to slow may be given either way
                 ///< round
    };
    Kind kind = Kind::Percent;
    double from = 0;
    double to = 0;
    friend bool operator==(const Target&, const Target&) = default;
};

struct PlanSettings {
    std::optional<Target> target = {};
    std::optional<double> lossPercent = {}; ///< where to end a set
    Equipment equipment = {};
    std::optional<ExactMass> ceiling = {}; ///< beside the equipment's own
    std::vector<LoadBound> bounds = {};    ///< of the day that is planned for
    Side side = Side::Nearest;
    DayNoise dayNoise = {};
    bool restrictedFlow = false;        ///< asked for: the window with its cautions
    MassUnit unit = MassUnit::Kilogram; ///< of the English texts
};

struct PlannedLoad {
    BuiltLoad built = {};
    std::optional<double> percent = {}; ///< of the estimated 1RM
    /// From the 1RM's interval with the MVT's own SD, else from the line alone.
    std::optional<stats::Interval> percentInterval = {};
    double velocity = 0; ///< m/s, the line's
    /// Of one new fastest rep on another day: the scatter of a point, the line's own uncertainty,
    /// and two days' noise (the day of the line and the day to come).
    std::optional<stats::Interval> prediction = {};
    /// m/s; none where it would lie under the MVT, at which the last rep goes up.
    std::optional<double> stop = {};
    bool stopUnderMvt = false; ///< for that
    bool tested = true;        ///< inside the session's loads
};

struct Plan {
    Lift lift = {};
    Profile profile;
    PlanSettings settings = {};
    /// Everything that can be built up to the end, ascending. None is planned at a speed of zero or
    /// under it, or with an interval that reaches under it.
    std::vector<PlannedLoad> loads = {};
    PlanEnd end = {};                                  ///< where they end
    bool cut = false;                                  ///< heavier ones could be built
    std::optional<stats::Interval> aim = {};           ///< the target in kg
    std::vector<std::size_t> chosen = {};              ///< the one load, or all inside the window
    std::optional<std::size_t> below = {}, above = {}; ///< next to the target
    /// Its window in kg, where asked for, or where a ceiling cuts the target off and reaches the
    /// window. Never shown without restrictedFlowText().
    std::optional<stats::Interval> restrictedFlow = {};
    std::vector<Caution> cautions = {};
    bool percentWithMvt = false; ///< percentInterval holds the MVT's SD
};

/// Refused with the reason: a line that bears no plan (noPlan), no load can be built, a percent
/// without an estimated 1RM, a speed the line does not reach, an aim beyond where the athlete ends.
/// Throws BadInput for a target, a loss or equipment that may not stand.
Answer<Plan> plan(const Lift& lift, const Profile& profile, const PlanSettings& settings);

/// One load on the profile's line; lossPercent, dayNoise and the level as plan() uses them.
PlannedLoad plannedLoad(const Profile& profile, const BuiltLoad& load,
                        const PlanSettings& settings);

/// The cautions of a plan whose loads and aim are found; plan() calls it.
std::vector<Caution> cautionsOf(const Plan& plan);
/// Those of them that speak of the chosen loads: what stands beside sets that are to be lifted, and
/// not what sets the list's end or is said of loads that nobody chose.
std::vector<Caution> cautionsOfSets(const Plan& plan);

} // namespace slopebook::answers
