// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/rehearsal.h"

#include "core/log/copy.h"
#include "core/log/impl.h"
#include "core/log/layout.h"

#include <cerrno>
#include <fcntl.h>
#include <unistd.h>

namespace slopebook::log {

namespace fs = std::filesystem;

Rehearsal::Rehearsal(const fs::path& file) {
    bool needed = false;
    try {
        Connection source(file, Connection::Purpose::ReadWrite, Layout::ours().newest());
        if (Query version(source, "PRAGMA user_version");
            !version.next() || version.integer(0) >= Layout::ours().newest())
            return;
        needed = true; // without a place to try it, nothing may be said to be tried
        const fs::path copy = m_folder.emplace("try").path() / "log.slopebook";
        const int empty = ::open(copy.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0600);
        if (empty < 0)
            throw systemFailure(errno, Doing::Make, copy);
        ::close(empty);
        copyPages(source, copy);
        m_log = std::make_unique<Log>(Log::open(copy));
        m_log->impl().db.speakAs(file);
    } catch (const LogError& error) {
        m_log.reset();
        if (needed &&
            (error.kind() == LogError::Kind::Full || error.kind() == LogError::Kind::Unavailable))
            throw; // of the rest the log itself says why
    }
}

} // namespace slopebook::log
