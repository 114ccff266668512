// SPDX-License-Identifier: GPL-3.0-or-later
// What speaks of a thing with a name: who it would be missed by if it went.
#pragma once

#include "core/log/connection.h"
#include "core/log/uuid.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace slopebook::log {

/// The UUIDs of what stands in the log and speaks of that athlete, lift, test, device or station;
/// of more than `most` as many as show that there are more. The caller holds one moment or a
/// transaction.
std::vector<Sixteen> uuidsSpeakingOf(Connection& db, const std::string& kind, std::int64_t key,
                                     std::size_t most);

/// The keys and names of all athletes, blocks, sets of equipment or stations, whatever else they
/// say.
std::vector<std::pair<std::int64_t, std::string>> namesIn(Connection& db, std::string_view kind);

} // namespace slopebook::log
