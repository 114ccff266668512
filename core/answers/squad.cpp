// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squad.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/figures.h"
#include "core/answers/sharedloads.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <set>
#include <tuple>

namespace slopebook::answers {

namespace {

bool within(const LiftSession& session, const Period& period) {
    return period.first <= session.date && session.date <= period.last &&
           session.ordinal == period.session.value_or(session.ordinal);
}

bool makesIntervals(const LiftSession& session) {
    std::vector<double> x, y;
    for (const Point& p : session.points) {
        x.push_back(p.load);
        y.push_back(p.velocity);
    }
    const auto line = stats::fitLine(x, y);
    return line && line->hasInference();
}

/// One athlete's two sessions and what compare said of them.
struct Compared {
    const SquadMember* member = nullptr;
    std::optional<LiftSession> from = {}, to = {};
    Answer<Comparison> comparison = NoAnswer{};
    std::vector<SharedLoadChange> shared = {}; ///< where there is no comparison
    int fromSessions = 1, toSessions = 1;
    bool corrected = false; ///< a device's bias is taken off
};

NoAnswer noSession(const Period& period) {
    return {NoAnswer::Why::NoSuchSession,
            say("no session of this lift in %1", periodWords(period.name))};
}

/// Of a date the one session that stands for it.
BlockSessions allIn(const SquadMember& member, const Period& period,
                    const std::optional<LiftSession>& standing) {
    BlockSessions all{.name = period.name};
    if (period.nearest) {
        all.name = dateKey(standing->date, standing->ordinal);
        all.sessions.push_back(*standing);
        return all;
    }
    for (const LiftSession& session : member.sessions)
        if (within(session, period) && !session.points.empty())
            all.sessions.push_back(session);
    return all;
}

/// Of all sessions of both periods; false where one session stands for each, or no line judges
/// them.
bool comparedAsBlocks(Compared& c, const Lift& lift, const Period& from, const Period& to,
                      const std::vector<Mass>& loads, const BlockSettingsOf& ofBlocks,
                      double level) {
    if (!ofBlocks || (from.nearest && to.nearest))
        return false;
    const BlockSessions before = allIn(*c.member, from, c.from), after = allIn(*c.member, to, c.to);
    if (before.sessions.size() + after.sessions.size() <= 2)
        return false;
    BlockSettings settings = ofBlocks(*c.member, *c.from, *c.to);
    settings.with.level = level;
    settings.with.checkLoads = loads;
    auto comparison = compareBlocks(lift, c.member->mvt, before, after, settings);
    if (!comparison)
        return false;
    c.from = comparison->from.session;
    c.to = comparison->to.session;
    c.fromSessions = static_cast<int>(comparison->blocks->first.sessions.size());
    c.toSessions = static_cast<int>(comparison->blocks->second.sessions.size());
    c.corrected = comparison->uncertainty.device.value > 0;
    c.comparison = std::move(comparison);
    return true;
}

Compared comparedIn(const Lift& lift, const SquadMember& member, const Period& from,
                    const Period& to, const std::vector<Mass>& loads, const SettingsOf& settingsOf,
                    double level, const BlockSettingsOf& ofBlocks) {
    Compared c{.member = &member,
               .from = sessionFor(member.sessions, from),
               .to = sessionFor(member.sessions, to)};
    if (!c.from || !c.to) {
        c.comparison = noSession(c.from ? to : from);
        return c;
    }
    if (comparedAsBlocks(c, lift, from, to, loads, ofBlocks, level))
        return c;
    ComparisonSettings settings = settingsOf(member, *c.from, *c.to);
    settings.level = level;
    settings.checkLoads = loads;
    c.corrected = settings.deviceBias.has_value();
    c.comparison = compare(lift, member.mvt, *c.from, *c.to, settings);
    if (!c.comparison)
        if (auto shared = sharedLoadChanges(*c.from, *c.to, settings,
                                            pointNoiseFrom(settings.dayNoise, member.sessions)))
            c.shared = std::move(*shared);
    return c;
}

/// What is not comparable counts as no figure, with its reason.
Answer<ReadChange> comparable(const Comparison& comparison, const ReadChange& read) {
    if (comparison.under.notComparable.empty())
        return read;
    return NoAnswer{NoAnswer::Why::NotComparable,
                    say("not comparable: %1", comparison.under.notComparable)};
}

SquadRow rowOf(const Compared& c) {
    SquadRow row{.athlete = c.member->athlete,
                 .name = c.member->name,
                 .from = c.from,
                 .to = c.to,
                 .fromSessions = c.from ? c.fromSessions : 0,
                 .toSessions = c.to ? c.toSessions : 0};
    if (!c.comparison) {
        row.read = c.comparison.why();
        if (!c.from || !c.to)
            return row;
    }
    row.otherDevice = c.from->conditions.device != c.to->conditions.device;
    row.correctedDevice = row.otherDevice && c.corrected;
    return row;
}

SquadRow rowAt(const Compared& c, Mass load) {
    SquadRow row = rowOf(c);
    if (!c.comparison) {
        const auto seen = std::ranges::find(c.shared, load, &SharedLoadChange::load);
        row.asSeen = seen != c.shared.end();
        if (row.asSeen)
            row.read = seen->read;
        return row;
    }
    const ChangeAt at = changeAt(*c.comparison, load);
    row.extrapolated = at.extrapolated;
    row.parts = c.comparison->uncertainty.at(kilograms(load));
    const bool own = std::ranges::count(c.member->checkLoads, load) > 0;
    if (at.extrapolated && !own)
        row.read = NoAnswer{NoAnswer::Why::BeyondLoads,
                            say("%1 lies beyond the loads that both sessions cover", load)};
    else
        row.read = comparable(*c.comparison, at.read);
    return row;
}

SquadRow rowOfOneRm(const Compared& c) {
    SquadRow row = rowOf(c);
    if (!c.comparison)
        return row;
    const auto& change = c.comparison->oneRm;
    if (!change)
        row.read = change.why();
    else if (change->read.reading == Reading::NoFigure && c.comparison->under.notComparable.empty())
        row.read = NoAnswer{NoAnswer::Why::SlopeUncertain,
                            say("a slope is not certain enough to bound the change")};
    else {
        row.read = comparable(*c.comparison, change->read);
        row.parts = c.comparison->uncertainty.ofMax(c.comparison->from.mvt->value);
    }
    for (const Profile* p : {&c.comparison->from, &c.comparison->to})
        row.extrapolated = row.extrapolated || (p->oneRm && p->oneRm->extrapolatedFar());
    return row;
}

void sortRows(std::vector<SquadRow>& rows) {
    const auto key = [](const SquadRow& row) {
        const Reading reading = row.read ? row.read->reading : Reading::NoFigure;
        return std::tuple{static_cast<int>(reading), row.read ? -std::abs(row.read->change) : 0.0,
                          row.name};
    };
    std::ranges::stable_sort(rows, {}, key);
}

std::vector<Mass> loadsOf(std::span<const SquadMember> members) {
    std::set<Mass> loads;
    for (const SquadMember& member : members)
        loads.insert(member.checkLoads.begin(), member.checkLoads.end());
    return {loads.begin(), loads.end()};
}

std::vector<Note> notesOf(const Squad& squad) {
    std::vector<Note> notes;
    int most = 0;
    bool device = false, corrected = false, asSeen = false;
    for (const SquadPart& part : squad.parts) {
        most = std::max(most, part.figures());
        for (const SquadRow& row : part.rows) {
            device = device || (row.read && row.otherDevice && !row.correctedDevice);
            corrected = corrected || (row.read && row.correctedDevice);
            asSeen = asSeen || row.asSeen;
        }
    }
    const double byChance = (1 - squad.level) * most;
    if (byChance >= 0.5)
        notes.push_back({Note::Kind::ByChance,
                         say("of %1 athletes about %2 can be expected to read better or worse by "
                             "chance alone, at any one load",
                             most, figure(byChance, byChance < 2 ? 1 : 0))});
    if (device)
        notes.push_back({Note::Kind::DifferentDevices,
                         say("some were measured with two devices: part of their change may be the "
                             "devices'")});
    if (corrected)
        notes.push_back({Note::Kind::DeviceCorrected,
                         say("changes across devices have the device's bias taken off and its "
                             "uncertainty added")});
    if (asSeen)
        notes.push_back(asSeenNote());
    return notes;
}

} // namespace

Period onDate(Date date, int withinDays) {
    const std::chrono::sys_days day{date};
    const std::chrono::days by{withinDays};
    return {.first = Date{day - by},
            .last = Date{day + by},
            .nearest = date,
            .session = {},
            .name = isoDate(date)};
}

Period inBlock(const Block& block) {
    return {
        .first = block.first, .last = block.last, .nearest = {}, .session = {}, .name = block.name};
}

std::optional<LiftSession> sessionFor(std::span<const LiftSession> sessions, const Period& period) {
    const LiftSession* best = nullptr;
    std::tuple<bool, long, Date, int> bestRank;
    for (const LiftSession& session : sessions) {
        if (!within(session, period) || session.points.empty())
            continue;
        const long away =
            period.nearest ? std::labs(daysBetween(*period.nearest, session.date)) : 0;
        const std::tuple rank{makesIntervals(session), -away, session.date, session.ordinal};
        if (!best || bestRank < rank) {
            best = &session;
            bestRank = rank;
        }
    }
    return best ? std::optional(*best) : std::nullopt;
}

int SquadPart::read(Reading reading) const {
    return static_cast<int>(std::ranges::count_if(rows, [&](const SquadRow& row) {
        return (row.read ? row.read->reading : Reading::NoFigure) == reading;
    }));
}

int SquadPart::figures() const {
    return static_cast<int>(rows.size()) - read(Reading::NoFigure);
}

Answer<Squad> squadChange(const Lift& lift, std::span<const SquadMember> members,
                          const Period& from, const Period& to, const std::vector<Mass>& loads,
                          const SettingsOf& settingsOf, double level,
                          const BlockSettingsOf& ofBlocks) {
    if (members.empty())
        return NoAnswer{NoAnswer::Why::TooFewSessions,
                        say("no athlete has a session of this lift")};
    const std::vector<Mass> asked = loads.empty() ? loadsOf(members) : loads;
    std::vector<Compared> compared;
    for (const SquadMember& member : members)
        compared.push_back(comparedIn(lift, member, from, to, asked, settingsOf, level, ofBlocks));
    Squad squad{.from = from, .to = to, .level = level};
    for (const Mass load : asked) {
        squad.parts.push_back({.load = load});
        for (const Compared& c : compared)
            squad.parts.back().rows.push_back(rowAt(c, load));
    }
    if (!lift.ballistic) {
        squad.parts.push_back({});
        for (const Compared& c : compared)
            squad.parts.back().rows.push_back(rowOfOneRm(c));
    }
    for (SquadPart& part : squad.parts)
        sortRows(part.rows);
    squad.notes = notesOf(squad);
    for (const Compared& c : compared)
        if (c.comparison)
            if (const auto fair =
                    std::ranges::find(c.comparison->notes, Note::Kind::AsManyReps, &Note::kind);
                fair != c.comparison->notes.end()) {
                squad.notes.push_back(*fair);
                break;
            }
    return squad;
}

} // namespace slopebook::answers
