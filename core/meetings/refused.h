// SPDX-License-Identifier: GPL-3.0-or-later
// What a store does not take though nothing new came from it: something that is not seen here
// stands against it.
#pragma once

#include "core/log/carried.h"
#include "core/log/log.h"
#include "core/model/words.h"
#include "core/store/exchange.h"

#include <functional>
#include <span>
#include <vector>

namespace slopebook::meetings {

struct Refused {
    store::Atom atom{};
    store::Pushed::Answer answer{};
};

/// Gives what is not refused for good, whatever it comes with. All of them at once were refused
/// just now, with that answer: piece by piece; then once more those together that were refused for
/// one reason, as names that change hands are (one alone finds the other's taken), as long as some
/// of them are taken by that. give: gives all of some or nothing.
std::vector<Refused>
giveInPieces(std::vector<store::Atom> atoms, store::Pushed::Answer answer,
             const std::function<store::Pushed::Answer(std::span<const store::Atom>)>& give);

/// Of those the lifts, tests and devices that were removed here, and stand in the store because
/// somebody uses them whom nobody sees here, while others wait for their names.
std::vector<store::Sixteen> inTheWay(const log::Log& log, const std::vector<Refused>& refused);

/// Whether it is a choice about what is everybody's: a lift, a test, a device.
bool isChoiceOfEverybodys(log::Connection& db, const log::Carried& one);

/// For the coach.
Words why(const Refused& refused);

} // namespace slopebook::meetings
