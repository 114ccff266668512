// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/profile.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/figures.h"
#include "core/answers/planbounds.h"
#include "core/model/errors.h"
#include "core/model/phrases/answers.h"
#include "core/stats/allowance.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace slopebook::answers {

namespace {

// Scatter below this is rounding, not measurement: no device reads nanometres per second.
constexpr double noScatter = 1e-9; // m/s
constexpr double curvatureP = 0.05;

void requireLevel(double level) {
    if (!(level > 0.5 && level < 1))
        throw BadInput(figure(fixed(level, 4)), say("a confidence level between 0.5 and 1"));
}

Answer<OneRm> estimateOneRm(const Lift& lift, const Answer<Mvt>& mvt, std::span<const double> loads,
                            const stats::Line& line, double level, const Beyond& beyond) {
    if (lift.ballistic)
        return NoAnswer{NoAnswer::Why::BallisticLift,
                        say("a thrown or jumped lift is followed by velocity at load only")};
    if (!mvt)
        return mvt.why();
    if (line.slope * (line.xMax - line.xMin) > -noScatter)
        return NoAnswer{NoAnswer::Why::SlopeNotNegative,
                        say("speed does not fall as load rises, so no maximum can be read off")};
    if (line.intercept <= mvt->value)
        return NoAnswer{NoAnswer::Why::ThresholdAboveV0,
                        say("the line starts at V0 = %1 m/s, not above the MVT of %2 m/s",
                            figure(fixed(line.intercept, 2)), figure(fixed(mvt->value, 2)))};
    OneRm oneRm{.estimate = line.xMean + (mvt->value - line.yMean) / line.slope};
    if (line.hasInference()) {
        const auto exact = stats::inversePrediction(line, mvt->value, 0, level);
        oneRm.estimate = exact.estimate;
        oneRm.g = exact.g;
        if (exact.shape == stats::Inverse::Shape::Bounded) {
            oneRm.interval = exact.interval;
            if (mvt->sd)
                oneRm.withMvt =
                    stats::inversePrediction(line, mvt->value, *mvt->sd * *mvt->sd, level).interval;
        }
        oneRm.bend = bendOfMax(beyond.bend, loads, oneRm.estimate);
        const stats::Moving day = dayOf(beyond.day, line, oneRm.estimate);
        oneRm.straight = intervalToPlanWith(line, *mvt, day, {}, level);
        if (oneRm.straight)
            oneRm.toPlan = stats::allowing(*oneRm.straight, oneRm.bend, level);
    }
    oneRm.reach = line.xMax / oneRm.estimate;
    if (beyond.calibration) {
        oneRm.calibrated = beyond.calibration->calibrated(oneRm.estimate);
        if (oneRm.toPlan)
            oneRm.calibratedToPlan =
                beyond.calibration->calibrated(*oneRm.toPlan, oneRm.estimate, level);
    }
    return oneRm;
}

std::vector<ProfilePoint> diagnosed(const LiftSession& session, const stats::Line& line,
                                    const std::vector<double>& x, const std::vector<double>& y) {
    const auto diagnostics = stats::diagnose(line, x, y);
    std::vector<ProfilePoint> points;
    points.reserve(x.size());
    for (std::size_t i = 0; i < x.size(); ++i) {
        points.push_back({.point = session.points[i],
                          .residual = diagnostics[i].residual,
                          .leverage = diagnostics[i].leverage,
                          .studentised = diagnostics[i].studentised,
                          .cook = diagnostics[i].cook});
        if (line.s() < noScatter)
            points.back().studentised.reset();
    }
    return points;
}

/// What the day itself says of its maximum, where the estimate says otherwise: first of all.
void noteBracket(const OneRm& oneRm, const Profile& p, std::vector<Note>& notes) {
    if (const auto tried = p.lightestNotLifted(); tried && oneRm.estimate >= *tried)
        notes.push_back({Note::Kind::OverNotLifted,
                         say("the estimate is not under the %1 that were not lifted that day: the "
                             "line reads high, and plans keep under that load",
                             massWords(*tried))});
    if (const double lifted = p.heaviestLifted(); oneRm.estimate < lifted)
        notes.push_back({Note::Kind::UnderLifted,
                         say("the estimate lies under the %1 that were lifted that day: the line "
                             "reads low",
                             massWords(lifted))});
}

void noteOneRm(const OneRm& oneRm, const Profile& p, std::vector<Note>& notes) {
    if (p.line.hasInference() && !oneRm.interval)
        notes.push_back({Note::Kind::SlopeUncertain,
                         say("the slope is not certain enough to bound the estimate")});
    if (plansCalibrated(oneRm)) {
        const auto& made = *p.beyond.calibration;
        const Words pairs = made.pairs == 1 ? say("1 pair") : say("%1 pairs", made.pairs);
        const Words bias = signedFigure(100 * std::expm1(made.bias), 1);
        const Words of = massWords(oneRm.estimate, bareEstimate);
        const bool lifted = made.calibrated(oneRm.estimate) < p.heaviestLifted();
        notes.push_back(
            {Note::Kind::Calibrated,
             lifted
                 ? say("by %1 of an estimate and a maximum lifted (%2 of them the athlete's own) "
                       "such estimates read %3 %: plans take the %4 that were lifted that day in "
                       "place of %5",
                       pairs, made.ownPairs, bias, massWords(*oneRm.calibrated, asEstimate), of)
                 : say("by %1 of an estimate and a maximum lifted (%2 of them the athlete's own) "
                       "such estimates read %3 %: plans take %4 in place of %5",
                       pairs, made.ownPairs, bias, massWords(*oneRm.calibrated, asEstimate), of)});
    }
    const Words beyond = massWords(oneRm.estimate - p.heaviest, toTenths);
    const Words heaviest = massWords(p.heaviest);
    const Words reach = figure(oneRm.reach, 2);
    if (oneRm.extrapolatedVeryFar())
        notes.push_back({Note::Kind::ExtrapolatedVeryFar,
                         say("the heaviest load is under half of the estimate, which lies %1 "
                             "beyond the heaviest load of %2 (reach %3): read its interval first",
                             beyond, heaviest, reach)});
    else if (oneRm.extrapolatedFar())
        notes.push_back({Note::Kind::ExtrapolatedFar,
                         say("extrapolated far: the estimate lies %1 beyond the heaviest load of "
                             "%2 (reach %3)",
                             beyond, heaviest, reach)});
    if (!p.mvt->sd)
        notes.push_back({Note::Kind::MvtSdUnknown,
                         p.mvt->origin == Mvt::Origin::Athlete
                             ? say("one true maximum has no SD: no interval with the MVT's own")
                             : say("the SD of the MVT is not known: no interval with it")});
}

void notePoints(const Profile& p, std::vector<Note>& notes) {
    for (const ProfilePoint& each : p.points) {
        const auto& [load, velocity, set] = each.point;
        const Words speed = figure(velocity, 2);
        if (each.farFromLine())
            notes.push_back({Note::Kind::FarFromLine,
                             say("%1 m/s at %2 lies far from the line of the other points "
                                 "(studentised %3): worth a look",
                                 speed, massWords(load), figure(*each.studentised, 1))});
        if (velocity >= plausibleVelocityLimit || massFromKilograms(load) >= plausibleLoadLimit)
            notes.push_back(
                {Note::Kind::ImplausiblePoint,
                 say("%1 m/s at %2 is hard to believe: worth a look", speed, massWords(load))});
    }
}

std::vector<Note> notesOf(const Lift& lift, const Profile& p) {
    std::vector<Note> notes;
    if (p.oneRm)
        noteBracket(*p.oneRm, p, notes);
    if (!p.line.hasInference())
        notes.push_back({Note::Kind::TwoPointLine,
                         say("two points make a line without intervals: it needs a third load")});
    if (p.oneRm)
        noteOneRm(*p.oneRm, p, notes);
    if (p.oneRm && lift.kind == VelocityKind::Peak && p.mvt->origin != Mvt::Origin::Athlete)
        notes.push_back({Note::Kind::MvtKind,
                         say("peak velocity at a maximum is no small steady figure: an MVT made "
                             "for mean velocity does not hold for it")});
    if (p.curvature && p.curvature->p < curvatureP && p.line.s() >= noScatter)
        notes.push_back(
            {Note::Kind::PointsBend, say("the points bend (%1): a straight line misses their ends",
                                         figure(pText(p.curvature->p)))});
    notePoints(p, notes);
    if (p.level != 0.95)
        notes.push_back(levelNote(p.level));
    return notes;
}

} // namespace

