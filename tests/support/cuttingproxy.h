// SPDX-License-Identifier: GPL-3.0-or-later
// A server in between that passes PostgreSQL's protocol on, message by message, and cuts the
// connection at one of them, or keeps one back and delivers it after the cut. Without TLS.
#pragma once

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <thread>
#include <vector>

namespace slopebook::test {

class CuttingProxy {
public:
    explicit CuttingProxy(int serverPort);
    ~CuttingProxy();
    CuttingProxy(const CuttingProxy&) = delete;
    CuttingProxy& operator=(const CuttingProxy&) = delete;

    int port() const { return m_port; }
    /// From here on: the message-th message, counted from 1 in both directions, is not passed on,
    /// and both ends find the connection cut. 0: never.
    void cutAt(int message);
    /// The message-th is kept back, if it is the client's, and the client finds the connection cut;
    /// the server gets it, and what the client had sent after it, with deliverLate().
    void holdAt(int message);
    void deliverLate();
    /// From here on nothing is passed on to anybody, and nobody finds the connection cut: a network
    /// that is gone. false: what has come meanwhile is passed on.
    void stall(bool stalls) { m_stalls = stalls; }
    /// Messages since the last cutAt() or holdAt().
    int seen() const { return m_seen; }

private:
    void serve();
    void pass(int client);
    int m_serverPort;
    int m_port = 0;
    int m_listening = -1;
    std::atomic<int> m_seen = 0, m_at = 0;
    std::atomic<bool> m_holds = false, m_ends = false, m_stalls = false;
    std::mutex m_mutex;
    std::condition_variable m_told;
    bool m_delivers = false;
    std::vector<std::thread> m_threads; ///< of m_accepting's own making
    std::thread m_accepting;
};

} // namespace slopebook::test
