// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonchoices.h"

#include <algorithm>
#include <map>

namespace slopebook::ui {

std::vector<std::pair<Mass, bool>> loadsToFollow(const questions::Background& about) {
    std::vector<std::pair<Mass, bool>> loads;
    for (const Mass load : about.checkLoads)
        loads.emplace_back(load, true);
    std::map<Mass, int> lifted;
    for (const LiftSession& session : about.sessions) {
        std::map<Mass, bool> here;
        for (const Point& p : session.points)
            here[massFromKilograms(p.load)] = true;
        for (const auto& [load, is] : here)
            ++lifted[load];
    }
    std::vector<std::pair<Mass, int>> others;
    for (const auto& each : lifted)
        if (std::ranges::count(about.checkLoads, each.first) == 0)
            others.push_back(each);
    std::ranges::stable_sort(others,
                             [](const auto& a, const auto& b) { return a.second > b.second; });
    for (const auto& [load, count] : others)
        loads.emplace_back(load, false);
    return loads;
}

std::optional<BlockId> firstBlock(const std::vector<Stored<BlockId, Block>>& blocks,
                                  const std::vector<LiftSession>& sessions) {
    const auto inside = [](const Block& block) {
        return [&block](const LiftSession& session) { return block.holds(session.date); };
    };
    const Stored<BlockId, Block>* first = nullptr;
    for (const auto& block : blocks)
        if (std::ranges::any_of(sessions, inside(block.value)) &&
            (!first || block.value.first < first->value.first))
            first = &block;
    if (!first || std::ranges::all_of(sessions, inside(first->value)))
        return std::nullopt;
    return first->id;
}

} // namespace slopebook::ui
