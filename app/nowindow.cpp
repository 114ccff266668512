// SPDX-License-Identifier: GPL-3.0-or-later
// Stands in for window.cpp until ui/shell/run.cpp is there.
#include "app/commands/commands.h"
#include "app/window.h"

#include <cstdio>

namespace slopebook::app {

int openWindow(int&, char**, const std::optional<std::filesystem::path>&) {
    std::fputs("slopebook: this build has no window. \"slopebook --help\" lists the commands.\n",
               stderr);
    return exitBad;
}

} // namespace slopebook::app
