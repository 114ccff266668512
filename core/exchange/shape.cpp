// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/shape.h"

#include "core/model/names.h"

#include <charconv>
#include <cstdint>

namespace slopebook::exchange {

bool isMeasure(Tidy role) {
    return role == TidyLoad || role == TidyVelocity || role == TidyBodyMass;
}

const std::vector<Tidy>& offeredRoles() {
    static const std::vector<Tidy> roles{
        TidyDate,    TidyAthlete,  TidyLift,     TidyLoad,        TidyVelocity, TidySet,
        TidyRep,     TidySession,  TidyDevice,   TidyKind,        TidySite,     TidyBlock,
        TidyMaximum, TidyBodyMass, TidyExcluded, TidySetExcluded, TidyNote,     TidySessionNote};
    return roles;
}

const std::vector<Tidy>& neededRoles() {
    static const std::vector<Tidy> roles{TidyDate, TidyAthlete, TidyLift, TidyLoad, TidyVelocity};
    return roles;
}

std::string headingSignature(const std::vector<std::string>& headings) {
    // FNV-1a, 64 bits (from memory; any function that spreads would do): short, and the same on
    // every machine.
    std::uint64_t hash = 14695981039346656037U;
    const auto mix = [&hash](unsigned char byte) { hash = (hash ^ byte) * 1099511628211U; };
    for (const std::string& heading : headings) {
        for (const char c : foldCase(heading))
            mix(static_cast<unsigned char>(c));
        mix(0);
    }
    char digits[16];
    const auto end = std::to_chars(digits, digits + sizeof digits, hash, 16);
    const std::string hex(digits, end.ptr);
    return std::to_string(headings.size()) + "-" + std::string(sizeof digits - hex.size(), '0') +
           hex;
}

} // namespace slopebook::exchange
