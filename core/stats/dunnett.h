// SPDX-License-Identifier: GPL-3.0-or-later
// Many values compared with one and the same baseline (Dunnett 1955).
#pragma once

#include <map>
#include <span>
#include <utility>
#include <vector>

namespace slopebook::stats {

/// The critical value d for which all |T_j| <= d with probability level, T_j = (X_j - X_0) / (s
/// sqrt(V_0 + V_j)) sharing the baseline and a scale s of df degrees of freedom (may be infinite).
/// loads: l_j = sqrt(V_0 / (V_0 + V_j)), each in [0, 1). By integration over panels no wider
/// than a few of the narrowest step that a load makes, agrees with R to 8 digits for loads up to
/// 0.999 (tests/reference/uncertainty.R). With more than 24 of them, sqrt(1 - l_j^2) are laid on a
/// grid of 1/2048 upwards, which makes d larger by at most 0.1 %. Throws std::domain_error for
/// loads outside.
double dunnettCritical(std::span<const double> loads, double df, double level);

/// The same for many questions at once: loads laid on a grid of 1/64 downwards, which makes d
/// larger by at most 0.2 %, the normal case tabulated once for each set of them and what is asked
/// kept. A load of 0 for each of k values is Sidak's: it holds whatever they share (the changes of
/// a chain). Agrees with dunnettCritical at the grid's loads to 6 digits.
class DunnettTable {
public:
    double critical(std::span<const double> loads, double df, double level);

private:
    struct Known {
        std::vector<double> inside; ///< P(all |Z_j| <= z) at z = 0, step, 2 step, ...
        std::map<std::pair<double, double>, double> critical; ///< by df and level
    };
    std::map<std::vector<int>, Known> m_known;
    std::map<double, std::vector<std::pair<double, double>>> m_scales; ///< by df: s and its weight
};

} // namespace slopebook::stats
