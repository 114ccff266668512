// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/whois.h"

#include "core/model/names.h"
#include "core/model/nearnames.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {

Words whoExpected(const NearName& near) {
    return near.inLog ? say("to be told whether that is \"%1\", who is in the log, or somebody new",
                            near.like)
                      : say("to be told whether that is \"%1\", who is new as well, or somebody "
                            "else",
                            near.like);
}

} // namespace

const std::string& WhoIsWho::named(const std::string& name) const {
    const std::string key = nameKey(name);
    const auto it =
        std::ranges::find_if(same, [&](const auto& entry) { return nameKey(entry.first) == key; });
    return it == same.end() ? name : it->second;
}

bool WhoIsWho::isNew(const std::string& name) const {
    const std::string key = nameKey(name);
    return allNew ||
           std::ranges::any_of(somebodyNew, [&](const auto& each) { return nameKey(each) == key; });
}

std::vector<NearName> nearNames(const std::vector<std::string>& ofLog,
                                const std::vector<std::string>& fresh,
                                const std::set<std::string>& listed, const WhoIsWho& said) {
    std::vector<NearName> found;
    if (said.allNew || fresh.empty())
        return found;
    NearNames known, met;
    for (const std::string& name : ofLog)
        known.add(name);
    for (const std::string& name : fresh) {
        if (!said.isNew(name)) {
            const auto inLog = known.nearTo(name);
            if (!inLog.empty()) {
                found.push_back({.name = name, .like = inLog.front(), .inLog = true});
            } else {
                for (const std::string& like : met.nearTo(name)) {
                    if (listed.contains(name) && listed.contains(like))
                        continue;
                    found.push_back({.name = name, .like = like, .inLog = false});
                    break;
                }
            }
        }
        met.add(name);
    }
    return found;
}

Undecided::Undecided(std::vector<NearName> names)
    : BadInput(say("the new athlete \"%1\"", names.front().name), whoExpected(names.front())),
      m_names(std::move(names)) {}

} // namespace slopebook::exchange
