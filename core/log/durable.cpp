// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/durable.h"

#include "core/log/failure.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace slopebook::log {

namespace {
constexpr const char* partMark = ".part";

void sync(const std::filesystem::path& path, int flags) {
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

std::filesystem::path folderOf(const std::filesystem::path& path) {
    return path.has_parent_path() ? path.parent_path() : ".";
}

void renameToFree(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
        return;
    if (errno != EINVAL && errno != ENOSYS)
        throw systemFailure(errno, Doing::Write, to);
    // A file system without that call: the name was free a moment ago.
    if (std::filesystem::exists(to))
        throw systemFailure(EEXIST, Doing::Write, to);
    if (::rename(from.c_str(), to.c_str()) != 0)
        throw systemFailure(errno, Doing::Write, to);
}
} // namespace

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
        sync(folderOf(file), O_RDONLY | O_DIRECTORY);
    } else if (std::filesystem::exists(journal)) {
        renameToFree(journal, with.string() + ".old-journal");
    }
    if (::rename(with.c_str(), file.c_str()) != 0)
        throw systemFailure(errno, Doing::Write, file);
    sync(folderOf(file), O_RDONLY | O_DIRECTORY);
}

NewFile::NewFile(std::filesystem::path target) : m_target(std::move(target)) {
    if (std::filesystem::exists(std::filesystem::symlink_status(m_target)))
        throw systemFailure(EEXIST, Doing::Make, m_target);
    if (!m_target.has_filename())
        throw systemFailure(EISDIR, Doing::Make, m_target);
    for (int attempt = 0;; ++attempt) {
        m_path = folderOf(m_target) / ("." + m_target.filename().string() + partMark +
                                       std::to_string(::getpid()) + "-" + std::to_string(attempt));
        const int file = ::open(m_path.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0666);
        if (file >= 0) {
            ::close(file);
            return;
        }
        if (errno != EEXIST)
            throw systemFailure(errno, Doing::Make, m_target);
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
    const std::string name = file.filename().string();
    const auto part = name.rfind(partMark);
    return name.starts_with('.') && part != std::string::npos ? name.substr(1, part - 1) : name;
}

void NewFile::giveName() {
    sync(m_path, O_RDONLY);
    renameToFree(m_path, m_target);
    m_named = true;
    sync(folderOf(m_target), O_RDONLY | O_DIRECTORY);
}

} // namespace slopebook::log
