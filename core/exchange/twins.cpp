// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/twins.h"

#include "core/model/few.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

namespace slopebook::exchange {

namespace {

template <class List>
void addTwins(std::vector<Words>& all, const List& list, Phrase phrase) {
    std::vector<std::string> names;
    for (const auto& stored : list)
        names.push_back(stored.value.name);
    for (const auto& same : sameNames(names)) {
        std::vector<std::string> spellings;
        for (const std::size_t at : same)
            spellings.push_back("\"" + names[at] + "\"");
        all.push_back(say(phrase, same.size(), few(spellings)));
    }
}

} // namespace

std::vector<Words> twins(const log::Log& log) {
    std::vector<Words> all;
    addTwins(
        all, log.athletes(),
        "%1 athletes have one name in different spellings (%2): if they are one, their sessions "
        "stand apart; if not, give each a name of their own.");
    addTwins(all, log.lifts(),
             "%1 lifts have one name in different spellings (%2): their points stand on different "
             "lines.");
    addTwins(all, log.devices(), "%1 devices have one name in different spellings (%2).");
    addTwins(all, log.testKinds(), "%1 tests have one name in different spellings (%2).");
    return all;
}

} // namespace slopebook::exchange
