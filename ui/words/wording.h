// SPDX-License-Identifier: GPL-3.0-or-later
// What the windows and the page say of an answer: readings, the leading sentence, notes, sources,
// reasons. The one place of these words in ui, ready for translation; English as in core/answers.
#pragma once

#include "core/answers/batterycomparison.h"
#include "core/answers/comparison.h"
#include "core/answers/sentence.h"
#include "core/model/lift.h"
#include "ui/words/units.h"

#include <QString>
#include <QStringList>

namespace slopebook::ui {

/// "better", "worse", "held", "unclear", "no figure".
QString readingWord(answers::Reading reading);
/// The same with what the smallest change adds: "better, by over 0.03".
QString readingText(const answers::ReadChange& read, int decimals);

/// The sentence that leads a comparison.
QString sentenceText(const answers::SentenceParts& parts, LoadUnit unit);
QString sentenceText(const answers::Comparison& comparison, LoadUnit unit);

QString noteText(const answers::Note& note, LoadUnit unit);
/// Why there is no answer, as a clause without a stop.
QString noAnswerClause(const NoAnswer& why, LoadUnit unit);
/// The same as a sentence.
QString noAnswerText(const NoAnswer& why, LoadUnit unit);

/// "p = 0.043", "p < 0.001": answers::pText in the window's language.
QString pText(double p);

/// "0.45 m/s (SD 0.04; published: ...)".
QString mvtText(const Mvt& mvt);
/// Where a smallest change came from: "the coach's own".
QString smallestOrigin(const answers::Smallest& smallest);
/// "SD 0.030 m/s (published, not yours: ...)".
QString dayNoiseText(const answers::DayNoise& noise);

/// What would settle unclear changes, in one sentence.
QString settlingText(const answers::Unsettled& unsettled, LoadUnit unit);

/// What can change about a test: "surface", "device", "footwear", "technique".
QString contextName(const std::string& english);
/// The test's name, with its side where it has one: "Hop, left".
QString testLabel(const TestKind& kind, BodySide side);
/// Which side is better, by how much: "left by 3.1 %", "even".
QString asymmetryText(const answers::Asymmetry& asymmetry);

/// The first letter as a capital.
QString asSentence(QString text);

} // namespace slopebook::ui
