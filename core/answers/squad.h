// SPDX-License-Identifier: GPL-3.0-or-later
// A whole squad between two dates or training blocks: what one lift did in each athlete.
#pragma once

#include "core/answers/blockchange.h"
#include "core/model/people.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::answers {

/// A date, for which one session of each athlete stands, or a training block or a stretch of days,
/// of which all do.
struct Period {
    Date first = {}, last = {};       ///< inclusive
    std::optional<Date> nearest = {}; ///< the session nearest to it stands; absent: all of them
    std::optional<int> session = {};  ///< only those of that number in their day
    std::string name = {};
    friend bool operator==(const Period&, const Period&) = default;
};

/// That day, and as many days before and after it as may stand in for it.
Period onDate(Date date, int withinDays = 0);
/// All its sessions; where one has to stand for it (no line judges them), the last.
Period inBlock(const Block& block);

/// The session that stands for a period: among those that make a line with intervals where there
/// are any, else among all with points. Nothing where the athlete has none there.
std::optional<LiftSession> sessionFor(std::span<const LiftSession> sessions, const Period& period);

struct SquadMember {
    AthleteId athlete = {};
    std::string name = {};
    std::vector<LiftSession> sessions = {}; ///< of the lift, by date
    Answer<Mvt> mvt = NoAnswer{};
    std::vector<Mass> checkLoads = {};
};

struct SquadRow {
    AthleteId athlete = {};
    std::string name = {};
    /// What stood for the periods; of several sessions those that went heaviest.
    std::optional<LiftSession> from = {}, to = {};
    int fromSessions = 0, toSessions = 0; ///< how many stood for each
    Answer<ReadChange> read = NoAnswer{}; ///< with day-to-day noise; or why there is none
    bool extrapolated = false; ///< check load: beyond the loads of both; 1RM: a reach below 0.80
    bool correctedDevice = false, otherDevice = false;
    std::optional<ChangeParts> parts = {}; ///< what its variance is made of, where lines judge it
    bool asSeen = false; ///< no line can judge it: of what was seen at the load on both days
};

/// One question asked of everybody.
struct SquadPart {
    std::optional<Mass> load = {};   ///< a check load, m/s; absent: the estimated 1RM, kg
    std::vector<SquadRow> rows = {}; ///< better, worse, held, unclear, no figure; in each by size
    int read(Reading reading) const; ///< rows with that reading; NoFigure: those without a figure
    int figures() const;             ///< rows that have one
};

struct Squad {
    Period from = {}, to = {};
    double level = 0.95;
    std::vector<SquadPart> parts = {}; ///< check loads ascending, then the 1RM
    std::vector<Note> notes = {};
};

/// The settings that one athlete's two sessions are compared with.
using SettingsOf = std::function<ComparisonSettings(
    const SquadMember& member, const LiftSession& from, const LiftSession& to)>;

/// The same of two blocks from all their sessions.
using BlockSettingsOf = std::function<BlockSettings(
    const SquadMember& member, const LiftSession& from, const LiftSession& to)>;

/// loads: those asked of everybody; empty: every check load of any member. A load that is no check
/// load of an athlete's own and lies beyond the loads of both sessions gets no figure. Refused
/// with the reason: no members. ofBlocks: where a period is no date each athlete's change is of all
/// their sessions there (of a date of the one that stands for it); none: one session stands for a
/// block.
Answer<Squad> squadChange(const Lift& lift, std::span<const SquadMember> members,
                          const Period& from, const Period& to, const std::vector<Mass>& loads,
                          const SettingsOf& settingsOf, double level = 0.95,
                          const BlockSettingsOf& ofBlocks = {});

} // namespace slopebook::answers
