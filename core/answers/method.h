// SPDX-License-Identifier: GPL-3.0-or-later
// How a comparison was made and where its figures come from, line by line, as a page has it below
// its figures.
#pragma once

#include "core/answers/comparison.h"
#include "core/model/exactmass.h"

#include <vector>

namespace slopebook::answers {

/// "14 Mar 2026", and which of its day: "14 Mar 2026 (no. 2)".
Words sessionWords(Date date, int ordinal);

/// Lines, model, tests, and what makes a reading. perUnit: what a slope is told by.
std::vector<Words> methodWords(const Comparison& comparison, PointRule rule, MassUnit perUnit);
/// MVT, day-to-day noise, tilt, bend and smallest changes: the value of each, its source whole.
std::vector<Words> sourceWords(const Comparison& comparison);
/// What the marks beside its loads mean, of those in use.
std::vector<Words> markWords(const Comparison& comparison);
/// What is to be said of the change of the max: how far bent lines may mislead and what ends that
/// doubt, which interval holds the MVT's own SD, why there is no figure.
std::vector<Words> maxRemarks(const Comparison& comparison);

/// "0.45 m/s (SD 0.04; published, not yours)"; cited behind (citationOf).
Words mvtWords(const Mvt& mvt);
/// Why the line's own end is no estimate: too flat or scattered, or two loads far below it; empty
/// where it is one.
Words tooUncertainWords(const Profile& profile);

/// What a reading is held against, in the few words that every page has for it: every block of the
/// measure together (method.md section 12), every step from a block to the next together, or each
/// change by itself. One change has another interval in each.
Words allBlocksAtOnce();
Words allStepsAtOnce();
Words eachChangeAlone();
Words heldAgainst(bool allAtOnce);
/// Where the other way of reading is found, so that nobody is surprised by another word there.
Words intervalsOfOneChange();
Words intervalsOfBlocks();
Words intervalsOf(bool allAtOnce);

/// How far a reading of several days leans on how alike the days of a block are (tests/README.md).
Words daysAlike();

/// The caution that goes with every estimate, a sentence each; with that of restricted flow.
std::vector<Words> cautionWords(bool restrictedFlow);

} // namespace slopebook::answers
