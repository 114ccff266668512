// SPDX-License-Identifier: GPL-3.0-or-later
// What programs on this machine tell one another of a log, beside what they write into it: by locks
// on bytes of the log's folder that stand for nothing else. It makes no file and writes nothing,
// and a lock goes with who holds it, however that ends. In a folder that cannot be read, or where
// the system has no such locks, nothing is told. Nothing here throws.
#pragma once

#include <filesystem>
#include <string>

namespace slopebook::log {

class FolderByte {
public:
    /// What a lock on it says: somebody waits to write; somebody types what will be written.
    enum class Says { Waiting, Typing };

    FolderByte(const std::filesystem::path& log, Says what) noexcept;
    ~FolderByte();
    FolderByte(const FolderByte&) = delete;
    FolderByte& operator=(const FolderByte&) = delete;

    /// Many may hold it. Of the file that has the log's name by now.
    void hold() noexcept;
    void letGo() noexcept;
    /// By another than this, in this program or another one.
    bool held() const noexcept;

private:
    /// Which byte it is: of the inode's number.
    long place() const noexcept;

    std::string m_log;
    Says m_says;
    int m_folder = -1; ///< open; -1: there is none to be read
    long m_place = 0;  ///< as it was when this was made
};

/// Whether somebody says that of a log, whoever it is.
class Anybody {
public:
    bool now() const noexcept { return m_byte.held(); }

protected:
    Anybody(const std::filesystem::path& log, FolderByte::Says what) noexcept : m_byte(log, what) {}

private:
    FolderByte m_byte;
};

} // namespace slopebook::log
