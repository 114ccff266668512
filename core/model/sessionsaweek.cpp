// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/sessionsaweek.h"

#include "core/model/figures.h"
#include "core/model/phrases/model.h"

#include <array>
#include <charconv>
#include <cmath>
#include <initializer_list>

namespace slopebook {

namespace {

constexpr std::array<std::string_view, 3> dashes{"-", "\u2013", "\u2014"};

void skipBlanks(std::string_view& text) {
    for (const std::string_view blank : {" ", "\u00a0"})
        while (text.starts_with(blank))
            text.remove_prefix(blank.size());
}

/// Digits, and one more after a point or a comma. Nothing, and the text as it was, for another.
std::optional<double> takeNumber(std::string_view& text) {
    std::string digits;
    std::size_t at = 0;
    for (; at < text.size() &&
           ((text[at] >= '0' && text[at] <= '9') || text[at] == '.' || text[at] == ',');
         ++at)
        digits += text[at] == ',' ? '.' : text[at];
    double value = 0;
    const char* const end = digits.data() + digits.size();
    const auto read = std::from_chars(digits.data(), end, value, std::chars_format::fixed);
    if (read.ec != std::errc{} || read.ptr != end)
        return std::nullopt;
    text.remove_prefix(at);
    return value;
}

bool takeDash(std::string_view& text) {
    skipBlanks(text);
    for (const std::string_view dash : dashes)
        if (text.starts_with(dash)) {
            text.remove_prefix(dash.size());
            skipBlanks(text);
            return true;
        }
    return false;
}

std::string digitsOf(double value) {
    return shortFixed(value, 3);
}

} // namespace

std::optional<SessionsAWeek> sessionsAWeek(double fewest, double most) {
    const auto half = [](double value) {
        return value >= fewestAWeek && value <= mostAWeek && value * 2 == std::floor(value * 2);
    };
    if (!half(fewest) || !half(most) || most < fewest)
        return std::nullopt;
    return SessionsAWeek{.fewest = fewest, .most = most};
}

std::optional<SessionsAWeek> sessionsAWeek(std::string_view typed) {
    skipBlanks(typed);
    const auto fewest = takeNumber(typed);
    if (!fewest)
        return std::nullopt;
    const auto most = takeDash(typed) ? takeNumber(typed) : fewest;
    skipBlanks(typed);
    if (!most || !typed.empty())
        return std::nullopt;
    return sessionsAWeek(*fewest, *most);
}

std::string typedText(const SessionsAWeek& planned) {
    const std::string fewest = digitsOf(planned.fewest);
    return planned.fewest == planned.most ? fewest : fewest + "-" + digitsOf(planned.most);
}

Words sayAWeek(const SessionsAWeek& planned) {
    if (planned.fewest != planned.most)
        return say("%1 to %2 sessions a week", figure(digitsOf(planned.fewest)),
                   figure(digitsOf(planned.most)));
    return planned.most == 1 ? say("1 session a week")
                             : say("%1 sessions a week", figure(digitsOf(planned.most)));
}

} // namespace slopebook
