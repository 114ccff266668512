// SPDX-License-Identifier: GPL-3.0-or-later
// What the windows and the page say of an answer beside what core says itself.
#pragma once

#include "core/model/answer.h"
#include "ui/words/units.h"

#include <QString>

namespace slopebook::ui {

/// Why there is no answer, as a sentence.
QString noAnswerText(const NoAnswer& why, LoadUnit unit);

/// The first letter as a capital.
QString asSentence(QString text);

/// With what it is held against: "95 % interval (each change alone)".
QString readAgainst(const QString& interval, bool allAtOnce = false);

} // namespace slopebook::ui
