// SPDX-License-Identifier: GPL-3.0-or-later
// How much the tests try that could try for ever: a little in every run, a lot in the long one.
#pragma once

#include <QtGlobal>

namespace slopebook::test {

/// `often` in the usual run, `inTheLongRun` where SLOPEBOOK_LONG is set, and what the variable of
/// that name says before both.
inline int rounds(const char* variable, int often, int inTheLongRun) {
    if (const int wanted = qEnvironmentVariableIntValue(variable); wanted > 0)
        return wanted;
    return qEnvironmentVariableIsSet("SLOPEBOOK_LONG") ? inTheLongRun : often;
}

} // namespace slopebook::test
