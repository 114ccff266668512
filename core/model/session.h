// SPDX-License-Identifier: GPL-3.0-or-later
// One athlete's test day as the coach writes it down, and the one rule that says what of it counts.
#pragma once

#include "core/model/conditions.h"
#include "core/model/date.h"
#include "core/model/ids.h"
#include "core/model/lift.h"
#include "core/model/mass.h"
#include "core/model/words.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook {

/// One repetition: its velocity in m/s, of the lift's own kind.
struct Rep {
    double velocity = 0;
    std::string excluded{}; ///< the reason; empty when the rep counts
    friend bool operator==(const Rep&, const Rep&) = default;
};

/// Whether a load went up.
enum class Outcome { Lifted, NotLifted };
/// "lifted", "not lifted": the words of files and JSON.
std::string_view word(Outcome outcome);
std::optional<Outcome> outcomeFromWord(std::string_view word);

/// A rating of perceived effort (RPE), from 1 to 10 in halves.
struct Effort {
    int halves = 2; ///< 2 .. 20
    double value() const { return halves / 2.0; }
    friend auto operator<=>(const Effort&, const Effort&) = default;
};
/// Nothing for what is not a half between 1 and 10.
std::optional<Effort> effort(double value);

/// One load lifted for one or more reps, or tried and not lifted (then it has no reps, is on no
/// line, and bounds the day's maximum from above).
struct Set {
    Mass load{};
    bool trueMaximum = false; ///< a true maximum (1RM): lifted, or with NotLifted tried
    Outcome outcome = Outcome::Lifted;
    std::string reason{};           ///< why it was not lifted, if the coach says; else empty
    std::optional<Effort> effort{}; ///< how hard it was
    std::string excluded{};         ///< the reason; empty when the set counts
    std::string note{};
    std::vector<Rep> reps{};
    friend bool operator==(const Set&, const Set&) = default;
};

/// What a session is, without its sets and without the conditions of its lifts and tests. An
/// athlete's sessions of one day are numbered 1, 2, ...
struct SessionHead {
    AthleteId athlete{};
    Date date{};
    int ordinal = 1;
    std::optional<Mass> bodyMass{};
    std::optional<SessionId>
        repeatOf{}; ///< a repeat test of that session: same conditions, within days
    std::string note{};
    friend bool operator==(const SessionHead&, const SessionHead&) = default;
};

/// Under what a lift of a session was measured.
struct LiftConditions {
    LiftId lift{};
    Conditions conditions{};
    friend bool operator==(const LiftConditions&, const LiftConditions&) = default;
};

/// The set's point: velocity of its fastest counting rep, or the mean of its counting reps.
/// Nothing when the set is excluded or not lifted, or no rep counts. The only rule that decides
/// what counts: chart, table, page, statistics and export all ask it.
std::optional<double> pointVelocity(const Set& set, PointRule rule);

/// One counting set as statistics see it.
struct Point {
    double load = 0;     ///< kg; with the body mass where the lift moves the body
    double velocity = 0; ///< m/s
    int set = 0;         ///< the set's order in its session and lift, from 1
    friend bool operator==(const Point&, const Point&) = default;
};

/// One lift of one session: what the questions of core/answers are asked of. Where the lift moves
/// the body, every load of it is the added load and the session's body mass.
struct LiftSession {
    SessionId session{};
    AthleteId athlete{};
    LiftId lift{};
    Date date{};
    int ordinal = 1; ///< among the athlete's sessions that hold this lift on that day: DATE#2 is 2
    Conditions conditions{};
    std::optional<Mass> bodyMass{};
    bool lacksBodyMass =
        false; ///< the lift moves the body, and without its mass there are no loads
    std::optional<SessionId> repeatOf{};
    std::vector<Point> points{}; ///< counting sets, in order of entry
    std::vector<Point>
        maxima{}; ///< those of them flagged as true maxima and made of one counting rep
    std::optional<Mass> measuredOneRm{}; ///< heaviest counting true maximum
    // The bracket of the day's maximum.
    std::optional<Mass> heaviestLifted{}; ///< also where its velocity was excluded
    std::optional<Mass> lightestNotLifted{};
    friend bool operator==(const LiftSession&, const LiftSession&) = default;
};

/// "2026-03-14", or "2026-03-14#2" for the second of a day.
std::string dateKey(Date date, int ordinal);
/// The same in words.
Words sayDay(Date date, int ordinal);

/// The velocity that a set may hold: 0 < v < 10 m/s is stored; from 4 m/s on it is flagged for a
/// look.
constexpr double storableVelocityLimit = 10.0;
constexpr double plausibleVelocityLimit = 4.0;
/// The heaviest load that can be stored, and the one from which on it is flagged for a look.
constexpr Mass storableLoadLimit{2'000'000};
constexpr Mass plausibleLoadLimit{600'000};

} // namespace slopebook
