// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/durable.h"

#include "core/log/failure.h"
#include "core/log/strays.h"
#include "core/model/phrases/log.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace slopebook::log {

namespace {
void syncOpened(const std::filesystem::path& path, int flags) {
    const int file = ::open(path.c_str(), flags | O_CLOEXEC);
    if (file < 0)
        throw systemFailure(errno, Doing::Open, path);
    const int result = ::fsync(file);
    const int error = errno;
    ::close(file);
    // A folder on some file systems cannot be synced; its entry is then as durable as it gets.
    if (result != 0 && !((flags & O_DIRECTORY) != 0 && error == EINVAL))
        throw systemFailure(error, Doing::Write, path);
}

bool notKnownHere(int systemError) {
    return systemError == EINVAL || systemError == ENOSYS;
}

bool isTarget(const std::filesystem::path& file, const Target& target) {
    struct stat is {};
    return ::lstat(file.c_str(), &is) == 0 && S_ISREG(is.st_mode) && is.st_dev == target.device &&
           is.st_ino == target.number;
}

/// The errno of what went wrong, or 0.
int writeAll(int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t wrote = ::write(file, bytes.data(), bytes.size());
        if (wrote > 0)
            bytes.remove_prefix(static_cast<std::size_t>(wrote));
        else if (wrote == 0 || errno != EINTR)
            return wrote == 0 ? ENOSPC : errno;
    }
    return 0;
}

[[noreturn]] void changedMeanwhile(const std::filesystem::path& file) {
    throw LogError(
        LogError::Kind::Conflict,
        say("'%1' was changed by another program just now; it was left as it is.", shown(file)));
}
} // namespace

std::filesystem::path folderOf(const std::filesystem::path& path) {
    return path.has_parent_path() ? path.parent_path() : ".";
}

void syncFile(const std::filesystem::path& file) {
    syncOpened(file, O_RDONLY);
}

void syncFolder(const std::filesystem::path& folder) {
    syncOpened(folder, O_RDONLY | O_DIRECTORY);
}

void renameToFree(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
        return;
    if (errno == EEXIST)
        throw AlreadyThere(to);
    if (!notKnownHere(errno))
        throw systemFailure(errno, Doing::Write, to);
    // A file system without that call: a second name is never given over another either.
    if (::link(from.c_str(), to.c_str()) == 0) {
        ::unlink(from.c_str());
        return;
    }
    if (errno == EEXIST)
        throw AlreadyThere(to);
    // Without second names either, or a folder: the name was free a moment ago.
    if (std::filesystem::exists(std::filesystem::symlink_status(to)))
        throw AlreadyThere(to);
    if (::rename(from.c_str(), to.c_str()) != 0)
        throw systemFailure(errno, Doing::Write, to);
}

void replaceKeeping(const std::filesystem::path& file, const std::filesystem::path& with,
                    const std::filesystem::path& keptAs) {
    const std::string journal = file.string() + "-journal";
    if (!keptAs.empty()) {
        // A second name first, so that at no moment there is no log; not every file system has
        // them.
        const bool linked = ::link(file.c_str(), keptAs.c_str()) == 0;
        // A journal that stays would be played into the other file.
        if (std::filesystem::exists(journal))
            renameToFree(journal, keptAs.string() + "-journal");
        if (!linked)
            renameToFree(file, keptAs);
        syncFolder(folderOf(file));
    } else if (std::filesystem::exists(journal)) {
        renameToFree(journal, with.string() + ".old-journal");
    }
    if (::rename(with.c_str(), file.c_str()) != 0)
        throw systemFailure(errno, Doing::Write, file);
    syncFolder(folderOf(file));
}

NewFile::NewFile(const std::filesystem::path& target, Existing existing)
    : m_target(requireWritable(target, existing)) {
    sweepStrays(folderOf(m_target.path));
    for (int attempt = 0;; ++attempt) {
        m_path = nameUnderWay(m_target.path, attempt);
        const int file = ::open(m_path.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0666);
        if (file >= 0) {
            ::close(file);
            return;
        }
        if (errno != EEXIST)
            throw systemFailure(errno, Doing::Make, target);
    }
}

NewFile::~NewFile() {
    if (m_named)
        return;
    std::error_code ignored;
    std::filesystem::remove(m_path, ignored);
    std::filesystem::remove(m_path.string() + "-journal", ignored);
}

std::string NewFile::nameToBe(const std::filesystem::path& file) {
    return nameOfUnderWay(file.filename().string());
}

void NewFile::giveName() {
    if (m_target.there)
        ::chmod(m_path.c_str(), m_target.mode);
    syncFile(m_path);
    if (m_target.there)
        replaceTarget();
    else
        renameToFree(m_path, m_target.path);
    m_named = true;
    syncFolder(folderOf(m_target.path));
}

// The two change places, and what came out is looked at before it is let go: no moment is left in
// which something else could have come to stand there.
void NewFile::replaceTarget() {
    const auto& to = m_target.path;
    if (::renameat2(AT_FDCWD, m_path.c_str(), AT_FDCWD, to.c_str(), RENAME_EXCHANGE) == 0) {
        if (!isTarget(m_path, m_target)) {
            ::renameat2(AT_FDCWD, m_path.c_str(), AT_FDCWD, to.c_str(), RENAME_EXCHANGE);
            changedMeanwhile(to);
        }
        ::unlink(m_path.c_str());
        return;
    }
    if (errno == ENOENT) { // it is gone by itself
        renameToFree(m_path, to);
        return;
    }
    if (!notKnownHere(errno))
        throw systemFailure(errno, Doing::Write, to);
    if (!isTarget(to, m_target))
        changedMeanwhile(to);
    if (::rename(m_path.c_str(), to.c_str()) != 0)
        throw systemFailure(errno, Doing::Write, to);
}

void writeWhole(const Destination& to, std::string_view bytes) {
    if (to.standardOutput()) {
        writeOut(bytes);
        return;
    }
    const SignalsWait undisturbed;
    NewFile file(to.file, to.existing);
    const int out = ::open(file.path().c_str(), O_WRONLY | O_CLOEXEC);
    int error = out < 0 ? errno : writeAll(out, bytes);
    if (out >= 0 && ::close(out) != 0 && error == 0)
        error = errno;
    if (error != 0)
        throw systemFailure(error, Doing::Write, to.file);
    file.giveName();
}

void writeOut(std::string_view bytes) {
    std::fflush(stdout);
    if (const int error = writeAll(STDOUT_FILENO, bytes))
        throw LogError(LogError::Kind::Unavailable, say("Standard output cannot be written: %1.",
                                                        std::generic_category().message(error)));
}

} // namespace slopebook::log
