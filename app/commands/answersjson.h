// SPDX-License-Identifier: GPL-3.0-or-later
// The answers as JSON: the keys of commands.md are a contract, in their order.
#pragma once

#include "app/commands/json.h"
#include "core/answers/comparison.h"
#include "core/answers/followedseason.h"
#include "core/answers/noise.h"
#include "core/answers/sharedloads.h"
#include "core/questions/questions.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::app {

void profileJson(Json& json, const log::Log& log, const questions::Background& about,
                 const answers::Profile& profile);
void comparisonJson(Json& json, const log::Log& log, const questions::Background& about,
                    const answers::Comparison& comparison);
/// {"reason", "shared_loads"}: two days without a line to judge by.
void sharedLoadsJson(Json& json, const questions::Background& about, const LiftSession& from,
                     const LiftSession& to, const NoAnswer& why,
                     const std::vector<answers::SharedLoadChange>& shared);
/// felt: of its sessions (core/questions/felt.h).
void followJson(Json& json, const questions::Background& about,
                const answers::FollowedSeason& season, const std::vector<std::vector<Effort>>& felt,
                std::span<const Stored<BlockId, Block>> blocks, double level);
/// {"estimate", ...}, or {"reason"} where there is no 1RM.
void oneRmJson(Json& json, const Answer<answers::OneRm>& oneRm, double level,
               const std::optional<Mass>& measured);
void noiseJson(Json& json, const answers::LiftNoise& noise,
               const std::map<AthleteId, std::string>& athletes);
void dayNoiseJson(Json& json, const answers::DayNoise& noise);

} // namespace slopebook::app
