// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl+C and a polite kill during long work: the work takes back what it had begun, then ends.
#pragma once

#include "core/model/progress.h"

#include <csignal>
#include <string>
#include <vector>

namespace slopebook::app {

/// While one lives, SIGINT, SIGTERM and SIGHUP ask the work to stop instead of ending the program
/// (one that was ignored from the start stays so). There is one at a time.
class Interruptible {
public:
    Interruptible();
    ~Interruptible();
    Interruptible(const Interruptible&) = delete;
    Interruptible& operator=(const Interruptible&) = delete;

    /// For the work: false once it is to stop. Where standard error is a terminal, it also shows
    /// there how far the work is, and wipes it out at the end.
    Progress progress();

private:
    struct Before {
        int signal = 0;
        struct sigaction action {};
    };
    std::vector<Before> m_before;
    bool m_shown = false;
};

/// After Cancelled: ends the program by the signal that asked for it, as who waits for it expects.
/// Returns where none did.
void endByInterrupt();

} // namespace slopebook::app
