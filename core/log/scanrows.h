// SPDX-License-Identifier: GPL-3.0-or-later
// Rows as a scan reads them: by SQLite's C interface, and of tables that hang on sessions in the
// sessions' own order.
#pragma once

#include "core/log/connection.h"
#include "core/log/failure.h"
#include "core/model/ids.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace slopebook::log {

/// A statement read through SQLite's C interface: the millions of columns of a scan are worth it.
class Rows {
public:
    Rows(const Connection& connection, const char* sql) : m_connection(connection) {
        sqlite3_stmt* statement = nullptr;
        require(
            sqlite3_prepare_v2(connection.database().getHandle(), sql, -1, &statement, nullptr));
        m_statement.reset(statement);
    }
    /// Binds the first parameter, to step from the start.
    void bind(std::int64_t value) {
        sqlite3_reset(m_statement.get());
        require(sqlite3_bind_int64(m_statement.get(), 1, value));
    }
    void bindSecond(const std::string& value) {
        require(sqlite3_bind_text(m_statement.get(), 2, value.data(),
                                  static_cast<int>(value.size()), SQLITE_TRANSIENT));
    }
    bool next() {
        const int result = sqlite3_step(m_statement.get());
        if (result == SQLITE_ROW)
            return true;
        if (result != SQLITE_DONE)
            require(result);
        return false;
    }
    std::int64_t integer(int column) const {
        return sqlite3_column_int64(m_statement.get(), column);
    }
    int small(int column) const { return static_cast<int>(integer(column)); }
    double real(int column) const { return sqlite3_column_double(m_statement.get(), column); }
    bool null(int column) const {
        return sqlite3_column_type(m_statement.get(), column) == SQLITE_NULL;
    }
    std::string_view text(int column) const {
        const int size = sqlite3_column_bytes(m_statement.get(), column);
        if (size == 0)
            return {};
        const void* bytes = sqlite3_column_text(m_statement.get(), column);
        return {static_cast<const char*>(bytes), static_cast<std::size_t>(size)};
    }

private:
    void require(int result) const {
        sqlite3* const db = m_connection.database().getHandle();
        if (result != SQLITE_OK)
            m_connection.fail(sqlite3_extended_errcode(db), sqlite3_errmsg(db));
    }
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
    };
    const Connection& m_connection;
    std::unique_ptr<sqlite3_stmt, Finalize> m_statement;
};

/// The statements of one table that hangs on sessions.
struct OfSessions {
    std::string every, oneAthletes; ///< in the order of the sessions
    std::string from;               ///< from a session on, in the order of their numbers
};

inline OfSessions ofSessions(const std::string& columns, const std::string& table,
                             const std::string& order) {
    const std::string beside =
        "SELECT " + columns +
        "(SELECT id AS head, athlete, day, ordinal AS number FROM sessions) JOIN " + table +
        " ON session = head ";
    return {.every = beside + "ORDER BY athlete, day, number, " + order,
            .oneAthletes = beside + "WHERE athlete = ? ORDER BY day, number, " + order,
            .from = "SELECT " + columns + table + " WHERE session >= ? ORDER BY session, " + order};
}

/// Rows that hang on sessions, read beside them: in the sessions' own order, which spares seeking
/// each; sought one by one where single sessions are wanted, and after a row that cannot be read.
class RowsOfSessions {
public:
    RowsOfSessions(const Connection& connection, const OfSessions& sql)
        : m_connection(connection), m_sql(sql) {}
    void readAll(std::optional<AthleteId> athlete) {
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
    /// Whether a row of that session is at hand, its first one.
    bool seek(std::int64_t session) {
        if (m_inOrder || (m_at && m_session == session))
            return m_at && m_session == session;
        if (!m_sought)
            m_sought = &m_rows.emplace(m_connection, m_sql.from.c_str());
        m_at = false;
        m_sought->bind(session);
        step();
        return m_at && m_session == session;
    }
    bool next() {
        const auto before = m_session;
        step();
        return m_at && m_session == before;
    }
    /// Past what is left of that session, as where its own row could not be read.
    void pass(std::int64_t session) {
        while (m_inOrder && m_at && m_session == session)
            step();
    }
    const Rows& row() const { return *m_rows; }

private:
    void step() {
        const bool inOrder = std::exchange(m_inOrder, false); // should the step fail
        m_at = false;
        m_at = m_rows->next();
        if (m_at)
            m_session = m_rows->integer(0);
        m_inOrder = inOrder;
    }

    const Connection& m_connection;
    const OfSessions& m_sql;
    std::optional<Rows> m_rows;
    Rows* m_sought = nullptr; ///< those rows, where they are sought
    bool m_inOrder = false;
    bool m_at = false;
    std::int64_t m_session = 0;
};

} // namespace slopebook::log
