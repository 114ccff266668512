// SPDX-License-Identifier: GPL-3.0-or-later
// What a thing holds in the coach's words, where a file keeps a word of its own.
#pragma once

#include "core/model/battery.h"
#include "core/model/equipment.h"
#include "core/model/lift.h"
#include "core/model/session.h"
#include "core/model/words.h"

namespace slopebook::desks {

Words valueWords(VelocityKind kind);
Words valueWords(PointRule rule);
Words valueWords(Mvt::Origin origin);
Words valueWords(AttemptRule rule);
Words valueWords(TestFormula formula);
Words valueWords(BodySide side);
Words valueWords(Outcome outcome);
Words valueWords(FixedMass::Use use);
/// "kg" and "lb" are the same everywhere.
Words valueWords(MassUnit unit);

/// A text that the program itself may have written (the name of a test that it knows, where a
/// published figure comes from): translated then, the coach's own is as it is.
Words perhapsOurs(const std::string& text);

} // namespace slopebook::desks
