// SPDX-License-Identifier: GPL-3.0-or-later
// What all athletes' other tests say together, kept beside the log: after a write only the athletes
// whose sessions it changed are read anew.
#pragma once

#include "core/answers/squadtests.h"
#include "core/log/log.h"

#include <span>

namespace slopebook::questions {

/// Of all sessions with an attempt at one of the kinds, as log::scanTested goes through them; of no
/// other kind may it be asked. Good until the next call. Throws LogError.
const answers::SquadTests& squadTests(const log::Log& log, std::span<const TestKindId> kinds);
/// Where that threw: what stands before the damage that it met.
const answers::SquadTests& squadTestsBefore(const log::Log& log);

} // namespace slopebook::questions
