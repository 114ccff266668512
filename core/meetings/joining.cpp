// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/joining.h"

#include "core/log/asking.h"
#include "core/log/failure.h"
#include "core/log/snapshot.h"
#include "core/meetings/pace.h"
#include "core/model/few.h"
#include "core/model/phrases/meetings.h"

#include <algorithm>

namespace slopebook::meetings {

namespace {
constexpr std::size_t firstNoted = 400;

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

/// What was noted of a store that the log has left, piece by piece, until nothing is left or the
/// log meets a store (again).
void forgetLeft(log::Log& log, long& pieces) {
    Pace pace(log, firstNoted);
    for (bool more = true; more;) {
        const std::size_t count = pace.things();
        pace.write(count, [&] {
            log.together([&] {
                log::Connection& db = log::connectionOf(log);
                more = !log::meetsStore(db) && log::forgetNoted(db, count) > 0;
            });
        });
        ++pieces;
    }
}

/// Notes, piece by piece, all that the log holds and what was removed from it.
void noteEverything(log::Log& log, const Progress& stop, long& pieces) {
    log::Connection& db = log::connectionOf(log);
    Pace pace(log, firstNoted);
    std::optional<log::Sixteen> last;
    for (;;) {
        tell(stop, 0, 0);
        std::vector<log::Sixteen> some = log::namesAfter(db, last, pace.things());
        if (some.empty())
            return;
        last = some.back();
        std::erase_if(some, [&](const log::Sixteen& uuid) { return log::isUnsent(db, uuid); });
        if (some.empty())
            continue;
        pace.write(some.size(), [&] { log.together([&] { log::noteUnsentAhead(db, some); }); });
        ++pieces;
    }
}

/// Whether all is noted, and nothing of a store that was left: since `version` only this program
/// wrote, so many times, and then nothing can be missing.
bool isNoted(const log::Log& log, long version, long pieces) {
    return log.dataVersion() == version + pieces && !log::hasSent(log::connectionOf(log));
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
    const auto require = [&](const std::optional<log::JoinedStore>& before) {
        if (before && before->id != id)
            throw BadInput(say("the store at %1", read.asked().place),
                           say("the one that this log meets already, or a log that has left it"));
    };
    const log::LetsIn letsIn(log);
    log::Connection& db = log::connectionOf(log);
    require(log::joinedStore(db));
    bool joins = false;
    for (bool first = true; !joins; first = false) {
        const long version = log.dataVersion();
        long pieces = 0;
        if (!log::meetsStore(db)) {
            if (first || log::hasSent(db))
                forgetLeft(log, pieces);
            noteEverything(log, stop, pieces);
        }
        log.together([&] {
            const auto before = log::joinedStore(db);
            require(before);
            if (!before && !isNoted(log, version, pieces))
                return; // somebody has written meanwhile: what is new is noted as well
            log::setJoinedStore(db, {.id = id,
                                     .connection = address,
                                     .squad = into.uuid,
                                     .met = before ? before->met : std::string()});
            tell(stop, 0, 0); // who stopped it meanwhile has not joined
            joins = true;
        });
    }
}

void leaveStore(log::Log& log) {
    log.together([&] {
        storeOf(log);
        log::leaveStore(log::connectionOf(log));
    });
    long pieces = 0;
    forgetLeft(log, pieces); // where it ends early, who joins a store the next time goes on
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
