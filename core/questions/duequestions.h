// SPDX-License-Identifier: GPL-3.0-or-later
// Who is due for what, as it is asked of a log. No Qt in here.
#pragma once

#include "core/answers/squaddue.h"
#include "core/log/log.h"

#include <optional>

namespace slopebook::questions {

/// Of every lift and test, or of one lift. Throws LogError.
answers::SquadDue squadDueOn(const log::Log& log, Date today, std::optional<LiftId> lift = {},
                             int weeks = answers::DueQuestion{}.weeks);

} // namespace slopebook::questions
