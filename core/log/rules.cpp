// SPDX-License-Identifier: GPL-3.0-or-later
// Every CHECK of the log's tables held against every row. SQLite tests them as rows are written,
// and drops them on a connection that may only read; damage and other programs write as they like.
#include "core/log/rules.h"

#include "core/log/impl.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>

namespace slopebook::log {

namespace {
constexpr int mostRows = 3; // of one table are named

/// A row by its first columns, which are its key in every table: "athlete 3, day 2026-03-14".
std::string rowText(SQLite::Statement& row) {
    constexpr int mostColumns = 4;
    std::string text;
    for (int i = 0; i < std::min(row.getColumnCount(), mostColumns); ++i)
        text += (i > 0 ? ", " : "") + std::string(row.getColumnName(i)) + " " +
                (row.isColumnNull(i) ? std::string("nothing") : row.getColumn(i).getString());
    return text;
}

std::size_t afterText(std::string_view sql, std::size_t at) {
    const auto end = sql.find('\'', at + 1);
    return end == std::string_view::npos ? sql.size() : end + 1;
}

std::size_t afterComment(std::string_view sql, std::size_t at) {
    return std::min(sql.find('\n', at), sql.size());
}

/// The place after the parenthesis that closes the one at `at`.
std::size_t afterClosing(std::string_view sql, std::size_t at) {
    int open = 0;
    while (at < sql.size()) {
        if (sql[at] == '\'') {
            at = afterText(sql, at);
            continue;
        }
        open += sql[at] == '(' ? 1 : sql[at] == ')' ? -1 : 0;
        ++at;
        if (open == 0)
            break;
    }
    return at;
}
} // namespace

std::vector<std::string> rulesOf(std::string_view sql) {
    constexpr std::string_view word = "CHECK (";
    std::vector<std::string> rules;
    for (std::size_t at = 0; at < sql.size();) {
        if (sql[at] == '\'') {
            at = afterText(sql, at);
        } else if (sql.substr(at, 2) == "--") {
            at = afterComment(sql, at);
        } else if (sql.substr(at).starts_with(word)) {
            const std::size_t from = at + word.size();
            at = afterClosing(sql, from - 1);
            rules.emplace_back(sql.substr(from, at - 1 - from));
        } else {
            ++at;
        }
    }
    return rules;
}

void Log::Impl::checkRules(Findings& findings) {
    std::vector<std::pair<std::string, std::vector<std::string>>> tables;
    {
        Query rows(db,
                   "SELECT name, sql FROM sqlite_schema WHERE type = 'table' AND sql IS NOT NULL "
                   "AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY name");
        while (rows.next())
            tables.emplace_back(rows.text(0), rulesOf(rows.text(1)));
    }
    for (const auto& [table, rules] : tables) {
        if (rules.empty())
            continue;
        std::string broken;
        for (const std::string& rule : rules)
            broken += (broken.empty() ? "NOT (" : " OR NOT (") + rule + ")";
        std::string which;
        for (const std::string& rule : rules)
            which += ", (" + rule + ")";
        try {
            SQLite::Statement rows(db.database(), "SELECT *" + which + " FROM " + table +
                                                      " WHERE " + broken + " LIMIT " +
                                                      std::to_string(mostRows));
            while (rows.executeStep()) {
                const int first = rows.getColumnCount() - static_cast<int>(rules.size());
                for (std::size_t i = 0; i < rules.size(); ++i) {
                    const int column = first + static_cast<int>(i);
                    if (!rows.isColumnNull(column) && rows.getColumn(column).getInt() == 0)
                        findings.push_back(say("A row of %1 (%2) breaks its rule: %3.", table,
                                               rowText(rows), rules[i]));
                }
            }
        } catch (...) {
            db.fail();
        }
    }
}

} // namespace slopebook::log
