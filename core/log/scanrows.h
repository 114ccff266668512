// SPDX-License-Identifier: GPL-3.0-or-later
// Rows as a scan reads them: by SQLite's C interface, and of tables that hang on sessions in the
// sessions' own order.
#pragma once

#include "core/log/connection.h"
#include "core/model/ids.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace slopebook::log {

/// A statement read through SQLite's C interface: the millions of columns of a scan are worth it.
/// Throws LogError.
class Rows {
public:
    Rows(const Connection& connection, const char* sql);
    /// Binds the first parameter, to step from the start.
    void bind(std::int64_t value);
    void bindSecond(const std::string& value);
    bool next();
    std::int64_t integer(int column) const;
    int small(int column) const { return static_cast<int>(integer(column)); }
    double real(int column) const;
    bool null(int column) const;
    /// Until the next step.
    std::string_view text(int column) const;

private:
    void require(int result) const;
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    const Connection& m_connection;
    std::unique_ptr<sqlite3_stmt, Finalize> m_statement;
};

/// The statements of one table that hangs on sessions.
struct OfSessions {
    std::string every, oneAthletes; ///< in the order of the sessions
    std::string from;               ///< from a session on, in the order of their numbers
};
/// columns: "session, ... FROM "; order: of the rows of one session.
OfSessions ofSessions(const std::string& columns, const std::string& table,
                      const std::string& order);

/// Rows that hang on sessions, read beside them: in the sessions' own order, which spares seeking
/// each; sought one by one where single sessions are wanted, and after a row that cannot be read.
/// Throws LogError.
class RowsOfSessions {
public:
    RowsOfSessions(const Connection& connection, const OfSessions& sql)
        : m_connection(connection), m_sql(sql) {}
    void readAll(std::optional<AthleteId> athlete);
    /// Whether a row of that session is at hand, its first one.
    bool seek(std::int64_t session);
    bool next();
    /// Past what is left of that session, as where its own row could not be read.
    void pass(std::int64_t session);
    const Rows& row() const { return *m_rows; }

private:
    void step();

    const Connection& m_connection;
    const OfSessions& m_sql;
    std::optional<Rows> m_rows;
    Rows* m_sought = nullptr; ///< those rows, where they are sought
    bool m_inOrder = false;
    bool m_at = false;
    std::int64_t m_session = 0;
};

} // namespace slopebook::log
