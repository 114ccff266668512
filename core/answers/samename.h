// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <string_view>

namespace slopebook::answers {

/// Whether two names differ at the most in the case of A to Z: how published lifts, tests and
/// blocks are asked for. (A coach's own names are compared by nameKey, core/model/names.h.)
inline bool sameName(std::string_view a, std::string_view b) {
    const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; };
    return std::ranges::equal(a, b, {}, lower, lower);
}

} // namespace slopebook::answers
