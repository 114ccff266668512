// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/reaching.h"

#include <arpa/inet.h>
#include <cerrno>
#include <fcntl.h>
#include <memory>
#include <netdb.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

namespace slopebook::store {

namespace {
bool isSearchedFor(const Host& host) {
    return host.number.empty() && !host.name.empty() && host.name.front() != '/' &&
           host.name.front() != '@';
}

bool hasEnded(int socket) {
    char byte = 0;
    const ssize_t got = ::recv(socket, &byte, 1, MSG_PEEK | MSG_DONTWAIT);
    return got == 0 || (got < 0 && errno != EAGAIN && errno != EWOULDBLOCK && errno != EINTR);
}
} // namespace

std::vector<Host> numbersOf(const Host& host) {
    if (!isSearchedFor(host))
        return {host};
    addrinfo wanted{};
    wanted.ai_socktype = SOCK_STREAM;
    addrinfo* found = nullptr;
    if (::getaddrinfo(host.name.c_str(), nullptr, &wanted, &found) != 0)
        return {host};
    const std::unique_ptr<addrinfo, decltype(&::freeaddrinfo)> held(found, ::freeaddrinfo);
    std::vector<Host> all;
    for (const addrinfo* one = found; one; one = one->ai_next) {
        char number[NI_MAXHOST];
        if (::getnameinfo(one->ai_addr, one->ai_addrlen, number, sizeof number, nullptr, 0,
                          NI_NUMERICHOST) == 0)
            all.push_back({.name = host.name, .number = number, .port = host.port});
    }
    return all.empty() ? std::vector{host} : all;
}

bool isUnknown(const Host& host) {
    return isSearchedFor(host);
}

int wayTo(StoreError::Kind kind) {
    switch (kind) {
    case StoreError::Kind::Unresolved:
        return 0;
    case StoreError::Kind::Unreachable:
        return 1;
    case StoreError::Kind::Starting:
        return 2;
    case StoreError::Kind::Lost:
        return 3;
    default:
        return -1;
    }
}

OtherEnd::OtherEnd(int socket)
    : m_socket(socket < 0 ? -1 : ::fcntl(socket, F_DUPFD_CLOEXEC, 0)),
      m_goneBefore(m_socket >= 0 && hasEnded(m_socket)) {}

OtherEnd::~OtherEnd() {
    if (m_socket >= 0)
        ::close(m_socket);
}

bool OtherEnd::isGone(std::string_view words) const {
    if (m_goneBefore)
        return true;
    const bool ofCertificate = words.find("certificate") != std::string_view::npos;
    return m_socket >= 0 && !ofCertificate && hasEnded(m_socket);
}

} // namespace slopebook::store
