// SPDX-License-Identifier: GPL-3.0-or-later
// What the plan's page and card say: loads, plates, shares, speeds, ladders, repeats.
#pragma once

#include "core/answers/history.h"
#include "core/answers/nexttest.h"
#include "core/answers/squadrelation.h"
#include "core/questions/planquestions.h"
#include "ui/words/units.h"

#include <QString>
#include <QStringList>

namespace slopebook::ui::planwords {

/// "100 kg", in the unit; an odd pound plate on a kilogram bar with up to two decimals.
QString loadText(ExactMass mass, LoadUnit unit);
/// What goes on each side; the bar before it where the set has several.
QString putOnText(const answers::BuiltLoad& load, const Equipment& equipment);
/// "73 % (71 to 75)"; empty without an estimated 1RM.
QString percentText(const answers::PlannedLoad& load);
/// "0.57 m/s (0.51 to 0.63)".
QString speedText(const answers::PlannedLoad& load);
QString stopText(const answers::PlannedLoad& load);
/// "72 % (64 to 80)": by a relation of other people.
QString relatedText(const answers::RelatedLoad& load);
/// What borrowing from the athlete's own history makes of that session.
QString borrowedText(const Answer<answers::History>& history, const answers::Profile& profile,
                     LoadUnit unit);

/// Each caution as a sentence.
QStringList cautionTexts(const std::vector<answers::Caution>& cautions, LoadUnit unit);
/// Those of a plan, then the usual ones in one text: each is said once.
QStringList allCautionTexts(std::vector<answers::Caution> cautions, LoadUnit unit);
QString ladderLoads(const answers::LadderForecast& ladder, LoadUnit unit);
/// The same for a sentence, each with its unit: "40 kg, 2 sets of 52.5 kg, 70 kg".
QString ladderInWords(const answers::LadderForecast& ladder, LoadUnit unit);

} // namespace slopebook::ui::planwords