Answer<Profile> profile(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& session,
                        double level, const Beyond& beyond) {
    requireLevel(level);
    if (session.lacksBodyMass)
        return NoAnswer{NoAnswer::Why::NoBodyMass,
                        say("the lift moves the body, and the session has no body mass")};
    if (session.points.empty())
        return NoAnswer{NoAnswer::Why::NoPoints, say("no set of this session counts")};
    std::vector<double> x;
    std::vector<double> y;
    for (const Point& p : session.points) {
        x.push_back(p.load);
        y.push_back(p.velocity);
    }
    const auto line = stats::fitLine(x, y);
    if (!line)
        return NoAnswer{NoAnswer::Why::OneLoad, say("every point is at %1: a line needs two loads",
                                                    massFromKilograms(x.front()))};
    Profile p{.session = session,
              .level = level,
              .line = *line,
              .mvt = mvt ? std::optional(*mvt) : std::nullopt,
              .oneRm = estimateOneRm(lift, mvt, x, *line, level, beyond),
              .points = diagnosed(session, *line, x, y),
              .curvature = stats::curvature(x, y),
              .lightest = line->xMin,
              .heaviest = line->xMax,
              .beyond = beyond,
              .notes = {}};
    if (p.oneRm && p.oneRm->calibrated) {
        // Other days' pairs do not take back what was lifted on this one: where all of their
        // interval lies under it they say nothing of this day.
        const double lifted = p.heaviestLifted();
        auto& plan = p.oneRm->calibratedToPlan;
        if (plan && plan->high <= lifted) {
            p.oneRm->calibrated.reset();
            plan.reset();
        } else {
            p.oneRm->calibrated = std::max(*p.oneRm->calibrated, lifted);
            if (plan)
                plan->low = std::max(plan->low, lifted);
        }
    }
    p.notes = notesOf(lift, p);
    return p;
}

double Profile::heaviestLifted() const {
    double most = heaviest;
    for (const auto& lifted : {session.heaviestLifted, session.measuredOneRm})
        if (lifted)
            most = std::max(most, kilograms(*lifted));
    return most;
}

std::optional<double> Profile::lightestNotLifted() const {
    return session.lightestNotLifted ? std::optional(kilograms(*session.lightestNotLifted))
                                     : std::nullopt;
}

bool Profile::outsideBracket() const {
    const auto tried = lightestNotLifted();
    return oneRm && (oneRm->estimate < heaviestLifted() || (tried && oneRm->estimate >= *tried));
}

} // namespace slopebook::answers
