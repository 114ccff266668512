// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/slots.h"

#include "core/model/errors.h"
#include "core/model/phrases/desks.h"

namespace slopebook::desks {

Slot Slots::of(const log::Sixteen& uuid) {
    const auto [at, isNew] = m_slots.try_emplace(uuid, static_cast<Slot>(m_known.size()));
    if (isNew)
        m_known.push_back({.uuid = uuid});
    return at->second;
}

Slot Slots::of(std::string_view kind, const log::Sixteen& uuid) {
    const Slot slot = of(uuid);
    std::string& known = m_known.at(static_cast<std::size_t>(slot)).kind;
    if (known.empty())
        known = kind;
    else if (known != kind)
        throw BadInput(say("a %1 under the identity of a %2", std::string(kind), known),
                       say("one kind of thing under one identity"));
    return slot;
}

Slot Slots::find(const log::Sixteen& uuid) const {
    const auto at = m_slots.find(uuid);
    return at == m_slots.end() ? 0 : at->second;
}

} // namespace slopebook::desks
