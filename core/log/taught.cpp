// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/taught.h"

#include "core/model/names.h"

#include <sqlite3.h>

#include <string>

namespace slopebook::log {

namespace {
constexpr int taughtOptions = SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_DIRECTONLY;

std::string textOf(sqlite3_value* value) {
    const void* bytes = sqlite3_value_text(value);
    if (bytes == nullptr)
        return {};
    return {static_cast<const char*>(bytes), static_cast<std::size_t>(sqlite3_value_bytes(value))};
}

void sameName(sqlite3_context* context, int /*count*/, sqlite3_value** values) {
    sqlite3_result_int(context, nameKey(textOf(values[0])) == nameKey(textOf(values[1])) ? 1 : 0);
}

void wordsOf(sqlite3_context* context, int count, sqlite3_value** values) {
    std::string all;
    for (int i = 0; i < count; ++i)
        if (const std::string one = textOf(values[i]); !one.empty())
            all += (all.empty() ? "" : ", ") + one;
    sqlite3_result_text(context, all.data(), static_cast<int>(all.size()), SQLITE_TRANSIENT);
}
} // namespace

bool teachMigrations(sqlite3* db) {
    return sqlite3_create_function_v2(db, "same_name", 2, taughtOptions, nullptr, sameName, nullptr,
                                      nullptr, nullptr) == SQLITE_OK &&
           sqlite3_create_function_v2(db, "words_of", -1, taughtOptions, nullptr, wordsOf, nullptr,
                                      nullptr, nullptr) == SQLITE_OK;
}

} // namespace slopebook::log
