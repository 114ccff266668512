// SPDX-License-Identifier: GPL-3.0-or-later
// Who waits to write into a log is seen by who holds it up for long, in this program and in every
// other on this machine (folderbyte.h).
#pragma once

#include "core/log/folderbyte.h"
#include "core/log/log.h"
#include "core/log/typists.h"

#include <filesystem>

namespace slopebook::log {

class Connection;

/// As long as it stands somebody is seen to wait for that log. Never throws.
class Asking {
public:
    explicit Asking(const std::filesystem::path& log) noexcept
        : m_byte(log, FolderByte::Says::Waiting) {
        m_byte.hold();
    }

private:
    FolderByte m_byte;
};

/// Whether somebody waits for that log, whoever it is.
class AskedFor : public Anybody {
public:
    explicit AskedFor(const std::filesystem::path& log) noexcept
        : Anybody(log, FolderByte::Says::Waiting) {}
};

/// As long as it stands, each transaction that writes through that log's connection begins only
/// once nobody else waits for the log: SQLite lets in whoever asks first, and on a busy machine who
/// waits may sleep for longer than it is free. Not for ever: others may hold it up likewise, and
/// always wait.
class LetsIn {
public:
    explicit LetsIn(const Log& log);
    ~LetsIn();
    LetsIn(const LetsIn&) = delete;
    LetsIn& operator=(const LetsIn&) = delete;

    static void await(const AskedFor& asked);

private:
    Connection& m_connection;
    AskedFor m_asked;
    const AskedFor* m_before; ///< one in another is one
};

/// What is read or written through that log's connection while this stands is broken off within
/// some thousand steps of SQLite's once somebody waits to write: it throws LogError then, and what
/// was begun is taken back. What is long to take back gives way as soon as somebody types: it is
/// gone before he enters.
class GivesWay {
public:
    explicit GivesWay(const Log& log);
    ~GivesWay();
    GivesWay(const GivesWay&) = delete;
    GivesWay& operator=(const GivesWay&) = delete;

    /// Whether it was this that broke something off.
    bool gaveWay() const { return m_gaveWay; }
    /// From now on to who types as well. Throws LogError where somebody does.
    void alsoToTypists();
    /// Before a transaction is committed, which nothing may break off. Throws LogError where it
    /// would give way; else nothing does from now on.
    void end();

private:
    static int look(void* self);
    [[noreturn]] void giveWay();

    const Log& m_log;
    AskedFor m_asked;
    Typists m_typists;
    bool m_alsoToTypists = false, m_gaveWay = false;
};

/// What SQLite does while another has the log: short waits, for 2 s in all. Of its busy handler.
int waitWhileBusy(void* of, int waits);

} // namespace slopebook::log
