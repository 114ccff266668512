// SPDX-License-Identifier: GPL-3.0-or-later
// How many there are of something.
#pragma once

#include <QString>

namespace slopebook::ui {

/// "1 session", "3 sessions".
QString sessionsText(int count);

} // namespace slopebook::ui
