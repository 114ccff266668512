// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/terminal.h"

#include "core/model/errors.h"
#include "core/model/printable.h"

#include <cstdio>

namespace slopebook::app {

void print(const std::string& text) {
    const std::string shown = printable(text);
    if (std::fwrite(shown.data(), 1, shown.size(), stdout) != shown.size() ||
        std::fflush(stdout) != 0)
        throw LogError(LogError::Kind::Unavailable, asIs("Standard output cannot be written."));
}

void complain(const std::string& text) {
    printError("slopebook: " + text + "\n");
}

void printError(const std::string& text) {
    std::fputs(printable(text).c_str(), stderr);
}

} // namespace slopebook::app
