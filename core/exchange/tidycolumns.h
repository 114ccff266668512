// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of tidy CSV and of the tables that go with it: one list for import and export.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

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
constexpr std::array<std::string_view, TidyCount> tidyColumns{
    "date",         "athlete", "lift",     "set",           "load_kg",        "rep",
    "velocity",     "session", "device",   "velocity_kind", "place",          "block",
    "body_mass_kg", "maximum", "excluded", "set_excluded",  "set_note",       "session_note",
    "repeat_of",    "surface", "footwear", "technique",     "not_comparable", "outcome",
    "reason",       "rpe"};
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
constexpr std::array<std::string_view, SessionCount> sessionColumns{
    "date", "athlete", "session", "body_mass_kg", "repeat_of", "session_note"};

enum AthleteColumn : std::size_t { AthleteName, AthleteNote, AthleteCount };
constexpr std::array<std::string_view, AthleteCount> athleteColumns{"athlete", "athlete_note"};

enum DeviceColumn : std::size_t { DeviceName, DeviceNote, DeviceCount };
constexpr std::array<std::string_view, DeviceCount> deviceColumns{"device", "device_note"};

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
constexpr std::array<std::string_view, BlockCount> blockColumns{"block",
                                                                "first_day",
                                                                "last_day",
                                                                "ceiling_kg",
                                                                "trained",
                                                                "sessions_a_week_fewest",
                                                                "sessions_a_week_most",
                                                                "block_note"};

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
constexpr std::array<std::string_view, LiftCount> liftColumns{
    "lift",   "point_rule", "velocity_kind", "ballistic",         "moves_body",      "mvt",
    "mvt_sd", "mvt_origin", "mvt_source",    "smallest_velocity", "smallest_1rm_kg", "lift_note"};

enum CheckLoadColumn : std::size_t { CheckAthlete, CheckLift, CheckLoad, CheckCount };
constexpr std::array<std::string_view, CheckCount> checkLoadColumns{"athlete", "lift",
                                                                    "check_load_kg"};

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
constexpr std::array<std::string_view, StationCount> stationColumns{
    "station", "lift",    "test",     "ladder_kg", "sets",           "rotates",     "device",
    "place",   "surface", "footwear", "technique", "not_comparable", "station_note"};

/// One row an athlete, in the order of their turns.
enum RosterColumn : std::size_t {
    RosterStation,
    RosterDate,
    RosterTurn,
    RosterAthlete,
    RosterCount
};
constexpr std::array<std::string_view, RosterCount> rosterColumns{"station", "date", "turn",
                                                                  "athlete"};

} // namespace slopebook::exchange
