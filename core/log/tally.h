// SPDX-License-Identifier: GPL-3.0-or-later
// How the log notices that something of it is missing: of each kind of thing, how many there are
// and the sum of their weights modulo 2^64, which each write changes by what it adds and takes
// away, whatever the order. What a thing weighs comes from its checksum alone.
#pragma once

#include <cstdint>
#include <optional>

struct sqlite3;

namespace slopebook::log {

/// A thing's part of a sum: its checksum, and a second one where it has that, with all bits mixed,
/// so that what is missing here and too much there does not cancel.
std::uint64_t weight(std::int64_t checksum, std::optional<std::int64_t> second = {});

struct Tally {
    std::int64_t things = 0;
    std::uint64_t sum = 0;
    void add(std::uint64_t weighs) {
        ++things;
        sum += weighs;
    }
    void take(std::uint64_t weighs) {
        --things;
        sum -= weighs;
    }
    friend bool operator==(const Tally&, const Tally&) = default;
};

/// Teaches a connection the functions of SQL that migrations and writes use: tally(checksum) and
/// tally(checksum, second), the sum of the rows' weights (rows without a checksum weigh nothing),
/// and plus(a, b), a sum modulo 2^64. Whether SQLite took them.
bool teachTally(sqlite3* db);

} // namespace slopebook::log
