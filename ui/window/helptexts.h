// SPDX-License-Identifier: GPL-3.0-or-later
// The texts of the help pages, as HTML.
#pragma once

#include <QString>

namespace slopebook::ui {

QString typingHelp();
QString methodHelp();
QString sourcesHelp();
QString fileHelp();

} // namespace slopebook::ui
