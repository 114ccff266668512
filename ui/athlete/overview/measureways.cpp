// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/measureways.h"

#include "ui/athlete/overview/blockcolumns.h"

#include <algorithm>

namespace slopebook::ui {

namespace {

bool holds(const questions::BlockSession& session, const answers::Measure& measure) {
    if (measure.lift)
        return std::ranges::count(session.lifts, *measure.lift) > 0;
    if (measure.test)
        return std::ranges::count(session.tests, *measure.test) > 0;
    return true;
}

const Block& blockOf(const MeasureAt& at, std::size_t block) {
    return at.matrix.blocks[block].block;
}

const answers::Measure& measureOf(const MeasureAt& at) {
    return at.matrix.rows[at.measure].measure;
}

questions::BatterySide sideOf(const answers::MatrixBlock& block) {
    if (isDayColumn(block.id))
        return block.block.first;
    return block.id;
}

questions::LiftSide liftSideOf(const answers::MatrixBlock& block, SessionId ofDay) {
    if (isDayColumn(block.id))
        return ofDay;
    return block.id;
}

} // namespace

std::optional<SessionId> lastSession(const answers::Measure& measure, const Block& block,
                                     const std::vector<questions::BlockSession>& sessions) {
    std::optional<SessionId> last;
    for (const questions::BlockSession& session : sessions)
        if (block.holds(session.date) && holds(session, measure))
            last = session.session;
    return last;
}

bool leads(const MeasureAt& at, Way way, const std::vector<questions::BlockSession>& sessions) {
    const answers::Measure& measure = measureOf(at);
    const auto here = lastSession(measure, blockOf(at, at.block), sessions);
    switch (way) {
    case Way::Session:
        return here.has_value();
    case Way::Season:
        return measure.lift && measure.load;
    case Way::Comparison:
        break;
    }
    return here && at.from && (measure.lift || measure.test) &&
           lastSession(measure, blockOf(at, *at.from), sessions);
}

void go(TaskPage& page, const MeasureAt& at, Way way,
        const std::vector<questions::BlockSession>& sessions) {
    if (!leads(at, way, sessions))
        return;
    // As they are now: what is asked for may have the page read its matrix anew.
    const answers::Measure measure = measureOf(at);
    const auto last = lastSession(measure, blockOf(at, at.block), sessions);
    std::pair<questions::BatterySide, questions::BatterySide> sides;
    std::pair<questions::LiftSide, questions::LiftSide> ofLift;
    if (way == Way::Comparison) {
        const answers::MatrixBlock &from = at.matrix.blocks[*at.from],
                                   &to = at.matrix.blocks[at.block];
        sides = {sideOf(from), sideOf(to)};
        ofLift = {liftSideOf(from, *lastSession(measure, from.block, sessions)),
                  liftSideOf(to, *last)};
    }
    const AthleteId athlete = sessions.front().athlete;
    if (measure.lift)
        Q_EMIT page.liftWanted(*measure.lift);
    if (way == Way::Session) {
        Q_EMIT page.sessionWanted(*last);
    } else if (way == Way::Season) {
        Q_EMIT page.seasonWanted(*measure.lift, *measure.load);
    } else if (measure.test) {
        Q_EMIT page.batteryWanted(sides.first, sides.second);
    } else {
        Q_EMIT page.comparisonWanted(athlete, ofLift.first, ofLift.second);
    }
}

bool goOrToSession(TaskPage& page, const MeasureAt& at, Way way,
                   const std::vector<questions::BlockSession>& sessions) {
    if (way == Way::Comparison && !leads(at, way, sessions))
        way = Way::Session; // there is no other to compare it with
    if (!leads(at, way, sessions))
        return false;
    go(page, at, way, sessions);
    return true;
}

} // namespace slopebook::ui
