// SPDX-License-Identifier: GPL-3.0-or-later
// Long lists in a sentence: ten, and a count of the rest.
#pragma once

#include "core/model/words.h"

#include <span>
#include <string>

namespace slopebook {

constexpr std::size_t fewNamed = 10;

/// "Ann, Bob, Cleo", at most ten of them: "..., and 12 more".
Words few(std::span<const std::string> names);

} // namespace slopebook
