// SPDX-License-Identifier: GPL-3.0-or-later
// What changed from version to version, as resources/changes.xml tells it.
#pragma once

#include <QString>

namespace slopebook::ui {

/// As HTML, newest first, in the language of that code; what it does not say in it, in English.
QString changesHelp(const QString& language);

} // namespace slopebook::ui
