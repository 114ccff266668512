// SPDX-License-Identifier: GPL-3.0-or-later
// One session of one lift: its line, its estimated 1RM, and what each point does to them.
#pragma once

#include "core/answers/note.h"
#include "core/answers/uncertainty.h"
#include "core/model/answer.h"
#include "core/model/session.h"
#include "core/stats/inverse.h"
#include "core/stats/line.h"

#include <optional>
#include <vector>

namespace slopebook::answers {

struct OneRm {
    double estimate = 0; ///< kg
    double g = 0;        ///< Fieller's
    std::optional<stats::Interval> interval =
        {}; ///< of the line alone; absent where it cannot be bounded
    std::optional<stats::Interval> withMvt =
        {}; ///< with the MVT's own SD; absent where that is unknown or unbounded
    /// To plan with, and the one that leads: line, MVT and days, each with its own quantile, and
    /// the bend; absent where unbounded or the line has no inference.
    std::optional<stats::Interval> toPlan = {};
    /// The same as if the line were as straight as it is drawn.
    std::optional<stats::Interval> straight = {};
    /// The least and the most, kg, by which a straight line errs where the athlete bends.
    stats::Interval bend = {};
    /// Where Beyond holds a calibration: the estimate and the interval to plan with, taken by it
    /// and by what was lifted that day, under which neither reaches.
    std::optional<double> calibrated = {};
    std::optional<stats::Interval> calibratedToPlan = {};
    double reach = 0; ///< heaviest load / estimate
    bool extrapolatedFar() const { return reach < farMark; }
    bool extrapolatedVeryFar() const { return reach < veryFarMark; }
    static constexpr double farMark = 0.80;     // common practice
    static constexpr double veryFarMark = 0.50; // common practice
};

/// A point and what it does to the line.
struct ProfilePoint {
    Point point;
    double residual = 0; ///< m/s
    double leverage = 0;
    std::optional<double> studentised = {}; ///< externally
    std::optional<double> cook = {};
    bool farFromLine() const { return studentised && (*studentised > 4 || *studentised < -4); }
};

struct Profile {
    LiftSession session = {};
    double level = 0.95;
    stats::Line line; ///< x in kg, y in m/s
    std::optional<Mvt> mvt = {};
    Answer<OneRm> oneRm;
    std::vector<ProfilePoint> points = {};
    std::optional<stats::Curvature> curvature = {};
    double lightest = 0, heaviest = 0; ///< kg
    Beyond beyond = {};                ///< what OneRm::toPlan was made with
    std::optional<double> referenceMax() const {
        return answers::referenceMax(line, mvt ? std::optional(mvt->value) : std::nullopt);
    }
    double l0() const { return line.root(); } ///< kg; NaN-free only for a falling line
    double area() const { return line.intercept * l0() / 2; }
    /// The heaviest load lifted that day, kg, counting or not: it bounds the day's maximum from
    /// below, as the lightest that was not lifted does from above (the bracket).
    double heaviestLifted() const;
    std::optional<double> lightestNotLifted() const; ///< kg
    /// Whether the estimate lies where that day's loads say that the maximum does not.
    bool outsideBracket() const;
    std::vector<Note> notes = {};
};

/// No line: the reason. mvt: what chooseMvt said (an answer or why there is none). beyond: of the
/// athlete and lift; without it OneRm::toPlan holds line and MVT alone.
Answer<Profile> profile(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& session,
                        double level = 0.95, const Beyond& beyond = {});

} // namespace slopebook::answers
