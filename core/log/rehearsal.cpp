// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/rehearsal.h"

#include "core/log/copy.h"
#include "core/log/impl.h"
#include "core/log/layout.h"

#include <cstdlib>
#include <fcntl.h>
#include <string>
#include <unistd.h>

namespace slopebook::log {

namespace fs = std::filesystem;

Rehearsal::Rehearsal(const fs::path& file) {
    try {
        Connection source(file, Connection::Purpose::ReadWrite, Layout::ours().newest());
        if (Query version(source, "PRAGMA user_version");
            !version.next() || version.integer(0) >= Layout::ours().newest())
            return;
        std::string folder = (fs::temp_directory_path() / "slopebook-try-XXXXXX").string();
        if (mkdtemp(folder.data()) == nullptr)
            return;
        m_folder = folder;
        const fs::path copy = m_folder / "log.slopebook";
        const int empty = ::open(copy.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0600);
        if (empty < 0)
            return;
        ::close(empty);
        copyPages(source, copy);
        m_log = std::make_unique<Log>(Log::open(copy));
        m_log->impl().db.speakAs(file);
    } catch (const LogError&) {             // NOLINT(bugprone-empty-catch): the log itself says why
    } catch (const fs::filesystem_error&) { // NOLINT(bugprone-empty-catch): nowhere to copy it to
    }
}

Rehearsal::~Rehearsal() {
    m_log.reset();
    std::error_code ignored;
    if (!m_folder.empty())
        fs::remove_all(m_folder, ignored);
}

} // namespace slopebook::log
