// SPDX-License-Identifier: GPL-3.0-or-later
// A number for each UUID that is met with in a meeting of two logs, the same in both.
#pragma once

#include "core/log/uuid.h"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::desks {

/// From 1 on. It stands where a log's own key would, in the values of core/model.
using Slot = std::int64_t;

class Slots {
public:
    Slot of(const log::Sixteen& uuid);
    /// The same of something that must be of that kind. Throws BadInput where it was taken for
    /// another before.
    Slot of(std::string_view kind, const log::Sixteen& uuid);
    /// 0 where it was not met with.
    Slot find(const log::Sixteen& uuid) const;
    /// Of a slot that was given out.
    const log::Sixteen& uuid(Slot slot) const {
        return m_known.at(static_cast<std::size_t>(slot)).uuid;
    }

private:
    struct Known {
        log::Sixteen uuid{};
        std::string kind{}; ///< empty: nobody has said yet
    };
    std::map<log::Sixteen, Slot> m_slots;
    std::vector<Known> m_known{Known{}};
};

} // namespace slopebook::desks
