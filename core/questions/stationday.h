// SPDX-License-Identifier: GPL-3.0-or-later
// A station on a day: who is here, what each has done and is due, where the next set is written,
// and who was the last to step up.
#pragma once

#include "core/answers/turns.h"
#include "core/questions/questions.h"

#include <optional>
#include <vector>

namespace slopebook::questions {

/// What is done at a station, read whole.
struct StationWork {
    Stored<StationId, Station> station{};
    std::optional<Stored<LiftId, Lift>> lift{};
    std::vector<Stored<TestKindId, TestKind>> tests{}; ///< in the station's order
};
/// Throws LogError (Conflict) where the log has no such station.
StationWork stationWork(const log::Log& log, StationId id);

/// An athlete at a station.
struct AtStation {
    Stored<AthleteId, Athlete> athlete{};
    /// Of that day, whose conditions of this lift or these tests are the station's, or not written
    /// down yet: where the next set goes. Nothing: a new one is made.
    std::optional<SessionId> session{};
    std::vector<log::PlacedSet> sets{}; ///< of the lift on that day, in the order they were entered
    std::vector<Attempt> attempts{};    ///< of the station's tests, test by test
    std::vector<std::size_t> testOf{};  ///< which of the station's tests each attempt is of
    answers::LiftDue lift{};            ///< of a lift's station
    answers::TestsDue tests{};          ///< of a test's
    std::string notPossible{};          ///< why the lift, or every test, was not; empty: it is
    bool atLift = true;
    int done() const { return atLift ? lift.done : tests.done; }
    bool isDue() const { return atLift ? lift.isDue() : tests.isDue(); }
};
/// One athlete; unit: of the plates. Throws LogError.
AtStation atStation(const log::Log& log, const StationWork& work, AthleteId athlete, Date day,
                    MassUnit unit);

/// A test's value on an earlier day: what the athlete has to beat.
struct EarlierTest {
    Date date{};
    std::size_t test = 0; ///< of the station's
    BodySide side = BodySide::Both;
    double value = 0; ///< in the test's unit
    friend bool operator==(const EarlierTest&, const EarlierTest&) = default;
};
/// Of the station's tests before that day, the newest day first; days: how many at the most. Throws
/// LogError.
std::vector<EarlierTest> earlierTests(const log::Log& log, const StationWork& work,
                                      AthleteId athlete, Date day, std::size_t days);

/// Which of them had the last set; at a test's station nothing is known of it: nothing.
std::optional<std::size_t> lastToStepUp(const std::vector<AtStation>& athletes);

/// What a maximum is estimated at, where that has an interval.
std::optional<Mass> estimatedMaximum(const Answer<answers::Profile>& profile);
/// What a set of the lift moves beside what is added: of a lift that moves the body the athlete's
/// mass in the session that is known (null: none); else nothing.
Mass bodyMoved(const Lift& lift, const LiftSession* known);
/// What the bar takes of an estimate: of a lift that moves the body, less the athlete's mass in the
/// session that is known (null: none).
std::optional<Mass> addedOf(std::optional<Mass> estimate, const Lift& lift,
                            const LiftSession* known);
/// What of a lift was said to be not possible.
struct NotToday {
    std::vector<Mass> loads{};
    bool out = false; ///< all of it
};
NotToday notToday(const Battery& battery, LiftId lift);

/// How a lift's day stands: what was tried, with last time's ladder, estimate, ceiling and what
/// was not possible. today: the day's sets; last: the session before them, where there is one.
answers::AtLift liftDay(const log::Log& log, const Background& about,
                        const std::vector<log::PlacedSet>& today, const LiftSession* session,
                        const LiftSession* last, Date day);

} // namespace slopebook::questions
