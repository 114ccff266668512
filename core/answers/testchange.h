// SPDX-License-Identifier: GPL-3.0-or-later
// One test of the battery on one side of the body: before, after, and the change between them.
#pragma once

#include "core/answers/conditionchange.h"
#include "core/answers/reading.h"
#include "core/answers/testnoise.h"

#include <optional>
#include <vector>

namespace slopebook::answers {

/// A test as it was on one side of the comparison: of a day the latest session that has it, of a
/// block or a stretch of days the mean of all that have it.
struct SeenTest {
    Answer<TestValue> value = notTested();
    std::optional<SessionId> session = {};     ///< the latest that stands for it
    std::optional<Date> first = {}, date = {}; ///< of the earliest and of the latest
    Conditions conditions = {};                ///< of the latest
    int sessions = 0;                          ///< that stand for it
    /// Of the value, at the level of the comparison; nothing where no noise is known.
    std::optional<stats::Interval> interval = {};
};

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
    std::vector<ConditionChange> conditions = {}; ///< what was different around it
};

} // namespace slopebook::answers
