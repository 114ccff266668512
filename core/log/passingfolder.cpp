// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/passingfolder.h"

#include "core/log/failure.h"

#include <cerrno>
#include <cstdlib>
#include <system_error>

namespace slopebook::log {

PassingFolder::PassingFolder(const std::string& purpose) {
    const std::string name = "slopebook-" + purpose;
    std::error_code unknown;
    const auto room = std::filesystem::temp_directory_path(unknown);
    if (unknown)
        throw systemFailure(unknown.value(), Doing::Make, name);
    std::string folder = (room / (name + "-XXXXXX")).string();
    if (::mkdtemp(folder.data()) == nullptr)
        throw systemFailure(errno, Doing::Make, folder);
    m_path = folder;
}

PassingFolder::~PassingFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

} // namespace slopebook::log
