// SPDX-License-Identifier: GPL-3.0-or-later
// What the season's chooser of loads holds.
#pragma once

#include "core/questions/followquestions.h"

#include <utility>
#include <vector>

namespace slopebook::ui {

/// Check loads (true), then the loads lifted in most sessions.
std::vector<std::pair<Mass, bool>> loadsToFollow(const questions::Background& about);

} // namespace slopebook::ui
