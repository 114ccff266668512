// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps a log that is open for writing from being written to until it is known to be sound.
#pragma once

#include "core/log/log.h"

#include <functional>

namespace slopebook::log {

/// The next write first calls until, which waits for what is to be known: where it returns, this
/// write and all later ones go on; what it throws the write throws, having changed nothing, and so
/// does every later one that it throws for again.
void holdWrites(const Log& log, std::function<void()> until);

/// What the next write would pass, for work that writes through another connection: a log that is
/// open for reading only (a damaged one) lets nothing pass.
void passHold(const Log& log);

} // namespace slopebook::log
