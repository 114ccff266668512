// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/newlog.h"

#include "core/log/connection.h"
#include "core/log/layout.h"

namespace slopebook::log {

NewLog::NewLog(const std::filesystem::path& target) : NewLog(target, Layout::ours()) {}

NewLog::NewLog(const std::filesystem::path& target, const Layout& layout)
    : m_file(std::filesystem::absolute(target)) {
    Connection connection(m_file.path(), Connection::Purpose::Fresh, layout.newest());
    connection.execute("BEGIN EXCLUSIVE");
    connection.execute("PRAGMA application_id = " + std::to_string(applicationId));
    runSteps(connection, layout, 0, layout.newest());
    connection.execute("COMMIT");
}

} // namespace slopebook::log
