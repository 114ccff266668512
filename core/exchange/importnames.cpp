// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/importnames.h"

#include "core/exchange/byname.h"

#include <unordered_set>

namespace slopebook::exchange {

void tellNames(const log::Log& log, Staging& staging) {
    for (const auto& stored : log.athletes())
        staging.athletes.known(stored.value.name);
    for (const auto& stored : log.lifts())
        staging.liftNames.known(stored.value.name);
}

std::vector<std::string> athleteNames(const log::Log& log) {
    std::vector<std::string> names;
    for (const auto& stored : log.athletes())
        names.push_back(stored.value.name);
    return names;
}

std::vector<NearName> nearlyKnown(const std::vector<std::string>& ofLog,
                                  const std::vector<std::string>& spelled,
                                  const std::set<std::string>& listed, const WhoIsWho& who) {
    std::vector<std::string> fresh;
    std::unordered_set<std::string> keys;
    for (const std::string& name : ofLog)
        keys.insert(nameKey(name));
    for (const std::string& each : spelled)
        if (const std::string& name = who.named(each); keys.insert(nameKey(name)).second)
            fresh.push_back(newName(name));
    return nearNames(ofLog, fresh, listed, who);
}

} // namespace slopebook::exchange
