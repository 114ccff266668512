// SPDX-License-Identifier: GPL-3.0-or-later
// What one thing of the log says now, found by its place.
#pragma once

#include "core/log/contents.h"

#include <optional>

namespace slopebook::log {

struct AtomKey;

/// Nothing where it does not stand there, or cannot be read.
std::optional<Content> contentAt(Connection& db, const AtomKey& key);

} // namespace slopebook::log
