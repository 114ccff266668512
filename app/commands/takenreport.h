// SPDX-License-Identifier: GPL-3.0-or-later
// What was told when a log took what another or a store holds.
#pragma once

#include "app/commands/json.h"
#include "core/desks/merge.h"

#include <string>

namespace slopebook::app {

/// What was joined, brought back and renamed, and what is to be chosen: the first ten of each, a
/// line each.
std::string takenText(const desks::MergeReport& report);
/// "2 choices wait in the log; the window shows both sides." and a line's end; nothing for none.
std::string openText(std::size_t open);
/// The same in full, under "joined", "revived", "renamed", "to_choose".
void takenJson(Json& json, const desks::MergeReport& report);

} // namespace slopebook::app
