// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions of a log that hold some of the other tests, found by the tests' keys.
#pragma once

#include "core/log/log.h"

#include <span>

namespace slopebook::log {

/// Every session with an attempt at one of the kinds, with its whole battery, verified, by athlete
/// and date, one held at a time: what a log holds besides is not read. Throws LogError.
void scanTested(const Log& log, std::span<const TestKindId> kinds,
                const std::function<void(const BatterySession&)>& visit);

} // namespace slopebook::log
