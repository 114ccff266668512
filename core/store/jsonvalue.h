// SPDX-License-Identifier: GPL-3.0-or-later
// JSON (RFC 8259) as a store gives it: read strictly, numbers as they are written.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace slopebook::store {

struct JsonValue {
    enum class Kind { Null, Yes, No, Number, Text, List, Object };
    Kind kind = Kind::Null;
    std::string text{}; ///< of a text, without its escapes; of a number its digits
    std::vector<JsonValue> list{};
    std::vector<std::pair<std::string, JsonValue>> members{}; ///< in their order

    const JsonValue* member(std::string_view name) const; ///< nullptr where there is none
};

/// Throws BadInput for what is no JSON, is nested deeper than 16, or has more behind it.
JsonValue readJson(std::string_view text);

/// A text in quotes, with the escapes that it needs.
void writeQuoted(std::string& json, std::string_view text);

} // namespace slopebook::store
