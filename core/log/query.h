// SPDX-License-Identifier: GPL-3.0-or-later
// One use of a prepared statement: bind, step, read. Given back to its connection when it ends.
#pragma once

#include "core/log/connection.h"
#include "core/log/uuid.h"
#include "core/model/date.h"
#include "core/model/exactmass.h"
#include "core/model/mass.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <type_traits>

namespace slopebook::log {

/// Literals one after another: texts of SQL that begin with the same columns.
template <std::size_t... sizes>
constexpr auto joined(const char (&... parts)[sizes]) {
    std::array<char, (sizes + ...) - sizeof...(sizes) + 1> text{};
    auto at = text.begin();
    ((at = std::copy_n(parts, sizes - 1, at)), ...);
    return text;
}

/// Bytes to be bound as such.
struct Blob {
    std::string_view bytes{};
};

class Query {
public:
    /// sql must outlive the connection: statements are kept by it.
    Query(Connection& connection, const char* sql);
    template <class... Values>
    Query(Connection& connection, const char* sql, const Values&... values)
        : Query(connection, sql) {
        int index = 0;
        (bind(++index, values), ...);
    }
    ~Query();
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    /// Binds the parameter, counted from 1.
    void bind(int index, std::int64_t value);
    void bind(int index, double value);
    void bind(int index, const std::string& value);
    void bind(int index, const Sixteen& value);
    void bind(int index, const Blob& value);
    void bind(int index, Date value) { bind(index, isoDate(value)); }
    void bind(int index, bool value) { bind(index, std::int64_t{value}); }
    void bind(int index, int value) { bind(index, std::int64_t{value}); }
    void bind(int index, Mass value) { bind(index, value.grams); }
    void bind(int index, ExactMass value) { bind(index, value.units); }
    template <class Id>
    requires std::is_enum_v<Id>
    void bind(int index, Id id) { bind(index, static_cast<std::int64_t>(id)); }
    template <class Value>
    void bind(int index, const std::optional<Value>& value) {
        if (value)
            bind(index, *value);
        else
            bindNull(index);
    }

    /// Steps to the next row; false after the last.
    bool next();
    /// For what has no rows to read; gives the number of rows changed.
    int run();
    /// To bind anew and step from the start.
    void again();

    // The row's columns, counted from 0.
    bool null(int column) const;
    std::int64_t integer(int column) const;
    double real(int column) const;
    std::string text(int column) const; ///< or the bytes that stand there
    /// Throws LogError (Damaged) when no 16 bytes stand there.
    Sixteen sixteen(int column) const;
    /// Throws LogError (Damaged) when no date stands there.
    Date date(int column) const;
    bool flag(int column) const { return integer(column) != 0; }
    int small(int column) const { return static_cast<int>(integer(column)); }
    Mass mass(int column) const { return Mass{integer(column)}; }
    template <class Id>
    Id id(int column) const {
        return static_cast<Id>(integer(column));
    }
    std::optional<double> optionalReal(int column) const;
    std::optional<Mass> optionalMass(int column) const;
    std::optional<std::int64_t> optionalInteger(int column) const {
        return null(column) ? std::nullopt : std::optional(integer(column));
    }
    template <class Id>
    std::optional<Id> optionalId(int column) const {
        return null(column) ? std::nullopt : std::optional<Id>(id<Id>(column));
    }

private:
    void bindNull(int index);

    Connection& m_connection;
    const char* m_sql;
    std::unique_ptr<SQLite::Statement> m_statement;
};

} // namespace slopebook::log
