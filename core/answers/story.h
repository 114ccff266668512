// SPDX-License-Identifier: GPL-3.0-or-later
// A block's story, to stand beside its figures; and what a season of such blocks can show at all.
#pragma once

#include "core/answers/seasonmatrix.h"

#include <optional>
#include <vector>

namespace slopebook::answers {

/// As the coach wrote it down: what was trained, sessions a week as planned, the ceiling, the note;
/// empty where nothing was.
Words storyWords(const Block& block);

/// Sessions a week as the log holds them, over the days that can be counted; nothing where those
/// are fewer than two weeks.
std::optional<double> countedAWeek(const MatrixBlock& block);

/// "Winter, 1 Dec 2025 to 8 Feb 2026: fast lifts; planned: 2 sessions a week; up to 70 kg; in this
/// log 18 sessions with sets or tests, in 10 weeks: 1.8 a week". Without the number a week where so
/// few can only be days of tests.
Words storyWords(const MatrixBlock& block);

/// What one athlete's blocks in a row can and cannot show, and what would show more, a sentence
/// each (single-case designs: Kazdin 2011, from memory).
std::vector<Words> designWords(const SeasonMatrix& matrix);

} // namespace slopebook::answers
