// SPDX-License-Identifier: GPL-3.0-or-later
// What a load followed from a session and one followed from a block have in common.
#pragma once

#include "core/answers/followedseason.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

/// What was seen at the load and what the session's line says, without a change.
Followed seenAndLine(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& session,
                     Mass load, const ComparisonSettings& settings, Mass plateStep);

/// What a session's device reads against the baseline's: its own study, else that of the settings;
/// nothing on one device.
std::optional<DeviceBias> biasAgainst(const LiftSession& baseline, const LiftSession& session,
                                      const ComparisonSettings& settings,
                                      const std::map<SessionId, DeviceBias>& biases);

bool holds(const std::vector<Note>& notes, Note::Kind kind);

/// Through the sessions that cover the load and stand beside others.
Answer<Trend> trendOf(const std::vector<Followed>& sessions, double level);

/// What the figure of a session at a load varies by; nothing without inference.
class VarianceAt {
public:
    VarianceAt(const Lift& lift, const Answer<Mvt>& mvt, Mass load,
               const ComparisonSettings& settings)
        : m_lift(lift), m_mvt(mvt), m_load(kilograms(load)), m_settings(settings) {}
    std::optional<double> operator()(const LiftSession& session) const;

private:
    const Lift& m_lift;
    const Answer<Mvt>& m_mvt;
    double m_load;
    const ComparisonSettings& m_settings;
};

/// Dunnett's quantile over all figures that are compared with one baseline, by what it and they
/// vary by; worked out once for each df and level.
CriticalOf manyLooks(const std::optional<double>& baseline, std::span<const double> others);

/// Of the sessions that are read against the baseline; those without inference are none.
std::vector<double> variancesOf(std::span<const LiftSession> sessions, const VarianceAt& variance,
                                const std::function<bool(const LiftSession&)>& isRead);

/// What the figures rest on; ofABlock: the baseline is a block, and has a figure.
std::vector<Note> followNotes(const Follow& follow, const ComparisonSettings& settings,
                              bool ofABlock);

} // namespace slopebook::answers
