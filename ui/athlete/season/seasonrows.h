// SPDX-License-Identifier: GPL-3.0-or-later
// The season's figures as rows of a table and as sentences: the same figures that the chart shows.
#pragma once

#include "ui/athlete/season/seasondata.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

#include <span>

namespace slopebook::ui {

QStringList seasonHeadings(LoadUnit unit);
constexpr int seasonBlock = 1;
constexpr int seasonEffort = 3;
constexpr int seasonInterval = 5; ///< of the line's speed, which is drawn
constexpr int seasonReading = 8;  ///< the column of the readings
constexpr int seasonOneRm = 9, seasonToPlan = 10;
constexpr int seasonLineAlone = 11; ///< of the 1RM's interval by the line alone
constexpr int seasonMeasured = 12;  ///< of measured maxima, the last
/// One row a session, a day not lifted and a block, as seasonItems() has them; the baseline's in
/// bold. felt: of each session, as feltText() has it. trends: with those within blocks.
std::vector<TextTable::Row> seasonRows(const answers::FollowedSeason& season,
                                       std::span<const Stored<BlockId, Block>> blocks,
                                       std::span<const Stored<DeviceId, Device>> devices,
                                       LoadUnit unit, const QStringList& felt = {},
                                       bool trends = false);

/// RPE of the sets at the load: "6.5, 7"; empty where none is written down.
QString feltText(std::span<const Effort> felt);

/// What would settle a session's change from the baseline where it is unclear; else empty.
QString settlingOf(const answers::Followed& session, LoadUnit unit);

} // namespace slopebook::ui
