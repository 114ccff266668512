// SPDX-License-Identifier: GPL-3.0-or-later
// Values of core as the windows write them, in the form in which they may be typed back. Figures
// that are only shown: ui/words/units.h.
#pragma once

#include "core/model/date.h"
#include "core/model/exactmass.h"
#include "core/model/lift.h"
#include "core/model/session.h"
#include "ui/words/units.h"

#include <QDate>
#include <QString>

#include <filesystem>

namespace slopebook::ui {

QString text(const std::string& utf8);
std::string utf8(const QString& text);

/// "60", "62.5", with the desktop's decimal mark; typed back it is the same mass to the gram in kg,
/// to a hundredth of a pound in lb.
QString massText(Mass mass, LoadUnit unit);
/// The same with its unit: "62.5 kg".
QString massWithUnit(Mass mass, LoadUnit unit);
/// The unit as core names it.
MassUnit massUnit(LoadUnit unit);
/// "0.92", "0.925": m/s, two decimals, three where the third was typed.
QString speedText(double velocity);
/// The reps as they are typed: "0.92 0.90 0.88x".
QString repsText(const Set& set);

QDate qtDate(Date date);
Date modelDate(const QDate& date);

/// A day, and which session of it where it is not the first: "14 Mar 2026 (no. 2)".
QString sessionText(Date date, int ordinal);
QString sessionText(const LiftSession& session);

QString kindText(VelocityKind kind); ///< "mean velocity", ...

/// A file as the system names it, and as the window writes it.
std::filesystem::path pathOf(const QString& file);
QString nameOf(const std::filesystem::path& file);

} // namespace slopebook::ui
