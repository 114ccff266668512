// SPDX-License-Identifier: GPL-3.0-or-later
// What of a set just typed is hard to believe beside today's other sets and last time's: to be
// asked about before it is kept, never to be changed.
#pragma once

#include "core/model/session.h"
#include "core/model/words.h"

#include <optional>

namespace slopebook::answers {

struct Doubt {
    enum class Kind {
        Speed,         ///< far from the line at that load
        WithinSet,     ///< under half of the set's fastest rep, though a later rep is fast again
        RisesWithLoad, ///< faster than a clearly lighter load of today
        Heavy,         ///< far above every load known
        Light          ///< far below every load known
    };
    Kind kind = Kind::Speed;
    double typed = 0; ///< m/s; kg for Heavy and Light
    double expected =
        0;             ///< m/s: the line's, the set's fastest, the lighter load's; kg: the nearest
    Mass other = {};   ///< the lighter load of RisesWithLoad
    bool today = true; ///< expected by today's sets, else by last time's
    friend bool operator==(const Doubt&, const Doubt&) = default;
};

/// A speed is far where the fastest rep, or a rep above it, differs from the line by more than 0.20
/// m/s and 30 % of what the line says. The line is today's from three loads on, else last time's,
/// both only near their own loads. A speed rises where it exceeds that of a load at least 2.5 %
/// lighter by more than 0.06 m/s. A load is far above 1.5 times last time's and today's heaviest
/// (with no last time: 5 times today's), far below under a fifth of the lightest. Common practice.
/// today, last: nothing where there is no such session.
std::optional<Doubt> doubt(const Set& typed, const LiftSession* today, const LiftSession* last);

/// What is doubted, and what it is doubted by: "0.98 m/s? Today's line says about 0.60 m/s at that
/// load."
Words doubtWords(const Doubt& doubt);

} // namespace slopebook::answers
