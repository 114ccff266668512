// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a typed line, in the coach's language.
#pragma once

#include "core/answers/doubt.h"
#include "core/model/session.h"
#include "ui/parts/linewords.h"
#include "ui/typed/setline.h"
#include "ui/words/units.h"

#include <QString>

#include <optional>

namespace slopebook::ui {

/// "92 means 0.92 m/s? Enter takes it so, Esc leaves it."
QString questionText(const LineQuestion& question);
/// Of a load that looks like a speed. next: the load that was probably forgotten.
QString forgottenLoadText(const LineQuestion& question, std::optional<Mass> next, LoadUnit unit);

/// Of a set that is hard to believe.
QString doubtText(const answers::Doubt& doubt, LoadUnit unit);

/// The typed line as a set for the log; reps left out carry the note, or say that no reason was
/// given.
Set setFromTyped(const TypedSet& typed);
/// Reps typed over a set's: those that stayed as they were keep their reasons.
std::vector<Rep> repsFromTyped(const std::vector<TypedRep>& typed, const std::vector<Rep>& before);

/// "8", "8.5": with the desktop's decimal mark.
QString effortText(Effort effort);

/// What of a set deserves a look: implausible speeds or loads. Empty where nothing does.
QString flagText(const Set& set, LoadUnit unit);

std::u16string_view view(const QString& text);

} // namespace slopebook::ui
