// SPDX-License-Identifier: GPL-3.0-or-later
// What goes wrong between a desk and a store, as sentences of our own.
#pragma once

#include "core/model/errors.h"

#include <string>
#include <string_view>

namespace slopebook::store {

/// The store could not be reached, asked or written. Nothing was written by what failed, but where
/// the connection was Lost: then the same may be sent again, and counts once.
class StoreError : public Error {
public:
    enum class Kind {
        NoLibrary,      ///< libpq is not on this machine
        Unresolved,     ///< no machine of that name
        Unreachable,    ///< nobody answers there
        Starting,       ///< it is just starting, stopping or full of connections
        WrongPassword,  ///< or no such login: a server does not tell
        NoPassword,     ///< one is asked for, and none was found
        NotLetIn,       ///< the server's own rules refuse the login
        NoSuchDatabase, ///< at that server
        Certificate,    ///< it does not fit, or there is nothing to hold it against
        NoEncryption,   ///< no TLS, and it is not this machine
        NoStore,        ///< a database without a store
        OtherLayout,    ///< of another version of the program
        NotAllowed,     ///< by the rights of this login
        Full,           ///< the server's disk
        Busy,           ///< somebody else held it too long
        Lost,           ///< the connection, in the middle
        Taken,          ///< a key that another atom has
        Orphan,         ///< an atom that hangs on what is not there, or not alive
        Refused         ///< anything else that the server refused
    };
    StoreError(Kind kind, Words words) : Error(std::move(words)), m_kind(kind) {}
    Kind kind() const noexcept { return m_kind; }

private:
    Kind m_kind;
};

/// Who was asked, for the sentences.
struct Asked {
    std::string place{};    ///< "store.example.org:5432"
    std::string host{};     ///< "store.example.org"
    std::string database{}; ///< its name
    std::string login{};
    bool byHand = false; ///< a command, not a meeting: what was under way is not sent again
};

/// From the state (SQLSTATE) of a server's refusal and its own words.
StoreError serverFailure(const Asked& asked, std::string_view state, const std::string& words);
/// The connection broke while it was used.
StoreError lostFailure(const Asked& asked, const std::string& words);

/// How far a connection came that failed.
struct Attempt {
    std::string words{}; ///< libpq's, in English
    bool needsPassword = false;
    bool unknown = false;    ///< no machine of that name
    bool reached = false;    ///< somebody took the connection
    bool encrypting = false; ///< it came as far as that, and no further
    bool cut = false;        ///< the other end, or the network, ended it
    int waited = 0;          ///< seconds, and nobody answered
    bool noServer = false;   ///< not even tried: a service or an option that is none
};
StoreError connectFailure(const Asked& asked, const Attempt& attempt);

} // namespace slopebook::store
