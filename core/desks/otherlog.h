// SPDX-License-Identifier: GPL-3.0-or-later
// The other log of a meeting, open for reading and known to be sound.
#pragma once

#include "core/log/log.h"
#include "core/log/passingfolder.h"

#include <filesystem>
#include <optional>

namespace slopebook::desks {

class OtherLog {
public:
    /// Throws LogError: it is no log, newer, damaged, or the very file of `mine`. One of an older
    /// layout is copied into a folder of its own, and the copy is brought up to date.
    OtherLog(const std::filesystem::path& file, const log::Log& mine);

    const log::Log& log() const { return *m_log; }

private:
    void openCopy(const std::filesystem::path& file);

    std::optional<log::PassingFolder> m_folder; ///< of the copy, which it outlives
    std::optional<log::Log> m_log;
};

} // namespace slopebook::desks
