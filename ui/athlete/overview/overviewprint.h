// SPDX-License-Identifier: GPL-3.0-or-later
// The overview on one page of paper.
#pragma once

#include "core/answers/overview.h"
#include "ui/athlete/overview/seasonasking.h"
#include "ui/paper/pages.h"

namespace slopebook::ui {

page::Print overviewPrint(const AskedSeason& asked, const answers::Overview& overview,
                          LoadUnit unit);

} // namespace slopebook::ui
