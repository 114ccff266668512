// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are whole or do not exist: made under another name, synced, then given their own.
#pragma once

#include "core/log/target.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace slopebook::log {

/// A new empty file in the folder of `target`, deleted with this object unless it was given the
/// target's name. Throws LogError as requireWritable does; what killed programs left in that folder
/// is swept first (strays.h).
class NewFile {
public:
    explicit NewFile(const std::filesystem::path& target, Existing existing = Existing::Refuse);
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    const std::filesystem::path& path() const { return m_path; }
    /// Everything of it is on disk, then it bears the target's name. What stands there by then is
    /// replaced only where it is the very file that was to be: Conflict otherwise.
    void giveName();

    /// The name that a file is to bear: its own, unless it is one under way.
    static std::string nameToBe(const std::filesystem::path& file);

private:
    void replaceTarget();

    Target m_target;
    std::filesystem::path m_path;
    bool m_named = false;
};

/// Writes a file of that content, whole or not at all, by a NewFile. Throws LogError.
void writeWhole(const Destination& to, std::string_view bytes);
/// Hands it to standard output.
void writeOut(std::string_view bytes);

/// Puts `with` in the place of `file` in one step; what was there is kept as `keptAs`, which must
/// be free, with the journal that belongs to it (nothing is kept where `keptAs` is empty). Throws
/// LogError.
void replaceKeeping(const std::filesystem::path& file, const std::filesystem::path& with,
                    const std::filesystem::path& keptAs);

/// Renames a file or folder in one step to a name that nothing bears: Conflict where one does,
/// since when ever. Throws LogError.
void renameToFree(const std::filesystem::path& from, const std::filesystem::path& to);

/// What is written of a file is on disk when it returns. Throws LogError.
void syncFile(const std::filesystem::path& file);
/// The same of the names in a folder, as far as the file system can.
void syncFolder(const std::filesystem::path& folder);

/// The folder that holds a name.
std::filesystem::path folderOf(const std::filesystem::path& path);

} // namespace slopebook::log
