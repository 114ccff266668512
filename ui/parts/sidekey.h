// SPDX-License-Identifier: GPL-3.0-or-later
// A session, a block or a stretch of days as one entry of a list of them.
#pragma once

#include "core/questions/liftside.h"

#include <QString>

namespace slopebook::ui {

/// "s12" a session, "b3" a block, "d2026-03-01..2026-03-14" days.
QString keyOf(const questions::LiftSide& side);
questions::LiftSide sideFrom(const QString& key);

} // namespace slopebook::ui
