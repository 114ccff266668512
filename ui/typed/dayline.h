// SPDX-License-Identifier: GPL-3.0-or-later
// The one line of a test day, whose it is in front: "be 60 0.92" is Bela's set where nobody else
// here begins so, "be l 1.84" Bela's attempt. Behind the name it is the line of a lift (setline.h)
// or of a test (attemptline.h). A name alone goes to whose it is.
#pragma once

#include "ui/typed/attemptline.h"
#include "ui/typed/setline.h"

#include <span>
#include <string>

namespace slopebook::ui {

/// What the line is typed at: a lift, where it is no test.
struct LineAt {
    const TestKind* test = nullptr;
    MassUnit bare = MassUnit::Kilogram; ///< of a load that names none
    std::optional<BodySide> due{};      ///< the side that is offered where one is missing
};

/// Two and more begin so. Never guessed: each of the lines is for one of them, named as briefly as
/// tells them apart.
struct WhoQuestion {
    std::vector<std::size_t> who; ///< indices of names
    std::vector<std::u16string> lines;
    Span where;
    friend bool operator==(const WhoQuestion&, const WhoQuestion&) = default;
};

/// Nothing behind the name.
struct OnlyName {
    friend bool operator==(const OnlyName&, const OnlyName&) = default;
};

struct DayLine {
    std::optional<std::size_t> who; ///< index of names; nothing: whose turn it is
    std::variant<TypedSet, TypedAttempts, TypedGap, OnlyName, LineProblem, LineQuestion,
                 WhoQuestion>
        what;
    friend bool operator==(const DayLine&, const DayLine&) = default;
};

/// names: the roster's, each once; with none the line has no name in front. A name needs two
/// letters; l, r and b are always sides. Places and lines that would be taken are of the whole
/// line.
DayLine readDayLine(std::u16string_view line, const LineAt& at,
                    std::span<const std::string> names = {});

} // namespace slopebook::ui
