// SPDX-License-Identifier: GPL-3.0-or-later
// The tests of the battery that the program knows: resources/testkinds.csv, compiled in, each
// figure with its source.
#pragma once

#include "core/model/battery.h"
#include "core/model/words.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace slopebook::answers {

/// Reads a text laid out as resources/testkinds.csv. Throws BadInput (line, column) for a value
/// that is none, or a figure without its source.
std::vector<TestKind> parseTestKinds(std::string_view csv);

/// The rows of resources/testkinds.csv, in its order.
std::span<const TestKind> builtInTestKinds();
/// The one of that name, letter case aside.
std::optional<TestKind> builtInTestKind(std::string_view name);
/// A test's name to be read: one of these tests' is translated, a coach's own is as it is.
Words testName(const std::string& name);

} // namespace slopebook::answers
