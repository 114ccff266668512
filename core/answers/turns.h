// SPDX-License-Identifier: GPL-3.0-or-later
// A station: what each athlete here has done of it and what is due, the next load of each, and
// whose turn it is.
#pragma once

#include "core/model/battery.h"
#include "core/model/exactmass.h"
#include "core/model/station.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// A load tried today.
struct Tried {
    Mass load{};
    bool lifted = true;
    friend bool operator==(const Tried&, const Tried&) = default;
};

/// What is known of an athlete at a lift's station.
struct AtLift {
    std::vector<Tried> today{};         ///< in order
    std::vector<Mass> lastTime{};       ///< loads of their last session of the lift
    std::vector<Mass> lastMaxima{};     ///< those of them that were true maxima
    std::optional<Mass> estimate{};     ///< what their maximum is estimated at
    std::optional<Mass> ceiling{};      ///< of the block that the day lies in
    std::vector<Mass> notPossible{};    ///< loads that were not, today
    bool out = false;                   ///< the lift is not possible today
    MassUnit unit = MassUnit::Kilogram; ///< in which plates are: a load between two is made of 2.5
                                        ///< kg or 5 lb steps
};

/// Why no load is offered.
enum class NoLoad {
    None,          ///< one is
    Out,           ///< not possible today
    Done,          ///< as many sets as planned, or the ladder's top
    NotLifted,     ///< a load above was not lifted, twice or with no step left under it
    AboveCeiling,  ///< the ladder goes on above the block's ceiling
    AboveEstimate, ///< and above the estimated maximum: the coach may, the program does not offer
                   ///< it
    NoLadder       ///< neither planned nor known from last time
};

struct LiftDue {
    int done = 0;
    std::optional<int> due = 0; ///< sets; nothing: nobody planned how many
    std::optional<Mass> next{};
    bool retry = false; ///< next lies under a load that was not lifted
    NoLoad why = NoLoad::None;
    bool isDue() const { return !due || *due > 0; }
    friend bool operator==(const LiftDue&, const LiftDue&) = default;
};

/// The station's ladder, else the athlete's own of last time; as many sets as planned, else as
/// many as that ladder has above the heaviest lifted. A load that was not lifted ends the ladder
/// under it: the ladder's loads below it are still due, or one try halfway up to it, and nothing
/// after a second one that was not lifted. Never a load above the
/// ceiling or one that was not possible.
LiftDue dueAt(const Station& station, const AtLift& athlete);

/// A test, on one side, of a station.
struct DueAttempt {
    std::size_t test = 0; ///< index of the station's tests
    BodySide side = BodySide::Both;
    friend bool operator==(const DueAttempt&, const DueAttempt&) = default;
};

struct TestsDue {
    int done = 0, due = 0;            ///< attempts that count; over all tests and sides
    std::optional<DueAttempt> next{}; ///< the first test that is due, the side with fewer done
    bool out = false;                 ///< none of it is possible today
    bool isDue() const { return due > 0; }
    friend bool operator==(const TestsDue&, const TestsDue&) = default;
};

/// As many attempts on each side as the station plans, else as the test does. today: what the
/// athlete's battery of the day holds.
TestsDue dueAt(const Station& station, std::span<const Stored<TestKindId, TestKind>> tests,
               const Battery& today);

/// Whose turn it is after that place, round and round: the next who is due, the same one only
/// where nobody else is. Nothing where nobody is due. after: nothing before the first turn.
std::optional<std::size_t> nextTurn(const std::vector<bool>& due, std::optional<std::size_t> after);

} // namespace slopebook::answers
