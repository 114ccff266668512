// SPDX-License-Identifier: GPL-3.0-or-later
// The one line, typed at a test: its attempts. Knows neither widgets nor languages: what is wrong
// is a code with its place, and the line that would be taken.
//
//     1.82 1,90 1.88       attempts; ',' and '.' are both the decimal mark
//     l 1.82 1.90 r 1.75   a test of two sides: the side stands before its attempts
//     b 1.9                both at once, where the test takes that too
//     0.512/0.204          flight time / contact time, where the test takes both
//     1.82 1.95x # line    'x': left out; the rest after '#' is its reason, or the note of all
//     r - # sore knee      '-': not possible on that side (or at all), with the reason
#pragma once

#include "core/model/battery.h"
#include "ui/typed/lineproblem.h"

#include <string_view>
#include <variant>
#include <vector>

namespace slopebook::ui {

struct TypedAttempts {
    std::vector<Attempt> attempts;
    std::vector<BodySide> notPossible; ///< sides; their reason is the text after '#'
    std::string reason;
    friend bool operator==(const TypedAttempts&, const TypedAttempts&) = default;
};

/// due: the side that is offered where one is missing.
std::variant<TypedAttempts, LineProblem>
readAttemptLine(std::u16string_view line, const TestKind& kind, std::optional<BodySide> due = {});

} // namespace slopebook::ui
