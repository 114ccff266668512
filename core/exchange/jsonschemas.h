// SPDX-License-Identifier: GPL-3.0-or-later
// The JSON Schemas (json-schema.org, draft 2020-12) of what the commands print.
#pragma once

#include <string>

namespace slopebook::exchange {

/// The schema of a command's JSON, whole: what the schemas share (parts.json) stands in it.
/// BadInput lists the commands that there are.
std::string jsonSchemaOf(const std::string& command);

} // namespace slopebook::exchange
