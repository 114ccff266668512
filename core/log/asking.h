// SPDX-License-Identifier: GPL-3.0-or-later
// Who waits to write into a log is seen by who holds it up for long, in this program and in every
// other on this machine (folderbyte.h).
#pragma once

#include "core/log/folderbyte.h"
#include "core/log/log.h"
#include "core/log/typists.h"
#include "core/model/progress.h"

#include <chrono>
#include <filesystem>

namespace slopebook::log {

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
class AskedFor {
public:
    explicit AskedFor(const std::filesystem::path& log) noexcept
        : m_byte(log, FolderByte::Says::Waiting) {}
    bool now() const noexcept { return m_byte.held(); }

private:
    FolderByte m_byte;
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
    /// Before a transaction whose commit takes long: throws LogError where somebody types.
    void unlessTyped();
    /// Before that commit, the transaction written and held: until nobody types. Throws LogError
    /// where somebody waits to write, or types for longer than that; Cancelled.
    void awaitTypists(std::chrono::milliseconds longest, const Progress& progress);
    /// Before a transaction is committed, which nothing may break off. Throws LogError where
    /// somebody waits; else nothing gives way from now on.
    void end();

private:
    static int look(void* self);
    [[noreturn]] void giveWay();

    const Log& m_log;
    AskedFor m_asked;
    Typists m_typists;
    bool m_gaveWay = false;
};

/// What SQLite does while another has the log: short waits, for 2 s in all. Of its busy handler.
int waitWhileBusy(void* of, int waits);

} // namespace slopebook::log
