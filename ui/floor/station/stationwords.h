// SPDX-License-Identifier: GPL-3.0-or-later
// What the station says: whose turn, which load, and what was typed as it is understood.
#pragma once

#include "core/questions/stationday.h"
#include "ui/floor/station/rostermodel.h"
#include "ui/typed/dayline.h"
#include "ui/words/units.h"

#include <QString>

#include <chrono>

namespace slopebook::ui {

/// "Rack 1: back squat".
QString stationText(const questions::StationWork& work);
/// The same of one that is not read whole; what it is about is looked up.
QString stationText(const Stored<StationId, Station>& station, const log::Log& log);
/// "Encoder 1, rubber floor"; empty where nothing is written down.
QString conditionsText(const Conditions& conditions, const log::Log& log);

/// "Ada: 90 kg next.": the sentence of the page.
QString turnText(const questions::StationWork& work, const questions::AtStation& at, LoadUnit unit);
/// What stands below it: why that load, or why none; may be empty.
QString turnReason(const questions::StationWork& work, const questions::AtStation& at,
                   LoadUnit unit);
/// "Bela, 130 kg": who comes then.
QString comesThen(const questions::AtStation& at, LoadUnit unit);

RosterRow rosterRow(const questions::StationWork& work, const questions::AtStation& at,
                    LoadUnit unit);

/// "reads as: Ada, 90 kg, 2 reps, fastest 0.36 m/s, felt 9"; empty for what is not a set, an
/// attempt or a gap.
QString readsAs(const DayLine& line, const QString& name, const TestKind* test, LoadUnit unit);
/// "Bela or Berta?" and how to tell them apart.
QString whoText(const WhoQuestion& question, const std::vector<std::string>& names);

QString attemptSide(BodySide side); ///< "left", "right", nothing for both
/// "1.65", "0.48/0.201": as it was read.
QString attemptReading(const Attempt& attempt);

/// "1:05"; empty where it is more than an hour.
QString restClock(std::chrono::seconds rested);

} // namespace slopebook::ui
