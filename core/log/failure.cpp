// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/failure.h"

#include "core/log/durable.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/Exception.h>
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
    return {Kind::Full, say("There is no room left on the disk for '%1'. Nothing was changed; make "
                            "room and try again.",
                            shown(file))};
}

LogError readOnly(const std::filesystem::path& file) {
    return {Kind::ReadOnly,
            say("'%1' cannot be written: the file or its folder is read-only.", shown(file))};
}

bool unreadable(int systemError) {
    return systemError == EIO || systemError == ENXIO;
}

LogError diskGone(const std::filesystem::path& file) {
    return {Kind::Unavailable,
            say("'%1' could not be read: the disk is failing or gone.", shown(file))};
}

LogError unavailable(const std::filesystem::path& file, const std::string& words) {
    return {Kind::Unavailable, say("'%1' could not be read or written: %2.", shown(file), words)};
}
} // namespace

std::string shown(const std::filesystem::path& file) {
    return NewFile::nameToBe(file);
}

LogError damagedLog(const std::filesystem::path& file, const Words& what) {
    return {Kind::Damaged,
            say("'%1' is damaged: %2. Keep the file as it is and go back to a backup.", shown(file),
                what)};
}

LogError sqliteFailure(int extendedCode, int systemError, const std::string& words,
                       const std::filesystem::path& file) {
    switch (extendedCode & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {Kind::Busy, say("'%1' is being used by another program. Nothing was changed; try "
                                "again in a moment.",
                                shown(file))};
    case SQLITE_FULL:
        return full(file);
    case SQLITE_READONLY:
        if (extendedCode == SQLITE_READONLY_DBMOVED)
            return {Kind::Unavailable, say("'%1' was moved, renamed or deleted while it was open. "
                                           "Nothing was changed.",
                                           shown(file))};
        return readOnly(file);
    case SQLITE_CORRUPT:
        // SQLite takes a disk that cannot be read for a damaged file; a stick pulled out is none.
        if (unreadable(systemError))
            return diskGone(file);
        return damagedLog(file, asIs(words));
    case SQLITE_ERROR:
    case SQLITE_SCHEMA:
    case SQLITE_TOOBIG:
    case SQLITE_MISMATCH:
    case SQLITE_FORMAT:
        return damagedLog(file, asIs(words));
    case SQLITE_NOTADB:
        return {Kind::NotALog, say("'%1' is not a Slopebook log.", shown(file))};
    case SQLITE_CONSTRAINT:
        return {Kind::Conflict, say("The change does not fit with what '%1' holds by now (%2). "
                                    "Nothing was changed.",
                                    shown(file), words)};
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
        if (noRoom(systemError))
            return full(file);
        if (systemError == EROFS || systemError == EACCES)
            return readOnly(file);
        if (extendedCode == SQLITE_IOERR_DIR_FSYNC) // the journal is gone by then: it is written
            return {Kind::Unavailable,
                    say("'%1' was written, but the disk failed before it was certain to last. Look "
                        "whether the last change is there before making it again.",
                        shown(file))};
        if ((extendedCode & 0xff) == SQLITE_CANTOPEN)
            return {Kind::Unavailable,
                    say("'%1' could not be opened, or its folder takes no new file: the disk is "
                        "full, failing or gone, or there is no right to it.",
                        shown(file))};
        if (extendedCode == SQLITE_IOERR_WRITE || extendedCode == SQLITE_IOERR_FSYNC)
            return {Kind::Unavailable, say("'%1' could not be written: the disk is full, failing "
                                           "or gone. Nothing was changed.",
                                           shown(file))};
        return unavailable(file, words);
    default:
        return unavailable(file, words);
    }
}

LogError sqliteFailure(const SQLite::Exception& error, int systemError,
                       const std::filesystem::path& file) {
    // Some of its exceptions know the extended code, others hold it as the plain one.
    const int extended = error.getExtendedErrorCode();
    return sqliteFailure(extended > 0 ? extended : error.getErrorCode(), systemError, error.what(),
                         file);
}

int systemErrorOf(sqlite3* db) {
    // What the file itself met; taking back what was written has overwritten the other by then.
    int ofFile = 0;
    sqlite3_file_control(db, "main", SQLITE_FCNTL_LAST_ERRNO, &ofFile);
    return ofFile != 0 ? ofFile : sqlite3_system_errno(db);
}

void requireReadable(sqlite3* db, const std::filesystem::path& file) {
    if (unreadable(systemErrorOf(db)))
        throw diskGone(file);
}

namespace {
Words undone(Doing doing, const std::string& name, const std::string& why) {
    switch (doing) {
    case Doing::Open:
        return say("'%1' could not be opened: %2.", name, why);
    case Doing::Make:
        return say("'%1' could not be made: %2.", name, why);
    case Doing::Write:
        break;
    }
    return say("'%1' could not be written: %2.", name, why);
}
} // namespace

AlreadyThere::AlreadyThere(const std::filesystem::path& file)
    : LogError(Kind::Conflict, say("'%1' is there already; choose another name.", shown(file))) {}

LogError systemFailure(int systemError, Doing doing, const std::filesystem::path& file) {
    if (noRoom(systemError))
        return full(file);
    switch (systemError) {
    case EEXIST:
        return AlreadyThere(file); // its sentence alone
    case EACCES:
    case EPERM:
    case EROFS:
        return readOnly(file);
    default:
        return {Kind::Unavailable,
                undone(doing, shown(file), std::generic_category().message(systemError))};
    }
}

} // namespace slopebook::log
