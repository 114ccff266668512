// SPDX-License-Identifier: GPL-3.0-or-later
// A folder of files that is whole or does not exist.
#pragma once

#include "core/log/target.h"

#include <vector>

namespace slopebook::log {

/// An empty folder beside `target`, gone with all in it unless it was given the target's name.
/// Where `target` is a folder already it must be empty, or with Replace hold no log of that name,
/// and nothing but plain files under the names that are put into it. Throws LogError (Conflict).
class NewFolder {
public:
    NewFolder(const std::filesystem::path& target, Existing existing);
    ~NewFolder();
    NewFolder(const NewFolder&) = delete;
    NewFolder& operator=(const NewFolder&) = delete;

    const std::filesystem::path& path() const { return m_path; }
    /// Everything in it is on disk, then it bears the target's name. A folder that is there is
    /// filled instead, file by file, each in one step, and what else it holds stays.
    void giveName();

private:
    void fill();
    void makeParents();

    std::filesystem::path m_target, m_path;
    Existing m_existing;
    std::vector<std::filesystem::path> m_parents; ///< that were made for it, the outermost first
    bool m_named = false;
};

} // namespace slopebook::log
