// SPDX-License-Identifier: GPL-3.0-or-later
// The printed page of two dates or blocks: tests, forest plot, left and right, what was missing,
// the lifts' sentences. Black on white; greys tell it all. Needs a QApplication (offscreen will
// do).
#pragma once

#include "core/questions/batteryquestions.h"
#include "ui/paper/pages.h"
#include "ui/words/units.h"

namespace slopebook::ui {

/// The pages for a printer, a preview or a PDF, with loads in that unit.
page::Print batteryPrint(const questions::BatteryAnswer& answer, LoadUnit unit);
/// Whole or not at all. Throws LogError.
void writeBatteryPdf(const questions::BatteryAnswer& answer, LoadUnit unit, page::Paper paper,
                     const log::Destination& to);

} // namespace slopebook::ui
