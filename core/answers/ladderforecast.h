// SPDX-License-Identifier: GPL-3.0-or-later
// What a ladder of loads that nobody has lifted yet can be expected to show beside the profile's
// session: the inside of nexttest.h.
#pragma once

#include "core/answers/nexttest.h"
#include "core/stats/design.h"

#include <optional>
#include <span>
#include <vector>

namespace slopebook::answers {

stats::Spread spreadOf(std::span<const BuiltLoad> loads);

/// Everything that a ladder is judged with; holds on to both.
struct LadderJudge {
    const Profile& profile;
    const NextTestSettings& settings;
    bool byOneRm = true;
    double mvtVariance = 0;

    /// What steps are measured against, kg.
    double reference() const { return profile.oneRm ? profile.oneRm->estimate : profile.heaviest; }
    /// The criterion by which ladders of n are searched: half of the 1RM's interval, or the worst
    /// half-width of the lines alone at a check load; nothing where none can be judged.
    std::optional<stats::DesignCriterion> criterion(int n, bool forOneRm) const;
    LadderForecast forecast(LadderForecast::Kind kind, std::vector<BuiltLoad> loads) const;

private:
    double knownDf() const;
    std::optional<stats::ExpectedScatter> ownScatter(int n) const;
    std::optional<stats::ExpectedScatter> changeScatter(int n) const;
    double oneRm(const stats::Spread& x, const stats::ExpectedScatter& scatter) const;
    double worstChange(const stats::Spread& x, const stats::ExpectedScatter& scatter) const;
    void forecastMax(LadderForecast& ladder, const stats::Spread& x) const;
    void forecastChanges(LadderForecast& ladder, const stats::Spread& x) const;
};

} // namespace slopebook::answers
