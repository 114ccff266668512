// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/linedata.h"

#include "core/answers/planbounds.h"

#include <algorithm>
#include <cmath>

namespace slopebook::ui::charts {

namespace {

constexpr int bandSteps = 40;

QString keyOf(const LiftSession& session) {
    return QString::number(raw(session.session));
}

std::vector<LinePoint> countingPoints(const LiftSession& session) {
    std::vector<LinePoint> points;
    points.reserve(session.points.size());
    for (const Point& p : session.points)
        points.push_back({.load = p.load, .velocity = p.velocity});
    return points;
}

double endOfLine(const answers::Profile& profile) {
    if (profile.oneRm)
        return std::max(profile.heaviest, profile.oneRm->estimate);
    return profile.heaviest;
}

} // namespace

LineEntry entryOf(const answers::Profile& profile, const QString& label, const look::Role& role,
                  const Show& show) {
    LineEntry entry = entryOf(profile.session, label, role);
    const LineSegment line{.intercept = profile.line.intercept,
                           .slope = profile.line.slope,
                           .from = profile.lightest,
                           .to = profile.heaviest,
                           .start = profile.lightest,
                           .end = endOfLine(profile)};
    entry.line = line;
    if (show.band && profile.line.hasInference()) {
        for (int i = 0; i <= bandSteps; ++i) {
            const double load = line.start + (line.end - line.start) * i / bandSteps;
            const stats::Interval v = stats::meanInterval(profile.line, load, profile.level);
            entry.band.push_back({.load = load, .low = v.low, .high = v.high});
        }
    }
    if (show.oneRm && profile.oneRm) {
        OneRmMark mark{.estimate = profile.oneRm->estimate, .interval = profile.oneRm->interval};
        if (profile.session.measuredOneRm)
            mark.measured = kilograms(*profile.session.measuredOneRm);
        mark.whole = show.toPlan ? answers::toPlanWith(*profile.oneRm) : profile.oneRm->toPlan;
        if (show.toPlan)
            mark.planned = answers::estimateToPlanWith(*profile.oneRm);
        entry.oneRm = mark;
    }
    return entry;
}

LineEntry entryOf(const LiftSession& session, const QString& label, const look::Role& role) {
    LineEntry entry{
        .key = keyOf(session), .label = label, .role = role, .points = countingPoints(session)};
    if (session.lightestNotLifted)
        entry.notLifted = kilograms(*session.lightestNotLifted);
    return entry;
}

LineData linesOf(const answers::Comparison& c, LoadUnit unit) {
    using look::Role;
    LineData data{.notComparable = !c.under.notComparable.empty(), .unit = unit};
    // Of blocks it is the heaviest day of each, whose maximum is not the block's.
    const Show show{.oneRm = !c.ofSeveral()};
    data.sessions = {
        entryOf(c.from, dateText(c.from.session.date), Role{.kind = Role::Kind::Earlier}, show),
        entryOf(c.to, dateText(c.to.session.date), Role{.kind = Role::Kind::Later}, show)};
    if (c.from.mvt)
        data.mvt = c.from.mvt->value;
    for (const Mass load : c.settings.checkLoads)
        data.checkLoads.push_back(kilograms(load));
    return data;
}

std::vector<LinePoint> excludedPoints(std::span<const Set> sets, PointRule rule) {
    std::vector<LinePoint> points;
    const auto hollow = [&points](const Set& set, double velocity) {
        points.push_back({.load = kilograms(set.load), .velocity = velocity, .excluded = true});
    };
    for (const Set& set : sets) {
        if (set.excluded.empty()) {
            for (const Rep& rep : set.reps)
                if (!rep.excluded.empty())
                    hollow(set, rep.velocity);
            continue;
        }
        Set counted = set;
        counted.excluded.clear();
        if (const auto velocity = pointVelocity(counted, rule))
            hollow(set, *velocity);
    }
    return points;
}

} // namespace slopebook::ui::charts
