// SPDX-License-Identifier: GPL-3.0-or-later
// An answer of a command as JSON. Its outermost object begins with the version of the form and with
// the unit of each kind of figure; what has a unit of its own beside it says so there.
#pragma once

#include "core/exchange/json.h"

namespace slopebook::app {

/// Rises when a key goes or means something else; new keys may come without it.
constexpr int jsonVersion = 1;

class Json : public exchange::Json {
protected:
    void beginOutermost() override;
};

} // namespace slopebook::app
