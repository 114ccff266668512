// SPDX-License-Identifier: GPL-3.0-or-later
// What the session form says of the load that comes next.
#pragma once

#include "ui/floor/entry/sessionview.h"

#include <QString>

namespace slopebook::ui {

/// Never a load above the estimate, unless it was lifted as a maximum before, and then it says so.
QString nextText(const SessionView& view, LoadUnit unit);
/// Where the next load comes from, and its share of the estimate.
QString nextWhy(const SessionView& view);

} // namespace slopebook::ui
