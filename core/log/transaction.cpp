// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/transaction.h"

#include "core/log/asking.h"
#include "core/log/failure.h"
#include "core/log/query.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <optional>

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

// SQLite takes a whole transaction back by itself after some errors; what follows inside it must
// not be written as if nothing had happened.
void requireOpen(const Connection& connection) {
    if (!connection.inTransaction())
        throw LogError(Kind::Unavailable,
                       say("An error before this took back the changes that belong "
                           "together. Nothing was changed."));
}

/// While it stands, who has to wait is seen to.
class SeenToWait {
public:
    explicit SeenToWait(const Connection& connection) : m_connection(connection) {
        sqlite3_busy_handler(handle(), &SeenToWait::wait, this);
    }
    ~SeenToWait() { sqlite3_busy_handler(handle(), waitWhileBusy, nullptr); }
    SeenToWait(const SeenToWait&) = delete;
    SeenToWait& operator=(const SeenToWait&) = delete;

private:
    sqlite3* handle() const { return m_connection.database().getHandle(); }
    static int wait(void* self, int waits) {
        auto& one = *static_cast<SeenToWait*>(self);
        if (!one.m_asking)
            one.m_asking.emplace(one.m_connection.file());
        return waitWhileBusy(nullptr, waits);
    }

    const Connection& m_connection;
    std::optional<Asking> m_asking;
};

void quietly(const Connection& connection, const std::string& sql) noexcept {
    try {
        if (connection.inTransaction())
            connection.execute(sql);
    } catch (...) { // NOLINT(bugprone-empty-catch): SQLite has taken it back already
    }
}
} // namespace

ReadScope::ReadScope(Connection& connection) : m_connection(connection) {
    if (connection.inTransaction())
        return;
    connection.execute("BEGIN");
    m_mine = true;
}

ReadScope::~ReadScope() {
    if (m_mine)
        quietly(m_connection, "ROLLBACK");
}

WriteScope::WriteScope(Connection& connection, int& depth)
    : m_connection(connection), m_depth(depth), m_level(depth + 1) {
    if (connection.readOnly())
        throw LogError(Kind::ReadOnly, say("'%1' is open for reading only. Nothing was changed.",
                                           shown(connection.file())));
    if (outermost()) {
        if (connection.inTransaction())
            throw LogError(Kind::Conflict, say("The log is just being read. Nothing was changed."));
        if (connection.letsIn() != nullptr)
            LetsIn::await(*connection.letsIn());
        const SeenToWait seen(connection);
        Query(connection, "BEGIN IMMEDIATE").run();
        m_began = std::chrono::steady_clock::now();
    } else {
        requireOpen(connection);
        Query(connection, "SAVEPOINT part").run();
    }
    ++m_depth;
}

WriteScope::~WriteScope() {
    --m_depth;
    if (m_committed)
        return;
    if (outermost())
        quietly(m_connection, "ROLLBACK");
    else
        quietly(m_connection, "ROLLBACK TO part; RELEASE part");
}

void WriteScope::commit() {
    requireOpen(m_connection);
    if (outermost()) {
        const SeenToWait seen(m_connection); // for those who read
        const auto from = std::chrono::steady_clock::now();
        Query(m_connection, "COMMIT").run();
        m_connection.noteWrite(from - m_began, std::chrono::steady_clock::now() - from);
    } else {
        Query(m_connection, "RELEASE part").run();
    }
    m_committed = true;
}

} // namespace slopebook::log
