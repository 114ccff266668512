// SPDX-License-Identifier: GPL-3.0-or-later
// Names as people type them: matched exactly, then letter case aside.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace slopebook {

/// Lower case of UTF-8 text for comparing names: Latin (with Latin-1 and Latin Extended-A), Greek
/// and Cyrillic letters; anything else stays as it is. Needs no locale.
std::string foldCase(std::string_view utf8);

/// Index of the name that is wanted: the equal one, else the only one that differs in letter case.
std::optional<std::size_t> findName(std::span<const std::string> names, std::string_view wanted);

} // namespace slopebook
