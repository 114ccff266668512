// SPDX-License-Identifier: GPL-3.0-or-later
// Desks that meet a store: each a log file of its own and a login.
#pragma once

#include "core/log/storerows.h"
#include "core/meetings/joining.h"
#include "core/meetings/meet.h"
#include "core/store/thingjson.h"
#include "tests/desks/randomedits.h"
#include "tests/log/carriedlogs.h"
#include "tests/log/otherthings.h"
#include "tests/store/storeworld.h"

namespace slopebook::test {

/// The same world with an empty store.
inline void beginAnew(StoreWorld& world) {
    world.server.sql("DROP DATABASE squad WITH (FORCE)", "postgres");
    world.server.sql("CREATE DATABASE squad", "postgres");
    world.makeStore();
}

class MeetingDesk {
public:
    MeetingDesk(const Folder& folder, const char* name, std::string address)
        : m_file(folder.path(name)), m_address(std::move(address)) {}

    const std::filesystem::path& file() const { return m_file; }
    const std::string& address() const { return m_address; }
    log::Log open() const { return log::Log::open(m_file); }
    void create() const { log::Log::create(m_file); }
    void join(const std::string& squad = {}) const {
        log::Log log = open();
        meetings::joinStore(log, m_address, squad);
    }
    meetings::MeetingReport meet() const {
        log::Log log = open();
        Connection store = Connection::open(meetings::addressOf(log));
        return meetings::meet(log, store, "2026-03-14T09:30:00Z");
    }
    void edit(unsigned seed, int times) const {
        log::Log log = open();
        tests::RandomEdits edits(seed);
        for (int i = 0; i < times; ++i)
            edits.edit(log);
    }
    std::int64_t waiting() const {
        const log::Log log = open();
        return meetings::joined(log)->waiting;
    }

private:
    std::filesystem::path m_file;
    std::string m_address;
};

/// What a log says: of each thing its bytes, whether it lives, and its trail. Those that were
/// removed before a log kept what they said are not told to others.
using Said = std::map<Sixteen, std::tuple<std::string, bool, std::vector<Sixteen>>>;

inline std::vector<Sixteen> revisionsOf(const log::Trail& trail) {
    std::vector<Sixteen> all;
    for (const log::Step& step : trail)
        all.push_back(step.revision);
    return all;
}

inline Said saidBy(const std::filesystem::path& file) {
    Said all;
    const log::Log log = log::Log::open(file, log::Access::ReadOnly);
    for (const auto& [uuid, one] : heldBy(log))
        if (!one.content.empty())
            all[uuid] = {one.content, one.alive, revisionsOf(one.trail)};
    return all;
}

/// The same of a store, as that login sees its squads.
inline Said saidByStore(Connection& store) {
    std::vector<store::Cursor> since{{.squad = store::everybody}};
    for (const store::Squad& squad : store::squadsOf(store))
        since.push_back({.squad = squad.uuid});
    Said all;
    for (const Atom& one : pulled(store, std::nullopt, since).atoms)
        if (one.content) {
            const log::Carried carried = store::carriedOf(one);
            all[one.uuid] = {carried.content, carried.alive, revisionsOf(carried.trail)};
        }
    return all;
}

/// Where two differ, in words; empty: nowhere.
inline std::string difference(const Said& one, const Said& other) {
    for (const auto& [uuid, said] : one) {
        const auto at = other.find(uuid);
        if (at == other.end())
            return "only the first has " + log::kindOfContent(std::get<0>(said)) + " " +
                   store::uuidText(uuid) + (std::get<1>(said) ? "" : ", removed") + " after " +
                   std::to_string(std::get<2>(said).size()) + " steps";
        if (at->second != said)
            return log::kindOfContent(std::get<0>(said)) + " " + store::uuidText(uuid) +
                   (std::get<0>(said) != std::get<0>(at->second)   ? " says otherwise"
                    : std::get<1>(said) != std::get<1>(at->second) ? " lives in one"
                                                                   : " has another past");
    }
    return one.size() == other.size() ? std::string() : difference(other, one);
}

inline std::string findingsIn(const std::filesystem::path& file) {
    const auto findings = log::Log::open(file, log::Access::ReadOnly).check();
    return findings.empty() ? std::string() : english(findings.front());
}

} // namespace slopebook::test
