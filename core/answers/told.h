// SPDX-License-Identifier: GPL-3.0-or-later
// What stands beside a figure wherever it is shown: what such tests could have shown, what bent
// lines may add to it and what would end that doubt, what is known of the maximum without a line.
#pragma once

#include "core/answers/comparison.h"
#include "core/answers/nexttest.h"

#include <optional>

namespace slopebook::answers {

/// A reading beside its change and interval; an unclear one with what such tests show: "unclear,
/// leaning up: such tests show from 0.055 m/s up".
Words toldSpeed(const ReadChange& read);
/// The same of the estimated max, kg.
Words toldMax(const ReadChange& read);
/// Both as a cell of a table has them: "unclear, leaning up; shows from 0.055".
Words speedCell(const ReadChange& read);
Words maxCell(const ReadChange& read);

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

/// "80 kg was lifted that day: the max is no less".
Words liftedWords(const Profile& profile);
/// The estimate that loads are planned with and its interval, beside that as if the line were
/// straight; empty without an estimate.
Words planWithWords(const Profile& profile);

/// What the profile's test and one by that ladder can show of a change before it is done, by check
/// load and of the max, and what they cannot; empty where neither is asked for.
Words canShowWords(const LadderForecast& ladder, bool byOneRm);

} // namespace slopebook::answers
