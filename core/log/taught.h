// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of SQL that the log's layouts are led from one to the next with, beside those of
// core/log/tally.h.
#pragma once

struct sqlite3;

namespace slopebook::log {

/// Teaches a connection same_name(a, b), whether two names are one by the key that names are
/// compared by (core/model/names.h), and words_of(...), those of its texts that say something, with
/// commas between. Whether SQLite took them.
bool teachMigrations(sqlite3* db);

} // namespace slopebook::log
