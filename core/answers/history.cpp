// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/history.h"

#include "core/answers/figures.h"
#include "core/model/phrases/answers.h"
#include "core/stats/openlines.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

constexpr int fewestSessions = 3;
constexpr double farthest = 10; // times the estimate: an end beyond it bounds nothing

Answer<BorrowedOneRm> oneRmOf(const Lift& lift, const Answer<Mvt>& mvt,
                              const stats::UncertainLine& line) {
    if (lift.ballistic)
        return NoAnswer{NoAnswer::Why::BallisticLift,
                        say("a thrown or jumped lift is followed by velocity at load only")};
    if (!mvt)
        return mvt.why();
    if (!(line.slope < 0))
        return NoAnswer{NoAnswer::Why::SlopeNotNegative,
                        say("speed does not fall as load rises, so no maximum can be read off")};
    if (line.intercept <= mvt->value)
        return NoAnswer{NoAnswer::Why::ThresholdAboveV0, say("the line starts under the MVT")};
    return BorrowedOneRm{.estimate = (mvt->value - line.intercept) / line.slope};
}

void bound(BorrowedOneRm& oneRm, const Mvt& mvt, const stats::OpenLines& open, double level) {
    const double reach = farthest * oneRm.estimate;
    oneRm.interval = stats::inverseInterval(open, mvt.value, 0, oneRm.estimate, reach, level);
    if (oneRm.interval && mvt.sd)
        oneRm.withMvt = stats::inverseInterval(open, mvt.value, *mvt.sd * *mvt.sd, oneRm.estimate,
                                               reach, level);
}

/// (shrunken - common) / (own - common) at the middle of the session's loads.
std::optional<double> ownShareOf(const LiftSession& session, const stats::UncertainLine& shrunken,
                                 const stats::UncertainLine& common) {
    std::vector<double> x, y;
    for (const Point& point : session.points) {
        x.push_back(point.load);
        y.push_back(point.velocity);
    }
    const auto own = stats::fitLine(x, y);
    if (!own)
        return std::nullopt;
    const double off = own->yMean - common.at(own->xMean);
    if (std::abs(off) < 1e-12)
        return std::nullopt;
    return std::clamp((shrunken.at(own->xMean) - common.at(own->xMean)) / off, 0.0, 1.0);
}

} // namespace

const BorrowedLine* History::of(SessionId session) const {
    const auto found = std::ranges::find_if(
        lines, [&](const BorrowedLine& each) { return each.session.session == session; });
    return found == lines.end() ? nullptr : &*found;
}

Answer<History> borrow(const Lift& lift, const Answer<Mvt>& mvt,
                       std::span<const LiftSession> sessions, std::optional<SessionId> about,
                       double level) {
    std::vector<stats::GroupPoints> groups;
    History history{.level = level};
    for (const LiftSession& session : sessions) {
        if (session.points.empty())
            continue;
        stats::GroupPoints& group = groups.emplace_back();
        for (const Point& point : session.points) {
            group.x.push_back(point.load);
            group.y.push_back(point.velocity);
        }
        history.lines.push_back({.session = session});
    }
    if (static_cast<int>(groups.size()) < fewestSessions)
        return NoAnswer{NoAnswer::Why::TooFewSessions,
                        groups.size() == 1
                            ? say("a history to borrow from needs three sessions of the lift; "
                                  "there is 1 session")
                            : say("a history to borrow from needs three sessions of the lift; "
                                  "there are %1 sessions",
                                  groups.size())};
    const auto model = stats::fitMixedLine(groups);
    if (!model)
        return NoAnswer{
            NoAnswer::Why::TooFewSessions,
            say("the sessions hold too few loads to borrow from: two of them need two loads, "
                "and points must scatter about the lines")};
    history.model = *model;
    for (std::size_t i = 0; i < history.lines.size(); ++i) {
        BorrowedLine& each = history.lines[i];
        each.line = model->lines[i];
        each.oneRm = oneRmOf(lift, mvt, each.line);
        if (each.oneRm && (!about || *about == each.session.session))
            if (const auto open = stats::openLines(groups, i))
                bound(*each.oneRm, *mvt, *open, level);
        each.ownShare = ownShareOf(each.session, each.line, model->fixed);
    }
    return history;
}

namespace {

/// "72.0 kg (68.1 to 77.0)".
Words bounded(double estimate, const std::optional<stats::Interval>& interval) {
    const Words mass = massWords(estimate, asEstimate);
    return interval ? say("%1 (%2 to %3)", mass, massWords(interval->low, bareEstimate),
                          massWords(interval->high, bareEstimate))
                    : mass;
}

} // namespace

Words borrowedWords(const History& history, const Profile& profile) {
    const int sessions = history.model.groups;
    const BorrowedLine* line = history.of(profile.session.session);
    if (!line)
        return say("borrowing from the athlete's %1 sessions: none of them is this one", sessions);
    if (!line->oneRm)
        return say("borrowing from the athlete's %1 sessions, no estimated 1RM: %2", sessions,
                   line->oneRm.why().reason);
    const Words estimate = bounded(line->oneRm->estimate, line->oneRm->interval);
    return profile.oneRm
               ? say("borrowing from the athlete's %1 sessions: estimated 1RM %2; from this "
                     "session "
                     "alone %3",
                     sessions, estimate, bounded(profile.oneRm->estimate, profile.oneRm->interval))
               : say("borrowing from the athlete's %1 sessions: estimated 1RM %2", sessions,
                     estimate);
}

} // namespace slopebook::answers
