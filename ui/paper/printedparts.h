// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on the printed comparison, part by part, in reading order.
#pragma once

#include "ui/paper/printedcomparison.h"

namespace slopebook::ui::page {

/// Everything, with charts as high as one page allows.
void addComparison(Flow& flow, const answers::Comparison& comparison, const PageHeader& header);

} // namespace slopebook::ui::page
