// SPDX-License-Identifier: GPL-3.0-or-later
// All tests of two dates or two blocks side by side: before, after, change with its interval,
// reading, left against right, and the figures of the forest plot.
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/squadtests.h"
#include "core/model/people.h"

#include <string>
#include <vector>

namespace slopebook::answers {

/// The typical error that a change of a test is read with, in the test's unit.
struct TestNoiseUsed {
    enum class Origin { Athlete, Log, Kind };
    double te = 0;
    double df = 0; ///< infinite where it is a published or the coach's figure
    Origin origin = Origin::Kind;
    Words source = {};
};

/// The athlete's own repeat tests (two pairs or more), else the log's, else the kind's own figure
/// (published or the coach's), else what a single pair of the athlete's says (of a two-sided kind
/// that of each side together), else nothing. value: what a percentage is taken of.
std::optional<TestNoiseUsed> testNoise(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                       AthleteId athlete, const SquadTests& squad, double value);

/// change -/+ t sqrt(2) TE on TE's df (Hopkins 2000; Swinton et al. 2018).
stats::Interval changeInterval(double change, double te, double df, double level);

/// SE of a change of asymmetry, percentage points, from the typical error of one value: 100 TE
/// sqrt(2 (1 + r^2)) / better, r = weaker / better.
double asymmetryChangeSe(double te, double better, double weaker);

/// One side of a comparison: a date or a block, and its sessions by date.
struct TestDays {
    std::string label = {};
    std::vector<BatterySession> sessions = {};
};

/// A test as it was on one side of the comparison: of the latest session that has it.
struct SeenTest {
    Answer<TestValue> value = notTested();
    std::optional<SessionId> session = {};
    std::optional<Date> date = {};
    Conditions conditions = {};
};

/// "surface", "turf", "boards".
struct ContextChange {
    enum class Of { Surface, Device, Footwear, Technique };
    Of what = Of::Surface;
    std::string before = {}, after = {};
    friend bool operator==(const ContextChange&, const ContextChange&) = default;
};
/// "surface", "device", "footwear", "technique".
std::string_view word(ContextChange::Of what);
/// "surface: turf, then boards".
Words changeWords(const ContextChange& change);
/// What differs between the conditions of two days; what is not written down on a side does not
/// count. devices: their names.
std::vector<ContextChange> contextChanges(const Conditions& before, const Conditions& after,
                                          std::span<const Stored<DeviceId, Device>> devices);

struct TestChange {
    Stored<TestKindId, TestKind> kind = {};
    BodySide side = BodySide::Both;
    SeenTest before = {}, after = {};
    std::optional<double> change = {}, percent = {}; ///< both there
    std::optional<TestNoiseUsed> noise = {};
    ReadChange read = {};
    Words noReading = {}; ///< why there is no reading; empty where there is one
    /// A lower bound of the noise, from the spread of the attempts within each day, in the unit.
    std::optional<double> attemptNoise = {};
    std::vector<ContextChange> context = {};
};

/// Left against right of one test.
struct LeftRight {
    Stored<TestKindId, TestKind> kind = {};
    Answer<Asymmetry> before = NoAnswer{}, after = NoAnswer{};
    /// Signed change in percentage points, positive towards the left; where both are there.
    std::optional<double> change = {};
    /// Of the size of the asymmetry: less is better. From the typical errors of both sides on both
    /// days: four attempts' worth of noise.
    ReadChange read = {};
    Words noReading = {}; ///< why there is none
};

/// One line of the forest plot. Everything in units of the smallest change that matters, turned so
/// that right is better.
struct ForestRow {
    Words label = {};
    double change = 0;
    stats::Interval interval = {};
    Reading reading = Reading::NoFigure;
    bool flagged = false; ///< the context changed, or a figure is extrapolated
};

struct MissingTest {
    std::string label = {}; ///< of the date or block
    Date date = {};
    Words what = {}; ///< the test or lift, with its side
    std::string reason = {};
};

struct BatteryComparison {
    double level = 0.95;
    std::string fromLabel = {}, toLabel = {};
    std::vector<TestChange> tests = {};
    std::vector<LeftRight> leftRight = {};
    std::vector<ForestRow> forest = {};
    std::vector<Words> notDrawn = {}; ///< "Single hop, left: no smallest change is known"
    std::vector<MissingTest> missing = {};
    std::vector<Note> notes = {};
};

/// lifts: for gaps that are about a lift; devices: for tests measured by another one. Tests that
/// neither side has, or has as a gap, are left out.
BatteryComparison compareBattery(std::span<const Stored<TestKindId, TestKind>> kinds,
                                 AthleteId athlete, const TestDays& from, const TestDays& to,
                                 const SquadTests& squad,
                                 std::span<const Stored<LiftId, Lift>> lifts, double level = 0.95,
                                 std::span<const Stored<DeviceId, Device>> devices = {});

/// Puts a lift's check loads and 1RM into the forest plot of the battery.
void addLift(BatteryComparison& battery, const Lift& lift, const Comparison& comparison);

/// "Single hop for distance, left".
Words testLabel(const TestKind& kind, BodySide side);
/// "left by 7.1 %", "even".
Words asymmetryWords(const Asymmetry& asymmetry);
/// "-3.1 points (-5.0 to -1.2): less uneven", or why there is no reading; empty without a change.
Words asymmetryChangeWords(const LeftRight& row);

} // namespace slopebook::answers
