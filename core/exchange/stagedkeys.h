// SPDX-License-Identifier: GPL-3.0-or-later
// What the sessions and sets of files are told apart by.
#pragma once

#include "core/model/date.h"

#include <cstddef>
#include <tuple>

namespace slopebook::exchange {

/// What a session is told by, and a set. Each part whole: put together in one number, a file large
/// enough would have one part run into the next.
struct StagedDay {
    int athlete = 0;
    Date date{};
    int ordinal = 1;
    friend bool operator==(const StagedDay&, const StagedDay&) = default;
    friend bool operator<(const StagedDay& a, const StagedDay& b) {
        return std::tie(a.athlete, a.date, a.ordinal) < std::tie(b.athlete, b.date, b.ordinal);
    }
};
struct StagedPlace {
    int session = 0, lift = 0, number = 1;
    friend bool operator==(const StagedPlace&, const StagedPlace&) = default;
};
struct Spread { ///< over the places of a hash table; what falls together is told apart by ==
    std::size_t operator()(const StagedDay& day) const noexcept;
    std::size_t operator()(const StagedPlace& place) const noexcept;
};

} // namespace slopebook::exchange
