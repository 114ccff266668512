// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/storedesk.h"

#include "core/meetings/joining.h"
#include "core/store/exchange.h"

#include <chrono>

namespace slopebook::ui {

namespace {
/// So often it is asked whether to stop: a machine that waits for news is to sleep meanwhile.
constexpr std::chrono::milliseconds asksEvery{100};
} // namespace

/// Whether the connection was there already.
bool StoreDesk::connect(const Progress& stop) {
    if (!m_log)
        m_log.emplace(log::Log::open(m_file));
    if (m_connection && m_connection->open())
        return true;
    m_connection.reset();
    store::Connection made = store::Connection::open(meetings::addressOf(*m_log), stop);
    store::listen(made, stop); // before it counts as there: who is not told of news meets too late
    m_connection.emplace(std::move(made));
    return false;
}

meetings::MeetingReport StoreDesk::meet(const std::string& now, const Progress& stop) {
    const bool before = connect(stop);
    try {
        m_connection->waitForNews({}); // what was told of until now, this meeting takes
        return meetings::meet(*m_log, *m_connection, now, stop);
    } catch (const store::StoreError& error) {
        m_connection.reset(); // whatever is under way there ends
        if (!before || error.kind() != store::StoreError::Kind::Lost)
            throw;
    } catch (...) {
        m_connection.reset();
        throw;
    }
    // Lost since the last meeting, it may well be there again: a server that was started anew.
    connect(stop);
    return meetings::meet(*m_log, *m_connection, now, stop);
}

void StoreDesk::waitForNews(const Progress& stop) {
    if (!m_connection)
        return;
    try {
        while (!m_connection->waitForNews(asksEvery))
            tell(stop, 0, 0);
    } catch (const store::StoreError&) {
        m_connection.reset();
        throw;
    }
}

} // namespace slopebook::ui
