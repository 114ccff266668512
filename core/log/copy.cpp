// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/copy.h"

#include "core/log/durable.h"
#include "core/log/failure.h"
#include "core/log/ownfiles.h"
#include "core/log/query.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <limits>

namespace slopebook::log {

namespace {
void copyPages(const Connection& source, const std::filesystem::path& to) {
    OwnFiles files;
    std::unique_ptr<SQLite::Database> copy;
    try {
        copy = std::make_unique<SQLite::Database>(to.string(), SQLite::OPEN_READWRITE, 0,
                                                  files.name());
        const int result = SQLite::Backup(*copy, source.database()).executeStep(-1);
        source.throwRefusal();
        if (result != SQLITE_DONE)
            throw sqliteFailure(result, 0, "the copy was not finished", source.file());
    } catch (const SQLite::Exception& e) {
        source.throwRefusal();
        throw sqliteFailure(e, copy ? systemErrorOf(copy->getHandle()) : 0, to);
    }
}

void requireWhole(const std::filesystem::path& copy, const std::filesystem::path& of) {
    Connection connection(copy, Connection::Purpose::ReadOnly, std::numeric_limits<int>::max());
    Query check(connection, "PRAGMA integrity_check(1)");
    if (!check.next() || check.text(0) != "ok") {
        requireReadable(connection.database().getHandle(), of);
        throw damagedLog(of, say("its copy does not pass SQLite's check"));
    }
}
} // namespace

void copyVerified(Connection& source, const std::filesystem::path& target) {
    copyLooking(source, target,
                [&](const std::filesystem::path& copy) { requireWhole(copy, source.file()); });
}

void copyLooking(Connection& source, const std::filesystem::path& target,
                 const std::function<void(const std::filesystem::path& copy)>& look) {
    if (source.inTransaction())
        throw LogError(LogError::Kind::Conflict,
                       say("The log is just being changed; it can be backed up when that is "
                           "done."));
    NewFile copy(std::filesystem::absolute(target));
    copyPages(source, copy.path());
    look(copy.path());
    copy.giveName();
}

} // namespace slopebook::log
