// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/asking.h"

#include "core/log/failure.h"
#include "core/log/impl.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <chrono>
#include <thread>

namespace slopebook::log {

namespace {
/// So many of SQLite's steps are some tenths of a millisecond.
constexpr int stepsBetweenLooks = 1000;
/// While one waits for others: what SQLite's own waits are (waitWhileBusy).
constexpr std::chrono::milliseconds looksEvery{1};

sqlite3* handleOf(const Log& log) {
    return log.impl().db.database().getHandle();
}
} // namespace

LetsIn::LetsIn(const Log& log)
    : m_connection(log.impl().db), m_asked(log.file()), m_before(m_connection.setLetsIn(&m_asked)) {
}

LetsIn::~LetsIn() {
    m_connection.setLetsIn(m_before);
}

void LetsIn::await(const AskedFor& asked) {
    constexpr std::chrono::milliseconds longest{500};
    const auto from = std::chrono::steady_clock::now();
    while (asked.now() && std::chrono::steady_clock::now() - from < longest)
        std::this_thread::sleep_for(looksEvery);
}

GivesWay::GivesWay(const Log& log) : m_log(log), m_asked(log.file()), m_typists(log.file()) {
    sqlite3_progress_handler(handleOf(log), stepsBetweenLooks, &GivesWay::look, this);
}

GivesWay::~GivesWay() {
    sqlite3_progress_handler(handleOf(m_log), 0, nullptr, nullptr);
}

int GivesWay::look(void* self) {
    auto& one = *static_cast<GivesWay*>(self);
    one.m_gaveWay =
        one.m_gaveWay || one.m_asked.now() || (one.m_alsoToTypists && one.m_typists.now());
    return one.m_gaveWay ? 1 : 0;
}

void GivesWay::giveWay() {
    m_gaveWay = true;
    throw sqliteFailure(SQLITE_BUSY, 0, {}, m_log.file());
}

void GivesWay::alsoToTypists() {
    m_alsoToTypists = true;
    if (look(this) != 0)
        giveWay();
}

void GivesWay::end() {
    if (look(this) != 0)
        giveWay();
    sqlite3_progress_handler(handleOf(m_log), 0, nullptr, nullptr);
}

// Short waits of changing length: SQLite's own timeout waits up to 0.1 s between two looks and so
// loses for seconds against a program that writes without pause.
int waitWhileBusy(void* /*of*/, int waits) {
    constexpr int mostWaits = 2000; // of a millisecond each, about
    if (waits >= mostWaits)
        return 0;
    std::this_thread::sleep_for(std::chrono::microseconds(500 + waits * 7919 % 1000));
    return 1;
}

} // namespace slopebook::log
