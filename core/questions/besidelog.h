// SPDX-License-Identifier: GPL-3.0-or-later
// A place beside an open log for what was worked out of it, one for each kind of thing.
#pragma once

#include "core/log/history.h"

#include <any>
#include <map>
#include <typeindex>

namespace slopebook::questions {

/// Made empty when it is first asked for; goes with the log. Whether it still holds is for whoever
/// keeps it to ask.
template <class Kept>
Kept& besideLog(const log::Log& log) {
    using All = std::map<std::type_index, std::any>;
    std::any& room = log::keptBeside(log);
    if (!room.has_value())
        room = All{};
    std::any& mine = std::any_cast<All&>(room)[typeid(Kept)];
    if (!mine.has_value())
        mine = Kept{};
    return std::any_cast<Kept&>(mine);
}

} // namespace slopebook::questions
