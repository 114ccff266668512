// SPDX-License-Identifier: GPL-3.0-or-later
// Names of a log that are spellings of one another: from before names were compared by their keys.
#pragma once

#include "core/log/log.h"
#include "core/model/words.h"

#include <vector>

namespace slopebook::exchange {

/// A sentence for each name that several athletes, lifts, devices or tests have, in any spelling.
/// Nothing is put together unasked: whose sessions they are is the coach's to say.
std::vector<Words> twins(const log::Log& log);

} // namespace slopebook::exchange
