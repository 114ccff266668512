// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/takennames.h"

#include "core/model/names.h"

namespace slopebook::log {

std::vector<std::int64_t> TakenNames::withKey(Connection& db, const char* select,
                                              const std::string& key) {
    Query version(db, "PRAGMA data_version");
    version.next();
    if (const auto now = version.integer(0); now != m_version) {
        m_by.clear();
        Query rows(db, select);
        while (rows.next())
            m_by[nameKey(rows.text(2))].push_back(rows.integer(0));
        m_version = now;
    }
    const auto it = m_by.find(key);
    return it == m_by.end() ? std::vector<std::int64_t>{} : it->second;
}

void TakenNames::note(const std::string& name, std::int64_t id) {
    m_by[nameKey(name)].push_back(id);
}

} // namespace slopebook::log
