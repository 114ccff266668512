// SPDX-License-Identifier: GPL-3.0-or-later
// How figures are shown: the unit of loads, decimals, signs and dates, in the desktop's language.
#pragma once

#include "core/model/date.h"
#include "core/model/mass.h"
#include "core/stats/quantiles.h"

#include <QString>

namespace slopebook::ui {

/// A way to show and to type loads. What is kept and computed is always kilograms.
enum class LoadUnit { Kilograms, Pounds };

/// "kg", "lb".
QString unitName(LoadUnit unit);
/// Kilograms in that unit.
double inUnit(double kilograms, LoadUnit unit);

/// Ends in kilograms in that unit.
stats::Interval inUnit(const stats::Interval& kilograms, LoadUnit unit);

/// Fixed decimals with the desktop's decimal mark, no group marks, a true minus sign, never "-0".
/// "–" for what is not finite.
QString number(double value, int decimals);
/// The same with its sign always: "+2.3", "−0.8", "0.0".
QString signedNumber(double value, int decimals);
/// A load without needless zeros: "60", "72.5", "1.25".
QString loadNumber(double kilograms, LoadUnit unit);
/// The same with its unit: "72.5 kg".
QString loadWithUnit(double kilograms, LoadUnit unit);
/// "84.1 to 96.0".
QString rangeText(const stats::Interval& interval, int decimals);
/// "−3.9 to +2.3".
QString signedRangeText(const stats::Interval& interval, int decimals);
/// A day written for reading: "14 Mar 2026", in the desktop's language.
QString dateText(Date date);
/// 0.95: "95 %".
QString levelText(double level);

} // namespace slopebook::ui
