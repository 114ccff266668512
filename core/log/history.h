// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions of one lift as a long table is filled with them: put in order and narrowed down by
// SQLite, which gives keys alone, then read page by page.
#pragma once

#include "core/log/log.h"
#include "core/log/tally.h"

#include <any>
#include <array>
#include <functional>
#include <span>

namespace slopebook::log {

/// What of a session is in its own columns or near them, so that SQLite can order by it.
enum class HistoryColumn { Day, Athlete, Block, Device, Points, Loads, Measured, Note };

struct HistoryQuestion {
    LiftId lift{};
    std::optional<AthleteId> athlete{}; ///< absent: everybody
    HistoryColumn column = HistoryColumn::Day;
    bool descending = true;
    /// Letter case aside, a part of the day (2026-03-14, or 14 Mar 2026 with the months' names
    /// below) or of the name of the athlete, of the block or of the device, or of the session's
    /// note. Empty: all.
    std::string find{};
    std::array<std::string, 12> months{};
};

/// The sessions that hold a set of the lift. Where the column says the same of two, the newer comes
/// first, then they stand in the order of the athletes' names. What is missing counts as least.
/// Throws LogError.
std::vector<SessionId> historyOrder(const Log& log, const HistoryQuestion& question);

/// The statement that finds them, to see which indexes it goes by.
std::string historySql(const HistoryQuestion& question);

/// What the coach wrote of each of them, in their order. Throws LogError.
std::vector<std::string> sessionNotes(const Log& log, std::span<const SessionId> sessions);

/// One lift of those sessions, in their order, each verified against its checksum. Throws LogError:
/// Conflict where one is gone. Those that do not hold the lift are left out.
std::vector<LiftSession> liftSessions(const Log& log, LiftId lift,
                                      std::span<const SessionId> sessions);

/// Whether another session is marked as a repeat of that one. Throws LogError.
bool isRepeated(const Log& log, SessionId session);

/// The tally of an athlete's sessions, which changes when anything of these does.
struct AthleteTally {
    AthleteId athlete{};
    Tally sessions{};
    friend bool operator==(const AthleteTally&, const AthleteTally&) = default;
};
/// Of the athletes with sessions, by key. Throws LogError.
std::vector<AthleteTally> athleteTallies(const Log& log);
/// Of those alone with a session that repeats another.
std::vector<AthleteTally> repeatingAthletes(const Log& log);

/// Follows whose sessions change, for whoever keeps something that was worked out of them.
class AthleteWatch {
public:
    /// Whose sessions are others than at the last call, by key; nothing: of so many that all are
    /// better read in one pass, as at the first call. What reads them then reads them in the same
    /// Moment (snapshot.h). Throws LogError, and then says nothing at the next call.
    std::optional<std::vector<AthleteId>> changed(const Log& log);

private:
    std::size_t m_own = 0;          ///< changes of the log itself that were seen
    std::optional<long> m_others{}; ///< SQLite's data version when others' were
    std::vector<AthleteTally> m_tallies;
    bool m_known = false;
};

/// Goes through the lift's lines in those athletes' sessions that repeat another or are repeated,
/// by athlete, day and place in the day. What is damaged is passed over: it is told where it is
/// shown. Throws LogError otherwise.
void scanRepeats(const Log& log, LiftId lift, std::span<const AthleteId> athletes,
                 const std::function<void(const LiftSession&)>& visit);

/// Room for what was worked out from the log by others, who ask whether it still holds; it goes
/// with the log.
std::any& keptBeside(const Log& log);

/// The athletes with a session of that day, by key. Throws LogError.
std::vector<AthleteId> testedOn(const Log& log, Date day);

/// The last day that holds a session, of anybody. Throws LogError.
std::optional<Date> lastDay(const Log& log);

/// The number that a further session of that day gets: 1 for the first. Throws LogError.
int freeOrdinal(const Log& log, AthleteId athlete, Date date);

/// A page of the athletes, as the whole list is ordered: those whose name holds a part, letter case
/// aside, after that one (absent: from the first).
struct AthletesQuestion {
    std::string find{};
    std::optional<std::string> after{}; ///< a name
    int most = 100;
};
std::vector<Stored<AthleteId, Athlete>> athletes(const Log& log, const AthletesQuestion& question);

} // namespace slopebook::log
