// SPDX-License-Identifier: GPL-3.0-or-later
// What is taken together: what comes is written in small transactions, and nothing that hangs on
// each other is torn apart by them.
#pragma once

#include "core/log/connection.h"
#include "core/store/atom.h"

#include <vector>

namespace slopebook::meetings {

/// So many things in one transaction, if they can be parted: a set that is entered meanwhile waits
/// for no longer than they take.
constexpr std::size_t mostAtOnce = 100;

/// The places in `atoms`, in pieces to be taken one after the other: what has a name first, then
/// athlete by athlete, and session by session where none of his sessions here moves or goes;
/// choices last. All in one where something with a name goes that stands here.
std::vector<std::vector<std::size_t>> unitsOf(log::Connection& db,
                                              const std::vector<store::Atom>& atoms);

} // namespace slopebook::meetings
