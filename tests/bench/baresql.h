// SPDX-License-Identifier: GPL-3.0-or-later
// SQLite's own C interface with nothing in between: what the log is measured against.
#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <filesystem>
#include <optional>
#include <stdexcept>
#include <string>

namespace slopebook::bench {

/// One open database. Throws std::runtime_error in SQLite's words.
class BareSql {
public:
    explicit BareSql(const std::filesystem::path& file) {
        require(sqlite3_open(file.c_str(), &m_db));
    }
    ~BareSql() { sqlite3_close(m_db); }
    BareSql(const BareSql&) = delete;
    BareSql& operator=(const BareSql&) = delete;

    void execute(const char* sql) { require(sqlite3_exec(m_db, sql, nullptr, nullptr, nullptr)); }
    void require(int result) const {
        if (result != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(m_db));
    }
    sqlite3* handle() const { return m_db; }

private:
    sqlite3* m_db = nullptr;
};

class BareStatement {
public:
    BareStatement(const BareSql& db, const char* sql) : m_db(db) {
        db.require(sqlite3_prepare_v2(db.handle(), sql, -1, &m_statement, nullptr));
    }
    ~BareStatement() { sqlite3_finalize(m_statement); }
    BareStatement(const BareStatement&) = delete;
    BareStatement& operator=(const BareStatement&) = delete;

    bool next() {
        const int result = sqlite3_step(m_statement);
        if (result != SQLITE_ROW && result != SQLITE_DONE)
            throw std::runtime_error(sqlite3_errmsg(m_db.handle()));
        return result == SQLITE_ROW;
    }
    std::int64_t integer(int column) const { return sqlite3_column_int64(m_statement, column); }
    double real(int column) const { return sqlite3_column_double(m_statement, column); }

    /// Binds the values and runs it to its end.
    template <class... Values>
    void run(const Values&... values) {
        int index = 0;
        (bind(++index, values), ...);
        while (next()) {
        }
        sqlite3_reset(m_statement);
    }

private:
    void bind(int i, std::int64_t value) { sqlite3_bind_int64(m_statement, i, value); }
    void bind(int i, int value) { sqlite3_bind_int64(m_statement, i, value); }
    void bind(int i, double value) { sqlite3_bind_double(m_statement, i, value); }
    void bind(int i, const std::string& value) {
        sqlite3_bind_text(m_statement, i, value.data(), static_cast<int>(value.size()),
                          SQLITE_TRANSIENT);
    }
    void bind(int i, const char* value) { bind(i, std::string(value)); }
    template <class Value>
    void bind(int i, const std::optional<Value>& value) {
        if (value)
            bind(i, *value);
        else
            sqlite3_bind_null(m_statement, i);
    }

    const BareSql& m_db;
    sqlite3_stmt* m_statement = nullptr;
};

} // namespace slopebook::bench
