// SPDX-License-Identifier: GPL-3.0-or-later
// What is tried, and how far it came, while a connection is made.
#pragma once

#include "core/store/address.h"

#include <string_view>
#include <vector>

namespace slopebook::store {

/// A machine by each number that its name has here, in the system's order. One that needs no search
/// (a number is given, a socket's folder, nothing) as it is; one that the system does not know as
/// it is too, isUnknown().
std::vector<Host> numbersOf(const Host& host);
/// Has a name that is to be searched for, and no number.
bool isUnknown(const Host& host);

/// How far an attempt came that failed so, of those after which the next machine is tried; below 0:
/// that one answered, and its answer counts.
int wayTo(StoreError::Kind kind);

/// Of a connection that is just being encrypted. Says afterwards whether it was the other end, or
/// the network, that ended it: by the state of its socket, which libpq has closed by then.
class OtherEnd {
public:
    /// -1: of none.
    explicit OtherEnd(int socket);
    ~OtherEnd();
    OtherEnd(const OtherEnd&) = delete;
    OtherEnd& operator=(const OtherEnd&) = delete;
    /// words: libpq's, in English. Where it tells of a certificate the other end may just have gone
    /// because of that.
    bool isGone(std::string_view words) const;

private:
    int m_socket;
    bool m_goneBefore; ///< nothing was left to be read
};

} // namespace slopebook::store
