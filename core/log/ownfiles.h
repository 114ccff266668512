// SPDX-License-Identifier: GPL-3.0-or-later
// What SQLite may touch through a connection: the log and its own journal, and nothing else. A
// journal that another program crafted makes SQLite delete, overwrite or grow whatever it names.
#pragma once

#include "core/log/journal.h"
#include "core/model/errors.h"

#include <memory>
#include <optional>
#include <string>

namespace slopebook::log {

/// A SQLite VFS over the system's own, for one connection. It must outlive the database.
class OwnFiles {
public:
    OwnFiles();
    ~OwnFiles();
    OwnFiles(const OwnFiles&) = delete;
    OwnFiles& operator=(const OwnFiles&) = delete;

    /// By which SQLite finds it.
    const std::string& name() const;
    /// Why SQLite was last refused something, handed over once; nothing when it was not.
    std::optional<LogError> refusal();

private:
    struct Shim;
    std::unique_ptr<Shim> m_shim;
};

} // namespace slopebook::log
