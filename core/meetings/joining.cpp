// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/joining.h"

#include "core/log/carried.h"
#include "core/log/failure.h"
#include "core/log/snapshot.h"
#include "core/model/few.h"
#include "core/model/phrases/meetings.h"

#include <algorithm>

namespace slopebook::meetings {

namespace {
[[noreturn]] void meetsNone(const log::Log& log) {
    throw LogError(LogError::Kind::Conflict,
                   say("'%1' meets no store. Join it to one first.", log::shown(log.file())));
}

/// That one of those which may be written.
store::Squad squadFor(const std::vector<store::Squad>& squads, const std::string& wanted) {
    std::vector<store::Squad> writable;
    std::ranges::copy_if(squads, std::back_inserter(writable), &store::Squad::mayWrite);
    if (wanted.empty() && writable.size() == 1)
        return writable.front();
    for (const store::Squad& one : writable)
        if (one.name == wanted)
            return one;
    std::vector<Words> names;
    for (const store::Squad& one : writable)
        names.push_back(asIs(one.name));
    const Words what = wanted.empty() ? say("the squad to which what is new here goes")
                                      : say("the squad '%1'", wanted);
    throw BadInput(what, names.empty()
                             ? say("one in which this login may write; there is none: who manages "
                                   "the store grants it")
                             : say("one of: %1", listed(std::move(names))));
}

/// All that the log holds, and what was removed from it.
void noteEverything(log::Connection& db) {
    std::vector<log::Unsent> all;
    log::visitCarried(
        db, [&](const log::Carried& one) { all.push_back({.uuid = one.uuid, .squad = {}}); });
    log::noteUnsent(db, all);
}
} // namespace

log::JoinedStore storeOf(const log::Log& log) {
    const auto store = log::joinedStore(log::connectionOf(log));
    if (!store)
        meetsNone(log);
    return *store;
}

std::optional<Joined> joined(const log::Log& log) {
    const log::Moment moment(log);
    log::Connection& db = log::connectionOf(log);
    const auto store = log::joinedStore(db);
    if (!store)
        return std::nullopt;
    Joined known{
        .connection = store->connection, .met = store->met, .waiting = log::countUnsent(db)};
    for (const log::JoinedSquad& one : log::joinedSquads(db)) {
        if (one.id == store->squad)
            known.squad = one.name;
        if (one.id != store::everybody)
            known.squads.push_back({.uuid = one.id, .name = one.name, .mayWrite = one.mayWrite});
    }
    return known;
}

void joinStore(log::Log& log, const std::string& address, const std::string& squad,
               const Progress& stop) {
    const store::Address read = store::Address::read(address);
    store::Connection store = store::Connection::open(read, stop);
    const std::vector<store::Squad> squads = store::squadsOf(store, stop);
    const store::Sixteen id = store::idOf(store, stop);
    const store::Squad into = squadFor(squads, squad);
    log.together([&] {
        log::Connection& db = log::connectionOf(log);
        const auto before = log::joinedStore(db);
        if (before && before->id != id)
            throw BadInput(say("the store at %1", read.asked().place),
                           say("the one that this log meets already, or a log that has left it"));
        log::setJoinedStore(db, {.id = id,
                                 .connection = address,
                                 .squad = into.uuid,
                                 .met = before ? before->met : std::string()});
        if (!before)
            noteEverything(db);
        tell(stop, 0, 0); // who stopped it meanwhile has not joined
    });
}

void leaveStore(log::Log& log) {
    log.together([&] {
        storeOf(log);
        log::leaveStore(log::connectionOf(log));
    });
}

void requireMeets(const log::Log& log, const store::Sixteen& id) {
    if (storeOf(log).id != id)
        meetsNone(log);
}

std::set<store::Sixteen> writableSquads(log::Connection& db) {
    std::set<store::Sixteen> writable;
    for (const log::JoinedSquad& squad : log::joinedSquads(db))
        if (squad.mayWrite)
            writable.insert(squad.id);
    return writable;
}

store::Address addressOf(const log::Log& log) {
    const log::Moment moment(log);
    return store::Address::read(storeOf(log).connection);
}

} // namespace slopebook::meetings
