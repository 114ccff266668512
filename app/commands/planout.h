// SPDX-License-Identifier: GPL-3.0-or-later
// A plan as plain text and as JSON.
#pragma once

#include "app/commands/json.h"
#include "core/answers/history.h"
#include "core/answers/squadrelation.h"
#include "core/questions/planquestions.h"

#include <optional>
#include <string>
#include <vector>

namespace slopebook::app {

/// The plan and what was asked for beside it.
struct PlanOut {
    std::string athlete, lift;
    answers::Plan plan;
    std::vector<std::string> barsLeftOut = {}; ///< they do not go with the lift
    std::optional<Answer<answers::SquadRelation>> squad = {};
    std::optional<answers::PublishedRelation> published = {};
    std::optional<Answer<answers::History>> history = {};
    std::optional<Answer<answers::NextTest>> next = {};
    std::vector<questions::SettledAt> settled = {};
    std::optional<questions::SettledMax> settledMax = {};

    /// Shares by the relation that was asked for, one a load; empty without one.
    std::vector<answers::RelatedLoad> related() const;
    /// Its name, or empty.
    Words relationName() const;
};

std::string planText(const PlanOut& out);
void planJson(Json& json, const PlanOut& out);

} // namespace slopebook::app
