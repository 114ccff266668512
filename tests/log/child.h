// SPDX-License-Identifier: GPL-3.0-or-later
// Work in a process of its own, which may be killed, lose its rights or meet a full disk.
#pragma once

#include <csignal>
#include <exception>
#include <grp.h>
#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

namespace slopebook::test {

/// Runs work in a child and gives its result (0 to 125), 126 when it threw, or minus the signal
/// that ended it.
template <class Work>
int inChild(const Work& work) {
    const pid_t child = ::fork();
    if (child == 0) {
        int result = 126;
        try {
            result = work();
        } catch (const std::exception&) { // NOLINT(bugprone-empty-catch): 126 says it
        }
        ::_exit(result);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

/// Root may write whatever the permissions say; nobody may not.
inline void dropRights() {
    if (::geteuid() != 0)
        return;
    constexpr unsigned nobody = 65534;
    if (::setgroups(0, nullptr) != 0 || ::setgid(nobody) != 0 || ::setuid(nobody) != 0)
        ::_exit(125);
}

} // namespace slopebook::test
