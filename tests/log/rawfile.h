// SPDX-License-Identifier: GPL-3.0-or-later
// A log's file as anyone else sees it: its bytes, and its tables through SQLite alone.
#pragma once

#include "tests/support/bytes.h"

#include <filesystem>
#include <string>
#include <vector>

struct sqlite3;

namespace slopebook::test {

void writeBytes(const std::filesystem::path& file, const std::string& bytes);

/// Runs SQL on the file with everything allowed; aborts the test program when SQLite refuses.
void runSql(const std::filesystem::path& file, const std::string& sql);

/// The same, where SQLite may refuse: how many rows were changed. Rules of the tables and
/// references do not stand in the way.
int rowsChangedBy(const std::filesystem::path& file, const std::string& sql);

/// What a query gives, a row each, its columns parted by '|'.
std::vector<std::string> rowsOf(const std::filesystem::path& file, const std::string& sql);

/// Another program that is about to write: it holds SQLite's lock on the file until it goes.
class LockHeld {
public:
    explicit LockHeld(const std::filesystem::path& file);
    ~LockHeld();
    LockHeld(const LockHeld&) = delete;
    LockHeld& operator=(const LockHeld&) = delete;

private:
    sqlite3* m_db = nullptr;
};

/// Begins a transaction, runs SQL that is more than a small cache holds, so that pages reach the
/// file, and kills its own process.
[[noreturn]] void dieInTransaction(const std::filesystem::path& file, const std::string& sql);

/// Every row of every table but the given one, as text in a fixed order: two logs that hold the
/// same give the same.
std::vector<std::string> allRows(const std::filesystem::path& file,
                                 const std::string& without = "keys");

/// The names of everything in a folder, sorted.
std::vector<std::string> namesIn(const std::filesystem::path& folder);

} // namespace slopebook::test
