// SPDX-License-Identifier: GPL-3.0-or-later
// A load-velocity relation is nearly straight and a line is fitted to it: what the line says
// depends on the loads it was fitted to. How far it may be off, by the published curves.
#pragma once

#include "core/answers/publishedrelations.h"
#include "core/model/answer.h"
#include "core/model/session.h"
#include "core/stats/line.h"

#include <span>
#include <string>
#include <vector>

namespace slopebook::answers {

/// How an athlete may bend: kappa times as the published curve of the lift, kappa within an
/// interval; without a curve of its own a lift may bend as any of the shipped ones.
struct Bend {
    std::vector<PublishedRelation> relations = {}; ///< none: no allowance is made
    bool envelope = false;                         ///< the shipped ones together
    stats::Interval kappa{0, 1};
    int ladders = 0; ///< own full ladders that narrowed kappa; 0: none did
    std::string source() const;
};

/// So many own full ladders narrow kappa; full: five loads or more, the heaviest at 80 % of the
/// estimate or above.
constexpr int laddersNeeded = 3;
constexpr int loadsOfAFullLadder = 5;

Bend bendOf(const Lift& lift);
/// With kappa narrowed by the athlete's own full ladders among the sessions, where the lift has a
/// curve of its own: all their points on session, session x load and curve - chord; the 95 %
/// interval of the last coefficient, cut to [0, 1]. Agrees with R (tests/reference/bend.R).
Bend bendOf(const Lift& lift, const Answer<Mvt>& mvt, std::span<const LiftSession> sessions);

/// What a straight line was fitted to.
struct Ladder {
    std::vector<double> loads = {}; ///< kg, one a point
    double slope = 0;               ///< of the session's line, m/s a kg
    double max = 0;                 ///< kg, its estimated 1RM
    double heaviest = 0;            ///< kg
};
Ladder ladderOf(const LiftSession& session, const stats::Line& line, double max);

/// A straight line through a published curve at a ladder's loads, no more than is asked of it: it
/// is made anew for every session of a log.
struct CurveLine {
    double xMean = 0, yMean = 0, slope = 0;
    double at(double x) const { return yMean + slope * (x - xMean); }
    double root(double y) const { return xMean + (y - yMean) / slope; }
};

/// The least and the most, kg, by which the 1RM of one session errs that says max by a line through
/// these loads (kg, one a point), over the bends that an athlete may have. Asked of every session
/// of a log: near to 0.5 % of itself, 4 % where the loads end at half of the max.
stats::Interval bendOfMax(const Bend& bend, std::span<const double> loads, double max);

/// What lines through the published curve at the ladders' own loads say less what is true, over the
/// bends that an athlete may have: of the later sessions less the earlier.
class BendErrors {
public:
    BendErrors() = default;
    BendErrors(const Bend& bend, const Ladder& earlier, const Ladder& later);
    /// Of several sessions a side, with those that stand for each side's reach and slope.
    BendErrors(const Bend& bend, std::span<const Ladder> earlier, std::size_t earlierLead,
               std::span<const Ladder> later, std::size_t laterLead);
    /// The least and the most by which the change of speed at a load errs, m/s; of one session a
    /// side.
    stats::Interval at(double load) const;
    /// The same of the change of the 1RM, kg.
    stats::Interval ofMax() const;
    /// Of the weighted means of the sessions of each side.
    stats::Interval at(double load, std::span<const double> earlier,
                       std::span<const double> later) const;
    stats::Interval ofMax(std::span<const double> earlier, std::span<const double> later) const;

private:
    struct Fit {
        std::vector<CurveLine> earlier = {}, later = {}; ///< through the curve
        double scale = 1;                                ///< own speeds over published ones
        double atMax = 0;                                ///< the curve's own speed at the 1RM
    };
    struct Sides {
        std::span<const Ladder> earlier, later;
        std::size_t earlierLead = 0, laterLead = 0;
    };
    template <int N>
    void addAll(std::span<const PublishedRelation> relations, const Sides& sides);
    void addFit(const PublishedRelation& relation, const Sides& sides, double max);

    stats::Interval m_kappa{0, 0};
    bool m_envelope = false;
    std::vector<Fit> m_fits;
};

} // namespace slopebook::answers
