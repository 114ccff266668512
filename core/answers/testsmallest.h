// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest change of a test that matters.
#pragma once

#include "core/answers/reading.h"
#include "core/answers/squadtests.h"

#include <optional>

namespace slopebook::answers {

/// The squad's where eight have the test, else the kind's own: published, or the coach's.
std::optional<Smallest> smallestOfTest(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                       const SquadTests& squad);

} // namespace slopebook::answers
