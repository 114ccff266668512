// SPDX-License-Identifier: GPL-3.0-or-later
// The one line that a set is typed in: "60 0.92 0.90 0.88x #slipped". Load first, then the reps'
// speeds. Knows neither widgets nor languages: what is wrong is a code with its place.
//
//     60 0,92 0,90    load, speeds in m/s; ',' and '.' are both the decimal mark
//     60;0.92;0.90    between them: blanks, tabs or ';'
//     132.3lb 0.92    a load in pounds; 60kg in kilograms; else in the unit of the window
//     92.5! 0.18      '!' after the load: a successful true maximum, one rep
//     60 0.92 0.71x   'x' after a speed: that rep is left out
//     ... # text      the rest is the set's note, and the reason of the reps left out
#pragma once

#include "core/model/exactmass.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace slopebook::ui {

/// A stretch of the line, in UTF-16 units.
struct Span {
    std::size_t start = 0;
    std::size_t length = 0;
    friend bool operator==(const Span&, const Span&) = default;
};

struct TypedRep {
    double velocity = 0; ///< m/s
    bool leftOut = false;
    friend bool operator==(const TypedRep&, const TypedRep&) = default;
};

struct TypedSet {
    Mass load;
    bool trueMaximum = false;
    std::vector<TypedRep> reps;
    std::u16string note;
    friend bool operator==(const TypedSet&, const TypedSet&) = default;
};

/// Why a line cannot be taken, and where.
struct LineProblem {
    enum class Kind {
        Empty,         ///< nothing typed
        NotANumber,    ///< letters, signs, an exponent, a group mark
        TwoMarks,      ///< more than one decimal mark in one number
        BareMark,      ///< a number that begins or ends without digits: "60," or "."
        LoadTooHeavy,  ///< over what can be stored
        LoadMark,      ///< an 'x' after the load
        SpeedMark,     ///< a '!' or a unit of mass after a speed
        NoSpeeds,      ///< a load and nothing else
        SpeedZero,     ///< a rep that did not move has no speed
        SpeedTooFast,  ///< cannot be stored, and no likely reading of it
        SpeedsFirst,   ///< the load seems to stand behind the speeds
        MaximumHasReps ///< a true maximum is one rep
    };
    Kind kind = Kind::Empty;
    Span where;
    friend bool operator==(const LineProblem&, const LineProblem&) = default;
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

using ReadLine = std::variant<TypedSet, LineProblem, LineQuestion>;

/// Reads a whole line. bare: the unit of a load that names none.
ReadLine readSetLine(std::u16string_view line, MassUnit bare = MassUnit::Kilogram);

using ReadSpeeds = std::variant<std::vector<TypedRep>, LineProblem, LineQuestion>;

/// Reads speeds alone ("0.92 0.90x"), for the table's cell.
ReadSpeeds readSpeeds(std::u16string_view text);

/// Reads a load alone ("62,5", "132.3lb"), for cells and fields of loads and body masses.
std::variant<Mass, LineProblem> readLoad(std::u16string_view text,
                                         MassUnit bare = MassUnit::Kilogram);

/// Reads a plain number not below zero with either decimal mark; nothing for anything else.
std::optional<double> readDecimal(std::u16string_view text);

} // namespace slopebook::ui
