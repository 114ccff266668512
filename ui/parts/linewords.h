// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a line of the test day, and what may be typed, in the coach's language.
#pragma once

#include "core/answers/attemptdoubt.h"
#include "core/model/battery.h"
#include "ui/typed/lineproblem.h"
#include "ui/words/units.h"

namespace slopebook::ui {

/// What may be typed for that test.
QString lineHelp(const TestKind& kind);

/// "Found 60,: ...", or what was expected, and where a line is likely that would be taken: that
/// Down puts it there. line: what was typed, at a lift.
QString problemText(const LineProblem& problem, const QString& line, LoadUnit unit);
/// The same at a test.
QString problemText(const LineProblem& problem, const QString& line, const TestKind& kind,
                    LoadUnit unit);

/// What is unusual and what may have been meant. knownAthlete: usual is the athlete's own.
QString doubtText(const answers::AttemptDoubt& doubt, bool knownAthlete);

/// "Down puts 95 - in its place."; empty where nothing is offered.
QString insteadText(const LineProblem& problem);

} // namespace slopebook::ui
