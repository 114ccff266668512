// SPDX-License-Identifier: GPL-3.0-or-later
// Every session's line as a row: what the table command prints and an export holds as
// estimates.csv. One list of columns for both. No Qt in here.
#pragma once

#include "core/exchange/tableout.h"
#include "core/model/progress.h"
#include "core/questions/questions.h"

#include <array>
#include <functional>

namespace slopebook::questions {

enum EstimateColumn : std::size_t {
    EstimateAthlete,
    EstimateLift,
    EstimateDate,
    EstimateSession,
    EstimateKind,
    EstimateBlock,
    EstimateDevice,
    EstimatePlace,
    EstimateSurface,
    EstimateFootwear,
    EstimateTechnique,
    EstimateNotComparable,
    EstimateBodyMass,
    EstimateN,
    EstimateDistinct,
    EstimateLightest,
    EstimateHeaviest,
    EstimateV0,
    EstimateV0Se,
    EstimateSlope,
    EstimateSlopeSe,
    EstimateResidualSd,
    EstimateDf,
    EstimateR2,
    EstimateL0,
    EstimateMvt,
    EstimateMvtSd,
    EstimateMvtSource,
    EstimateLevel,
    EstimateOneRm,
    EstimateOneRmLow,
    EstimateOneRmHigh,
    EstimateMvtLow,
    EstimateMvtHigh,
    EstimatePlan,
    EstimatePlanLow,
    EstimatePlanHigh,
    EstimateReach,
    EstimateMeasured,
    EstimateLifted,
    EstimateNotLifted,
    EstimateReason,
    EstimateCount
};
extern const exchange::TableSpec estimatesTable;

using EstimateRow = std::array<exchange::Cell, EstimateCount>;

/// A row for each session and lift that the filter lets through, by athlete, lift and day; figures
/// are those of profileOf() with what the whole log says beside (within()). Throws LogError;
/// Cancelled where progress says to stop.
void eachEstimate(const log::Log& log, const log::Filter& filter, const AskSettings& settings,
                  const std::function<void(const EstimateRow&)>& visit,
                  const Progress& progress = {});

} // namespace slopebook::questions
