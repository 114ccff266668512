// SPDX-License-Identifier: GPL-3.0-or-later
// Rows that cannot break a rule of their table, written without asking it of each.
#pragma once

#include "core/log/connection.h"

#include <functional>

namespace slopebook::log {

/// Does the work while SQLite compares no value with a CHECK, and looks up nothing that a row
/// refers to; keys, types and NOT NULL hold as ever. Whoever asks has made sure of the rest.
void onTrust(const Connection& db, const std::function<void()>& work);

} // namespace slopebook::log
