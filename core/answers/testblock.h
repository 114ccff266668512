// SPDX-License-Identifier: GPL-3.0-or-later
// What a stretch of days holds of one test on one side: for a season's cells and for the two sides
// of a battery alike.
#pragma once

#include "core/answers/conditionchange.h"
#include "core/answers/meansofdays.h"
#include "core/answers/testnoise.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// The days that stand for it, in their order.
struct TestBlock {
    std::vector<TestValue> values = {};
    std::vector<BatterySession> sessions = {}; ///< without their batteries
    std::vector<Conditions> conditions = {};
    NoAnswer why = notTested();                 ///< where it holds none
    std::optional<BatterySession> whySaid = {}; ///< the session that gives the reason
    Conditions whyConditions = {};              ///< of the test in it
    std::optional<MeanOfDays> mean() const;
    std::vector<double> figures() const;
};

/// Days that the coach set apart stand only where there are no others.
TestBlock testBlock(const Stored<TestKindId, TestKind>& kind,
                    std::span<const BatterySession> sessions, BodySide side);
/// The latest session that has the test, alone; else as above.
TestBlock latestOf(const Stored<TestKindId, TestKind>& kind,
                   std::span<const BatterySession> sessions, BodySide side);

/// Of several days one value: their mean, best the best of them, attempts and the days' own means
/// together; of one day that day's, to the last digit. There must be one.
TestValue valueOf(const TestBlock& block, const TestKind& kind);

/// What differs between the days of the one and those of the other.
Under underOfBlocks(const TestBlock& from, const TestBlock& to, Devices devices);

/// The noise of one day of the test: known as testNoise() has it, of a day a side no less than the
/// attempts show where few repeats say it; else how far the days of `all` lie apart themselves.
/// from and to must hold a day.
std::optional<TestNoiseUsed> noiseBetween(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                          AthleteId athlete, const SquadTests& squad,
                                          const TestBlock& from, const TestBlock& to,
                                          std::span<const TestBlock> all);
/// Of one value a side, a lower bound of the noise; nothing of several.
std::optional<double> leastNoise(const TestBlock& from, const TestBlock& to);

} // namespace slopebook::answers
