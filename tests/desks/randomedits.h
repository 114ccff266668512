// SPDX-License-Identifier: GPL-3.0-or-later
// What coaches do to a log, at random: every kind of thing added, changed and removed through the
// log's own writes.
#pragma once

#include "core/log/log.h"

#include <random>
#include <string>

namespace slopebook::tests {

/// There is nothing of the kind to edit.
struct NothingThere {};

class RandomEdits {
public:
    explicit RandomEdits(unsigned seed) : m_random(seed) {}
    /// One edit; what the log refuses (a name taken, a thing in use) is not done.
    void edit(log::Log& log);
    int done() const { return m_done; }

private:
    std::size_t below(std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(m_random);
    }
    template <class List>
    const auto& some(const List& all) {
        if (all.empty())
            throw NothingThere();
        return all[below(all.size())];
    }
    std::string name(const char* stem) { return stem + std::to_string(1 + below(4)); }
    std::string note() { return "note " + std::to_string(m_random()); }
    void addSomething(log::Log& log);
    void changeSomething(log::Log& log);
    void removeSomething(log::Log& log);
    void ofASession(log::Log& log);
    void battery(log::Log& log, SessionId session);
    SessionId someSession(log::Log& log);

    std::mt19937 m_random;
    int m_done = 0;
};

} // namespace slopebook::tests
