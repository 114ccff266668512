// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of a load followed through the season: its last change, its trend, what a session's
// figures rest on.
#pragma once

#include "core/answers/followedseason.h"

#include <vector>

namespace slopebook::answers {

/// What the load is counted from: a day, or the block's name.
Words baselineWords(const FollowedSeason& season);
/// What the season shows: each block's reading against the baseline, family-wise; without blocks to
/// read how many sessions are better, worse, held and unclear; or why there is nothing to say.
Words followSentence(const FollowedSeason& season);
/// Where that leads, what one day comes to against the same baseline: "4 May 2026 alone: +0.095 m/s
/// (+0.013 to +0.178), better." Empty of the baseline itself, and where no blocks are read.
Words dayAloneWords(const FollowedSeason& season, const Followed& session);
/// What the blocks' figures and readings rest on.
std::vector<Note> blockNotes(const FollowedSeason& season, double level);
/// The trend within a block, or why none is drawn.
Words blockTrendWords(const FollowedBlock& block, double level);
/// "+0.045 better", as it stands beside the block's mean: sign and word; what is unclear says which
/// way it leans. Empty where nothing is read.
Words blockLabel(const FollowedBlock& block);
/// Everything of a block's mean, as it is read out: "Autumn: 0.762 m/s (0.740 to 0.784), 3
/// sessions; against Winter +0.045 m/s (+0.010 to +0.080), better."
Words blockWords(const FollowedSeason& season, const FollowedBlock& block);
/// "60 kg was not lifted on 2026-03-14: grip"; "60 kg was not possible on ...".
Words notLiftedWords(const NotLifted& day);

/// The same where the baseline may be a block.
Words latestWords(const FollowedSeason& season);
/// The last session's change from the baseline, with its interval and reading; or that it is the
/// baseline, or has none.
Words latestWords(const Follow& follow);
/// The trend a week and a month with its interval at that level, or why there is none.
Words trendWords(const Follow& follow, double level);
/// What would settle a session's change from the baseline where it is unclear; else empty.
Words settlingWords(const Followed& session);

/// That the load lies beyond the loads of a session.
Words beyondLoadsWords();
/// That the device's bias is taken off, and how much; empty where it is not.
Words biasWords(const Followed& session);

} // namespace slopebook::answers
