// SPDX-License-Identifier: GPL-3.0-or-later
// How what sessions and sets are told apart by is spread over a hash table.
#include "core/exchange/stagedkeys.h"

namespace slopebook::exchange {

namespace {

// Mixes a number into a hash (the 64-bit finisher of Steele, Lea and Flood 2014, from memory; any
// function that spreads would do).
std::size_t mixed(std::uint64_t hash, std::uint64_t part) {
    std::uint64_t z = hash + 0x9E3779B97F4A7C15U + part;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBU;
    return static_cast<std::size_t>(z ^ (z >> 31));
}

std::size_t spread(int a, std::int64_t b, int c) {
    return mixed(mixed(mixed(0, static_cast<std::uint64_t>(a)), static_cast<std::uint64_t>(b)),
                 static_cast<std::uint64_t>(c));
}

} // namespace

std::size_t Spread::operator()(const StagedDay& day) const noexcept {
    return spread(day.athlete, std::chrono::sys_days{day.date}.time_since_epoch().count(),
                  day.ordinal);
}

std::size_t Spread::operator()(const StagedPlace& place) const noexcept {
    return spread(place.session, place.lift, place.number);
}

} // namespace slopebook::exchange
