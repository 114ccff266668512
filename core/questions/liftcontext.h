// SPDX-License-Identifier: GPL-3.0-or-later
// What all athletes' sessions of one lift say together: repeat tests, the squad's spread, days with
// two devices. Gathered in one scan, then asked as often as is wanted.
#pragma once

#include "core/answers/agreement.h"
#include "core/answers/sharedloads.h"
#include "core/answers/smallest.h"
#include "core/answers/squad.h"
#include "core/model/progress.h"
#include "core/questions/questions.h"

#include <map>
#include <utility>
#include <vector>

namespace slopebook::questions {

/// A day on which an athlete was tested in the lift.
struct TestDay {
    AthleteId athlete{};
    Date date{};
    friend auto operator<=>(const TestDay&, const TestDay&) = default;
};

struct LiftContext {
    Stored<LiftId, Lift> lift{};
    std::vector<answers::RepeatPair> repeats{};      ///< of all athletes
    std::vector<Stored<DeviceId, Device>> devices{}; ///< of the log, by name
    std::vector<LiftSession> twoDevices{};           ///< of days that hold more than one device
    std::vector<TestDay> days{};       ///< of all athletes, each once, by athlete and date
    std::vector<AthleteId> athletes{}; ///< who have a session of the lift at all, by their keys
    /// What noiseOf() was asked so far.
    mutable std::map<std::optional<DeviceId>, Answer<answers::LiftNoise>> noise{};
    /// What repeat tests add up to, for each device and (no device) any; one athlete's are taken
    /// from it.
    std::map<std::optional<DeviceId>, stats::RepeatSums> sums{};
    std::vector<answers::EstimatePair> estimates{}; ///< and maxima lifted, of all athletes
    answers::SmallestChanges smallest{};            ///< without what is a share of an earlier 1RM
};

/// Holds one athlete's sessions at a time. Throws LogError (Conflict) where the log has no such
/// lift.
LiftContext liftContext(const log::Log& log, LiftId lift);

/// The lift's noise from repeat tests on that device, or (none named) on any; worked out once. Not
/// from two threads at once.
const Answer<answers::LiftNoise>& noiseOf(const LiftContext& context,
                                          std::optional<DeviceId> device);

/// The day-to-day SD that comparisons of this athlete use, from repeat tests on that device (none
/// named: on any): the athlete's own, else the log's, else published, else none.
answers::DayNoise dayNoiseOf(const LiftContext& context, const Background& about,
                             std::optional<DeviceId> device);

/// The athlete with what the whole log says beside: the noise of that device (none named: any) and
/// the calibration of estimates. For profileOf().
Background within(const LiftContext& context, Background about, std::optional<DeviceId> device);

/// The sets of a session's lift, in their order. Throws LogError.
std::vector<Set> setsOf(const log::Log& log, const LiftSession& session);

/// The change at each load lifted on both days where comparisonOf() has no line to judge by.
Answer<std::vector<answers::SharedLoadChange>>
sharedLoadsOf(const log::Log& log, const LiftContext& context, const Background& about,
              const LiftSession& from, const LiftSession& to, const AskSettings& settings = {});
/// The two sessions made fair (core/answers/fairreps.h), by the sets of that log; kept no longer
/// than it.
answers::AsManyReps asManyReps(const log::Log& log, const Lift& lift);

/// What the device of a session reads against that of the reference, by what else the log holds of
/// both; nothing where no study of them is there, or it is one device.
std::optional<answers::DeviceBias> deviceBiasOf(const LiftContext& context,
                                                const LiftSession& reference,
                                                const LiftSession& session, double level);
/// The same of every session on another device than the baseline's.
std::map<SessionId, answers::DeviceBias> biasesAgainst(const LiftContext& context,
                                                       const LiftSession& baseline,
                                                       std::span<const LiftSession> sessions,
                                                       double level);

/// The noise of one lift as measured by one device, of all athletes or of one.
struct NoiseGroup {
    Lift lift{};
    std::optional<DeviceId> device{}; ///< absent: sessions that name none
    std::string deviceName{};
    std::string athlete{}; ///< empty: all
    Answer<answers::LiftNoise> noise = NoAnswer{};
    answers::DayNoise inUse{}; ///< what readings use
};

/// One group for each device with repeat tests of the lift, then one for the athlete on each where
/// there are tests of their own; where nobody was tested twice, one that says so.
std::vector<NoiseGroup> noiseGroups(const log::Log& log, LiftId lift,
                                    std::optional<AthleteId> athlete = {}, double level = 0.95);
std::vector<NoiseGroup> noiseGroups(const log::Log& log, const LiftContext& context,
                                    std::optional<AthleteId> athlete, double level = 0.95);

/// Pairs of devices that measured the same sets of the lift, as their ids order them.
std::vector<std::pair<DeviceId, DeviceId>> devicesCompared(const LiftContext& context);
Answer<answers::AgreementStudy> agreementOf(const LiftContext& context, DeviceId first,
                                            DeviceId second, double level = 0.95);
Answer<answers::AgreementStudy> agreementOf(const log::Log& log, LiftId lift, DeviceId first,
                                            DeviceId second, double level = 0.95);

/// As comparisonSettings() of questions.h, without going through the log.
answers::ComparisonSettings comparisonSettings(const LiftContext& context, const Background& about,
                                               const LiftSession& from, const LiftSession& to,
                                               const AskSettings& settings = {});

/// As those of questions.h, likewise.
Answer<answers::Comparison> comparisonOf(const log::Log& log, const LiftContext& context,
                                         const Background& about, const LiftSession& from,
                                         const LiftSession& to, const AskSettings& settings = {});
Answer<answers::Follow> followOf(const log::Log& log, const LiftContext& context,
                                 const Background& about, Mass load,
                                 std::optional<SessionId> baseline = {},
                                 const AskSettings& settings = {});

/// All athletes that have sessions of the lift; of a block or a stretch of days all their sessions
/// there are made one. loads: those asked of everybody; empty: each athlete's check loads.
/// Cancelled where progress says to stop.
Answer<answers::Squad> squadOf(const log::Log& log, LiftId lift, const answers::Period& from,
                               const answers::Period& to, const std::vector<Mass>& loads = {},
                               const AskSettings& settings = {}, const Progress& progress = {});
Answer<answers::Squad> squadOf(const log::Log& log, const LiftContext& context,
                               const answers::Period& from, const answers::Period& to,
                               const std::vector<Mass>& loads = {},
                               const AskSettings& settings = {}, const Progress& progress = {});

} // namespace slopebook::questions
