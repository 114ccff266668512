// SPDX-License-Identifier: GPL-3.0-or-later
// A published SD is a prior, not the truth: how repeat tests of others move its centre, and one's
// own repeats take its place.
#pragma once

#include "core/stats/lognormal.h"
#include "core/stats/twolines.h"

#include <span>

namespace slopebook::stats {

/// A published SD stands on so many df,
constexpr double publishedDf = 4;
/// and is taken as so much less: t on 4 df with it is as wide as t on 8 df without.
constexpr double publishedShrink = 0.84;
/// How athletes differ in the SD of their days: the SD of its logarithm, the published figure being
/// their mean (tests/README.md, 'Worlds': SD by athlete). The prior's 4 df say nearly the same: of
/// a scaled inverse chi^2 on 4 df the log SD is sqrt(trigamma(2)) / 2 = 0.40.
constexpr double athletesDiffer = 0.45;

/// What pairs of repeat tests come to. Sums, so that one athlete's may be taken from everybody's.
struct RepeatSums {
    double pairs = 0;
    double halfSquares = 0; ///< sum of d^2 / 2, d how far a pair lies apart
    double within = 0;      ///< sum of what the scatter explains of it: (Var1 + Var2) / 2
    RepeatSums& operator+=(const RepeatSums& other);
    /// Without these; never below nothing.
    RepeatSums without(const RepeatSums& others) const;
    /// Mean d^2 / 2 less what the scatter explains; keeps its sign. 0 without pairs.
    double excess() const { return pairs > 0 ? (halfSquares - within) / pairs : 0; }
};

/// How far K figures of one stretch of days lie apart: repeats too, though their days are alike.
struct DaySpread {
    int days = 0;      ///< K, two or more
    double square = 0; ///< variance of the figures about their mean, on K - 1
    double within = 0; ///< what the scatter explains of it
    /// The excess that days explain: (M - v) / sh, sh = (K - C) / (K - 1) (daysalike.h).
    double excess() const;
};

struct Moderated {
    Variance variance = {}; ///< and the df on which its critical value is taken
    double expected = 0;    ///< the variance to be expected: what chances are worked out with
    double ownShare = 0, othersShare = 0; ///< of it; the rest is the published figure's
    /// What the athlete's SD of days is likely to be: what is found of nothing is counted by it
    /// (nothing.h). `variance` is chosen so that readings hold, and is too cautious for that.
    LogNormal likely = {};
};
/// s_d0 = 0.84 published on 4 df; c^2 = (4 s_d0^2 + 0.7 k s_others^2) / (4 + k) with others' k
/// pairs, the df staying (athletes differ however many there are); own pairs: rho = c^2 / (c^2 +
/// within), k_e = k rho^2, (w c^2 + k_e excess) / (w + k_e) on w + k_e df, at least c^2 w / 16 and
/// c^2 / 16. w = 4 until k_e is 6, falling to 0 at 14: twenty pairs leave the published figure
/// behind. Spreads of one's own count beside one's own pairs, each on SpreadTraces::df(within /
/// c^2), which is (K - 1) rho^2 where days are not alike. Idea: Smyth 2004; constants by simulation
/// (tests/README.md, 'Worlds' and 'What the prior does'). published > 0, an SD.
Moderated moderated(double published, const RepeatSums& others, const RepeatSums& own,
                    std::span<const DaySpread> spreads = {});
/// The same as repeats where there is no prior to moderate: as many pairs as it has df.
RepeatSums asRepeats(const DaySpread& spread);

/// What an athlete's SD of days is likely to be: athletes differ by athletesDiffer about the mean,
/// and one's own repeats say which of them this is. Pairs: sum d^2 / 2 is (sd^2 + within) chi^2 on
/// their number; a spread: (K - 1) M is a chi^2 on Satterthwaite's df times its mean
/// (spreadTraces). Mean and SD of the logarithm by integration; without repeats exactly what
/// athletes differ by.
LogNormal likelySd(double mean, const RepeatSums& own, std::span<const DaySpread> spreads = {});

} // namespace slopebook::stats
