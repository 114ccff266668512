// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/blockcolumns.h"

#include "ui/words/format.h"

#include <algorithm>

namespace slopebook::ui {

std::vector<Stored<BlockId, Block>>
blocksWith(std::vector<Stored<BlockId, Block>> blocks,
           const std::vector<questions::BlockSession>& sessions) {
    std::erase_if(blocks, [&](const auto& block) {
        return std::ranges::none_of(sessions, [&](const questions::BlockSession& session) {
            return block.value.holds(session.date);
        });
    });
    std::ranges::stable_sort(blocks, {}, [](const auto& block) { return block.value.first; });
    return blocks;
}

std::vector<Stored<BlockId, Block>>
lastTwoDays(const std::vector<questions::BlockSession>& sessions) {
    std::vector<Date> days;
    for (const questions::BlockSession& session : sessions)
        if (days.empty() || days.back() != session.date)
            days.push_back(session.date);
    if (days.size() < 2)
        return {};
    std::vector<Stored<BlockId, Block>> columns;
    qint64 key = 0; // the log's own begin at 1
    for (const Date day : {days[days.size() - 2], days.back()})
        columns.push_back({.id = BlockId{--key},
                           .value = {.name = utf8(dateText(day)), .first = day, .last = day}});
    return columns;
}

bool isDayColumn(BlockId id) {
    return raw(id) < 0;
}

} // namespace slopebook::ui
