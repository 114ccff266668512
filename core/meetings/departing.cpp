// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/departing.h"

#include "core/log/atoms.h"
#include "core/log/carried.h"
#include "core/log/conflicts.h"
#include "core/log/neighbours.h"
#include "core/meetings/going.h"
#include "core/meetings/joining.h"
#include "core/meetings/pace.h"

#include <algorithm>
#include <set>
#include <span>

namespace slopebook::meetings {

namespace {
using Uuids = std::vector<Sixteen>;
constexpr int readAtOnce = 500;

void append(Uuids& all, const Uuids& more) {
    all.insert(all.end(), more.begin(), more.end());
}

void forget(log::Connection& db, std::span<const Sixteen> his) {
    for (const Sixteen& uuid : his)
        if (const auto removed = log::removedAtomOf(db, uuid))
            log::forgetRemoved(db, *removed);
    log::eraseSent(db, his);
    log::eraseUnsent(db, his);
}

/// One athlete goes, step by step, each a transaction of its own. Where it ends early the next
/// meeting hears of him again, for how far the squad was taken has not passed it, and goes on with
/// what is still there.
class Letting {
public:
    Letting(log::Log& log, const Footing& footing, const store::Departed& departed, Comes comes)
        : m_log(log), m_db(log::connectionOf(log)), m_footing(footing), m_departed(departed),
          m_comes(comes) {}

    std::optional<Departing> go() {
        if (m_departed.isBack && writableSquads(m_db).contains(m_departed.squad)) {
            tellTurnsAgain();
            return std::nullopt;
        }
        const auto atom = log::atomOf(m_db, m_departed.athlete);
        if (atom ? atom->key.kind != "athlete" : !log::removedAtomOf(m_db, m_departed.athlete))
            return std::nullopt;
        if (atom)
            m_athlete = AthleteId{atom->key.one};
        leaveRosters();
        // back: who may write tells his turns; another squad: he is here by way of that one
        if (m_departed.isBack || m_comes == Comes::ByAnotherSquad || !isOfSquad(m_departed.athlete))
            return std::nullopt;
        std::optional<Departing> gone;
        if (m_athlete)
            gone = Departing{.name = m_log.athlete(*m_athlete).value.name};
        const bool out = findHis() && takeOut();
        if (!out)
            keep();
        if (gone)
            gone->stayed = !out;
        return gone;
    }

private:
    template <class Work>
    void together(const Work& work) {
        m_log.together([&] {
            m_footing.require(m_log);
            work();
        });
    }
    /// As much as `things` in one transaction.
    template <class Work>
    void write(std::size_t things, const Work& work) {
        m_pace.write(things, [&] { together(work); });
    }
    /// All of them, piece by piece.
    template <class Work>
    void inPieces(const Uuids& all, const Work& work) {
        m_pace.inPieces(std::span(all),
                        [&](std::span<const Sixteen> some) { together([&] { work(some); }); });
    }

    /// Whether he, or a station, is of the squad that he leaves: as the store has it, had it before
    /// it went back, or was to have it.
    bool isOfSquad(const Sixteen& uuid) const {
        const auto unsent = log::unsentOf(m_db, uuid);
        if (unsent && unsent->squad)
            return *unsent->squad == m_departed.squad;
        if (const auto sent = log::sentOf(m_db, uuid))
            return sent->squad == m_departed.squad;
        return unsent && storeOf(m_log).squad == m_departed.squad;
    }
    bool isUnsent(std::span<const Sixteen> some) const {
        return std::ranges::any_of(some,
                                   [&](const Sixteen& uuid) { return log::isUnsent(m_db, uuid); });
    }

    /// His turns in that squad's rosters, there or removed.
    Uuids turns() const {
        Uuids all = log::uuidsOfKind(m_db, "roster");
        log::visitRemovedInPieces(m_db, "roster", readAtOnce, [&](const log::RemovedAtom& one) {
            if (one.content)
                all.push_back(one.atom.uuid);
        });
        std::erase_if(all, [&](const Sixteen& uuid) {
            const auto turn = log::carried(m_log, uuid);
            return !turn || !turn->parent || !isOfSquad(turn->parent->uuid) ||
                   std::ranges::none_of(
                       log::referencesOf(turn->content),
                       [&](const log::Reference& of) { return of.uuid == m_departed.athlete; });
        });
        return all;
    }

