// SPDX-License-Identifier: GPL-3.0-or-later
// A log of layout 4 on its way to the next, which makes the checksums of sessions anew: what was
// damaged before must not look sound after. Frozen as layout 4 had it.
#pragma once

#include "core/log/connection.h"
#include "core/model/ids.h"

#include <cstdint>
#include <optional>
#include <set>

namespace slopebook::log {

/// What was not as it was written.
struct Hurt {
    std::set<SessionId> sessions, batteries;
};

/// The checksums of a session as layout 4 had them.
struct FourthSums {
    std::int64_t line = 0, all = 0;
    std::optional<std::int64_t> battery{};
    friend bool operator==(const FourthSums&, const FourthSums&) = default;
};
FourthSums fourthSums(Connection& db, SessionId session);

/// Makes a device of each name that a battery's context holds and no device has, by the key that
/// names are compared by; finds what is hurt. The caller holds the transaction.
Hurt leaveFourth(Connection& db);

} // namespace slopebook::log
