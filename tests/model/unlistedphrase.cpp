// SPDX-License-Identifier: GPL-3.0-or-later
// What no list holds: must not compile (tests/model/CMakeLists.txt).
#include "core/model/phrases/model.h"

slopebook::Words unlistedPhrase() {
    return slopebook::say("no name at all");
}
