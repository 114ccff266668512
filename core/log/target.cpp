// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/target.h"

#include "core/log/failure.h"
#include "core/log/layout.h"
#include "core/model/phrases/log.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>

namespace slopebook::log {

namespace {
namespace fs = std::filesystem;

using FirstBytes = std::array<unsigned char, 72>;
constexpr std::string_view sqliteBegins{"SQLite format 3\0", 16};
constexpr std::string_view journalBegins{"\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8};

// By the numbers alone: nothing is opened.
bool openHere(const struct stat& file) {
    std::error_code error;
    for (fs::directory_iterator it("/proc/self/fd", error), end; !error && it != end;
         it.increment(error)) {
        struct stat open {};
        if (::stat(it->path().c_str(), &open) == 0 && open.st_dev == file.st_dev &&
            open.st_ino == file.st_ino)
            return true;
    }
    return false;
}

FirstBytes firstBytes(const fs::path& file) {
    FirstBytes bytes{};
    const int in = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (in < 0)
        throw systemFailure(errno, Doing::Open, file); // what it is cannot be known
    const ssize_t got = ::pread(in, bytes.data(), bytes.size(), 0);
    const int error = errno;
    ::close(in);
    if (got < 0)
        throw systemFailure(error, Doing::Open, file);
    return bytes;
}

bool begins(const FirstBytes& bytes, std::string_view with) {
    return std::memcmp(bytes.data(), with.data(), with.size()) == 0;
}

bool isJournal(const fs::path& file) {
    struct stat is {};
    return ::stat(file.c_str(), &is) == 0 && S_ISREG(is.st_mode) && !openHere(is) &&
           begins(firstBytes(file), journalBegins);
}

/// "x" of "x-journal"; empty where the name does not end so.
fs::path before(const fs::path& file, std::string_view ending) {
    const std::string& name = file.native();
    return name.size() > ending.size() && name.ends_with(ending)
               ? fs::path(name.substr(0, name.size() - ending.size()))
               : fs::path();
}

// Under such a name SQLite, or this program, would take whatever stands there for its own.
bool besideALog(const fs::path& file) {
    for (const char* ending : {"-journal", "-wal", "-shm", ".backups"})
        if (const auto log = before(file, ending); !log.empty() && holdsLog(log))
            return true;
    return false;
}

bool amongBackups(const fs::path& file) {
    const auto log = before(file.parent_path(), ".backups");
    return !log.empty() && holdsLog(log);
}

[[noreturn]] void belongsToALog(const fs::path& file) {
    throw LogError(LogError::Kind::Conflict,
                   say("'%1' is a log or belongs to one; nothing else is ever written there. "
                       "Nothing was changed.",
                       shown(file)));
}

[[noreturn]] void noPlainFile(const fs::path& file) {
    throw LogError(LogError::Kind::Conflict,
                   say("'%1' is no plain file, and nothing is written in its place.", shown(file)));
}
} // namespace

bool holdsLog(const fs::path& file) {
    struct stat is {};
    if (::stat(file.c_str(), &is) != 0 || !S_ISREG(is.st_mode))
        return false;
    if (openHere(is) || isJournal(file.native() + "-journal"))
        return true;
    const auto bytes = firstBytes(file);
    const std::uint32_t id = (std::uint32_t{bytes[68]} << 24) | (std::uint32_t{bytes[69]} << 16) |
                             (std::uint32_t{bytes[70]} << 8) | std::uint32_t{bytes[71]};
    return begins(bytes, sqliteBegins) && id == static_cast<std::uint32_t>(applicationId);
}

void requireNoLogsOwn(const fs::path& file) {
    if (besideALog(file) || isJournal(file))
        belongsToALog(file);
}

Target requireWritable(const fs::path& file, Existing existing) {
    if (!file.has_filename())
        throw systemFailure(file.empty() ? ENOENT : EISDIR, Doing::Make, file);
    Target target{.path = fs::absolute(file)};
    // One name for one place, however it is spelled.
    std::error_code spelling;
    if (const auto place = fs::canonical(target.path.parent_path(), spelling); !spelling)
        target.path = place / target.path.filename();
    struct stat is {};
    if (::lstat(target.path.c_str(), &is) == 0 && S_ISLNK(is.st_mode)) {
        std::error_code error;
        const auto real = fs::canonical(target.path, error);
        if (error || ::lstat(real.c_str(), &is) != 0)
            noPlainFile(file);
        target.path = real;
        target.there = true;
    } else {
        target.there = ::lstat(target.path.c_str(), &is) == 0;
    }
    requireNoLogsOwn(target.path);
    // Known before anything is written: of two files of one command neither is then half of it.
    const fs::path folder = target.path.parent_path();
    if (::access(folder.c_str(), W_OK | X_OK) != 0)
        throw systemFailure(errno, Doing::Make, file);
    if (!target.there) {
        // Somebody's file of that name would be taken for the journal of a log that is made here.
        const fs::path journal = target.path.native() + "-journal";
        if (::lstat(journal.c_str(), &is) == 0)
            throw AlreadyThere(journal);
        return target;
    }
    if (existing == Existing::Refuse)
        throw AlreadyThere(file);
    if (!S_ISREG(is.st_mode))
        noPlainFile(file);
    if (holdsLog(target.path) || amongBackups(target.path))
        belongsToALog(file);
    // A name is given away only by who might have written into the file as well.
    if (::access(target.path.c_str(), W_OK) != 0)
        throw systemFailure(errno, Doing::Write, file);
    target.device = is.st_dev;
    target.number = is.st_ino;
    target.mode = is.st_mode & 07777;
    return target;
}

} // namespace slopebook::log
