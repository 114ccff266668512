// SPDX-License-Identifier: GPL-3.0-or-later
// The load and the speeds of a typed set, piece by piece; used by setline.cpp.
#pragma once

#include "ui/typed/pieces.h"
#include "ui/typed/setline.h"

namespace slopebook::ui {

struct ReadLoadPiece {
    Mass load{};
    bool maximum = false;
    bool named = false; ///< says its unit, or that it is a maximum: surely a load
    double typed = 0;
    /// Not so named, and what a bar does rather than what it weighs.
    bool likeSpeed() const { return !named && typed > 0 && typed < plausibleVelocityLimit; }
};
std::variant<ReadLoadPiece, LineProblem> loadOf(const Piece& piece, MassUnit bare);

struct ReadSpeedPieces {
    std::vector<TypedRep> reps;
    LineQuestion question; ///< without the line: only its pieces
    std::vector<Span> asked;
};
std::optional<LineProblem> addSpeed(const Piece& piece, ReadSpeedPieces& into);

/// The question about the whole line, with what was probably meant in the place of what was typed.
LineQuestion askSpeeds(ReadSpeedPieces read, std::u16string_view line);
/// A load that looks like a speed: taken only once it says that it is one.
LineQuestion askLoad(const Piece& load, std::u16string_view line, MassUnit bare);

} // namespace slopebook::ui
