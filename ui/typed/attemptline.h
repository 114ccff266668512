// SPDX-License-Identifier: GPL-3.0-or-later
// The one line that a test's attempts are typed in. Knows neither widgets nor languages: what is
// wrong is a code with its place.
//
//     1.82 1,90 1.88       attempts; ',' and '.' are both the decimal mark
//     L 1.82 1.90 R 1.75   a test of two sides: the side stands before its attempts
//     0.512/0.204          flight time / contact time, where the test takes both
//     1.82 1.95x # line    'x': left out; the rest after '#' is its reason, or the note of all
//     R - # sore knee      '-': not possible on that side (or at all), with the reason
#pragma once

#include "core/model/battery.h"

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

struct AttemptProblem {
    enum class Kind {
        Empty,        ///< nothing typed
        NotANumber,   ///< a piece that is no number
        NotPositive,  ///< a value of 0
        SideMissing,  ///< a value before its side
        NoSides,      ///< a side for a test without sides
        NoContact,    ///< a contact time is missing
        ExtraContact, ///< a contact time that the test does not take
        NoReason,     ///< not possible, or left out, without a reason
        SideAlone     ///< a side with nothing after it
    };
    Kind kind = Kind::Empty;
    std::size_t start = 0, length = 0; ///< in UTF-16 units
    friend bool operator==(const AttemptProblem&, const AttemptProblem&) = default;
};

std::variant<TypedAttempts, AttemptProblem> readAttemptLine(std::u16string_view line,
                                                            const TestKind& kind);

} // namespace slopebook::ui
