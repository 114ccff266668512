// SPDX-License-Identifier: GPL-3.0-or-later
// Who waits to write into a log is seen by who holds it up for long, in this program and in every
// other on this machine: by a lock on a byte of the log's folder that stands for nothing else. It
// makes no file and writes nothing, and goes with who waits, however that ends. In a folder that
// cannot be read, or where the system has no such locks, nobody is seen.
#pragma once

#include "core/log/log.h"

#include <filesystem>

namespace slopebook::log {

/// As long as it stands somebody is seen to wait for that log. Never throws.
class Asking {
public:
    explicit Asking(const std::filesystem::path& log) noexcept;
    ~Asking();
    Asking(const Asking&) = delete;
    Asking& operator=(const Asking&) = delete;

private:
    int m_folder = -1;
};

/// Whether somebody waits for that log, whoever it is.
class AskedFor {
public:
    explicit AskedFor(const std::filesystem::path& log) noexcept;
    ~AskedFor();
    AskedFor(const AskedFor&) = delete;
    AskedFor& operator=(const AskedFor&) = delete;
    bool now() const noexcept;

private:
    int m_folder = -1;
    long m_byte = 0;
};

/// What is read or written through that log's connection while this stands is broken off within
/// some thousand steps of SQLite's once somebody waits to write: it throws LogError then, and what
/// was begun is taken back.
class GivesWay {
public:
    explicit GivesWay(const Log& log);
    ~GivesWay();
    GivesWay(const GivesWay&) = delete;
    GivesWay& operator=(const GivesWay&) = delete;

    /// Whether it was this that broke something off.
    bool gaveWay() const { return m_gaveWay; }
    /// Before a transaction is committed, which nothing may break off. Throws LogError where
    /// somebody waits; else nothing gives way from now on.
    void end();

private:
    static int look(void* self);

    const Log& m_log;
    AskedFor m_asked;
    bool m_gaveWay = false;
};

/// What SQLite does while another has the log: short waits, for 2 s in all. Of its busy handler.
int waitWhileBusy(void* of, int waits);

} // namespace slopebook::log
