// SPDX-License-Identifier: GPL-3.0-or-later
// What a column's heading says in English or German: its role, unit, kind of velocity, number.
#pragma once

#include "core/exchange/shape.h"
#include "core/model/lift.h"

#include <optional>
#include <string_view>

namespace slopebook::exchange {

/// The role that a heading names; nothing where it names none, or a figure made from others
/// (a loss, a share, an SD).
std::optional<Tidy> roleOfHeading(std::string_view heading);
/// Which half of an athlete's name a heading names ("Vorname", "Last name"), if one: two siblings
/// share a family name.
enum class NamePart { Given, Family };
std::optional<NamePart> namePartOf(std::string_view heading);
/// Whether it may stand over times of day: "Time", "Uhrzeit", and no rest or duration.
bool saysTimeOfDay(std::string_view heading);
std::optional<SpeedUnit> speedUnitOf(std::string_view headingOrUnit);
std::optional<MassUnit> massUnitOf(std::string_view headingOrUnit);
std::optional<VelocityKind> kindOfHeading(std::string_view heading);
/// The number at the end of "v 3", "Wdh. 3 (m/s)", "3".
std::optional<int> numberOfHeading(std::string_view heading);

} // namespace slopebook::exchange
