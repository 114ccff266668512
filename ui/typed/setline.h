// SPDX-License-Identifier: GPL-3.0-or-later
// The one line, typed at a lift: "60 0.92 0.90 0.88x @8 #slipped". Load first, then the reps'
// speeds. Knows neither widgets nor languages: what is wrong is a code with its place, and the line
// that would be taken.
//
//     60 0,92 0,90    load, speeds in m/s; ',' and '.' are both the decimal mark
//     60;0.92;0.90    between them: blanks, tabs or ';'
//     132.3lb 0.92    a load in pounds; 60kg in kilograms; else in the unit of the window
//     92.5! 0.18      '!' after the load: a successful true maximum, one rep
//     60 0.92 0.71x   'x' after a speed: that rep is left out
//     60 0.92 @8,5    how hard it was (RPE): 1 to 10 in halves
//     100 -           tried and not lifted; 100! -: as a true maximum
//     100 / # why     that load was not possible
//     - # why         the lift was not possible
//     ... # text      the rest is the set's note, and the reason of what was left out, not lifted
//                     or not possible
#pragma once

#include "core/model/exactmass.h"
#include "core/model/session.h"
#include "ui/typed/lineproblem.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace slopebook::ui {

struct TypedRep {
    double velocity = 0; ///< m/s
    bool leftOut = false;
    friend bool operator==(const TypedRep&, const TypedRep&) = default;
};

struct TypedSet {
    Mass load{};
    bool trueMaximum = false;
    std::vector<TypedRep> reps{}; ///< none where it was not lifted
    std::u16string note{};
    Outcome outcome = Outcome::Lifted;
    std::optional<Effort> effort{};
    friend bool operator==(const TypedSet&, const TypedSet&) = default;
};

/// The lift, or that load of it, was not possible.
struct TypedGap {
    std::optional<Mass> load{};
    std::u16string reason{};
    friend bool operator==(const TypedGap&, const TypedGap&) = default;
};

/// Never assumed, to be asked for: speeds typed without their decimal mark (92 for 0.92; meant is
/// the whole line as it was probably meant), or a load that looks like a speed (1.12 1.08: the load
/// was forgotten; meant is the line as it is, its load with its unit).
struct LineQuestion {
    enum class Kind { Speeds, Load };
    Kind kind = Kind::Speeds;
    std::u16string meant;
    std::vector<std::u16string> typed, proposed; ///< piece by piece: "92" and "0.92"
    Span where;                                  ///< the first of them
    friend bool operator==(const LineQuestion&, const LineQuestion&) = default;
};

using ReadLine = std::variant<TypedSet, LineProblem, LineQuestion, TypedGap>;

/// Reads a whole line. bare: the unit of a load that names none.
ReadLine readSetLine(std::u16string_view line, MassUnit bare = MassUnit::Kilogram);

using ReadSpeeds = std::variant<std::vector<TypedRep>, LineProblem, LineQuestion>;

/// Reads speeds alone ("0.92 0.90x"), for the table's cell.
ReadSpeeds readSpeeds(std::u16string_view text);

/// Reads a load alone ("62,5", "132.3lb"), for cells and fields of loads and body masses.
std::variant<Mass, LineProblem> readLoad(std::u16string_view text,
                                         MassUnit bare = MassUnit::Kilogram);

/// Reads an effort alone ("8", "8,5", "@8.5"); nothing for what is no half between 1 and 10.
std::optional<Effort> readEffort(std::u16string_view text);

/// Reads a plain number not below zero with either decimal mark; nothing for anything else.
std::optional<double> readDecimal(std::u16string_view text);

} // namespace slopebook::ui
