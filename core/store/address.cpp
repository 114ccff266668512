// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/address.h"

#include "core/model/phrases/store.h"
#include "core/store/libpq.h"

#include <algorithm>
#include <charconv>
#include <memory>

namespace slopebook::store {

namespace {
constexpr int waitsForAnswer = 20; // s, where nothing else is said

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

/// What libpq would use, with the service and the environment in it; nothing where it cannot tell
/// (a service that is not found). Nobody is asked: libpq refuses the last option once it has put
/// all the others together.
std::optional<std::vector<Option>> completed(const std::vector<Option>& options) {
    constexpr const char* last = "target_session_attrs";
    constexpr const char* refused = "nobody";
    const Libpq& pq = libpq();
    std::vector<const char*> names, values;
    for (const auto& [name, value] : options) {
        names.push_back(name.c_str());
        values.push_back(value.c_str());
    }
    names.insert(names.end(), {last, nullptr});
    values.insert(values.end(), {refused, nullptr});
    const std::unique_ptr<PGconn, decltype(Libpq::PQfinish)> none(
        pq.PQconnectStartParams(names.data(), values.data(), 0), pq.PQfinish);
    if (!none)
        throw std::bad_alloc();
    std::vector<Option> all;
    const Options known(pq.PQconninfo(none.get()), pq.PQconninfoFree);
    for (const PQconninfoOption* one = known.get(); one && one->keyword; ++one)
        if (one->val)
            all.emplace_back(one->keyword, one->val);
    // both stand there only where everything was put together
    if (valueOf(all, last) != refused || valueOf(all, "port").empty())
        return std::nullopt;
    return all;
}

std::vector<std::string> splitByComma(std::string_view list) {
    std::vector<std::string> all;
    for (;;) {
        const auto comma = list.find(',');
        all.emplace_back(list.substr(0, comma));
        if (comma == std::string_view::npos)
            return all;
        list.remove_prefix(comma + 1);
    }
}

/// As libpq matches its three lists; throws where it would refuse them.
std::vector<Host> hostsOf(const std::vector<Option>& options) {
    const std::vector<std::string> names = splitByComma(valueOf(options, "host")),
                                   numbers = splitByComma(valueOf(options, "hostaddr")),
                                   ports = splitByComma(valueOf(options, "port"));
    const std::size_t count = std::max(names.size(), numbers.size());
    const auto fits = [&](const std::vector<std::string>& list) {
        return list.size() == count || (list.size() == 1 && list[0].empty());
    };
    if (!fits(names) || !fits(numbers) || (ports.size() != count && ports.size() != 1))
        refuseUnread();
    const auto at = [](const std::vector<std::string>& list, std::size_t index) {
        return list[list.size() == 1 ? 0 : index];
    };
    std::vector<Host> hosts;
    for (std::size_t i = 0; i < count; ++i)
        hosts.push_back({.name = at(names, i), .number = at(numbers, i), .port = at(ports, i)});
    return hosts;
}

std::string placeOf(const std::string& host, const std::string& port) {
    return (host.empty() ? "localhost" : host) + (port.empty() || port == "5432" ? "" : ":" + port);
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
    // What is not known to be this machine is not taken for it. A service that is not found is told
    // by the attempt to use it.
    const auto known = completed(options);
    const std::vector<Option>& all = known ? *known : options;
    const std::string host = valueOf(all, "host"), hostaddr = valueOf(all, "hostaddr");
    address.m_hosts = hostsOf(all);
    address.m_local = known && areThisMachine(host) && areThisMachine(hostaddr);
    if (!address.m_local) {
        put(options, "sslmode", "verify-full");
        put(options, "gssencmode", "disable"); // it would go before TLS, and no certificate be seen
    }
    int seconds = 0;
    const std::string wait = valueOf(all, "connect_timeout");
    std::from_chars(wait.data(), wait.data() + wait.size(), seconds);
    address.m_seconds = seconds > 0 ? seconds : waitsForAnswer;
    put(options, "client_encoding", "UTF8");
    putIfNone(options, "fallback_application_name", "slopebook");
    putIfNone(options, "keepalives_idle", "10");
    putIfNone(options, "keepalives_interval", "5");
    putIfNone(options, "keepalives_count", "3");
    putIfNone(options, "tcp_user_timeout", "20000"); // ms

    Asked& asked = address.m_asked;
    asked.host = !host.empty() ? host : hostaddr;
    asked.place = placeOf(asked.host, valueOf(all, "port"));
    asked.login = valueOf(all, "user");
    asked.database = valueOf(all, "dbname");
    if (asked.database.empty())
        asked.database = asked.login; // as libpq has it
    return address;
}

Asked Address::askedAt(const Host& host) const {
    Asked asked = m_asked;
    asked.host = !host.name.empty() ? host.name : host.number;
    asked.place = placeOf(asked.host, host.port);
    return asked;
}

Address Address::byHand() const {
    Address address = *this;
    address.m_asked.byHand = true;
    return address;
}

} // namespace slopebook::store
