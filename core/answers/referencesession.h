// SPDX-License-Identifier: GPL-3.0-or-later
// The session of a block that all others are taken to.
#pragma once

#include "core/model/session.h"

#include <vector>

namespace slopebook::answers {

/// Of the device that most of the block was measured by the last that may stand beside others.
/// sessions is not empty.
const LiftSession& referenceOf(const std::vector<LiftSession>& sessions);

} // namespace slopebook::answers
