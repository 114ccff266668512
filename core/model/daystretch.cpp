// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/daystretch.h"

#include "core/model/errors.h"
#include "core/model/phrases/model.h"

#include <charconv>

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

std::string isoSession(const DaySession& session) {
    return isoDate(session.day) + "#" + std::to_string(session.number);
}

std::optional<DaySession> parseDaySession(std::string_view text) {
    const auto hash = text.find('#');
    const auto day = parseIsoDate(text.substr(0, hash));
    if (hash == std::string_view::npos || !day)
        return std::nullopt;
    const auto tail = text.substr(hash + 1);
    int number = 0;
    const auto [end, error] = std::from_chars(tail.data(), tail.data() + tail.size(), number);
    if (error != std::errc{} || end != tail.data() + tail.size() || number < 1)
        return std::nullopt;
    return DaySession{*day, number};
}

} // namespace slopebook
