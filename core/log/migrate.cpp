// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/migrate.h"

#include "core/log/backups.h"
#include "core/log/copy.h"
#include "core/log/derive.h"
#include "core/log/failure.h"
#include "core/log/query.h"
#include "core/log/reseal.h"
#include "core/log/transaction.h"
#include "core/model/phrases/log.h"

#include <limits>

namespace slopebook::log {

namespace {
int versionOf(Connection& connection) {
    Query version(connection, "PRAGMA user_version");
    version.next();
    return version.small(0);
}

void requireForeignKeys(Connection& connection) {
    if (Query(connection, "PRAGMA foreign_key_check").next())
        throw damagedLog(connection.file(), say("something in it refers to what is not there"));
}

/// Another program has brought the log up to date meanwhile.
struct CameFirst {};

/// Where the copy goes that is made before: the first free name for it.
std::filesystem::path copyBeforeMigration(const std::filesystem::path& log, int version) {
    const auto name = migrationMark + std::to_string(version);
    const auto folder = backupFolder(log);
    auto path = folder / (name + log.extension().string());
    for (int number = 2; std::filesystem::exists(path); ++number)
        path = folder / (name + "-" + std::to_string(number) + log.extension().string());
    return path;
}

/// False where another program came first: there is nothing left to copy. Two that begin together
/// both make one, each under a name of its own.
bool keepCopy(Connection& connection, int version) {
    const auto look = [&](const std::filesystem::path& copy) {
        requireWhole(copy, connection.file());
        Connection held(copy, Connection::Purpose::ReadOnly, std::numeric_limits<int>::max());
        if (versionOf(held) != version)
            throw CameFirst();
    };
    for (;;) {
        const auto target = copyBeforeMigration(connection.file(), version);
        makeFolder(target.parent_path());
        try {
            copyLooking(connection, target, look);
            return true;
        } catch (const CameFirst&) {
            return false;
        } catch (const LogError& error) {
            if (error.kind() != LogError::Kind::Conflict || !std::filesystem::exists(target))
                throw;
        }
    }
}

constexpr int lastBeforeTestDays = 4;

/// Over the step after which checksums of sessions are made of other columns than before.
void passTestDays(Connection& connection, const Layout& layout, int from) {
    runSteps(connection, layout, from, lastBeforeTestDays);
    const Hurt hurt = leaveFourth(connection);
    runSteps(connection, layout, lastBeforeTestDays, layout.newest());
    resealSessions(connection, hurt);
    deriveAtoms(connection);
}

/// Tables can only be rebuilt while references are not enforced; they are checked at the end. Every
/// page is read more than once: those of a log of tens of thousands of sessions have room
/// meanwhile.
constexpr const char* rebuilding = "PRAGMA foreign_keys = OFF; PRAGMA cache_size = -65536";
constexpr const char* asUsual =
    "PRAGMA foreign_keys = ON; PRAGMA cache_size = -2000; PRAGMA shrink_memory";

void migrate(Connection& connection, const Layout& layout, int from) {
    if (!keepCopy(connection, from))
        return;
    connection.execute(rebuilding);
    try {
        int depth = 0;
        WriteScope scope(connection, depth);
        // Another program may have done it since.
        if (const int now = versionOf(connection); now < layout.newest()) {
            if (now <= lastBeforeTestDays && layout.newest() > lastBeforeTestDays)
                passTestDays(connection, layout, now);
            else
                runSteps(connection, layout, now, layout.newest());
            requireForeignKeys(connection);
        }
        scope.commit();
    } catch (...) {
        connection.execute(asUsual);
        throw;
    }
    connection.execute(asUsual);
}
} // namespace

void bringUpToDate(Connection& connection, const Layout& layout) {
    const int version = [&] {
        const ReadScope moment(connection); // another program may be bringing it up to date
        const int found = versionOf(connection);
        requireLayout(connection, layout, found);
        return found;
    }();
    if (version == layout.newest())
        return;
    if (connection.readOnly())
        throw LogError(
            LogError::Kind::ReadOnly,
            say("'%1' was made by an older Slopebook and must be brought up to date, but "
                "it cannot be written. Copy it to where it can.",
                shown(connection.file())));
    migrate(connection, layout, version);
    requireLayout(connection, layout, layout.newest());
}

} // namespace slopebook::log
