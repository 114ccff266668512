// SPDX-License-Identifier: GPL-3.0-or-later
// The tabs of a page in its control line, so that there is one strip above what it says.
#pragma once

class QString;
class QTabBar;
class QTabWidget;

namespace slopebook::ui {

/// A bar for the control line that turns those tabs, which have all been added; their own is put
/// away. name: for those who hear it.
QTabBar* barInStrip(QTabWidget& tabs, const QString& name);

} // namespace slopebook::ui
