// SPDX-License-Identifier: GPL-3.0-or-later
// What the list of core/model holds, said there.
#include "core/model/phrases/model.h"

slopebook::Words listedPhrase() {
    return slopebook::say("no name");
}
