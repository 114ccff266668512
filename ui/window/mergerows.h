// SPDX-License-Identifier: GPL-3.0-or-later
// What is not simply added when two logs meet, a row each.
#pragma once

#include "core/desks/merge.h"
#include "ui/words/units.h"

#include <QStringList>

class QTreeWidget;
class QTreeWidgetItem;

namespace slopebook::ui {

/// With headings and widths, for rows of three: what, of what, how.
void layOutMergeRows(QTreeWidget& list);
void addMergeRow(QTreeWidget& list, const QStringList& cells);
/// High enough that the frame of the chosen one cuts no letter.
void giveRowAir(QTreeWidget& list, QTreeWidgetItem& row);
void fillMergeRows(QTreeWidget& list, const desks::MergeReport& report, LoadUnit unit);
/// Whether a coach is told the same of both.
bool readsAlike(const desks::MergeReport& one, const desks::MergeReport& other, LoadUnit unit);

} // namespace slopebook::ui
