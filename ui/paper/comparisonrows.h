// SPDX-License-Identifier: GPL-3.0-or-later
// The words and figures of the printed comparison, ready to be set: no figure is computed here. The
// comparison window shows the same rows.
#pragma once

#include "ui/paper/printedcomparison.h"

#include <QStringList>

namespace slopebook::ui::page {

/// "Lane 3 · Bench pull (mean velocity)".
QString titleText(const PageHeader& header);

/// What stands on a side: its day, or of a block its name and how many sessions it has.
QString sideText(const answers::Comparison& comparison, bool later);

/// What the two sessions were: block, device, body mass, loads.
struct DayRow {
    QString label{}, from{}, to{};
};
std::vector<DayRow> dayRows(const answers::Comparison& comparison, const PageHeader& header);

struct LoadRow {
    QString load{}, from{}, to{}, change{}, readingInterval{}, straight{}, twoDays{}, smallest{},
        reading{};
    bool clear = false; ///< better, worse or held: bold is what is so
};
/// One row a load of Comparison::at; of blocks what all of a side come to. A load is marked "*"
/// beyond the loads of both, "†" as a check load.
std::vector<LoadRow> loadRows(const answers::Comparison& comparison, LoadUnit unit);

struct OneRmRow {
    QString label{}, from{}, to{}, change{}, reading{};
    bool strong = false;                     ///< the row that is read first
    bool fromQuiet = false, toQuiet = false; ///< far from any load lifted: in grey
    bool clear = false;                      ///< its reading, as LoadRow has it
};
/// Of blocks the intervals of single days are not those of a side, and are left out.
std::vector<OneRmRow> oneRmRows(const answers::Comparison& comparison, LoadUnit unit);
/// What would settle each unclear reading.
QStringList settlingLines(const answers::Comparison& comparison, LoadUnit unit);

/// Notes of the comparison and of both sessions, each once, sources aside.
QStringList remarks(const answers::Comparison& comparison, const PageHeader& header);
} // namespace slopebook::ui::page
