// SPDX-License-Identifier: GPL-3.0-or-later
// The rows and lines of the battery's comparison, as window and paper show them. No figure is
// computed here.
#pragma once

#include "core/questions/batteryquestions.h"
#include "ui/words/units.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace slopebook::ui::page {

struct BatteryRow {
    QString test{}, before{}, after{}, change{}, percent{}, interval{}, error{}, reading{};
    QString remark{}; ///< sources and what changed in the context
    bool noFigure = false;
    bool changed = false; ///< read as better or worse
};
std::vector<BatteryRow> batteryRows(const answers::BatteryComparison& battery);

/// Test, before, after.
std::vector<QStringList> leftRightRows(const answers::BatteryComparison& battery);
/// Date, where, what, why.
std::vector<QStringList> missingRows(const answers::BatteryComparison& battery, LoadUnit unit);
/// "Bench pull: Faster from 40 to 65 kg ..." or the reason why there is none; then what is unread.
QStringList liftSentences(const questions::BatteryAnswer& answer, LoadUnit unit);
} // namespace slopebook::ui::page
