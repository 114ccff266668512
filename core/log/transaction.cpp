// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/transaction.h"

#include "core/log/failure.h"
#include "core/log/query.h"
#include "core/model/phrases/log.h"

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
        Query(connection, "BEGIN IMMEDIATE").run();
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
    Query(m_connection, outermost() ? "COMMIT" : "RELEASE part").run();
    m_committed = true;
}

} // namespace slopebook::log
