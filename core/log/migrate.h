// SPDX-License-Identifier: GPL-3.0-or-later
// From an older layout of the log to this program's.
#pragma once

#include "core/log/connection.h"
#include "core/log/layout.h"

namespace slopebook::log {

/// Refuses a log whose tables are not exactly those of its version. An older one is first copied to
/// its folder of backups (verified), then led to the newest layout in one transaction: it is there
/// or the log is as it was. Throws LogError: ReadOnly when an older one cannot be written.
void bringUpToDate(Connection& connection, const Layout& layout);

} // namespace slopebook::log
