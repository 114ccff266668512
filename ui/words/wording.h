// SPDX-License-Identifier: GPL-3.0-or-later
// What the windows and the page say of an answer beside what core says itself.
#pragma once

#include "core/answers/reading.h"
#include "core/model/answer.h"
#include "core/model/lift.h"
#include "ui/words/units.h"

#include <QString>

namespace slopebook::ui {

/// Why there is no answer, as a sentence.
QString noAnswerText(const NoAnswer& why, LoadUnit unit);

/// "p = 0.043", "p < 0.001": answers::pText in the window's language.
QString pText(double p);

/// "0.45 m/s (SD 0.04; published: ...)".
QString mvtText(const Mvt& mvt);
/// "SD 0.030 m/s (published, not yours)".
QString dayNoiseText(const answers::DayNoise& noise);
/// What of it is published, cited: a sentence for where sources are listed; empty where none is.
QString dayNoiseCitation(const answers::DayNoise& noise);

/// The first letter as a capital.
QString asSentence(QString text);

} // namespace slopebook::ui
