// SPDX-License-Identifier: GPL-3.0-or-later
// A squad's answer in words and rows: the window's table and the printed one.
#pragma once

#include "core/answers/squad.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

namespace slopebook::ui {

/// "Bench pull (mean velocity)".
QString liftTitle(const Lift& lift);
/// "60 kg", "Estimated 1RM".
QString partName(const answers::SquadPart& part, LoadUnit unit);

constexpr int squadEarlier = 1, squadLater = 2;  ///< columns
constexpr int squadDrawn = 5, squadSmallest = 6; ///< drawn to all; the smallest change
constexpr int squadReading = 7;
QStringList squadHeadings(const answers::SquadPart& part, double level, LoadUnit unit);
/// Athlete, earlier and later session (of several how many), change, interval, drawn to all,
/// smallest change, reading or reason; last, where there is a mean, that of all.
std::vector<TextTable::Row> squadRows(const answers::SquadPart& part, double level, LoadUnit unit);

/// Where all are drawn to one figure, at the decimals that are shown: the sentence that says it
/// once, in place of a column and of marks; else empty.
QString drawnAlike(const answers::SquadPart& part, double level, LoadUnit unit);
/// Whether what each is drawn to is shown: there is a mean, and they are not all drawn alike.
bool drawnApart(const answers::SquadPart& part, double level, LoadUnit unit);

/// What the squad did: the mean of it where there is one, else how many read what.
QString squadSentence(const answers::SquadPart& part, double level, LoadUnit unit);
/// How many readings of each kind, and under which other conditions they were made.
QString squadCounts(const answers::SquadPart& part, LoadUnit unit);

/// What is to be known beside the figures, each a sentence; first how many better or worse chance
/// would give over all that was asked.
QStringList squadNotes(const answers::Squad& squad, LoadUnit unit);

} // namespace slopebook::ui
