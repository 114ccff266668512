// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/fileformat.h"

#include "core/log/impl.h"
#include "core/log/newlog.h"
#include "core/log/query.h"
#include "resources/embedded.h"

#include <unistd.h>

namespace slopebook::log {

std::string fileFormat(const Log& log) {
    std::string text;
    for (const resources::File& file : resources::fileFormat())
        text += file.text;
    text += "\n## The SQL of it\n\n";
    Query rows(log.impl().db, "SELECT sql FROM sqlite_master WHERE sql IS NOT NULL "
                              "ORDER BY type DESC, rootpage");
    while (rows.next())
        text += rows.text(0) + ";\n\n";
    Query version(log.impl().db, "PRAGMA user_version");
    version.next();
    text += "PRAGMA user_version = " + std::to_string(version.small(0)) + ";\n";
    return text;
}

std::string fileFormat() {
    const NewLog made(std::filesystem::temp_directory_path() /
                      ("slopebook-format-" + std::to_string(::getpid()) + ".slopebook"));
    return fileFormat(Log::open(made.file(), Access::ReadOnly));
}

} // namespace slopebook::log
