// SPDX-License-Identifier: GPL-3.0-or-later
// What a disk may hold after the power went: what was synced for certain, and of the rest any part,
// in any order.
#pragma once

#include "tests/support/disk.h"

#include <random>

namespace slopebook::test {

/// Which syncs the disk keeps its word on.
enum class Promise { All, FilesOnly, None };

/// The files after a loss when `done` of the recorded operations had been asked for. Unsynced
/// writes are kept or lost by sectors of 512 bytes and in any order; unsynced changes of names up
/// to some moment, or any of them.
std::map<std::string, std::string> afterLoss(const Recording& recording, std::size_t done,
                                             Promise promise, std::mt19937_64& random);

} // namespace slopebook::test
