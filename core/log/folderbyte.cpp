// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/folderbyte.h"

#include <fcntl.h>
#include <limits>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace slopebook::log {

namespace {
namespace fs = std::filesystem;

/// The upper half of all places is for Says::Typing.
constexpr long half = std::numeric_limits<long>::max() / 2;

/// The folder that the log's file lies in; -1: there is none to be read. Never the log itself:
/// who closes that drops the locks that SQLite holds on it.
int folderAround(const fs::path& log) {
    std::error_code error;
    const fs::path file = fs::canonical(log, error);
    return error ? -1 : ::open(file.parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
}

// Of an open folder, not of the process (F_SETLK): threads see each other's as well, and another
// opening of the folder that is closed drops none.
struct flock lockOn(long from, long length, short type) noexcept {
    struct flock lock {};
    lock.l_type = type;
    lock.l_whence = SEEK_SET;
    lock.l_start = from;
    lock.l_len = length;
    return lock;
}
} // namespace

FolderByte::FolderByte(const fs::path& log, Says what) noexcept : m_says(what) {
    try {
        m_log = log.string();
        m_folder = folderAround(log);
    } catch (const std::exception&) { // no memory for a path
        return;
    }
    m_place = place();
}

FolderByte::~FolderByte() {
    if (m_folder >= 0)
        ::close(m_folder);
}

long FolderByte::place() const noexcept {
    struct stat status {};
    if (::stat(m_log.c_str(), &status) != 0)
        return 0;
    const long inode = static_cast<long>(status.st_ino % static_cast<ino_t>(half));
    return m_says == Says::Typing ? half + inode : inode;
}

void FolderByte::hold() noexcept {
    struct flock lock = lockOn(place(), 1, F_RDLCK);
    if (m_folder >= 0)
        ::fcntl(m_folder, F_OFD_SETLK, &lock);
}

void FolderByte::letGo() noexcept {
    struct flock lock = lockOn(0, 0, F_UNLCK); // whichever it was
    if (m_folder >= 0)
        ::fcntl(m_folder, F_OFD_SETLK, &lock);
}

bool FolderByte::held() const noexcept {
    struct flock lock = lockOn(m_place, 1, F_WRLCK); // asked for only: never taken
    return m_folder >= 0 && ::fcntl(m_folder, F_OFD_GETLK, &lock) == 0 && lock.l_type != F_UNLCK;
}

} // namespace slopebook::log
