// SPDX-License-Identifier: GPL-3.0-or-later
// Files of tables into an open log, by the dialog that each needs.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/importing/importmaps.h"

#include <QStringList>

class QWidget;

namespace slopebook::ui {

/// Files into a log that is open: those that tell their columns by their names together, any other
/// table one by one, as the coach says what it is. maps: how tables were read before. Whether any
/// went in.
bool importTables(Logbook& logbook, const QStringList& files, ImportMaps& maps, QWidget* parent);

} // namespace slopebook::ui
