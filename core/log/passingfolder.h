// SPDX-License-Identifier: GPL-3.0-or-later
// A folder for this program alone in the system's place for such.
#pragma once

#include <filesystem>
#include <string>

namespace slopebook::log {

class PassingFolder {
public:
    /// purpose: a part of its name. Throws LogError where there is no place for it.
    explicit PassingFolder(const std::string& purpose);
    /// It goes with all that is in it.
    ~PassingFolder();
    PassingFolder(const PassingFolder&) = delete;
    PassingFolder& operator=(const PassingFolder&) = delete;

    const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

} // namespace slopebook::log
