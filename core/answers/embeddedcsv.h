// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a CSV text that is compiled in.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace slopebook::answers {

/// Every row, the header first. Throws BadInput (file, line) for a stray quote.
std::vector<std::vector<std::string>> csvRows(std::string_view text, const char* file);

} // namespace slopebook::answers
