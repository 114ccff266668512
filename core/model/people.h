// SPDX-License-Identifier: GPL-3.0-or-later
// Who is tested, with what, and in which stretch of training.
#pragma once

#include "core/model/date.h"
#include "core/model/mass.h"
#include "core/model/sessionsaweek.h"

#include <optional>
#include <string>

namespace slopebook {

struct Athlete {
    std::string name{};
    std::string note{};
    friend bool operator==(const Athlete&, const Athlete&) = default;
};

struct Device {
    std::string name{};
    std::string note{};
    friend bool operator==(const Device&, const Device&) = default;
};

/// A training block, first to last day inclusive.
struct Block {
    std::string name{};
    Date first{};
    Date last{};
    std::optional<Mass> ceiling{};        ///< the heaviest load that was at hand
    std::string trained{};                ///< what was done in it, in the coach's words
    std::optional<SessionsAWeek> aWeek{}; ///< as planned
    std::string note{};
    constexpr bool holds(Date day) const { return first <= day && day <= last; }
    friend bool operator==(const Block&, const Block&) = default;
};

} // namespace slopebook