    /// He went and came back before this log heard of it: what it has of his turns is told again.
    void tellTurnsAgain() {
        inPieces(turns(), [&](std::span<const Sixteen> some) {
            for (const Sixteen& uuid : some)
                if (const auto sent = log::sentOf(m_db, uuid);
                    sent && sent->version <= m_departed.version) {
                    log::eraseSent(m_db, std::span(&uuid, 1));
                    log::noteUnsent(m_db, uuid);
                }
        });
    }

    /// Out of the rosters of the squad that he leaves, without a removal: the store has none any
    /// more of the turns that he had then, and tells nobody. Those that came after he was back it
    /// has.
    void leaveRosters() {
        Uuids then = turns();
        std::erase_if(then, [&](const Sixteen& uuid) {
            const auto sent = log::sentOf(m_db, uuid);
            return sent && sent->version > m_departed.version;
        });
        inPieces(then, [&](std::span<const Sixteen> some) {
            for (const Sixteen& uuid : some) {
                const auto turn = log::atomOf(m_db, uuid);
                if (turn && m_athlete && turn->key.three == raw(*m_athlete))
                    leaveRoster(StationId{turn->key.one}, turn->key.two);
            }
            forget(m_db, some);
        });
    }
    void leaveRoster(StationId station, std::int64_t dayNumber) {
        Roster roster = m_log.roster(station, log::dayOfNumber(dayNumber));
        if (std::erase(roster.athletes, *m_athlete) > 0)
            m_log.setRoster(roster);
    }
    /// A turn at another squad's station was never sent: no roster is of two squads.
    bool standsOnARoster() const {
        return m_athlete && std::ranges::any_of(m_log.rosters(), [&](const Roster& roster) {
                   return std::ranges::find(roster.athletes, *m_athlete) != roster.athletes.end();
               });
    }

    /// Finds what is his, removed or not, and the choices about it. Whether all of it was sent, and
    /// he stands on no roster.
    bool findHis() {
        m_sessions = m_athlete ? log::sessionsOf(m_db, *m_athlete) : std::vector<SessionId>();
        std::set<Sixteen> his{m_departed.athlete};
        bool sent = !log::isUnsent(m_db, m_departed.athlete);
        const auto add = [&](const Uuids& more) {
            his.insert(more.begin(), more.end());
            sent = sent && !isUnsent(more);
        };
        if (m_athlete)
            add(log::uuidsOfCheckLoads(m_db, *m_athlete));
        for (const SessionId session : m_sessions)
            add(log::uuidsOfSession(m_db, session));
        Uuids gone;
        for (const char* kind : {"session", "check load", "lift conditions", "test conditions",
                                 "set", "attempt", "gap"})
            log::visitRemovedInPieces(m_db, kind, readAtOnce, [&](const log::RemovedAtom& removed) {
                const auto parent =
                    removed.content ? log::parentOf(*removed.content) : std::nullopt;
                if (parent && his.contains(parent->uuid) && his.insert(removed.atom.uuid).second)
                    gone.push_back(removed.atom.uuid);
            });
        Uuids choices = log::uuidsOfKind(m_db, "conflict");
        log::visitRemovedInPieces(m_db, "conflict", readAtOnce, [&](const log::RemovedAtom& one) {
            choices.push_back(one.atom.uuid);
        });
        std::erase_if(choices, [&](const Sixteen& uuid) {
            const auto one = log::carried(m_log, uuid);
            const auto about = one ? log::aboutOf(*one) : std::nullopt;
            return !about || !his.contains(*about);
        });
        his.erase(m_departed.athlete); // last of all: by it the next meeting knows that he goes
        m_his.assign(his.begin(), his.end());
        m_gone.assign(gone.rbegin(), gone.rend()); // by sessions their sets are known as his
        m_choices = std::move(choices);
        return sent && !isUnsent(m_his) && !isUnsent(m_choices) && !standsOnARoster();
    }

