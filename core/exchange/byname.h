// SPDX-License-Identifier: GPL-3.0-or-later
// The log's things of one kind by name: the one spelled just so, else the only one of that key.
#pragma once

#include "core/model/ids.h"
#include "core/model/names.h"

#include <deque>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace slopebook::exchange {

template <class Id, class Value>
class ByName {
public:
    using One = Stored<Id, Value>;

    explicit ByName(std::vector<One> all) {
        for (One& one : all)
            add(one.id, std::move(one.value));
    }
    /// Nothing where there is none, or two of that key and none spelled so. Stays good.
    One* find(const std::string& name) {
        if (const auto it = m_exact.find(name); it != m_exact.end())
            return &m_all[it->second];
        const auto it = m_byKey.find(nameKey(name));
        return it == m_byKey.end() || it->second == several ? nullptr : &m_all[it->second];
    }
    One* find(Id id) {
        const auto it = m_byId.find(static_cast<std::int64_t>(id));
        return it == m_byId.end() ? nullptr : &m_all[it->second];
    }
    /// A name that a file has for one that is there.
    void also(const std::string& name, Id id) {
        if (const auto it = m_byId.find(static_cast<std::int64_t>(id)); it != m_byId.end())
            m_exact.insert_or_assign(name, it->second);
    }
    One& add(Id id, Value value) {
        const std::size_t at = m_all.size();
        m_exact.emplace(value.name, at);
        m_byId.emplace(static_cast<std::int64_t>(id), at);
        const auto [it, isNew] = m_byKey.emplace(nameKey(value.name), at);
        if (!isNew)
            it->second = several;
        m_all.push_back({id, std::move(value)});
        return m_all.back();
    }

private:
    static constexpr std::size_t several = static_cast<std::size_t>(-1);
    std::deque<One> m_all;
    std::unordered_map<std::string, std::size_t> m_exact, m_byKey;
    std::unordered_map<std::int64_t, std::size_t> m_byId;
};

/// A name as it is kept, of one that a file has and that is not in the log.
inline std::string newName(const std::string& spelled) {
    return tidyName(spelled).value_or(spelled);
}

} // namespace slopebook::exchange
