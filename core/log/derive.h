// SPDX-License-Identifier: GPL-3.0-or-later
// Names among other logs for what has none yet: derived from what it is and where it stands, never
// from what it says, so that two copies of one log, brought up to date apart, know each other's.
#pragma once

#include "core/log/atoms.h"

#include <functional>

namespace slopebook::log {

/// Everything that stands in the log, with its place, what it says, and the name that
/// would be derived for it. What others speak of comes before them. uuids must know each once it
/// has been visited.
void visitThings(Connection& db, const UuidOf& uuids,
                 const std::function<void(const AtomKey&, const Content& said,
                                          const std::function<Sixteen()>& derived)>& visit);
/// The same of what one session holds.
void visitSession(Connection& db, const UuidOf& uuids, SessionId session,
                  const std::function<void(const AtomKey&, const Content& said,
                                           const std::function<Sixteen()>& derived)>& visit);

/// Gives each thing without one a derived UUID. The caller holds the transaction.
void deriveAtoms(Connection& db);

} // namespace slopebook::log
