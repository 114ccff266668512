// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are whole or do not exist: made under another name, synced, then given their own.
#pragma once

#include <filesystem>
#include <string>

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

    /// The name that a file is to bear: its own, unless it is one under way.
    static std::string nameToBe(const std::filesystem::path& file);

private:
    std::filesystem::path m_target;
    std::filesystem::path m_path;
    bool m_named = false;
};

/// Puts `with` in the place of `file` in one step; what was there is kept as `keptAs`, which must
/// be free, with the journal that belongs to it (nothing is kept where `keptAs` is empty). Throws
/// LogError.
void replaceKeeping(const std::filesystem::path& file, const std::filesystem::path& with,
                    const std::filesystem::path& keptAs);

} // namespace slopebook::log
