// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/log/rawfile.h"

#include "core/log/tally.h"

#include <sqlite3.h>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <fstream>

namespace slopebook::test {

namespace {
using Rows = std::vector<std::string>;

int collect(void* into, int columns, char** values, char**) {
    std::string row;
    for (int i = 0; i < columns; ++i)
        row += std::string(i > 0 ? "|" : "") + (values[i] != nullptr ? values[i] : "NULL");
    static_cast<Rows*>(into)->push_back(row);
    return 0;
}

Rows query(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* db = nullptr;
    char* message = nullptr;
    Rows rows;
    if (sqlite3_open(file.c_str(), &db) != SQLITE_OK || !log::teachTally(db) ||
        sqlite3_exec(db, sql.c_str(), collect, &rows, &message) != SQLITE_OK) {
        std::fprintf(stderr, "%s: %s\n", sql.c_str(), message != nullptr ? message : "not opened");
        std::abort();
    }
    sqlite3_close(db);
    return rows;
}
} // namespace

void writeBytes(const std::filesystem::path& file, const std::string& bytes) {
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

void runSql(const std::filesystem::path& file, const std::string& sql) {
    query(file, sql);
}

int rowsChangedBy(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* db = nullptr;
    int changed = 0;
    if (sqlite3_open(file.c_str(), &db) == SQLITE_OK &&
        sqlite3_exec(db, "PRAGMA ignore_check_constraints = ON", nullptr, nullptr, nullptr) ==
            SQLITE_OK &&
        sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK)
        changed = sqlite3_total_changes(db);
    sqlite3_close(db);
    return changed;
}

std::vector<std::string> rowsOf(const std::filesystem::path& file, const std::string& sql) {
    return query(file, sql);
}

LockHeld::LockHeld(const std::filesystem::path& file) {
    if (sqlite3_open(file.c_str(), &m_db) != SQLITE_OK ||
        sqlite3_exec(m_db, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr) != SQLITE_OK)
        std::abort();
}

LockHeld::~LockHeld() {
    sqlite3_close(m_db);
}

void dieInTransaction(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* db = nullptr;
    if (sqlite3_open(file.c_str(), &db) == SQLITE_OK &&
        sqlite3_exec(db, ("PRAGMA cache_size = 1; BEGIN; " + sql).c_str(), nullptr, nullptr,
                     nullptr) == SQLITE_OK)
        std::raise(SIGKILL);
    std::abort();
}

std::vector<std::string> allRows(const std::filesystem::path& file, const std::string& without) {
    Rows all;
    for (const std::string& table :
         query(file, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")) {
        if (table == without)
            continue;
        Rows rows = query(file, "SELECT '" + table + "', * FROM " + table);
        std::ranges::sort(rows);
        all.insert(all.end(), rows.begin(), rows.end());
    }
    return all;
}

std::vector<std::string> namesIn(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

} // namespace slopebook::test
