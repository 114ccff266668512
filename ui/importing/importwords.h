// SPDX-License-Identifier: GPL-3.0-or-later
// The words of an import: what roles are called, what is asked, what was refused, what is found.
#pragma once

#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "ui/parts/texttable.h"

#include <QString>

#include <vector>

namespace slopebook::ui {

/// "Date", "Load", ...
QString roleName(exchange::Tidy role);
/// A question as a sentence, with the cell that can be read in two ways.
QString questionText(const exchange::Question& question, const exchange::FileFacts& facts);
/// "UTF-8", "Latin-1 (older Windows files)".
QString encodingName(exchange::Encoding encoding);

QStringList refusedHeadings();
/// Line, column, found, expected.
TextTable::Row refusedRow(const BadInput& bad);

QStringList previewHeadings(const exchange::Shape& shape);
/// Line, as found, and what it is read as; or why it is refused. Without `read`: as found only.
TextTable::Row previewRow(const exchange::ReadRow& row, const exchange::Shape& shape, bool read);

} // namespace slopebook::ui
