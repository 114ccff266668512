// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/json.h"

#include <string_view>
#include <utility>

namespace slopebook::app {

namespace {

/// Of every figure whose key does not lie beside a "unit" of its own.
constexpr std::pair<std::string_view, std::string_view> units[]{
    {"load", "kg"},   {"one_rm", "kg"},     {"mass", "kg"}, {"velocity", "m/s"},
    {"v0", "m/s"},    {"slope", "m/s/kg"},  {"mvt", "m/s"}, {"area", "kg m/s"},
    {"percent", "%"}, {"date", "ISO 8601"}, {"level", "1"}, {"time", "s"}};

} // namespace

void Json::beginOutermost() {
    field("slopebook", jsonVersion).key("units").object();
    for (const auto& [what, unit] : units)
        field(what, unit);
    endObject();
}

} // namespace slopebook::app
