// SPDX-License-Identifier: GPL-3.0-or-later
// Which names of a table are taken, by the key that names are compared by: a new one is held
// against all of them at the cost of one look. Nothing of it stands in the file, which any SQLite
// opens.
#pragma once

#include "core/log/query.h"

#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

namespace slopebook::log {

class TakenNames {
public:
    /// Rows whose names have, or once had, that key: to be looked at, for a row may have gone or
    /// been renamed since. select: reads id, anything, name of all rows.
    std::vector<std::int64_t> withKey(Connection& db, const char* select, const std::string& key);
    /// A row that has just been given a name. Nothing is ever taken off: what was taken back by an
    /// undone transaction is seen to be gone when looked at.
    void note(const std::string& name, std::int64_t id);

private:
    std::int64_t m_version = -1; ///< of the file, as other programs' writes raise it
    std::unordered_map<std::string, std::vector<std::int64_t>> m_by;
};

} // namespace slopebook::log
