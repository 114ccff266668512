// SPDX-License-Identifier: GPL-3.0-or-later
// What a table's own SQL asks of its rows.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace slopebook::log {

/// The expression in each "CHECK (...)" of a CREATE TABLE, in order; comments are passed over.
std::vector<std::string> rulesOf(std::string_view sql);

} // namespace slopebook::log
