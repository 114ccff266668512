// SPDX-License-Identifier: GPL-3.0-or-later
// Why a typed line cannot be taken, where, and what would be taken in its place.
#pragma once

#include <cstddef>
#include <string>

namespace slopebook::ui {

/// A stretch of the line, in UTF-16 units.
struct Span {
    std::size_t start = 0;
    std::size_t length = 0;
    friend bool operator==(const Span&, const Span&) = default;
};

struct LineProblem {
    enum class Kind {
        // Of any line.
        Empty,      ///< nothing typed
        NotANumber, ///< letters, signs, an exponent, a group mark
        TwoMarks,   ///< more than one decimal mark in one number
        BareMark,   ///< a number that begins or ends without digits: "60," or "."
        NoReason,   ///< not possible (of an attempt: left out as well), and not said why
        // Of a lift's.
        LoadTooHeavy,   ///< over what can be stored
        LoadMark,       ///< an 'x' after the load
        SpeedMark,      ///< a '!' or a unit of mass after a speed
        NoSpeeds,       ///< a load and nothing else
        SpeedZero,      ///< a rep that did not move has no speed
        SpeedTooFast,   ///< cannot be stored, and no likely reading of it
        SpeedsFirst,    ///< the load seems to stand behind the speeds
        MaximumHasReps, ///< a true maximum is one rep
        WordAfterLoad,  ///< a word for "not lifted": 95 f
        DashAmong,      ///< not lifted, and speeds
        DashFirst,      ///< a '-' before its load
        StrokeAmong,    ///< a load that was not possible, and something beside it
        StrokeFirst,    ///< a '/' with no load before it
        BadEffort,      ///< no half between 1 and 10
        TwoEfforts,
        EffortFirst, ///< before the load
        SideAtLift,  ///< a lift has none
        // Of a test's.
        NotPositive,  ///< a value of 0
        SideMissing,  ///< a value before its side
        NoSides,      ///< a side for a test without sides
        NoBoth,       ///< both at once, where only each side is tested
        SideAlone,    ///< a side with nothing after it
        NoContact,    ///< a contact time is missing
        ExtraContact, ///< a contact time that the test does not take
        EffortAtTest, ///< an attempt has none
        // Of the name in front.
        NobodyCalled, ///< nobody of the roster begins so
        NameTooShort  ///< one letter
    };
    Kind kind = Kind::Empty;
    Span where{};
    /// The whole line as it would be taken, where one is likely; else empty.
    std::u16string instead{};
    friend bool operator==(const LineProblem&, const LineProblem&) = default;
};

} // namespace slopebook::ui
