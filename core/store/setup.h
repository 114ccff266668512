// SPDX-License-Identifier: GPL-3.0-or-later
// Making a store, letting people in, and what stands there.
#pragma once

#include "core/store/exchange.h"

namespace slopebook::store {

struct Initialised {
    int layoutBefore = 0;              ///< 0: there was none
    std::vector<std::string> squads{}; ///< made now
};
/// Makes the store in the address's database, or brings it up to date, and the squads that are not
/// there; all or nothing. The login must own the database, or be a member of the role that does.
/// Nothing outside that database is changed. Throws StoreError, BadInput.
Initialised initialise(const Address& address, const std::vector<std::string>& squads,
                       const Progress& stop = {});

enum class May { Nothing, Read, Write };

struct Granted {
    std::string role{}, squad{};
    May before = May::Nothing, now = May::Nothing;
};
/// Lets a login, which must exist, read or write a squad, or no longer see it. A login that writes
/// somewhere is a coach, one that only reads an analyst; in this store alone, whatever it may in
/// another one. The address's own login must manage the store (own the database). Throws
/// StoreError, and BadInput naming the squads or saying how a login is made.
Granted grant(const Address& address, const std::string& role, const std::string& squad, May may,
              const Progress& stop = {});

struct SquadStatus {
    Squad squad{};
    std::int64_t athletes = 0, sessions = 0, sets = 0; ///< alive
};
struct Status {
    Asked asked{};
    int serverVersion = 0; ///< 150006 is 15.6
    bool encrypted = false;
    bool manages = false; ///< the login owns the store
    Sixteen id{};
    std::int64_t layout = 0, writings = 0, bytes = 0;
    std::vector<SquadStatus> squads{}; ///< that the login sees
};
/// Throws StoreError: OtherLayout as well.
Status status(const Address& address, const Progress& stop = {});

} // namespace slopebook::store
