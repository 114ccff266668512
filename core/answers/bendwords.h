// SPDX-License-Identifier: GPL-3.0-or-later
// What bent lines and tilting days may add to a figure, in words, and what would end that doubt.
#pragma once

#include "core/answers/comparison.h"

#include <optional>

namespace slopebook::answers {

/// The change of the max read as if lines were as straight as they are drawn: to stand beside
/// OneRmChange::read, never in its place. Nothing where that has no figure.
std::optional<ReadChange> maxIfStraight(const Comparison& comparison);
/// How the two are called where they stand side by side.
Words ifStraightWords();
Words bendInWords();

/// How far a straight line through the session's loads may be off, and what ends that doubt; empty
/// where it is less than the figures show.
Words bendWords(const Profile& profile);
/// The same of the change of the max; empty where there is none, or lines are taken as straight.
Words bendWords(const Comparison& comparison);
/// Where the bend allowance comes from.
Words bendSource(const Bend& bend);
/// That days tilt the line as well as lift it; empty where nothing is known of it.
Words tiltWords(const DayNoise& noise);

} // namespace slopebook::answers
