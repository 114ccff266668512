// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/tally.h"

#include <sqlite3.h>

#include <bit>

namespace slopebook::log {

namespace {
constexpr int functionOptions = SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_DIRECTONLY;

// The last steps of SplitMix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number
// generators"; from memory, its first numbers are in the test).
std::uint64_t mixed(std::uint64_t bits) {
    bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9U;
    bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EBU;
    return bits ^ (bits >> 31);
}

std::uint64_t bitsOf(sqlite3_value* value) {
    return std::bit_cast<std::uint64_t>(static_cast<std::int64_t>(sqlite3_value_int64(value)));
}

bool isNull(sqlite3_value* value) {
    return sqlite3_value_type(value) == SQLITE_NULL;
}

void addRow(sqlite3_context* context, int count, sqlite3_value** values) {
    auto* const sum =
        static_cast<std::uint64_t*>(sqlite3_aggregate_context(context, sizeof(std::uint64_t)));
    if (sum == nullptr) {
        sqlite3_result_error_nomem(context);
        return;
    }
    if (isNull(values[0]))
        return;
    std::optional<std::int64_t> second;
    if (count > 1 && !isNull(values[1]))
        second = sqlite3_value_int64(values[1]);
    *sum += weight(sqlite3_value_int64(values[0]), second);
}

void giveSum(sqlite3_context* context) {
    const auto* const sum = static_cast<std::uint64_t*>(sqlite3_aggregate_context(context, 0));
    sqlite3_result_int64(context, sum != nullptr ? std::bit_cast<std::int64_t>(*sum) : 0);
}

void addTwo(sqlite3_context* context, int /*count*/, sqlite3_value** values) {
    sqlite3_result_int64(context,
                         std::bit_cast<std::int64_t>(bitsOf(values[0]) + bitsOf(values[1])));
}
} // namespace

std::uint64_t weight(std::int64_t checksum, std::optional<std::int64_t> second) {
    const std::uint64_t first = mixed(std::bit_cast<std::uint64_t>(checksum));
    return second ? mixed(first + std::bit_cast<std::uint64_t>(*second)) : first;
}

bool teachTally(sqlite3* db) {
    for (const int arguments : {1, 2})
        if (sqlite3_create_function_v2(db, "tally", arguments, functionOptions, nullptr, nullptr,
                                       addRow, giveSum, nullptr) != SQLITE_OK)
            return false;
    return sqlite3_create_function_v2(db, "plus", 2, functionOptions, nullptr, addTwo, nullptr,
                                      nullptr, nullptr) == SQLITE_OK;
}

} // namespace slopebook::log
