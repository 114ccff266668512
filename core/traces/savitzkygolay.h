// SPDX-License-Identifier: GPL-3.0-or-later
// Smoothing and differentiation by a polynomial fitted over a moving window (Savitzky and Golay,
// Anal Chem 1964;36:1627-1639).
#pragma once

#include <span>
#include <vector>

namespace slopebook::traces {

/// The weights that give the derivative-th derivative (0: the smoothed value), per sample step to
/// that power, at `position` samples from the window's middle. points odd, order < points,
/// derivative <= order, |position| <= points/2.
std::vector<double> savitzkyGolayWeights(int points, int order, int derivative, int position = 0);

/// The derivative (per second to that power) at every sample. Near the ends the last whole window's
/// polynomial is used off its middle, so that the result is as long as the input. values.size() >=
/// points.
std::vector<double> savitzkyGolay(std::span<const double> values, double rate, int points,
                                  int order, int derivative);

} // namespace slopebook::traces
