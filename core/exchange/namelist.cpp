// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/namelist.h"

#include "core/model/names.h"

#include <algorithm>

namespace slopebook::exchange {

void NameList::known(const std::string& name) {
    std::vector<std::string>& ofKey = m_known[nameKey(name)];
    if (std::ranges::find(ofKey, name) == ofKey.end())
        ofKey.push_back(name);
}

void NameList::alsoKnown(const std::string& name) {
    if (!m_known.contains(nameKey(name)))
        known(name);
}

int NameList::add(const std::string& spelled) {
    const auto [it, isNew] = m_at.try_emplace(spelled, static_cast<int>(m_names.size()));
    if (isNew)
        m_names.push_back(spelled);
    return it->second;
}

std::optional<int> NameList::index(const std::string& name) {
    if (m_lastAt >= 0 && m_last == name)
        return m_lastAt;
    m_last = name;
    if (const auto it = m_at.find(name); it != m_at.end())
        return m_lastAt = it->second;
    const std::string key = nameKey(name);
    if (const auto it = m_known.find(key); it != m_known.end()) {
        const std::vector<std::string>& ofKey = it->second;
        const bool exact = std::ranges::find(ofKey, name) != ofKey.end();
        if (!exact && ofKey.size() > 1) {
            m_lastAt = -1;
            return std::nullopt;
        }
        m_lastAt = add(exact ? name : ofKey.front());
    } else if (const auto known = m_byKey.find(key); known != m_byKey.end()) {
        m_lastAt = known->second;
    } else {
        m_lastAt = add(tidyName(name).value_or(name));
        m_byKey.emplace(key, m_lastAt);
    }
    m_at.emplace(name, m_lastAt);
    return m_lastAt;
}

} // namespace slopebook::exchange