    /// Whether all of it went: what was entered meanwhile stays, with what it belongs to.
    bool takeOut() {
        bool out = true;
        inPieces(m_choices, [&](std::span<const Sixteen> some) {
            out = out && !isUnsent(some);
            if (out)
                takeOutChoices(some);
        });
        inPieces(m_gone, [&](std::span<const Sixteen> some) {
            out = out && !isUnsent(some);
            if (out)
                forget(m_db, some);
        });
        while (out && !m_sessions.empty())
            out = takeOutSessions(nextSessions());
        if (!out)
            return false;
        write(1, [&] { out = takeOutAthlete(); });
        return out;
    }

    void takeOutChoices(std::span<const Sixteen> some) {
        for (const Sixteen& uuid : some)
            if (const auto atom = log::atomOf(m_db, uuid); atom && atom->key.kind == "conflict")
                log::settleConflict(m_log, log::ConflictId{atom->key.one});
        forget(m_db, some);
    }

    /// Some that no other of his repeats; all that are left where each is repeated.
    std::vector<SessionId> nextSessions() {
        std::vector<SessionId> next, rest;
        for (const SessionId session : m_sessions)
            if (next.size() < mostSessions && log::uuidsOfRepeats(m_db, session).empty())
                next.push_back(session);
            else
                rest.push_back(session);
        if (next.empty())
            std::swap(next, rest);
        m_sessions = std::move(rest);
        return next;
    }

    bool takeOutSessions(const std::vector<SessionId>& sessions) {
        Uuids held;
        for (const SessionId session : sessions)
            append(held, log::uuidsOfSession(m_db, session));
        bool out = true;
        write(held.size(), [&] {
            held.clear();
            for (const SessionId session : sessions)
                append(held, log::uuidsOfSession(m_db, session)); // as they are now
            out = !isUnsent(held);
            if (!out)
                return;
            const std::set<SessionId> theirs(sessions.begin(), sessions.end());
            for (const auto& session : headsOf(theirs))
                if (session.value.repeatOf) {
                    SessionHead head = session.value;
                    head.repeatOf.reset();
                    m_log.change(session.id, head);
                }
            for (const SessionId session : sessions)
                if (log::athleteOf(m_db, session))
                    m_log.remove(session);
            forget(m_db, held);
        });
        return out;
    }
    std::vector<Stored<SessionId, SessionHead>> headsOf(const std::set<SessionId>& sessions) const {
        std::vector<Stored<SessionId, SessionHead>> heads;
        for (const SessionId session : sessions)
            if (log::athleteOf(m_db, session))
                heads.push_back(m_log.session(session).head);
        return heads;
    }

    bool takeOutAthlete() {
        Uuids left{m_departed.athlete};
        if (m_athlete) {
            append(left, log::uuidsOfCheckLoads(m_db, *m_athlete));
            if (!log::sessionsOf(m_db, *m_athlete).empty() || isUnsent(left) || standsOnARoster())
                return false;
            for (const auto& lift : m_log.lifts())
                if (!m_log.checkLoads(*m_athlete, lift.id).empty())
                    m_log.setCheckLoads(*m_athlete, lift.id, {});
            m_log.remove(*m_athlete);
        } else if (isUnsent(left)) {
            return false;
        }
        forget(m_db, left);
        return true;
    }

    void keep() {
        findHis();
        for (const Uuids* some : {&m_choices, &m_his})
            inPieces(*some, [&](std::span<const Sixteen> piece) { keepHere(m_log, piece); });
        write(1, [&] { keepHere(m_log, std::span(&m_departed.athlete, 1)); });
    }

    static constexpr std::size_t mostSessions = 5;

    log::Log& m_log;
    log::Connection& m_db;
    const Footing& m_footing;
    const store::Departed& m_departed;
    Comes m_comes;
    Pace m_pace{m_log, 100};
    std::optional<AthleteId> m_athlete;
    std::vector<SessionId> m_sessions;
    Uuids m_his, m_choices;
    Uuids m_gone; ///< what was removed, what hangs on others before them
};
} // namespace

std::optional<Departing> letGo(log::Log& log, const Footing& footing,
                               const store::Departed& departed, Comes comes) {
    return Letting(log, footing, departed, comes).go();
}

} // namespace slopebook::meetings
