// SPDX-License-Identifier: GPL-3.0-or-later
// Sees each transaction that a log commits: how many there are, how many rows each changes; and
// ends the work at one of them, as if the program were killed before it.
#pragma once

#include "core/log/connection.h"
#include "core/log/storerows.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <algorithm>
#include <cstdint>
#include <functional>

namespace slopebook::test {

class WatchedWrites {
public:
    /// cutAt: counted from 1; 0: never.
    explicit WatchedWrites(const log::Log& log, int cutAt = 0)
        : m_db(log::connectionOf(log).database().getHandle()), m_cutAt(cutAt),
          m_before(sqlite3_total_changes64(m_db)) {
        sqlite3_commit_hook(m_db, &WatchedWrites::committing, this);
    }
    ~WatchedWrites() { sqlite3_commit_hook(m_db, nullptr, nullptr); }
    WatchedWrites(const WatchedWrites&) = delete;
    WatchedWrites& operator=(const WatchedWrites&) = delete;

    int commits() const { return m_commits; }
    /// That one transaction changed at the most.
    std::int64_t mostRows() const { return m_mostRows; }
    std::int64_t allRows() const { return m_allRows; }

private:
    static int committing(void* self) {
        auto& watched = *static_cast<WatchedWrites*>(self);
        const std::int64_t now = sqlite3_total_changes64(watched.m_db);
        watched.m_mostRows = std::max(watched.m_mostRows, now - watched.m_before);
        watched.m_allRows += now - watched.m_before;
        watched.m_before = now;
        return ++watched.m_commits == watched.m_cutAt ? 1 : 0;
    }

    sqlite3* m_db;
    int m_cutAt;
    std::int64_t m_before;
    int m_commits = 0;
    std::int64_t m_mostRows = 0, m_allRows = 0;
};

} // namespace slopebook::test
