// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/copy.h"

#include "core/log/durable.h"
#include "core/log/failure.h"
#include "core/log/ownfiles.h"
#include "core/log/query.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <limits>

namespace slopebook::log {

namespace {
constexpr int pagesAtOnce = 4096; // of 4 kB: some hundredths of a second
constexpr int mostBeginnings = 3;
} // namespace

void requireWhole(const std::filesystem::path& copy, const std::filesystem::path& of) {
    Connection connection(copy, Connection::Purpose::ReadOnly, std::numeric_limits<int>::max());
    Query check(connection, "PRAGMA integrity_check(1)");
    if (!check.next() || check.text(0) != "ok") {
        requireReadable(connection.database().getHandle(), of);
        throw damagedLog(of, say("its copy does not pass SQLite's check"));
    }
}

void copyPages(const Connection& source, const std::filesystem::path& to,
               const Progress& progress) {
    OwnFiles files;
    std::unique_ptr<SQLite::Database> copy;
    try {
        copy = std::make_unique<SQLite::Database>(to.string(), SQLite::OPEN_READWRITE, 0,
                                                  files.name());
        SQLite::Backup backup(*copy, source.database());
        int beginnings = 1;
        int left = std::numeric_limits<int>::max();
        int result = SQLITE_OK;
        while (result == SQLITE_OK) {
            result = backup.executeStep(beginnings <= mostBeginnings ? pagesAtOnce : -1);
            source.throwRefusal();
            const int total = backup.getTotalPageCount();
            if (backup.getRemainingPageCount() >= left)
                ++beginnings; // somebody wrote between two pieces
            left = backup.getRemainingPageCount();
            tell(progress, total - left, total);
        }
        if (result != SQLITE_DONE)
            throw sqliteFailure(result, 0, "the copy was not finished", source.file());
    } catch (const SQLite::Exception& e) {
        source.throwRefusal();
        throw sqliteFailure(e, copy ? systemErrorOf(copy->getHandle()) : 0, to);
    }
}

void copyVerified(Connection& source, const std::filesystem::path& target, Existing existing,
                  const Progress& progress) {
    copyLooking(
        source, target,
        [&](const std::filesystem::path& copy) { requireWhole(copy, source.file()); }, existing,
        progress);
}

void copyLooking(Connection& source, const std::filesystem::path& target,
                 const std::function<void(const std::filesystem::path& copy)>& look,
                 Existing existing, const Progress& progress) {
    if (source.inTransaction())
        throw LogError(LogError::Kind::Conflict,
                       say("The log is just being changed; it can be backed up when that is "
                           "done."));
    NewFile copy(std::filesystem::absolute(target), existing);
    copyPages(source, copy.path(), progress);
    look(copy.path());
    copy.giveName();
}

} // namespace slopebook::log
