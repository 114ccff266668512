// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/failure.h"

#include <sqlite3.h>

#include <cerrno>
#include <system_error>

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

// A full quota or a file-size limit reaches SQLite as any other failed write.
bool noRoom(int systemError) {
    return systemError == ENOSPC || systemError == EDQUOT || systemError == EFBIG;
}

LogError full(const std::filesystem::path& file) {
    return {Kind::Full, "There is no room left on the disk for " + shown(file) +
                            ". Nothing was changed; make room and try again."};
}

LogError readOnly(const std::filesystem::path& file) {
    return {Kind::ReadOnly,
            shown(file) + " cannot be written: the file or its folder is read-only."};
}

LogError unavailable(const std::filesystem::path& file, const std::string& words) {
    return {Kind::Unavailable, shown(file) + " could not be read or written: " + words + "."};
}
} // namespace

std::string shown(const std::filesystem::path& file) {
    return "'" + file.filename().string() + "'";
}

LogError damagedLog(const std::filesystem::path& file, const std::string& what) {
    return {Kind::Damaged, shown(file) + " is damaged: " + what +
                               ". Keep the file as it is and go back to a backup."};
}

LogError sqliteFailure(int extendedCode, int systemError, const std::string& words,
                       const std::filesystem::path& file) {
    switch (extendedCode & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {Kind::Busy, shown(file) + " is being used by another program. Nothing was "
                                          "changed; try again in a moment."};
    case SQLITE_FULL:
        return full(file);
    case SQLITE_READONLY:
        if (extendedCode == SQLITE_READONLY_DBMOVED)
            return {Kind::Unavailable, shown(file) + " was moved, renamed or deleted while it was "
                                                     "open. Nothing was changed."};
        return readOnly(file);
    case SQLITE_CORRUPT:
    case SQLITE_ERROR:
    case SQLITE_SCHEMA:
    case SQLITE_TOOBIG:
    case SQLITE_MISMATCH:
    case SQLITE_FORMAT:
        return damagedLog(file, words);
    case SQLITE_NOTADB:
        return {Kind::NotALog, shown(file) + " is not a Slopebook log."};
    case SQLITE_CONSTRAINT:
        return {Kind::Conflict, "The change does not fit with what " + shown(file) +
                                    " holds by now (" + words + "). Nothing was changed."};
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
        if (noRoom(systemError))
            return full(file);
        if (systemError == EROFS || systemError == EACCES)
            return readOnly(file);
        if (extendedCode == SQLITE_IOERR_WRITE || extendedCode == SQLITE_IOERR_FSYNC)
            return {Kind::Unavailable, shown(file) + " could not be written: the disk is full, "
                                                     "failing or gone. Nothing was changed."};
        return unavailable(file, words);
    default:
        return unavailable(file, words);
    }
}

LogError systemFailure(int systemError, const std::string& what,
                       const std::filesystem::path& file) {
    if (noRoom(systemError))
        return full(file);
    switch (systemError) {
    case EEXIST:
        return {Kind::Conflict, shown(file) + " is there already; choose another name."};
    case EACCES:
    case EPERM:
    case EROFS:
        return readOnly(file);
    default:
        return {Kind::Unavailable, shown(file) + " could not be " + what + ": " +
                                       std::generic_category().message(systemError) + "."};
    }
}

} // namespace slopebook::log
