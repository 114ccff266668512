// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/otherlog.h"

#include "core/log/backups.h"
#include "core/log/failure.h"
#include "core/log/sound.h"
#include "core/model/errors.h"
#include "core/model/phrases/desks.h"

#include <system_error>

namespace slopebook::desks {

OtherLog::OtherLog(const std::filesystem::path& file, const log::Log& mine) {
    std::error_code unknown; // a file that cannot be looked at is said better by opening it
    if (std::filesystem::equivalent(file, mine.file(), unknown))
        throw LogError(LogError::Kind::Conflict,
                       say("'%1' is this log itself. Nothing was changed.", log::shown(file)));
    try {
        m_log.emplace(log::Log::open(file, log::Access::ReadOnly));
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::ReadOnly) // of an older layout
            throw;
        openCopy(file);
    }
    log::requireSound(m_log->check(), file);
}

void OtherLog::openCopy(const std::filesystem::path& file) {
    const std::filesystem::path copy = m_folder.emplace("older").path() / file.filename();
    log::restore(file, copy);
    m_log.emplace(log::Log::open(copy));
}

} // namespace slopebook::desks
