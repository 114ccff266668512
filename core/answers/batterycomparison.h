// SPDX-License-Identifier: GPL-3.0-or-later
// All tests of two dates or two blocks side by side: before, after, change with its interval,
// reading, left against right, and the figures of the forest plot.
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/leftright.h"
#include "core/answers/squadtests.h"
#include "core/answers/testchange.h"

#include <string>
#include <vector>

namespace slopebook::answers {

class AmongBlocks;

/// One side of a comparison: a date, a block or a stretch of days, and its sessions by date.
struct TestDays {
    std::string label = {};
    std::vector<BatterySession> sessions = {};
    /// A block or a stretch of days: a test's figure is the mean of all sessions that have it. Of a
    /// day: that of the latest that has it.
    bool means = false;
};

/// One line of the forest plot, one for each thing that was asked. Everything in units of the
/// smallest change that matters, turned so that right is better.
struct ForestRow {
    Words label = {};
    Words named = {}; ///< as a sentence names it, with its figures: "Single hop, left (+0.10 m)"
    Words noBar = {}; ///< why there is no bar of it: then change and interval say nothing
    Words word = {};  ///< its reading in its own unit
    double change = 0;
    stats::Interval interval = {};
    Reading reading = Reading::NoFigure;
    bool otherConditions = false; ///< something around it changed
    bool extrapolated = false;    ///< its figure is drawn far beyond the loads
    Words brief = {};           ///< its reading in few words, with which way an unclear change goes
    int tells = 0;              ///< of an unclear change: ReadChange::tells()
    bool notComparable = false; ///< drawn all the same, hatched
};
/// "better", "unclear, leaning to better", "not comparable": its interval is drawn beside; how
/// large a change is clear in the row's own unit.
Words forestReading(const ForestRow& row);

/// How rows are told apart that were tested under other conditions, and those whose figure is drawn
/// beyond the loads: each by a mark of its own, or, where nearly all rows are so, by a line above
/// and a mark on the others.
struct ForestKey {
    enum class Marked { None, These, Others, All };
    Marked conditions = Marked::None, extrapolated = Marked::None;
};
ForestKey forestKey(std::span<const ForestRow> rows);
/// The marks that stand behind a row's reading, such as "*"; empty where it has none.
std::string forestMarks(const ForestRow& row, const ForestKey& key);
/// What marks mean, and what holds of nearly all rows.
std::vector<Words> forestMarkWords(const ForestKey&key), forestAllWords(const ForestKey&key);

struct MissingTest {
    std::string label = {}; ///< of the date or block
    Date date = {};
    Words what = {}; ///< the test or lift, with its side
    std::string reason = {};
};

struct BatteryComparison {
    double level = 0.95;
    /// Its readings are the season's, of all blocks at once (amongblocks.h).
    bool allAtOnce = false;
    std::string fromLabel = {}, toLabel = {};
    std::vector<TestChange> tests = {};
    std::vector<LeftRight> leftRight = {};
    std::vector<ForestRow> forest = {};
    std::vector<MissingTest> missing = {};
    std::vector<Note> notes = {};
};

/// lifts: for gaps that are about a lift; devices: for tests measured by another one. Tests that
/// neither side has, or has as a gap, are left out. among: what the season says of the same step.
BatteryComparison compareBattery(std::span<const Stored<TestKindId, TestKind>> kinds,
                                 AthleteId athlete, const TestDays& from, const TestDays& to,
                                 const SquadTests& squad,
                                 std::span<const Stored<LiftId, Lift>> lifts, double level = 0.95,
                                 Devices devices = {}, const AmongBlocks* among = nullptr);

/// Puts a lift's check loads and 1RM into the forest plot of the battery.
void addLift(BatteryComparison& battery, const Lift& lift, const Comparison& comparison);

/// A test or a lift with its side: "Single hop, left".
Words sided(const Words& name, BodySide side);
/// "Single hop for distance, left".
Words testLabel(const TestKind& kind, BodySide side);
} // namespace slopebook::answers
