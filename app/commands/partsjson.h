// SPDX-License-Identifier: GPL-3.0-or-later
// What several answers have in common as JSON: noise, bend, a change that was read.
#pragma once

#include "app/commands/json.h"
#include "core/answers/comparison.h"
#include "core/model/people.h"

namespace slopebook::app {

/// How far a straight line may be off, kg; null where nothing is known of it.
void bendJson(Json& json, const stats::Interval* error, const answers::Bend& bend);
/// What moves a line from day to day and how much of that comes from where; null where nothing is
/// known.
void noiseJson(Json& json, const answers::DayNoise& noise);
/// Fields of a block's story: "ceiling", "trained", "sessions_a_week" (null or {"fewest","most"},
/// as planned) and "note".
void storyFields(Json& json, const Block& block);
/// What was different around a lift or a test on two days.
void conditionsJson(Json& json, const char* name,
                    std::span<const answers::ConditionChange> changes);
/// A change without a line: what was seen on both days.
void readJson(Json& json, const answers::ReadChange& read);
/// A change by the lines at a load.
void changeJson(Json& json, const answers::ChangeAt& at);
/// What would settle a reading; null where it is not unclear, or no smallest change is known.
void settleJson(Json& json, const std::optional<answers::RepeatsQuestion>& question);

} // namespace slopebook::app
