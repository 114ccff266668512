// SPDX-License-Identifier: GPL-3.0-or-later
// A squad's answer in words and rows: the window's table and the printed one.
#pragma once

#include "core/answers/squad.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

namespace slopebook::ui {

/// "60 kg", "Estimated 1RM".
QString partName(const answers::SquadPart& part, LoadUnit unit);

QStringList squadHeadings(const answers::SquadPart& part, double level, LoadUnit unit);
/// Athlete, earlier session, later session, change, interval, smallest change, reading or reason.
std::vector<TextTable::Row> squadRows(const answers::SquadPart& part, LoadUnit unit);

/// What is to be known beside the figures, each a sentence.
QStringList squadNotes(const answers::Squad& squad, LoadUnit unit);

} // namespace slopebook::ui
