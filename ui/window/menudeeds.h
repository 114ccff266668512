// SPDX-License-Identifier: GPL-3.0-or-later
// What the menus of the window do.
#pragma once

#include "ui/window/helpdialog.h"

namespace slopebook::ui {

class MainWindow;

/// Connects every action of the window; once for each set of actions.
void connectMenus(MainWindow& window);
/// What the help says of this window, in the language that is spoken.
HelpDialog::Told helpOf(MainWindow& window);
/// What and whose the next undo and redo are; once for each log.
void connectUndo(MainWindow& window);

} // namespace slopebook::ui
