// SPDX-License-Identifier: GPL-3.0-or-later
// The names of an import beside those of the log.
#pragma once

#include "core/exchange/staging.h"
#include "core/exchange/whois.h"
#include "core/log/log.h"

#include <set>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// Has the staging take the log's spelling of athletes and lifts.
void tellNames(const log::Log& log, Staging& staging);

/// Which of the athletes that files name, as they are spelled there, are new and nearly another;
/// listed: as in nearNames().
std::vector<NearName> nearlyKnown(const log::Log& log, const std::vector<std::string>& spelled,
                                  const std::set<std::string>& listed, const WhoIsWho& who);

} // namespace slopebook::exchange
