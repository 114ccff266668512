// SPDX-License-Identifier: GPL-3.0-or-later
// Two devices on the same sets: how far they agree, and what one reads against the other.
#pragma once

#include "core/answers/note.h"
#include "core/model/answer.h"
#include "core/model/session.h"
#include "core/stats/limits.h"
#include "core/stats/repeats.h"
#include "core/stats/twolines.h"

#include <span>
#include <utility>
#include <vector>

namespace slopebook::answers {

/// One athlete's day with a lift measured by two devices at once: a session for each device.
struct DevicePair {
    LiftSession first = {}, second = {};
};

/// The sessions of one list that measure the same sets: one athlete, lift and day, each on its
/// device, neither marked as a repeat test of the other. A device's sessions of a day are taken in
/// their order. Two sessions that share no load are no pair.
std::vector<DevicePair> devicePairs(std::span<const LiftSession> sessions, DeviceId first,
                                    DeviceId second);

/// One set as both devices saw it.
struct PairedSet {
    AthleteId athlete = {};
    Date date = {};
    double load = 0; ///< kg
    double first = 0, second = 0;
    double mean() const { return (first + second) / 2; }
    double difference() const { return first - second; }
    friend bool operator==(const PairedSet&, const PairedSet&) = default;
};

/// Sets pair by their order and load; a load that each device saw once pairs whatever its order.
/// What is left pairs with nothing: a wrong pair would be worse than none.
std::vector<PairedSet> pairedSets(const DevicePair& pair);

struct AgreementStudy {
    DeviceId first = {}, second = {};
    std::vector<DevicePair> sessions = {};
    std::vector<PairedSet> sets = {};
    int unpaired = 0; ///< sets of either device without a partner
    int athletes = 0;
    double level = 0.95;
    /// Differences first - second, m/s. Where sets are grouped, SD, limits and all intervals count
    /// groups.
    stats::Agreement figures = {};
    /// Whose sets resemble each other: an athlete's where three athletes or more were measured,
    /// else a session's where there are three or more of them, else each set counts for itself.
    enum class Grouped { No, ByAthlete, BySession };
    Grouped grouped = Grouped::No;
    std::optional<stats::GroupedLimits> groups = {}; ///< where grouped
    /// Of the bias: from the groups' sums (cluster-robust) where that makes the wider interval,
    /// else sd^2 / n.
    stats::Variance biasVariance = {};
    std::vector<Note> notes = {};
};

/// The pairs that hold none of these sessions: a bias that is taken off a comparison must not come
/// from what it corrects.
std::vector<DevicePair> withoutSessions(std::vector<DevicePair> pairs,
                                        std::span<const SessionId> sessions);

/// Agreement of two devices on one lift. Refused with the reason: no day with both, under three
/// paired sets. Bland and Altman 1986, with several sets of one athlete as in 1999 and 2007
/// (stats::groupedLimits); least products: see stats::agreement.
Answer<AgreementStudy> agreementStudy(DeviceId first, DeviceId second,
                                      std::span<const DevicePair> pairs, double level = 0.95);

/// What the later device reads against the earlier one, for ComparisonSettings::deviceBias.
/// Nothing where the study is of other devices.
std::optional<std::pair<double, stats::Variance>>
biasOf(const AgreementStudy& study, std::optional<DeviceId> earlier, std::optional<DeviceId> later);

} // namespace slopebook::answers
