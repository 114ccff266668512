// SPDX-License-Identifier: GPL-3.0-or-later
// The answers as plain text for the terminal: aligned tables, units, the decimals that fit.
#pragma once

#include "app/commands/masses.h"
#include "core/answers/comparison.h"
#include "core/answers/followedseason.h"
#include "core/answers/noise.h"
#include "core/answers/sharedloads.h"
#include "core/questions/questions.h"

#include <span>
#include <string>
#include <vector>

namespace slopebook::app {

/// What was done in blocks, a line each, with a blank line before; empty where nothing is told.
std::string storiesText(std::span<const Block> blocks, const Masses& in);
/// which: a remark on the session, such as "latest"; may be empty.
std::string profileText(const log::Log& log, const questions::Background& about,
                        const answers::Profile& profile, const std::string& which,
                        const Masses& in);
std::string comparisonText(const log::Log& log, const questions::Background& about,
                           const answers::Comparison& comparison, const Masses& in);
/// Two days without a line to judge by: what was seen at the loads of both.
std::string sharedLoadsText(const questions::Background& about, const LiftSession& from,
                            const LiftSession& to, const NoAnswer& why,
                            const std::vector<answers::SharedLoadChange>& shared, const Masses& in);
/// felt: of its sessions (core/questions/felt.h). trends: also those within blocks.
std::string followText(const questions::Background& about, const answers::FollowedSeason& season,
                       const std::vector<std::vector<Effort>>& felt,
                       std::span<const Stored<BlockId, Block>> blocks, double level, bool trends,
                       const Masses& in);
std::string noiseText(const log::Log& log, const answers::LiftNoise& noise, const Masses& in);

} // namespace slopebook::app
