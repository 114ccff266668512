// SPDX-License-Identifier: GPL-3.0-or-later
// Where a store is, as PostgreSQL's programs are told it.
#pragma once

#include "core/store/failure.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace slopebook::store {

/// One of the machines that an address names; empty: as libpq has it by default.
struct Host {
    std::string name{}, number{}, port{}; ///< host, hostaddr, port
};

/// Names and values of libpq, checked.
class Address {
public:
    /// postgresql://LOGIN@HOST/DATABASE, or host=... dbname=... user=..., or service=NAME; what it
    /// leaves out libpq takes from its own places (PGHOST and its kin, the service file). Asks
    /// nobody. Throws BadInput for what libpq cannot read and for a password in it: it would be
    /// seen by everybody on the machine. What is thrown never repeats the address.
    static Address read(std::string_view text);

    /// For libpq, with ours: TLS with the server's certificate and name checked (verify-full),
    /// whatever the address says, unless the server is known to be this machine; a lost network is
    /// noticed.
    const std::vector<std::pair<std::string, std::string>>& options() const { return m_options; }
    /// To be tried one after the other; one at least.
    const std::vector<Host>& hosts() const { return m_hosts; }
    /// For each of them (connect_timeout, PGCONNECT_TIMEOUT, the service's), s.
    int secondsToWait() const { return m_seconds; }
    /// Who is asked through one of them.
    Asked askedAt(const Host& host) const;
    /// The same for a command that was given by hand: nobody sends it again.
    Address byHand() const;
    const Asked& asked() const { return m_asked; }
    bool isThisMachine() const { return m_local; }

private:
    std::vector<std::pair<std::string, std::string>> m_options;
    std::vector<Host> m_hosts;
    Asked m_asked;
    int m_seconds = 0;
    bool m_local = false;
};

/// Of one or several, parted by commas, as libpq has them: whether all are this machine.
bool areThisMachine(std::string_view hosts);

} // namespace slopebook::store
