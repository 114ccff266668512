// SPDX-License-Identifier: GPL-3.0-or-later
// One hardened SQLite connection: its header read before any SQL, nothing of the file trusted, its
// statements prepared once. Every error of SQLite leaves here as a LogError.
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace SQLite {
class Database;
class Statement;
} // namespace SQLite

namespace slopebook::log {

class AskedFor;
class ComingRows;
class OwnFiles;

/// What the first 100 bytes of a file say, read without any SQL.
struct Header {
    bool sqlite = false; ///< begins as every SQLite file does
    bool writeAhead = false;
    int applicationId = 0;
    int version = 0; ///< user_version
};

/// How long a transaction took that wrote.
struct WriteTook {
    std::chrono::steady_clock::duration work{}, commit{}; ///< from its begin on; its end
    long before = 0;                                      ///< so many were committed before
};

class Connection {
public:
    /// Fresh: an empty file that this program has just made.
    enum class Purpose { Fresh, ReadWrite, ReadOnly };

    /// Opens and hardens. A file that turns out unwritable is open for reading only. Throws
    /// LogError (NotALog, Newer, Damaged) by the header alone for anything that is no log.
    Connection(std::filesystem::path file, Purpose purpose, int newestVersion);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    const std::filesystem::path& file() const { return m_file; }
    /// A private copy speaks under the name of what it is a copy of.
    void speakAs(std::filesystem::path file) { m_file = std::move(file); }
    bool readOnly() const { return m_readOnly; }
    bool inTransaction() const;
    SQLite::Database& database() const { return *m_database; }

    /// The last that was committed here.
    const WriteTook& lastWrite() const { return m_lastWrite; }
    void noteWrite(std::chrono::steady_clock::duration work,
                   std::chrono::steady_clock::duration commit) {
        m_lastWrite = {.work = work, .commit = commit, .before = m_lastWrite.before + 1};
    }

    /// Whom each transaction lets in before it begins (LetsIn); none: nobody. Gives who it was.
    const AskedFor* letsIn() const { return m_letsIn; }
    const AskedFor* setLetsIn(const AskedFor* asked) { return std::exchange(m_letsIn, asked); }

    /// What the table "coming" of the statement that runs next holds (comingrows.h).
    void setComing(const ComingRows* rows) const { *m_coming = rows; }

    /// Runs SQL without results.
    void execute(const std::string& sql) const;

    /// A prepared statement of that text, kept from earlier or new; given back when done with.
    std::unique_ptr<SQLite::Statement> take(const char* sql);
    void giveBack(const char* sql, std::unique_ptr<SQLite::Statement> statement) noexcept;

    /// To be called while an exception is handled: throws it on, SQLite's as LogError.
    [[noreturn]] void fail() const;
    /// The same for a code that SQLite gave.
    [[noreturn]] void fail(int extendedCode, const std::string& words) const;
    /// Throws where SQLite was just refused a file (OwnFiles), which its own code does not tell.
    void throwRefusal() const;

private:
    void openFile(Purpose purpose);
    Header readHeader() const;
    void requireHeader(int newestVersion) const;
    void harden() const;
    void configure() const;
    /// What was broken off (GivesWay) ends its transaction at once: who waits for the log does not
    /// wait until all that was read is forgotten.
    void endBrokenOff(int code) const;

    std::filesystem::path m_file;
    bool m_readOnly = false;
    WriteTook m_lastWrite;
    const AskedFor* m_letsIn = nullptr;
    std::unique_ptr<OwnFiles> m_files;
    std::unique_ptr<const ComingRows*> m_coming; ///< what the table "coming" holds
    std::unique_ptr<SQLite::Database> m_database;
    std::unordered_map<std::string_view, std::unique_ptr<SQLite::Statement>> m_idle;
};

} // namespace slopebook::log
