// SPDX-License-Identifier: GPL-3.0-or-later
// One connection to a store. It is used by one thread at a time, and never waits without asking
// whether it is to stop.
#pragma once

#include "core/model/progress.h"
#include "core/store/address.h"
#include "core/store/rows.h"

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>

struct pg_conn;

namespace slopebook::store {

class Connection {
public:
    /// stop is asked every 50 ms at least (with 0 of 0); where it says so, Cancelled is thrown. The
    /// search for the address of a name is the system's own, and cannot be stopped. Every machine
    /// that the address names, and every number that a name has, is tried in turn; what is thrown
    /// (StoreError) is of the one with which it came furthest.
    static Connection open(const Address& address, const Progress& stop = {});

    /// One statement with its values bound. Throws StoreError; Cancelled ends the connection, and
    /// the server stops what it did.
    Rows ask(const char* sql, std::span<const Param> values = {}, const Progress& stop = {});
    Rows ask(const char* sql, std::initializer_list<Param> values, const Progress& stop = {}) {
        return ask(sql, std::span(values.begin(), values.size()), stop);
    }
    /// The same, row by row as they come: no more than one is held.
    void each(const char* sql, std::span<const Param> values,
              const std::function<void(const Rows& row)>& visit, const Progress& stop = {});
    /// Statements of our own without values, one after the other in one transaction.
    void run(const char* script, const Progress& stop = {});
    /// COPY ... FROM STDIN: more() gives the next lines, and nothing at the end.
    void copyIn(const char* sql, const std::function<std::string()>& more,
                const Progress& stop = {});

    /// Whether the store told of something new (LISTEN) within that time, that came by another
    /// connection than this one.
    bool waitForNews(std::chrono::milliseconds time, const Progress& stop = {});

    const Asked& asked() const { return m_asked; }
    bool encrypted() const;
    bool usedPassword() const;
    int serverVersion() const; ///< 150006 is 15.6
    bool open() const { return m_connection != nullptr; }

private:
    explicit Connection(Asked asked) : m_asked(std::move(asked)) {}
    /// Nothing where it is open; of what can be tried elsewhere the failure.
    std::optional<StoreError> begin(const Address& address, const Host& host, const Progress& stop);
    void settle(const Progress& stop);
    using Until = std::chrono::steady_clock::time_point;
    /// false: that time was over first
    bool wait(short events, const Progress& stop, std::optional<Until> end = {});
    void flush(const Progress& stop);
    pg_result* next(const Progress& stop);
    Rows last(const Progress& stop);
    void requireOpen() const;
    [[noreturn]] void lost();
    [[noreturn]] void refuse(pg_result* result, const Progress& stop);
    void cancel();

    struct Finish {
        void operator()(pg_conn* connection) const;
    };
    std::unique_ptr<pg_conn, Finish> m_connection;
    Asked m_asked;
};

/// A transaction of a connection: taken back unless it was kept.
class Moment {
public:
    /// begin: "BEGIN ISOLATION LEVEL ...".
    Moment(Connection& connection, const char* begin, const Progress& stop = {});
    ~Moment();
    Moment(const Moment&) = delete;
    Moment& operator=(const Moment&) = delete;
    void keep(const Progress& stop = {});

private:
    Connection& m_connection;
    bool m_kept = false;
};

} // namespace slopebook::store
