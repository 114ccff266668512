// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/address.h"

#include "core/model/phrases/store.h"
#include "core/store/libpq.h"

#include <memory>

namespace slopebook::store {

namespace {
using Option = std::pair<std::string, std::string>;
using Options = std::unique_ptr<PQconninfoOption, decltype(Libpq::PQconninfoFree)>;

[[noreturn]] void refuseUnread() {
    throw BadInput(say("an address of a store that cannot be read"),
                   say("postgresql://LOGIN@HOST/DATABASE, or host=HOST dbname=DATABASE user=LOGIN, "
                       "or service=NAME"));
}

std::vector<Option> given(const std::string& text) {
    const Libpq& pq = libpq();
    if (text.empty())
        return {};
    char* message = nullptr;
    const Options parsed(pq.PQconninfoParse(text.c_str(), &message), pq.PQconninfoFree);
    pq.PQfreemem(message); // it may hold a password
    if (!parsed)
        refuseUnread();
    std::vector<Option> options;
    for (const PQconninfoOption* one = parsed.get(); one->keyword; ++one)
        if (one->val && one->val[0] != '\0')
            options.emplace_back(one->keyword, one->val);
    return options;
}

std::string valueOf(const std::vector<Option>& options, std::string_view name) {
    for (const auto& [keyword, value] : options)
        if (keyword == name)
            return value;
    return {};
}

void put(std::vector<Option>& options, const char* name, const std::string& value) {
    for (auto& [keyword, held] : options)
        if (keyword == name) {
            held = value;
            return;
        }
    options.emplace_back(name, value);
}

void putIfNone(std::vector<Option>& options, const char* name, const char* value) {
    if (valueOf(options, name).empty())
        put(options, name, value);
}

/// What libpq would use, with the service and the environment in it. Nobody is asked: libpq refuses
/// the last option once it has put all the others together.
std::vector<Option> completed(const std::vector<Option>& options) {
    const Libpq& pq = libpq();
    std::vector<const char*> names, values;
    for (const auto& [name, value] : options) {
        names.push_back(name.c_str());
        values.push_back(value.c_str());
    }
    names.insert(names.end(), {"target_session_attrs", nullptr});
    values.insert(values.end(), {"nobody", nullptr});
    const std::unique_ptr<PGconn, decltype(Libpq::PQfinish)> none(
        pq.PQconnectStartParams(names.data(), values.data(), 0), pq.PQfinish);
    std::vector<Option> all;
    if (!none)
        return all;
    const Options known(pq.PQconninfo(none.get()), pq.PQconninfoFree);
    for (const PQconninfoOption* one = known.get(); one && one->keyword; ++one)
        if (one->val)
            all.emplace_back(one->keyword, one->val);
    return all;
}

bool isThisMachine(std::string_view host) {
    return host.empty() || host.front() == '/' || host.front() == '@' || host == "localhost" ||
           host == "::1" ||
           (host.starts_with("127.") &&
            host.find_first_not_of("0123456789.") == std::string_view::npos);
}
} // namespace

bool areThisMachine(std::string_view hosts) {
    for (;;) {
        const auto comma = hosts.find(',');
        if (!isThisMachine(hosts.substr(0, comma)))
            return false;
        if (comma == std::string_view::npos)
            return true;
        hosts.remove_prefix(comma + 1);
    }
}

Address Address::read(std::string_view text) {
    Address address;
    address.m_options = given(std::string(text));
    std::vector<Option>& options = address.m_options;
    for (const char* secret : {"password", "sslpassword"})
        if (!valueOf(options, secret).empty())
            throw BadInput(say("a password in the address of a store, where everybody on this "
                               "machine sees it"),
                           say("the address without it; the password in a line of ~/.pgpass, or in "
                               "PGPASSWORD"));
    const std::vector<Option> all = completed(options);
    const std::string host = valueOf(all, "host"), hostaddr = valueOf(all, "hostaddr");
    // a service that is not found is told by the attempt to use it
    address.m_local = areThisMachine(host) && areThisMachine(hostaddr);
    if (!address.m_local)
        put(options, "sslmode", "verify-full");
    put(options, "client_encoding", "UTF8");
    putIfNone(options, "fallback_application_name", "slopebook");
    putIfNone(options, "keepalives_idle", "10");
    putIfNone(options, "keepalives_interval", "5");
    putIfNone(options, "keepalives_count", "3");
    putIfNone(options, "tcp_user_timeout", "20000"); // ms

    Asked& asked = address.m_asked;
    asked.host = !host.empty() ? host : hostaddr;
    asked.place = asked.host.empty() ? "localhost" : asked.host;
    if (const std::string port = valueOf(all, "port"); !port.empty() && port != "5432")
        asked.place += ":" + port;
    asked.login = valueOf(all, "user");
    asked.database = valueOf(all, "dbname");
    if (asked.database.empty())
        asked.database = asked.login; // as libpq has it
    return address;
}

} // namespace slopebook::store
