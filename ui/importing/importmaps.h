// SPDX-License-Identifier: GPL-3.0-or-later
// How tables were read before, by their headings: kept among the window's settings and not in the
// log, because it is about the files of this desk and its devices, not about the athletes.
#pragma once

#include "core/exchange/facts.h"

#include <QStringList>

namespace slopebook::ui {

/// Each entry: signature of the headings, a line break, the shape as text. Newest first.
using ImportMaps = QStringList;

/// The shape for a table as it was chosen last for one with these headings, else as proposed.
struct ChosenShape {
    exchange::Shape shape;
    bool remembered = false;
};
ChosenShape shapeFor(const ImportMaps& maps, const exchange::FileFacts& facts);
/// Keeps at most a hundred.
void remember(ImportMaps& maps, const exchange::Shape& shape, const exchange::FileFacts& facts);

} // namespace slopebook::ui
