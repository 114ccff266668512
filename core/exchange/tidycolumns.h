// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of tidy CSV and of the tables that go with it: one list for import and export.
#pragma once

#include "core/exchange/columnspec.h"

namespace slopebook::exchange {

/// One row a rep (commands.md). The first tidyRequired must be there.
enum Tidy : std::size_t {
    TidyDate,
    TidyAthlete,
    TidyLift,
    TidySet,
    TidyLoad,
    TidyRep,
    TidyVelocity,
    TidySession, ///< which of the athlete's sessions of that day; 1 where absent
    TidyDevice,
    TidyKind,
    TidySite,
    TidyBlock,
    TidyBodyMass,
    TidyMaximum,
    TidyExcluded,    ///< why the rep does not count
    TidySetExcluded, ///< why the whole set does not count
    TidyNote,        ///< the set's; files from before call it note
    TidySessionNote,
    TidyRepeatOf, ///< day of the session that this one repeats: 2026-03-14, or 2026-03-14#2
    TidySurface,  ///< this and what follows, with device and place: of the lift in that session
    TidyFootwear,
    TidyTechnique,
    TidyNotComparable, ///< why it stands beside no other day of the lift
    TidyOutcome,       ///< lifted, not lifted, not possible; nothing: lifted
    TidyReason,        ///< of what was not lifted or not possible
    TidyRpe,
    TidyCount
};
constexpr std::size_t tidyRequired = 7;
inline constexpr std::array<ColumnSpec, TidyCount> tidySpec{
    dayColumn("date", "day of the session").needed(),
    textColumn("athlete", "whose it is").needed(),
    textColumn("lift", "which lift").needed(),
    countColumn("set", "the set's number in its session and lift; empty: conditions of a lift "
                       "without sets, or a lift or load that was not possible"),
    massColumn("load_kg", "load; of a lift that moves the body, without the body mass"),
    countColumn("rep", "the rep's number in its set; empty: a set without reps"),
    speedColumn("velocity", "speed of the bar in that rep, of the lift's velocity kind"),
    countColumn("session", "which of the athlete's sessions of that day"),
    textColumn("device", "what the speed was measured with"),
    textColumn("velocity_kind", "which speed of a rep", "mean|propulsive|peak"),
    textColumn("place", "where it was measured"),
    textColumn("block", "training block that the day lies in"),
    massColumn("body_mass_kg", "body mass in that session"),
    yesColumn("maximum", "1: the set was a true maximum (1RM)"),
    textColumn("excluded", "why the rep does not count; empty: it counts"),
    textColumn("set_excluded", "why the whole set does not count; empty: it counts"),
    textColumn("set_note", "note on the set"),
    textColumn("session_note", "note on the session"),
    textColumn("repeat_of", "the session that this one repeats: its day, with #2 where it is the "
                            "second of that day"),
    textColumn("surface", "surface it was done on"),
    textColumn("footwear", "footwear it was done in"),
    textColumn("technique", "technique of the lift in that session"),
    textColumn("not_comparable", "why it stands beside no other day of the lift; empty: it may"),
    textColumn("outcome", "whether the load went up; empty: lifted",
               "lifted|not lifted|not possible"),
    textColumn("reason", "why it was not lifted or not possible"),
    ColumnSpec{.name = "rpe",
               .holds = Holds::Number,
               .unit = "RPE 1 to 10",
               .meaning = "perceived effort of the set, in halves",
               .least = 1,
               .most = 10}};
inline constexpr auto tidyColumns = namesOf(tidySpec);
/// What files from before call set_note.
constexpr std::string_view oldSetNote = "note";

/// Sessions without their sets: those that hold none, and what a row of a rep does not say.
enum SessionColumn : std::size_t {
    SessionDate,
    SessionAthlete,
    SessionNumber,
    SessionBodyMass,
    SessionRepeatOf,
    SessionNote,
    SessionCount
};
constexpr std::size_t sessionRequired = 3;
inline constexpr std::array<ColumnSpec, SessionCount> sessionSpec{
    dayColumn("date", "day of the session").needed(),
    textColumn("athlete", "whose it is").needed(),
    countColumn("session", "which of the athlete's sessions of that day").needed(),
    massColumn("body_mass_kg", "body mass in that session"),
    textColumn("repeat_of", "the session that this one repeats: its day, with #2 where it is the "
                            "second of that day"),
    textColumn("session_note", "note on the session")};
inline constexpr auto sessionColumns = namesOf(sessionSpec);

enum AthleteColumn : std::size_t { AthleteName, AthleteNote, AthleteCount };
inline constexpr std::array<ColumnSpec, AthleteCount> athleteSpec{
    textColumn("athlete", "name").needed(), textColumn("athlete_note", "note on the athlete")};
inline constexpr auto athleteColumns = namesOf(athleteSpec);

enum DeviceColumn : std::size_t { DeviceName, DeviceNote, DeviceCount };
inline constexpr std::array<ColumnSpec, DeviceCount> deviceSpec{
    textColumn("device", "name").needed(), textColumn("device_note", "note on the device")};
inline constexpr auto deviceColumns = namesOf(deviceSpec);

enum BlockColumn : std::size_t {
    BlockName,
    BlockFirst,
    BlockLast,
    BlockCeiling,
    BlockTrained,
    BlockFewest, ///< sessions a week, as planned: two numbers, which no spreadsheet takes for a day
    BlockMost,   ///< nothing: as many as the fewest
    BlockNote,
    BlockCount
};
constexpr std::size_t blockRequired = 3;
inline constexpr std::array<ColumnSpec, BlockCount> blockSpec{
    textColumn("block", "name of the training block").needed(),
    dayColumn("first_day", "its first day").needed(),
    dayColumn("last_day", "its last day, which belongs to it").needed(),
    massColumn("ceiling_kg", "the heaviest load that was at hand"),
    textColumn("trained", "what was done in it, in the coach's words"),
    ColumnSpec{.name = "sessions_a_week_fewest",
               .holds = Holds::Number,
               .unit = "1/week",
               .meaning = "sessions a week as planned, the fewest",
               .least = 0.5,
               .most = 21},
    ColumnSpec{.name = "sessions_a_week_most",
               .holds = Holds::Number,
               .unit = "1/week",
               .meaning = "sessions a week as planned, the most",
               .least = 0.5,
               .most = 21},
    textColumn("block_note", "note on the block")};
inline constexpr auto blockColumns = namesOf(blockSpec);

enum LiftColumn : std::size_t {
    LiftName,
    LiftPointRule,
    LiftKind,
    LiftBallistic,
    LiftMovesBody,
    LiftMvt,
    LiftMvtSd,
    LiftMvtOrigin,
    LiftMvtSource,
    LiftSmallestVelocity,
    LiftSmallestOneRm,
    LiftNote,
    LiftCount
};
constexpr std::size_t liftRequired = 2;
inline constexpr std::array<ColumnSpec, LiftCount> liftSpec{
    textColumn("lift", "name").needed(),
    textColumn("point_rule", "which reps make a set's point", "fastest|mean").needed(),
    textColumn("velocity_kind", "which speed of a rep is measured", "mean|propulsive|peak"),
    yesColumn("ballistic", "1: thrown or jumped, so that there is no 1RM"),
    yesColumn("moves_body", "1: the load of its line is the load and the body mass"),
    speedColumn("mvt", "minimal-velocity threshold: the speed of a 1RM"),
    speedColumn("mvt_sd", "standard deviation of it between people"),
    textColumn("mvt_origin", "where it comes from", "coach|published"),
    textColumn("mvt_source", "source of it, in words"),
    speedColumn("smallest_velocity", "smallest change of speed that matters, as the coach says"),
    massColumn("smallest_1rm_kg", "smallest change of the 1RM that matters, as the coach says"),
    textColumn("lift_note", "note on the lift")};
inline constexpr auto liftColumns = namesOf(liftSpec);

enum CheckLoadColumn : std::size_t { CheckAthlete, CheckLift, CheckLoad, CheckCount };
inline constexpr std::array<ColumnSpec, CheckCount> checkLoadSpec{
    textColumn("athlete", "whose it is").needed(), textColumn("lift", "of which lift").needed(),
    massColumn("check_load_kg", "a fixed load that is followed over the season").needed()};
inline constexpr auto checkLoadColumns = namesOf(checkLoadSpec);

/// One row a station, and one more for each further test that is done at it.
enum StationColumn : std::size_t {
    StationName,
    StationLift,
    StationTest,
    StationLadder, ///< "40 60 80"
    StationSets,
    StationRotates,
    StationDevice,
    StationSite,
    StationSurface,
    StationFootwear,
    StationTechnique,
    StationNotComparable,
    StationNote,
    StationCount
};
constexpr std::size_t stationRequired = 3;
inline constexpr std::array<ColumnSpec, StationCount> stationSpec{
    textColumn("station", "name").needed(),
    textColumn("lift", "the lift that is done there"),
    textColumn("test", "a test that is done there; one row more for each further one"),
    ColumnSpec{.name = "ladder_kg",
               .unit = "kg",
               .meaning = "loads from light to heavy, with blanks between"},
    countColumn("sets", "sets of each athlete"),
    yesColumn("rotates", "1: athletes take turns set by set"),
    textColumn("device", "what is measured with there"),
    textColumn("place", "where it stands"),
    textColumn("surface", "its surface"),
    textColumn("footwear", "footwear used there"),
    textColumn("technique", "technique used there"),
    textColumn("not_comparable", "why what is done there stands beside no other day"),
    textColumn("station_note", "note on the station")};
inline constexpr auto stationColumns = namesOf(stationSpec);

/// One row an athlete, in the order of their turns.
enum RosterColumn : std::size_t {
    RosterStation,
    RosterDate,
    RosterTurn,
    RosterAthlete,
    RosterCount
};
inline constexpr std::array<ColumnSpec, RosterCount> rosterSpec{
    textColumn("station", "which station").needed(), dayColumn("date", "on which day").needed(),
    countColumn("turn", "place in the order of turns").needed(),
    textColumn("athlete", "whose turn it is").needed()};
inline constexpr auto rosterColumns = namesOf(rosterSpec);

/// The points that lines are fitted to: derived, and never read.
enum PointColumn : std::size_t {
    PointDate,
    PointAthlete,
    PointLift,
    PointSession,
    PointSet,
    PointLoad,
    PointVelocity,
    PointLineLoad,
    PointCount
};
inline constexpr std::array<ColumnSpec, PointCount> pointSpec{
    dayColumn("date", "day of the session").needed(),
    textColumn("athlete", "whose it is").needed(),
    textColumn("lift", "which lift").needed(),
    countColumn("session", "which of the athlete's sessions of that day").needed(),
    countColumn("set", "the set's number in its session and lift").needed(),
    massColumn("load_kg", "load; of a lift that moves the body, without the body mass").needed(),
    speedColumn("point_velocity", "speed of the point: of the set's fastest counting rep, or the "
                                  "mean of its counting reps, by the lift's point rule")
        .needed(),
    figureColumn("line_load_kg", "kg",
                 "load that the line has it at: with the body mass where the lift moves the body; "
                 "empty: that mass is not known")};

} // namespace slopebook::exchange
