// SPDX-License-Identifier: GPL-3.0-or-later
// Writes an institute's log, or one athlete's part of it, or that of all who do a lift (both
// counted from 0):
//   slopebook_make_log FILE SESSIONS [ATHLETE | lift LIFT]
#include "tests/bench/biglog.h"

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <exception>

int main(int count, char** arguments) {
    const bool ofLift = count == 5 && std::strcmp(arguments[3], "lift") == 0;
    if (count < 3 || count > (ofLift ? 5 : 4) || std::atoi(arguments[2]) < 1) {
        std::fputs("usage: slopebook_make_log FILE SESSIONS [ATHLETE | lift LIFT]\n", stderr);
        return 2;
    }
    try {
        slopebook::bench::Institute institute{.sessions = std::atoi(arguments[2])};
        if (ofLift)
            institute.onlyLift = std::atoi(arguments[4]);
        else if (count == 4)
            institute.only = std::atoi(arguments[3]);
        slopebook::bench::writeInstitute(arguments[1], institute);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
        return 1;
    }
    return 0;
}
