// SPDX-License-Identifier: GPL-3.0-or-later
// What a question about a lift takes for one of its sides, as a log knows it.
#pragma once

#include "core/model/daystretch.h"
#include "core/model/ids.h"

#include <variant>

namespace slopebook::questions {

/// A session, or a training block or a stretch of days as a whole.
using LiftSide = std::variant<SessionId, BlockId, DayStretch>;

} // namespace slopebook::questions
