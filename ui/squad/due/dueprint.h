// SPDX-License-Identifier: GPL-3.0-or-later
// Who is due for what, as rows and on paper.
#pragma once

#include "core/answers/squaddue.h"
#include "ui/paper/pages.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

namespace slopebook::ui {

QStringList dueHeadings();
/// Athlete, lift or test, last day, days ago, why.
std::vector<TextTable::Row> dueRows(const answers::SquadDue& due, LoadUnit unit);
/// Who was not seen for long, and when something is due.
QStringList dueNotes(const answers::SquadDue& due, LoadUnit unit);

page::Print duePrint(const answers::SquadDue& due, LoadUnit unit);

} // namespace slopebook::ui
