// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/connection.h"

#include "core/log/asking.h"
#include "core/log/comingrows.h"
#include "core/log/failure.h"
#include "core/log/layout.h"
#include "core/log/ownfiles.h"
#include "core/log/tally.h"
#include "core/log/taught.h"
#include "core/log/trail.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <cstring>

namespace slopebook::log {

namespace {
using Kind = LogError::Kind;

// Bytes of a row: the longest trail, and what a removed thing said beside it.
constexpr int longestValue = static_cast<int>(longestTrail * 2 * sizeof(Sixteen)) + 1'000'000;
} // namespace

Connection::Connection(std::filesystem::path file, Purpose purpose, int newestVersion)
    : m_file(std::move(file)), m_files(std::make_unique<OwnFiles>()),
      m_coming(std::make_unique<const ComingRows*>()) {
    openFile(purpose);
    try {
        harden();
        if (purpose != Purpose::Fresh)
            requireHeader(newestVersion);
        configure();
        if (purpose != Purpose::Fresh) // a journal may have been played back since
            requireHeader(newestVersion);
    } catch (...) {
        fail();
    }
}

Connection::~Connection() = default;

void Connection::openFile(Purpose purpose) {
    std::error_code error;
    const auto status = std::filesystem::status(m_file, error);
    if (!std::filesystem::exists(status))
        throw LogError(Kind::Unavailable, say("There is no file '%1'.", shown(m_file)));
    if (!std::filesystem::is_regular_file(status))
        throw LogError(Kind::NotALog, say("'%1' is not a file.", shown(m_file)));
    // An absolute path is never taken for an address ("file:...") by SQLite.
    m_file = std::filesystem::absolute(m_file);
    try {
        // A log belongs to one thread: SQLite need not lock at every column.
        m_database = std::make_unique<SQLite::Database>(
            m_file.string(),
            SQLite::OPEN_NOMUTEX |
                (purpose == Purpose::ReadOnly ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE),
            0, m_files->name());
    } catch (const SQLite::Exception& e) {
        throwRefusal();
        throw sqliteFailure(e, 0, m_file);
    }
    m_readOnly =
        purpose == Purpose::ReadOnly || sqlite3_db_readonly(m_database->getHandle(), "main") == 1;
}

// Through SQLite's own file handle: opening and closing the file once more would drop the locks
// that this process holds on it.
Header Connection::readHeader() const {
    sqlite3_file* handle = nullptr;
    sqlite3_int64 size = 0;
    HeaderBytes bytes{};
    if (sqlite3_file_control(m_database->getHandle(), "main", SQLITE_FCNTL_FILE_POINTER,
                             static_cast<void*>(&handle)) != SQLITE_OK ||
        handle == nullptr || handle->pMethods == nullptr ||
        handle->pMethods->xFileSize(handle, &size) != SQLITE_OK)
        throw LogError(Kind::Unavailable, say("'%1' could not be read.", shown(m_file)));
    if (size < static_cast<sqlite3_int64>(bytes.size()))
        return {};
    if (handle->pMethods->xRead(handle, bytes.data(), static_cast<int>(bytes.size()), 0) !=
        SQLITE_OK)
        throw LogError(Kind::Unavailable, say("'%1' could not be read.", shown(m_file)));
    return {.sqlite = std::memcmp(bytes.data(), "SQLite format 3", 16) == 0,
            .writeAhead = bytes[18] != 1 || bytes[19] != 1,
            .applicationId = static_cast<int>(bigEndian(&bytes[68])),
            .version = static_cast<int>(bigEndian(&bytes[60]))};
}

void Connection::requireHeader(int newestVersion) const {
    Header header = readHeader();
    if (header.applicationId == applicationId && header.version > newestVersion &&
        std::filesystem::exists(m_file.string() + "-journal")) {
        // A migration that was cut short stands in the file until its journal is played back.
        execute("SELECT count(*) FROM sqlite_schema");
        header = readHeader();
    }
    if (!header.sqlite || header.applicationId != applicationId)
        throw LogError(Kind::NotALog, say("'%1' is not a Slopebook log.", shown(m_file)));
    if (header.version > newestVersion)
        throw LogError(Kind::Newer,
                       say("'%1' was written by a newer Slopebook than this one (layout "
                           "%2, this one knows %3). Update Slopebook.",
                           shown(m_file), header.version, newestVersion));
    if (header.version < 1)
        throw damagedLog(m_file, say("its header holds no version"));
    if (header.writeAhead)
        throw damagedLog(m_file,
                         say("another program changed how it is written (its journal mode)"));
}

void Connection::harden() const {
    sqlite3* const db = m_database->getHandle();
    for (const auto& [option, on] : {std::pair{SQLITE_DBCONFIG_DEFENSIVE, 1},
                                     {SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
                                     {SQLITE_DBCONFIG_ENABLE_TRIGGER, 0},
                                     {SQLITE_DBCONFIG_ENABLE_VIEW, 0},
                                     {SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0},
                                     {SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER, 0},
                                     {SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0},
                                     {SQLITE_DBCONFIG_DQS_DML, 0},
                                     {SQLITE_DBCONFIG_DQS_DDL, 0},
                                     {SQLITE_DBCONFIG_ENABLE_FKEY, 1}}) {
        int now = -1;
        if (sqlite3_db_config(db, option, on, &now) != SQLITE_OK || now != on)
            throw LogError(Kind::Unavailable,
                           say("The SQLite library at hand refuses a safe setting."));
    }
    for (const auto& [limit, most] : {std::pair{SQLITE_LIMIT_LENGTH, longestValue},
                                      {SQLITE_LIMIT_SQL_LENGTH, 100'000},
                                      {SQLITE_LIMIT_COLUMN, 100},
                                      {SQLITE_LIMIT_EXPR_DEPTH, 100},
                                      {SQLITE_LIMIT_COMPOUND_SELECT, 10},
                                      {SQLITE_LIMIT_FUNCTION_ARG, 10},
                                      {SQLITE_LIMIT_ATTACHED, 0},
                                      {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 100},
                                      {SQLITE_LIMIT_VARIABLE_NUMBER, 100},
                                      {SQLITE_LIMIT_TRIGGER_DEPTH, 10},
                                      {SQLITE_LIMIT_WORKER_THREADS, 0}})
        sqlite3_limit(db, limit, most);
    sqlite3_busy_handler(db, waitWhileBusy, nullptr);
    if (!teachTally(db) || !teachMigrations(db) || !teachComing(db, m_coming.get()))
        throw LogError(Kind::Unavailable,
                       say("The SQLite library at hand refuses a safe setting."));
}

void Connection::configure() const {
    execute("PRAGMA mmap_size = 0");
    execute("PRAGMA cell_size_check = ON");
    execute("PRAGMA temp_store = MEMORY");
    execute("PRAGMA cache_spill = OFF"); // a long import keeps no reader waiting before it commits
    // FULL does not sync the folder after the journal is gone: a power loss soon after would bring
    // the journal back and with it take back what had been acknowledged.
    execute("PRAGMA synchronous = EXTRA");
    if (m_readOnly)
        execute("PRAGMA query_only = ON");
    const auto is = [this](const char* pragma, std::string_view expected) {
        return m_database->execAndGet(pragma).getString() == expected;
    };
    if (!is("PRAGMA foreign_keys", "1") || !is("PRAGMA journal_mode = DELETE", "delete"))
        throw LogError(Kind::Unavailable,
                       say("The SQLite library at hand refuses a safe setting."));
    if (!is("PRAGMA encoding", "UTF-8"))
        throw damagedLog(m_file, say("its text is not written as UTF-8"));
}

bool Connection::inTransaction() const {
    return sqlite3_get_autocommit(m_database->getHandle()) == 0;
}

void Connection::execute(const std::string& sql) const {
    try {
        m_database->exec(sql);
    } catch (...) {
        fail();
    }
}

std::unique_ptr<SQLite::Statement> Connection::take(const char* sql) {
    if (const auto idle = m_idle.find(sql); idle != m_idle.end() && idle->second)
        return std::move(idle->second);
    try {
        return std::make_unique<SQLite::Statement>(*m_database, sql);
    } catch (...) {
        fail();
    }
}

void Connection::giveBack(const char* sql, std::unique_ptr<SQLite::Statement> statement) noexcept {
    try {
        statement->tryReset();
        statement->clearBindings();
        m_idle.insert_or_assign(sql, std::move(statement));
    } catch (...) {
        statement.reset(); // made anew when next needed
    }
}

void Connection::fail() const {
    try {
        throw;
    } catch (const SQLite::Exception& e) {
        throwRefusal();
        const LogError failed = sqliteFailure(e, systemErrorOf(m_database->getHandle()), m_file);
        endBrokenOff(e.getErrorCode());
        throw failed;
    }
}

void Connection::endBrokenOff(int code) const {
    constexpr int primary = 0xff;
    if ((code & primary) != SQLITE_INTERRUPT || !inTransaction())
        return;
    sqlite3* db = m_database->getHandle();
    for (auto* each = sqlite3_next_stmt(db, nullptr); each; each = sqlite3_next_stmt(db, each))
        if (sqlite3_stmt_busy(each) != 0) // one around it would keep the log from being written
            sqlite3_reset(each);
    sqlite3_exec(db, "ROLLBACK", nullptr, nullptr, nullptr);
}

void Connection::throwRefusal() const {
    if (const auto refusal = m_files->refusal())
        throw LogError(*refusal);
}

void Connection::fail(int extendedCode, const std::string& words) const {
    throwRefusal();
    const LogError failed =
        sqliteFailure(extendedCode, systemErrorOf(m_database->getHandle()), words, m_file);
    endBrokenOff(extendedCode);
    throw failed;
}

} // namespace slopebook::log
