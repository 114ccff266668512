// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/sessionview.h"

#include "core/answers/ladder.h"
#include "core/answers/planbounds.h"
#include "core/questions/stationday.h"
#include "ui/words/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>

namespace slopebook::ui {

namespace {

QString titleOf(VelocityKind kind) {
    const QString words = kindText(kind);
    return QCoreApplication::translate("sessionview", "%1 (m/s)")
        .arg(words.left(1).toUpper() + words.mid(1));
}

/// The sessions of the lift before the given place in time, the latest last; before the first set
/// of a new session those are all.
std::span<const LiftSession> sessionsBefore(const questions::Background& about,
                                            std::optional<SessionId> session,
                                            const std::optional<SessionHead>& head) {
    const auto end = std::ranges::find_if(about.sessions, [&](const LiftSession& one) {
        return session == one.session || (head && one.date > head->date);
    });
    return {about.sessions.begin(), end};
}

void readRows(SessionView& view, const std::vector<log::PlacedSet>& sets, PointRule rule) {
    for (const log::PlacedSet& placed : sets) {
        SetRow row{placed, pointVelocity(placed.set, rule), {}};
        if (view.profile && *view.profile)
            for (const answers::ProfilePoint& point : (*view.profile)->points)
                if (point.point.set == placed.ordinal && point.farFromLine())
                    row.farFromLine = point.studentised;
        view.rows.push_back(std::move(row));
    }
}

/// As far as the whisker of today's line will reach that comes with its third set, where today is
/// about as last time or a little better.
std::optional<double> reachToCome(const SessionView& view, const Answer<answers::Profile>& last) {
    constexpr double better = 1.05;
    const bool stands =
        view.profile && *view.profile && (*view.profile)->oneRm && (*view.profile)->oneRm->interval;
    if (stands || !last || !last->oneRm)
        return std::nullopt;
    return better * charts::longestWhisker * last->oneRm->estimate;
}

void readChart(SessionView& view, std::span<const LiftSession> before) {
    using look::Role;
    charts::LineData& chart = view.chart;
    chart.velocityTitle = titleOf(view.about.lift.value.kind);
    if (view.about.mvt)
        chart.mvt = view.about.mvt->value;
    for (const Mass load : view.about.checkLoads)
        chart.checkLoads.push_back(kilograms(load));
    // The newest place is this session's before it has sets too: its first one leaves the others as
    // they look, and their picture stands.
    const int count = static_cast<int>(before.size()) + 1;
    for (const LiftSession& one : before) {
        const auto profile = questions::profileOf(view.about, one);
        const Role role{Role::Kind::Session, static_cast<int>(chart.sessions.size()), count};
        const QString label = dateText(one.date);
        chart.sessions.push_back(
            profile ? charts::entryOf(*profile, label, role, {.band = false, .oneRm = false})
                    : charts::entryOf(one, label, role));
        chart.sessions.back().still = true;
        chart.reach = reachToCome(view, profile);
    }
    if (!view.session)
        return;
    const Role role{Role::Kind::Session, count - 1, count};
    const QString label = dateText(view.session->date);
    charts::LineEntry entry = view.profile && *view.profile
                                  ? charts::entryOf(**view.profile, label, role)
                                  : charts::entryOf(*view.session, label, role);
    std::vector<Set> sets;
    for (const SetRow& row : view.rows)
        sets.push_back(row.placed.set);
    for (const auto& hollow : charts::excludedPoints(sets, view.about.lift.value.rule))
        entry.points.push_back(hollow);
    chart.sessions.push_back(std::move(entry));
}

/// Under a load that was not lifted today, past what was not possible; false where there is
/// neither.
bool readUnder(SessionView& view) {
    answers::AtLift at;
    std::optional<Mass> heaviest;
    for (const SetRow& row : view.rows) {
        const Set& set = row.placed.set;
        at.today.push_back({set.load, set.outcome == Outcome::Lifted});
        if (at.today.back().lifted)
            heaviest = std::max(heaviest.value_or(set.load), set.load);
    }
    for (const answers::Tried& tried : at.today)
        if (!tried.lifted && (!heaviest || tried.load > *heaviest))
            view.notLifted = std::min(view.notLifted.value_or(tried.load), tried.load);
    if (!view.notLifted && view.gaps.loads.empty() && !view.gaps.out)
        return false;
    at.notPossible = view.gaps.loads;
    at.out = view.gaps.out;
    at.lastTime = view.loadsLast();
    at.lastMaxima = view.maximaLast();
    at.estimate = view.limit;
    if (view.ceiling)
        at.ceiling = view.ceiling->load;
    at.unit = massUnit(view.chart.unit);
    view.next = answers::dueAt(Station{}, at).next;
    return true;
}

void readLadder(SessionView& view) {
    const auto ladder = answers::nextLoad(view.loadsToday(), view.loadsLast());
    view.next = answers::notAbove(ladder, view.limit, view.maximaLast());
    view.nextHeldBack = ladder && !view.next;
    view.overCeiling = ladder && view.ceiling && *ladder > view.ceiling->load;
    if (view.overCeiling)
        view.next.reset();
    view.nextIsMaximum = view.next && view.limit && *view.next > *view.limit;
}

/// The day is the line's own: its scatter and what is not known of it, no other day's.
void readExpected(SessionView& view) {
    if (!view.next || !view.session || !view.profile || !*view.profile ||
        !(*view.profile)->line.hasInference())
        return;
    const answers::Profile& today = **view.profile;
    const double kg = kilograms(*view.next) +
                      kilograms(questions::bodyMoved(view.about.lift.value, &*view.session));
    if (const double speed = today.line.at(kg); speed > 0)
        view.expected = {.speed = speed,
                         .within = stats::predictionInterval(today.line, kg, today.level)};
}

// Today's estimate where it has an interval, else last time's: the first two sets of a day make a
// line that a warm-up tilts.
void readNext(SessionView& view) {
    std::optional<Answer<answers::Profile>> before;
    if (view.last)
        before = questions::profileOf(view.about, *view.last);
    const Answer<answers::Profile>* of = nullptr;
    for (const auto* profile : {&view.profile, &before})
        if (!view.limit && *profile) {
            of = &**profile;
            view.limit = questions::estimatedMaximum(*of);
        }
    const std::optional<Mass> whole = view.limit;
    view.limit = questions::addedOf(view.limit, view.about.lift.value,
                                    view.session ? &*view.session
                                    : view.last  ? &*view.last
                                                 : nullptr);
    if (!readUnder(view))
        readLadder(view);
    readExpected(view);
    if (view.next && whole && view.limit && view.limit->grams > 0) {
        const double lifted = kilograms(*view.next) + kilograms(*whole) - kilograms(*view.limit);
        view.nextShare = 100 * lifted / kilograms(*whole);
        if (const auto& within = answers::toPlanWith(*(*of)->oneRm); within && within->low > 0)
            view.nextShareWithin =
                stats::Interval{100 * lifted / within->high, 100 * lifted / within->low};
    }
}

} // namespace

std::vector<Mass> SessionView::loadsToday() const {
    std::vector<Mass> loads;
    for (const SetRow& row : rows)
        if (row.placed.set.outcome == Outcome::Lifted)
            loads.push_back(row.placed.set.load);
    return loads;
}

std::vector<Mass> SessionView::loadsLast() const {
    std::vector<Mass> loads;
    for (const LadderModel::Step& step : ladder)
        if (step.set.outcome == Outcome::Lifted)
            loads.push_back(step.set.load);
    return loads;
}

std::vector<Mass> SessionView::maximaLast() const {
    std::vector<Mass> loads;
    for (const LadderModel::Step& step : ladder)
        if (step.set.trueMaximum && step.set.outcome == Outcome::Lifted)
            loads.push_back(step.set.load);
    return loads;
}

std::optional<int> SessionView::pointOfRow(int row) const {
    if (!session || row < 0 || row >= static_cast<int>(rows.size()))
        return std::nullopt;
    const auto& placed = rows[static_cast<std::size_t>(row)].placed;
    for (std::size_t i = 0; i < session->points.size(); ++i)
        if (session->points[i].set == placed.ordinal)
            return static_cast<int>(i);
    return std::nullopt;
}

SessionView readSession(const log::Log& log, AthleteId athlete, LiftId lift,
                        std::optional<SessionId> session, LoadUnit unit, int earlier,
                        std::optional<Date> today) {
    SessionView view;
    view.chart.unit = unit;
    // Everybody's repeat tests are read once there is a line of today to say how sure it is.
    view.about = questions::withoutNoise(log, athlete, lift);
    const PointRule rule = view.about.lift.value.rule;
    std::optional<SessionHead> head;
    if (session) {
        const log::SessionRecord record = log.session(*session);
        head = record.head.value;
        view.gaps = questions::notToday(record.battery, lift);
        if (const auto found = questions::sessionOf(view.about.sessions, *session)) {
            view.session = *found;
            if (found->points.size() >= 3) // else its line has no interval
                questions::addDayNoise(log, view.about);
            view.profile = questions::profileOf(view.about, *found);
        }
        readRows(view, log.sets(*session, lift), rule);
    }
    const auto before = sessionsBefore(view.about, session, head);
    if (!before.empty())
        view.last = before.back();
    if (view.last)
        for (const log::PlacedSet& placed : log.sets(view.last->session, lift))
            view.ladder.push_back({placed.set, pointVelocity(placed.set, rule)});
    if (const auto day = head ? std::optional(head->date) : today)
        view.ceiling = questions::blockCeiling(log.blocks(), *day);
    readNext(view);
    readChart(view, before.last(std::min(before.size(), static_cast<std::size_t>(earlier))));
    return view;
}

} // namespace slopebook::ui
