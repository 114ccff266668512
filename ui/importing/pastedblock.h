// SPDX-License-Identifier: GPL-3.0-or-later
// A block of cells pasted into a session: loads and speeds, a table with days and names, or
// something that has to be asked about first.
#pragma once

#include "core/exchange/proposal.h"
#include "core/model/session.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace slopebook::ui {

struct PastedBlock {
    exchange::Source source;
    exchange::FileFacts facts;
    exchange::Shape shape;
    /// Names its own days, athletes or lifts, or does not tell loads from speeds: for the import,
    /// where the coach says what each column is.
    bool wholeTable = false;
    bool asksRows = false; ///< a row may be a set of one rep, or one rep of a set
    /// What else is open, but for day, athlete and lift, which the session says.
    std::vector<exchange::Question> open;

    bool asks() const { return asksRows || !open.empty(); }
};

/// Text with tabs, as a spreadsheet copies it. Throws BadInput where it is no table.
PastedBlock readBlock(const QString& text);
/// Its sets, read as the shape says. Throws BadInput (line, column) for a cell that cannot be read.
std::vector<Set> setsOf(const PastedBlock& block);
/// What of it nobody reads: its columns' names, or their numbers and first cells.
QStringList notRead(const PastedBlock& block);
/// What is wrong with a pasted cell, in a sentence.
QString pastedProblem(const BadInput& bad);

} // namespace slopebook::ui
