// SPDX-License-Identifier: GPL-3.0-or-later
// What is named where it is drawn, so that the key need not: each word beside its own mark or line,
// on nothing else.
#pragma once

#include "ui/athlete/season/seasonlayout.h"

#include <set>

namespace slopebook::ui {

/// What there is to name in that chart.
std::set<SeasonName::Of> seasonNamesOf(const SeasonLayout& layout, const SeasonData& data);

/// Places those into the layout; gives back what has no room.
std::set<SeasonName::Of> placeNames(SeasonLayout& layout, const SeasonData& data,
                                    const std::set<SeasonName::Of>& wanted);

} // namespace slopebook::ui
