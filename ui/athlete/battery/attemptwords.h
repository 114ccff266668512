// SPDX-License-Identifier: GPL-3.0-or-later
// The words and rows of the attempts' form.
#pragma once

#include "core/answers/attemptdoubt.h"
#include "core/answers/battery.h"
#include "ui/parts/linewords.h"
#include "ui/parts/texttable.h"
#include "ui/typed/attemptline.h"

namespace slopebook::ui {

QString sideText(BodySide side); ///< "left", "right", nothing for both
/// As it is typed, without its side: "1.65", "0.48/0.201", "1.65x # on the line".
QString attemptText(const Attempt& attempt);
/// Test, side, number, as read, value, remark.
TextTable::Row attemptRow(const TestKind& kind, const Attempt& attempt,
                          const std::optional<Mass>& bodyMass, int number);
/// Test, value, left, right, better side, attempts; nothing for a test that the day does not have.
std::optional<TextTable::Row> valueRow(const Stored<TestKindId, TestKind>& kind,
                                       const BatterySession& session);

} // namespace slopebook::ui
