// SPDX-License-Identifier: GPL-3.0-or-later
// The questions as they are asked of a log: gathers what an answer needs (sessions, thresholds,
// noise, smallest changes, check loads) and hands it to core/answers, so that the window, the page
// and the commands ask alike. No Qt in here.
#pragma once

#include "core/answers/checkloads.h"
#include "core/answers/comparison.h"
#include "core/answers/noise.h"
#include "core/log/log.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::questions {

/// What a coach may set beside the log: nothing here is kept in it.
struct AskSettings {
    double level = 0.95;
    stats::Variances variances = stats::Variances::Pooled;
    Mass plateStep{2500}; ///< smallest plate pair: a pair of 1.25 kg
    /// From block to block read as the season reads it, all its blocks at once; else by itself.
    bool allBlocks = false;
    friend bool operator==(const AskSettings&, const AskSettings&) = default;
};

/// An athlete and lift with all their sessions and the threshold that estimates use.
struct Background {
    Stored<AthleteId, Athlete> athlete;
    Stored<LiftId, Lift> lift;
    std::vector<LiftSession> sessions; ///< by date and ordinal
    Answer<Mvt> mvt = NoAnswer{};
    std::vector<Mass> checkLoads; ///< ascending
    answers::Bend bend{};         ///< as the athlete may bend, by own full ladders where there are
    /// Day-to-day noise of the published figure, the athlete's own repeat tests and the others' of
    /// the log, any device; of one device: within() of liftcontext.h.
    answers::DayNoise dayNoise{};
    /// From the log's pairs of an estimate and a maximum lifted: asked by within() alone.
    std::optional<answers::Calibration> calibration{};
    answers::Beyond beyond() const { return {dayNoise, bend, calibration}; }
};

/// The published day-to-day SD of the lift and its velocity kind, and its source.
answers::PublishedNoise publishedDayNoise(const Lift& lift);

/// Throws LogError (Conflict) where the log has no such athlete or lift.
Background background(const log::Log& log, AthleteId athlete, LiftId lift);
/// The same without dayNoise, for lines and estimates, whose own intervals need none: what
/// everybody's repeat tests say is not read. Throws likewise.
Background withoutNoise(const log::Log& log, AthleteId athlete, LiftId lift);
/// Adds what was left out. Throws LogError.
void addDayNoise(const log::Log& log, Background& about);

/// Goes through the log's athletes and lifts that have sessions, by name; one at a time is held.
void eachBackground(const log::Log& log, const log::Filter& filter,
                    const std::function<void(const Background&)>& visit);

/// The session that a key names: "2026-03-14", or "2026-03-14#2" for the second of that day that
/// holds the lift. NoSuchSession with the dates there are; BadInput where the key is none.
Answer<LiftSession> sessionAt(std::span<const LiftSession> sessions, std::string_view key);
/// The same by the session's id.
Answer<LiftSession> sessionOf(std::span<const LiftSession> sessions, SessionId id);

/// The day-to-day SD that comparisons of this athlete and lift use, from repeat tests on that
/// device (no device named: on any): the athlete's own, else the log's, else published, else none.
answers::DayNoise dayNoiseOf(const log::Log& log, const Background& about,
                             std::optional<DeviceId> device);

/// The settings with which two sessions are compared: check loads, day-to-day noise, smallest
/// changes (the squad's, the coach's, published), the bias between their devices where the log
/// holds days with both; change a field before asking to ask
/// otherwise.
answers::ComparisonSettings comparisonSettings(const log::Log& log, const Background& about,
                                               const LiftSession& from, const LiftSession& to,
                                               const AskSettings& settings = {});

Answer<answers::Profile> profileOf(const Background& about, const LiftSession& session,
                                   const AskSettings& settings = {});
Answer<answers::Profile> profileOf(const log::Log& log, AthleteId athlete, LiftId lift,
                                   SessionId session, const AskSettings& settings = {});

Answer<answers::Comparison> comparisonOf(const log::Log& log, const Background& about,
                                         const LiftSession& from, const LiftSession& to,
                                         const AskSettings& settings = {});
Answer<answers::Comparison> comparisonOf(const log::Log& log, AthleteId athlete, LiftId lift,
                                         SessionId from, SessionId to,
                                         const AskSettings& settings = {});

/// A load through the season; baseline: that session, or the first that has a line.
Answer<answers::Follow> followOf(const log::Log& log, const Background& about, Mass load,
                                 std::optional<SessionId> baseline = {},
                                 const AskSettings& settings = {});
Answer<answers::Follow> followOf(const log::Log& log, AthleteId athlete, LiftId lift, Mass load,
                                 std::optional<SessionId> baseline = {},
                                 const AskSettings& settings = {});

/// The block that a day lies in, the latest begun where several do; nothing between blocks.
std::optional<Block> blockOn(std::span<const Stored<BlockId, Block>> blocks, Date date);

} // namespace slopebook::questions
