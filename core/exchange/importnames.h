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

/// The athletes of the log.
std::vector<std::string> athleteNames(const log::Log& log);

/// Which of the athletes that files name, as they are spelled there, are new and nearly another
/// (ofLog: the log's, before any of these went in); listed: as in nearNames().
std::vector<NearName> nearlyKnown(const std::vector<std::string>& ofLog,
                                  const std::vector<std::string>& spelled,
                                  const std::set<std::string>& listed, const WhoIsWho& who);

} // namespace slopebook::exchange
