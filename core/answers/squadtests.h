// SPDX-License-Identifier: GPL-3.0-or-later
// What a whole log says of its tests: everybody's latest values and the repeat tests, fed one
// session at a time.
#pragma once

#include "core/answers/battery.h"
#include "core/answers/reading.h"

#include <map>
#include <span>
#include <utility>
#include <vector>

namespace slopebook::answers {

/// The values of two tests of one athlete, the second marked as a repeat of the first.
struct RepeatedTest {
    AthleteId athlete{};
    double first = 0, second = 0;
};

class SquadTests {
public:
    explicit SquadTests(std::span<const Stored<TestKindId, TestKind>> kinds = {})
        : m_kinds(kinds.begin(), kinds.end()) {}

    /// All sessions of one athlete before the next one's; a repeat after what it repeats.
    void add(const BatterySession& session);
    /// As if no session of that athlete had been added.
    void forget(AthleteId athlete);

    /// Each athlete's latest value of a test on a side.
    std::vector<double> latest(TestKindId kind, BodySide side) const;
    /// Repeat tests of a test on a side, of one athlete or of all.
    std::vector<RepeatedTest> repeats(TestKindId kind, BodySide side,
                                      std::optional<AthleteId> athlete = {}) const;
    /// What chooseSmallest() makes of latest() alone; worked out anew only where one of these has
    /// changed.
    std::optional<Smallest> ownSmallest(TestKindId kind, BodySide side) const;

private:
    using Key = std::pair<TestKindId, BodySide>;
    struct Dated {
        std::pair<Date, int> when;
        double value = 0;
    };
    struct KeptSmallest {
        std::vector<double> values;
        std::optional<Smallest> found;
    };
    std::vector<Stored<TestKindId, TestKind>> m_kinds;
    std::map<Key, std::map<AthleteId, Dated>> m_latest;
    std::map<Key, std::map<AthleteId, std::vector<RepeatedTest>>> m_repeats;
    AthleteId m_athlete{};
    std::map<SessionId, std::map<Key, double>> m_ofAthlete; // the values of the athlete at hand
    mutable std::map<Key, KeptSmallest> m_smallest;
};

} // namespace slopebook::answers
