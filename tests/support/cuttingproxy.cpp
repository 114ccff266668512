// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/cuttingproxy.h"

#include <arpa/inet.h>
#include <array>
#include <optional>
#include <poll.h>
#include <stdexcept>
#include <string>
#include <sys/socket.h>
#include <unistd.h>

namespace slopebook::test {

namespace {
sockaddr_in loopback(int port) {
    sockaddr_in place{};
    place.sin_family = AF_INET;
    place.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    place.sin_port = htons(static_cast<std::uint16_t>(port));
    return place;
}

void sendAll(int to, const std::string& bytes) {
    for (std::size_t at = 0; at < bytes.size();) {
        const ssize_t sent = ::send(to, bytes.data() + at, bytes.size() - at, MSG_NOSIGNAL);
        if (sent <= 0)
            return;
        at += static_cast<std::size_t>(sent);
    }
}

/// Messages out of a stream: a length of four bytes that counts itself, after one byte of a type
/// but for the client's first.
class Messages {
public:
    explicit Messages(bool firstHasNoType) : m_noType(firstHasNoType) {}
    void add(const char* bytes, std::size_t size) { m_bytes.append(bytes, size); }
    std::optional<std::string> next() {
        const std::size_t head = m_noType ? 0 : 1;
        if (m_bytes.size() < head + 4)
            return std::nullopt;
        std::size_t length = head;
        std::size_t told = 0;
        for (std::size_t i = 0; i < 4; ++i)
            told = told * 256 + static_cast<unsigned char>(m_bytes[head + i]);
        length += told;
        if (m_bytes.size() < length)
            return std::nullopt;
        std::string message = m_bytes.substr(0, length);
        m_bytes.erase(0, length);
        m_noType = false;
        return message;
    }

private:
    std::string m_bytes;
    bool m_noType;
};
} // namespace

CuttingProxy::CuttingProxy(int serverPort) : m_serverPort(serverPort) {
    m_listening = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_in place = loopback(0);
    socklen_t size = sizeof place;
    if (::bind(m_listening, reinterpret_cast<sockaddr*>(&place), size) != 0 ||
        ::listen(m_listening, 16) != 0 ||
        ::getsockname(m_listening, reinterpret_cast<sockaddr*>(&place), &size) != 0)
        throw std::runtime_error("the proxy finds no port");
    m_port = ntohs(place.sin_port);
    m_accepting = std::thread([this] { serve(); });
}

CuttingProxy::~CuttingProxy() {
    m_ends = true;
    deliverLate();
    m_accepting.join();
    for (std::thread& one : m_threads)
        one.join();
    ::close(m_listening);
}

void CuttingProxy::cutAt(int message) {
    m_holds = false;
    m_at = message;
    m_seen = 0;
}

void CuttingProxy::holdAt(int message) {
    {
        const std::lock_guard lock(m_mutex);
        m_delivers = false;
    }
    cutAt(message);
    m_holds = true;
}

void CuttingProxy::deliverLate() {
    const std::lock_guard lock(m_mutex);
    m_delivers = true;
    m_told.notify_all();
}

void CuttingProxy::serve() {
    while (!m_ends) {
        pollfd one{.fd = m_listening, .events = POLLIN, .revents = 0};
        if (::poll(&one, 1, 20) <= 0)
            continue;
        const int client = ::accept4(m_listening, nullptr, nullptr, SOCK_CLOEXEC);
        if (client >= 0)
            m_threads.emplace_back([this, client] { pass(client); });
    }
}

void CuttingProxy::pass(int client) {
    const int server = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    const sockaddr_in place = loopback(m_serverPort);
    std::array<int, 2> from{client, server};
    std::array<Messages, 2> messages{Messages(true), Messages(false)};
    bool goesOn = ::connect(server, reinterpret_cast<const sockaddr*>(&place), sizeof place) == 0;
    std::string held;
    while (goesOn && !m_ends) {
        if (m_stalls) {
            ::poll(nullptr, 0, 20);
            continue;
        }
        std::array<pollfd, 2> ready{pollfd{client, POLLIN, 0}, pollfd{server, POLLIN, 0}};
        if (::poll(ready.data(), ready.size(), 20) <= 0)
            continue;
        for (std::size_t side = 0; side < 2 && goesOn; ++side) {
            if (ready[side].revents == 0)
                continue;
            std::array<char, 65536> bytes{};
            const ssize_t got = ::recv(from[side], bytes.data(), bytes.size(), 0);
            if (got <= 0) {
                goesOn = false;
                break;
            }
            messages[side].add(bytes.data(), static_cast<std::size_t>(got));
            while (const auto message = messages[side].next()) {
                if (++m_seen == m_at) {
                    goesOn = false;
                    if (m_holds && side == 0) {
                        held = *message;
                        while (const auto more = messages[side].next())
                            held += *more;
                    }
                    break;
                }
                sendAll(from[1 - side], *message);
            }
        }
    }
    ::shutdown(client, SHUT_RDWR);
    ::close(client);
    if (!held.empty()) {
        std::unique_lock lock(m_mutex);
        m_told.wait(lock, [this] { return m_delivers; });
        lock.unlock();
        sendAll(server, held);
        // until the server has done it: its answer is nobody's
        std::array<char, 65536> bytes{};
        for (;;) {
            pollfd one{.fd = server, .events = POLLIN, .revents = 0};
            if (::poll(&one, 1, 300) <= 0 || ::recv(server, bytes.data(), bytes.size(), 0) <= 0)
                break;
        }
    }
    ::close(server);
}

} // namespace slopebook::test
