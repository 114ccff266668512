// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/scanrows.h"

#include "core/log/failure.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <utility>

namespace slopebook::log {

Rows::Rows(const Connection& connection, const char* sql) : m_connection(connection) {
    sqlite3_stmt* statement = nullptr;
    require(sqlite3_prepare_v2(connection.database().getHandle(), sql, -1, &statement, nullptr));
    m_statement.reset(statement);
}

void Rows::bind(std::int64_t value) {
    sqlite3_reset(m_statement.get());
    require(sqlite3_bind_int64(m_statement.get(), 1, value));
}

void Rows::bindSecond(const std::string& value) {
    require(sqlite3_bind_text(m_statement.get(), 2, value.data(), static_cast<int>(value.size()),
                              SQLITE_TRANSIENT));
}

bool Rows::next() {
    const int result = sqlite3_step(m_statement.get());
    if (result == SQLITE_ROW)
        return true;
    if (result != SQLITE_DONE)
        require(result);
    return false;
}

std::int64_t Rows::integer(int column) const {
    return sqlite3_column_int64(m_statement.get(), column);
}

double Rows::real(int column) const {
    return sqlite3_column_double(m_statement.get(), column);
}

bool Rows::null(int column) const {
    return sqlite3_column_type(m_statement.get(), column) == SQLITE_NULL;
}

std::string_view Rows::text(int column) const {
    const int size = sqlite3_column_bytes(m_statement.get(), column);
    if (size == 0)
        return {};
    const void* bytes = sqlite3_column_text(m_statement.get(), column);
    return {static_cast<const char*>(bytes), static_cast<std::size_t>(size)};
}

void Rows::require(int result) const {
    sqlite3* const db = m_connection.database().getHandle();
    if (result != SQLITE_OK)
        m_connection.fail(sqlite3_extended_errcode(db), sqlite3_errmsg(db));
}

void Rows::Finalize::operator()(sqlite3_stmt* statement) const {
    sqlite3_finalize(statement);
}

OfSessions ofSessions(const std::string& columns, const std::string& table,
                      const std::string& order) {
    const std::string beside =
        "SELECT " + columns +
        "(SELECT id AS head, athlete, day, ordinal AS number FROM sessions) JOIN " + table +
        " ON session = head ";
    return {.every = beside + "ORDER BY athlete, day, number, " + order,
            .oneAthletes = beside + "WHERE athlete = ? ORDER BY day, number, " + order,
            .from = "SELECT " + columns + table + " WHERE session >= ? ORDER BY session, " + order};
}

void RowsOfSessions::readAll(std::optional<AthleteId> athlete) {
    m_rows.emplace(m_connection, athlete ? m_sql.oneAthletes.c_str() : m_sql.every.c_str());
    if (athlete)
        m_rows->bind(raw(*athlete));
    m_inOrder = true;
    try {
        step();
    } catch (const LogError&) {
        m_inOrder = false; // said when its session is read
    }
}

bool RowsOfSessions::seek(std::int64_t session) {
    if (m_inOrder || (m_at && m_session == session))
        return m_at && m_session == session;
    if (!m_sought)
        m_sought = &m_rows.emplace(m_connection, m_sql.from.c_str());
    m_at = false;
    m_sought->bind(session);
    step();
    return m_at && m_session == session;
}

bool RowsOfSessions::next() {
    const auto before = m_session;
    step();
    return m_at && m_session == before;
}

void RowsOfSessions::pass(std::int64_t session) {
    while (m_inOrder && m_at && m_session == session)
        step();
}

void RowsOfSessions::step() {
    const bool inOrder = std::exchange(m_inOrder, false); // should the step fail
    m_at = false;
    m_at = m_rows->next();
    if (m_at)
        m_session = m_rows->integer(0);
    m_inOrder = inOrder;
}

} // namespace slopebook::log
