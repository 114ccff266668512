// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are whole or do not exist: made under another name, synced, then given their own.
#pragma once

#include <filesystem>

namespace slopebook::log {

/// A new empty file in the folder of `target`, deleted with this object unless it was given the
/// target's name. Throws LogError (Conflict) when the target exists.
class NewFile {
public:
    explicit NewFile(std::filesystem::path target);
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    const std::filesystem::path& path() const { return m_path; }
    /// Everything of it is on disk, then it bears the target's name; nothing is ever overwritten.
    void giveName();

private:
    std::filesystem::path m_target;
    std::filesystem::path m_path;
    bool m_named = false;
};

} // namespace slopebook::log
