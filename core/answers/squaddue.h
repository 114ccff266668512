// SPDX-License-Identifier: GPL-3.0-or-later
// Who of a squad is due for what: by the running block, by the others, and by how long ago it was.
#pragma once

#include "core/model/date.h"
#include "core/model/ids.h"
#include "core/model/people.h"
#include "core/model/words.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::answers {

/// A lift or a test, and when each athlete who was ever tested in it last was.
struct TestedMeasure {
    struct Last {
        AthleteId athlete = {};
        Date day = {};
    };
    std::optional<LiftId> lift = {}; ///< one of the two
    std::optional<TestKindId> test = {};
    std::string name = {};
    std::vector<Last> last = {};
};

struct DueQuestion {
    Date today = {};
    int weeks = 6;                     ///< what is longer ago is due
    std::optional<Block> running = {}; ///< the block of today
};

/// One athlete and measure, and why it is due.
struct DueRow {
    AthleteId athlete = {};
    std::string name = {};
    std::optional<LiftId> lift = {};
    std::optional<TestKindId> test = {};
    std::string measure = {};
    std::optional<Date> last = {}; ///< absent: never
    int days = 0;                  ///< since then; 0: never
    bool notInBlock = false;       ///< not in the running block
    bool longAgo = false;          ///< not since so many weeks
    int others = 0; ///< that have the measure, or of somebody never tested that could
    /// Of them, tested since, more than a week later; of somebody never tested, within the block or
    /// the weeks. Counts as a reason where it is more than half.
    int othersSince = 0;
    bool behind() const { return 2 * othersSince > others; }
};

struct SquadDue {
    DueQuestion question = {};
    std::vector<DueRow> rows = {};      ///< never first, then the longest ago; then by name
    std::vector<std::string> away = {}; ///< nobody has seen them for half a year: names
    int athletesDue() const;
};

/// athletes: the squad, by name. Somebody without any test is nobody's yet, and not listed.
/// A day after today counts as today.
SquadDue squadDue(std::span<const Stored<AthleteId, Athlete>> athletes,
                  std::span<const TestedMeasure> measures, const DueQuestion& question);

/// "not in Spring yet; 5 of 7 others since; over 6 weeks ago".
Words dueWhy(const DueRow& row, const DueQuestion& question);
/// "3 athletes are due for 5 tests: ...", "Nobody is due for anything."
Words dueWords(const SquadDue& due);
/// Who was not seen for half a year; empty where there is nobody.
Words awayWords(const SquadDue& due);
/// When something is due.
Words dueMethod(const DueQuestion& question);

} // namespace slopebook::answers
