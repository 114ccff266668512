// SPDX-License-Identifier: GPL-3.0-or-later
// Every kind of thing that a log holds under a name of its own among other logs, each as one value
// that says all that its content says.
#pragma once

#include "core/log/log.h"
#include "core/log/uuid.h"

#include <optional>
#include <string>
#include <variant>

namespace slopebook::log {

/// into: of a removed session whose sets went to another one, that one's UUID.
struct SessionThing {
    SessionHead head{};
    std::optional<Sixteen> into{};
    friend bool operator==(const SessionThing&, const SessionThing&) = default;
};
struct LiftConditionsThing {
    SessionId session{};
    LiftId lift{};
    Conditions conditions{};
    friend bool operator==(const LiftConditionsThing&, const LiftConditionsThing&) = default;
};
struct TestConditionsThing {
    SessionId session{};
    TestKindId test{};
    Conditions conditions{};
    friend bool operator==(const TestConditionsThing&, const TestConditionsThing&) = default;
};
/// A set with its reps. Its own key is no part of what it says, and is 0 where it was read.
using SetThing = PlacedSet;
/// ordinal: among the session's attempts, over all tests, from 1 on.
struct AttemptThing {
    SessionId session{};
    TestKindId test{};
    int ordinal = 1;
    Attempt attempt{};
    friend bool operator==(const AttemptThing&, const AttemptThing&) = default;
};
struct GapThing {
    SessionId session{};
    int ordinal = 1;
    Gap gap{};
    friend bool operator==(const GapThing&, const GapThing&) = default;
};
struct CheckLoadThing {
    AthleteId athlete{};
    LiftId lift{};
    Mass load{};
    friend bool operator==(const CheckLoadThing&, const CheckLoadThing&) = default;
};
/// One athlete of a roster, with the order of the turns.
struct RosterThing {
    StationId station{};
    Date day{};
    int ordinal = 1;
    AthleteId athlete{};
    friend bool operator==(const RosterThing&, const RosterThing&) = default;
};
/// Two logs changed a thing apart: what lost, for the coach to choose. Its UUID is conflictUuid().
/// Settled, it is removed.
struct ConflictThing {
    Sixteen about{};       ///< the UUID of the thing
    Sixteen revision{};    ///< of what lost
    std::string why{};     ///< "both changed"
    bool lived = false;    ///< what lost was not removed
    std::string content{}; ///< of what lost; empty: nobody has it any more
    friend bool operator==(const ConflictThing&, const ConflictThing&) = default;
};
/// The same in every log that finds it.
Sixteen conflictUuid(const Sixteen& about, const Sixteen& revision);

using Thing = std::variant<Athlete, Lift, Device, Block, TestKind, Equipment, Station, SessionThing,
                           LiftConditionsThing, TestConditionsThing, SetThing, AttemptThing,
                           GapThing, CheckLoadThing, RosterThing, ConflictThing>;

} // namespace slopebook::log
