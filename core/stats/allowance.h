// SPDX-License-Identifier: GPL-3.0-or-later
// An interval for an estimate that is off by an error known only to lie between two ends.
#pragma once

#include "core/stats/quantiles.h"

namespace slopebook::stats {

/// The factor f on a half-width when the estimate may be off by anything within a span: Phi(z f + z
/// span) - Phi(-z f) = level, z the normal quantile of the level and span in half-widths (Imbens
/// and Manski, Econometrica 2004;72:1845-1857). 1 where span is 0.
double imbensManski(double span, double level);

/// The interval of what is true, given that of the estimate and the least and the most by which the
/// estimate errs: straight is shifted by the middle of error and widened by half its span, its own
/// half-width taken f times. Covers the truth at each possible error with the level or more.
Interval allowing(const Interval& straight, const Interval& error, double level);
/// The same with f = 1: each end by itself is one-sided at the level's own, as two one-sided tests
/// need it.
Interval allowingFully(const Interval& straight, const Interval& error);

} // namespace slopebook::stats
