// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/daystretch.h"

#include "core/model/errors.h"
#include "core/model/phrases/model.h"

namespace slopebook {

namespace {
constexpr std::string_view points = "..";
}

std::string isoStretch(const DayStretch& days) {
    return isoDate(days.first) + std::string(points) + isoDate(days.last);
}

std::optional<DayStretch> parseStretch(std::string_view text) {
    const auto at = text.find(points);
    if (at == std::string_view::npos)
        return std::nullopt;
    const auto first = parseIsoDate(text.substr(0, at));
    const auto last = parseIsoDate(text.substr(at + points.size()));
    if (!first || !last)
        return std::nullopt;
    if (*last < *first)
        throw BadInput(say("\"%1\"", text),
                       say("the earlier day first: %1", isoStretch({*last, *first})));
    return DayStretch{*first, *last};
}

} // namespace slopebook
