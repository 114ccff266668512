// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/jsonschemas.h"

#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"
#include "resources/embedded.h"

namespace slopebook::exchange {

namespace {
constexpr std::string_view partsName = "parts";
constexpr std::string_view sharedParts = "\"$defs\": {}"; // in a schema: all of parts.json
} // namespace

std::string jsonSchemaOf(const std::string& command) {
    std::string parts, schema, names;
    for (const resources::File& file : resources::schemas()) {
        const std::string_view name = file.name.substr(0, file.name.rfind('.'));
        if (name == partsName) {
            parts = file.text;
            continue;
        }
        names += (names.empty() ? "" : ", ") + std::string(name);
        if (name == command)
            schema = file.text;
    }
    if (schema.empty())
        throw BadInput(say("the command \"%1\"", command),
                       say("a command that prints JSON: %1", names));
    while (!parts.empty() && parts.back() == '\n')
        parts.pop_back();
    if (const auto at = schema.find(sharedParts); at != std::string::npos)
        schema.replace(at, sharedParts.size(), "\"$defs\": " + parts);
    return schema;
}

} // namespace slopebook::exchange
