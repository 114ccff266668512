// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/seasonlift.h"

#include "core/answers/fairreps.h"
#include "core/questions/blockquestions.h"

#include <map>
#include <utility>

namespace slopebook::questions {

namespace {

void addEfforts(std::map<Mass, std::vector<double>>& efforts, const std::vector<Set>& sets) {
    std::map<Mass, std::pair<double, int>> sums;
    for (const Set& set : sets)
        if (set.effort && set.excluded.empty()) {
            sums[set.load].first += set.effort->value();
            ++sums[set.load].second;
        }
    for (const auto& [load, sum] : sums)
        efforts[load].push_back(sum.first / sum.second);
}

} // namespace

std::optional<std::size_t> columnOf(std::span<const answers::MatrixBlock> blocks, Date date,
                                    int ordinal) {
    std::optional<std::size_t> found;
    for (std::size_t j = 0; j < blocks.size(); ++j)
        if (blocks[j].block.holds(date) && ordinal == blocks[j].session.value_or(ordinal) &&
            (!found || blocks[*found].block.first <= blocks[j].block.first))
            found = j;
    return found;
}

answers::SeasonLift
seasonLift(const log::Log& log, const std::shared_ptr<const LiftContext>& context,
           const std::shared_ptr<const Background>& about, std::size_t columns,
           const std::function<std::optional<std::size_t>(const LiftSession&)>& column,
           const AskSettings& settings, SetsOnce& once) {
    answers::SeasonLift lift{
        .lift = about->lift, .mvt = about->mvt, .checkLoads = about->checkLoads};
    std::vector<LiftSession> all;
    std::vector<std::size_t> places;
    std::vector<std::vector<Set>> sets;
    for (const LiftSession& session : about->sessions)
        if (const auto place = column(session)) {
            all.push_back(session);
            places.push_back(*place);
            sets.push_back(once.of(session));
        }
    all = answers::fairRepsOfAll(about->lift.value, std::move(all), sets);
    lift.blocks.resize(columns);
    lift.efforts.resize(columns);
    for (std::size_t i = 0; i < all.size(); ++i) {
        lift.blocks[places[i]].sessions.push_back(all[i]);
        addEfforts(lift.efforts[places[i]], sets[i]);
    }
    using Known = std::map<std::pair<SessionId, SessionId>, answers::BlockSettings>;
    const auto known = std::make_shared<Known>();
    lift.settings = [&log, about, context, known, settings](const LiftSession& from,
                                                            const LiftSession& to) {
        const std::pair key{from.session, to.session};
        if (const auto place = known->find(key); place != known->end())
            return place->second;
        auto made = blockSettings(log, *context, *about, from, to, settings);
        made.asManyReps = {}; // they are alike already, over all blocks
        return known->emplace(key, std::move(made)).first->second;
    };
    return lift;
}

} // namespace slopebook::questions
