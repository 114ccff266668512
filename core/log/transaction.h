// SPDX-License-Identifier: GPL-3.0-or-later
// Scopes on a connection: what is read in one is of one moment, what is written in one stands or
// falls together.
#pragma once

#include "core/log/connection.h"

namespace slopebook::log {

/// Begins when made, unless a transaction is open already, and ends with the scope.
class ReadScope {
public:
    explicit ReadScope(Connection& connection);
    ~ReadScope();
    ReadScope(const ReadScope&) = delete;
    ReadScope& operator=(const ReadScope&) = delete;

private:
    Connection& m_connection;
    bool m_mine = false;
};

/// Begins when made, inside another one as a part of it, and is taken back unless committed.
class WriteScope {
public:
    /// depth: how many of them are open on the connection, kept by its owner.
    WriteScope(Connection& connection, int& depth);
    ~WriteScope();
    WriteScope(const WriteScope&) = delete;
    WriteScope& operator=(const WriteScope&) = delete;

    bool outermost() const { return m_level == 1; }
    void commit();

private:
    Connection& m_connection;
    int& m_depth;
    int m_level;
    std::chrono::steady_clock::time_point m_began;
    bool m_committed = false;
};

} // namespace slopebook::log
