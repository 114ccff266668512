// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/asking.h"

#include "core/log/failure.h"
#include "core/log/impl.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <chrono>
#include <fcntl.h>
#include <limits>
#include <sys/stat.h>
#include <system_error>
#include <thread>
#include <unistd.h>

namespace slopebook::log {

namespace {
namespace fs = std::filesystem;

/// So many of SQLite's steps are some tenths of a millisecond.
constexpr int stepsBetweenLooks = 1000;

/// The folder that the log's file lies in; -1: there is none to be read. Never the log itself:
/// who closes that drops the locks that SQLite holds on it.
int folderOf(const fs::path& log) noexcept {
    try {
        std::error_code error;
        const fs::path file = fs::canonical(log, error);
        return error ? -1 : ::open(file.parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    } catch (const std::exception&) {
        return -1;
    }
}

/// The byte that stands for that log among those of its folder: of its inode's number.
long byteOf(const fs::path& log) noexcept {
    struct stat status {};
    if (::stat(log.c_str(), &status) != 0)
        return 0;
    return static_cast<long>(status.st_ino &
                             static_cast<ino_t>(std::numeric_limits<long>::max() - 1));
}

// Of an open folder, not of the process (F_SETLK): threads see each other's as well, and another
// opening of the folder that is closed drops none.
struct flock lockOn(long byte, short type) noexcept {
    struct flock lock {};
    lock.l_type = type;
    lock.l_whence = SEEK_SET;
    lock.l_start = byte;
    lock.l_len = 1;
    return lock;
}

void closeFolder(int folder) noexcept {
    if (folder >= 0)
        ::close(folder);
}

sqlite3* handleOf(const Log& log) {
    return log.impl().db.database().getHandle();
}
} // namespace

Asking::Asking(const fs::path& log) noexcept : m_folder(folderOf(log)) {
    if (m_folder < 0)
        return;
    struct flock lock = lockOn(byteOf(log), F_RDLCK); // many may wait
    ::fcntl(m_folder, F_OFD_SETLK, &lock);
}

Asking::~Asking() {
    closeFolder(m_folder);
}

AskedFor::AskedFor(const fs::path& log) noexcept : m_folder(folderOf(log)), m_byte(byteOf(log)) {}

AskedFor::~AskedFor() {
    closeFolder(m_folder);
}

bool AskedFor::now() const noexcept {
    struct flock lock = lockOn(m_byte, F_WRLCK); // asked for only: never held
    return m_folder >= 0 && ::fcntl(m_folder, F_OFD_GETLK, &lock) == 0 && lock.l_type != F_UNLCK;
}

GivesWay::GivesWay(const Log& log) : m_log(log), m_asked(log.file()) {
    sqlite3_progress_handler(handleOf(log), stepsBetweenLooks, &GivesWay::look, this);
}

GivesWay::~GivesWay() {
    sqlite3_progress_handler(handleOf(m_log), 0, nullptr, nullptr);
}

int GivesWay::look(void* self) {
    auto& one = *static_cast<GivesWay*>(self);
    one.m_gaveWay = one.m_gaveWay || one.m_asked.now();
    return one.m_gaveWay ? 1 : 0;
}

void GivesWay::end() {
    if (look(this) != 0)
        throw sqliteFailure(SQLITE_BUSY, 0, {}, m_log.file());
    sqlite3_progress_handler(handleOf(m_log), 0, nullptr, nullptr);
}

// Short waits of changing length: SQLite's own timeout waits up to 0.1 s between two looks and so
// loses for seconds against a program that writes without pause.
int waitWhileBusy(void* /*of*/, int waits) {
    constexpr int mostWaits = 2000; // of a millisecond each, about
    if (waits >= mostWaits)
        return 0;
    std::this_thread::sleep_for(std::chrono::microseconds(500 + waits * 7919 % 1000));
    return 1;
}

} // namespace slopebook::log
