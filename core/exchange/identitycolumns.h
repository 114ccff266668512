// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of identities.csv: the names and trails of everything that lives in a log.
#pragma once

#include "core/exchange/columnspec.h"

namespace slopebook::exchange {

enum IdentityColumn : std::size_t {
    IdentityThing,
    IdentityUuid,
    IdentityOf,
    IdentityWith,
    IdentityName,
    IdentityDate,
    IdentityNumber,
    IdentityLoad,
    IdentityTrail,
    IdentityCount
};
constexpr std::size_t identityRequired = 2;
inline constexpr std::array<ColumnSpec, IdentityCount> identitySpec{
    textColumn("thing", "what kind of thing it is",
               "athlete|device|lift|test|block|equipment|station|session|lift conditions|test "
               "conditions|set|attempt|gap|check load|roster")
        .needed(),
    textColumn("uuid", "its name among logs (RFC 9562)").needed(),
    textColumn("of_uuid", "of what it belongs to: the session of a set, of conditions, of an "
                          "attempt or a gap; the athlete of a session or a check load; the station "
                          "of a roster"),
    textColumn("with_uuid", "the lift of a set, of its conditions, of a check load; the test of an "
                            "attempt or of its conditions; the athlete on a roster"),
    textColumn("name", "of what has a name"),
    dayColumn("date", "day of a session or a roster; first day of a block"),
    countColumn("number", "of a session on its day, of a set, an attempt or a gap"),
    massColumn("check_load_kg", "of a check load"),
    textColumn("trail", "what it has been: 64 hexadecimal digits for each edit, a revision and the "
                        "hash of what it said; a long one goes on in the next row of that uuid")};
inline constexpr auto identityColumns = namesOf(identitySpec);

} // namespace slopebook::exchange
