// SPDX-License-Identifier: GPL-3.0-or-later
// What the season's two choosers hold.
#pragma once

#include "core/questions/followquestions.h"

#include <QString>

#include <utility>
#include <vector>

namespace slopebook::ui {

/// Check loads (true), then the loads lifted in most sessions.
std::vector<std::pair<Mass, bool>> loadsToFollow(const questions::Background& about);

/// A baseline in the list of them: "s12" a session, "b3" a block.
QString keyOf(const questions::Baseline& baseline);
questions::Baseline baselineFrom(const QString& key);

} // namespace slopebook::ui
