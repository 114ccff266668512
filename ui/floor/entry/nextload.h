// SPDX-License-Identifier: GPL-3.0-or-later
// What the session form says of the load that comes next.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/floor/entry/sessionview.h"

#include <QString>

namespace slopebook::ui {

/// Never a load above the estimate, unless it was lifted as a maximum before, and then it says so.
QString nextText(const SessionView& view, LoadUnit unit);
/// Where the next load comes from, and its share of the estimate; on a line of its own the speed
/// that today's line expects of it.
QString nextWhy(const SessionView& view);
/// Today's loads beside those of last time (core/answers/againstlast.h); empty until both have a
/// line with intervals.
QString againstLastText(const SessionView& view, const Logbook& logbook);

} // namespace slopebook::ui
