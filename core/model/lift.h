// SPDX-License-Identifier: GPL-3.0-or-later
// A lift and how it is measured: velocity kind, which rep makes the point, thresholds.
#pragma once

#include "core/model/mass.h"

#include <limits>
#include <optional>
#include <string>
#include <string_view>

namespace slopebook {

/// Velocities of different kinds are never put on one line or compared.
enum class VelocityKind { Mean, Propulsive, Peak };

/// "mean", "propulsive", "peak": the words of files and JSON.
std::string_view word(VelocityKind kind);
std::optional<VelocityKind> velocityKindFromWord(std::string_view word);

/// Which rep of a set makes its point.
enum class PointRule { Fastest, Mean };

/// "fastest", "mean".
std::string_view word(PointRule rule);
std::optional<PointRule> pointRuleFromWord(std::string_view word);

/// A minimal-velocity threshold (MVT) and where it came from.
struct Mvt {
    enum class Origin { Athlete, Coach, Published };
    double value = 0;           ///< m/s
    std::optional<double> sd{}; ///< m/s; unknown when absent
    Origin origin = Origin::Coach;
    std::string source{}; ///< a short citation, or the coach's own words
    int count = 0;        ///< true maxima behind it (Origin::Athlete only)
    /// Degrees of freedom of sd; infinite where it is a published or the coach's figure.
    double sdDf = std::numeric_limits<double>::infinity();
    friend bool operator==(const Mvt&, const Mvt&) = default;
};

struct Lift {
    std::string name{};
    VelocityKind kind = VelocityKind::Mean;
    PointRule rule = PointRule::Fastest;
    bool ballistic = false;   ///< thrown or jumped: has a line, and no 1RM
    bool movesBody = false;   ///< the load of its line is the added load and the body mass
    std::optional<Mvt> mvt{}; ///< Origin::Coach or Origin::Published
    std::optional<double> smallestVelocity{}; ///< the coach's own smallest change that matters, m/s
    std::optional<double> smallestOneRm{};    ///< the same for the 1RM, kg
    std::string note{};
    friend bool operator==(const Lift&, const Lift&) = default;
};

} // namespace slopebook
