// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/wholesessions.h"

#include "core/desks/taking.h"
#include "core/log/neighbours.h"
#include "core/log/newsessions.h"
#include "core/log/storerows.h"
#include "core/model/errors.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <tuple>

namespace slopebook::meetings {

namespace {
using store::Sixteen;

/// Stands for the key that a session gets when it is written.
constexpr std::int64_t itself = std::numeric_limits<std::int64_t>::max();

bool isNumber(int number) {
    return number >= 1 && number <= desks::mostNumbered;
}

/// Makes of sessions that came such as the log writes, in its own keys.
class Maker {
public:
    Maker(log::Connection& db, const std::vector<Arrived>& all) : m_db(db), m_all(all) {}

    /// Nothing where it cannot be taken so.
    std::optional<log::NewSession> of(const Places& places) {
        log::NewSession made;
        try {
            for (const std::size_t i : places)
                if (!put(made, m_all[i].said))
                    return std::nullopt;
        } catch (const BadInput&) { // it speaks of what is not here
            return std::nullopt;
        }
        return made.as && canStand(made) ? std::optional(std::move(made)) : std::nullopt;
    }

private:
    bool put(log::NewSession& made, const log::Carried& said) {
        if (!log::isPastOf(said.trail, said.hash, true))
            return false;
        const Sixteen& own = said.kind == "session" ? said.uuid : said.parent->uuid;
        const log::Thing thing =
            log::readContent(said.content, [&](const char* kind, const Sixteen& uuid) {
                return uuid == own ? std::optional(itself) : keyOf(kind, uuid);
            });
        log::CameAs as{
            .uuid = said.uuid, .hash = said.hash, .trail = log::packedTrail(said.trail, said.hash)};
        if (const auto* session = std::get_if<log::SessionThing>(&thing)) {
            made.head = session->head;
            made.as = std::move(as);
            return !session->into && isNumber(made.head.ordinal);
        }
        if (const auto* held = std::get_if<log::LiftConditionsThing>(&thing)) {
            made.conditions.push_back({.lift = held->lift, .conditions = held->conditions});
            return held->conditions != Conditions{} &&
                   made.conditionsAs.emplace(held->lift, std::move(as)).second;
        }
        const auto* set = std::get_if<log::SetThing>(&thing);
        if (set == nullptr || !isNumber(set->ordinal))
            return false;
        made.sets.push_back(
            {.lift = set->lift, .ordinal = set->ordinal, .set = set->set, .as = std::move(as)});
        return true;
    }

    bool canStand(const log::NewSession& made) {
        std::set<std::pair<LiftId, int>> numbers;
        for (const log::NewSet& set : made.sets)
            if (!numbers.emplace(set.lift, set.ordinal).second)
                return false;
        const SessionHead& head = made.head;
        if (head.repeatOf && log::athleteOf(m_db, *head.repeatOf) != head.athlete)
            return false;
        return !log::hasSession(m_db, head.athlete, head.date, head.ordinal) &&
               m_days.emplace(head.athlete, head.date, head.ordinal).second;
    }

    std::optional<std::int64_t> keyOf(const char* kind, const Sixteen& uuid) {
        const auto [at, isNew] = m_keys.try_emplace(uuid);
        if (isNew)
            if (const auto atom = log::atomOf(m_db, uuid))
                at->second = atom->key;
        return at->second && at->second->kind == kind ? std::optional(at->second->one)
                                                      : std::nullopt;
    }

    log::Connection& m_db;
    const std::vector<Arrived>& m_all;
    std::map<Sixteen, std::optional<log::AtomKey>> m_keys;
    std::set<std::tuple<AthleteId, Date, int>> m_days;
};

std::vector<Sixteen> namesOf(const std::vector<Arrived>& all, std::span<const Places> sessions) {
    std::vector<Sixteen> names;
    for (const Places& one : sessions)
        for (const std::size_t i : one)
            names.push_back(all[i].said.uuid);
    return names;
}

/// In one transaction; gives what was left.
std::vector<Places> takeAtOnce(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                               std::span<const Places> sessions) {
    std::vector<Places> left;
    std::vector<log::Sent> sent;
    log.together([&] {
        footing.require(log);
        log::Connection& db = log::connectionOf(log);
        const bool someKnown = log::knowsAny(db, namesOf(all, sessions));
        Maker maker(db, all);
        std::vector<log::NewSession> made;
        for (const Places& one : sessions) {
            const bool known = someKnown && log::knowsAny(db, namesOf(all, std::span(&one, 1)));
            auto session = known ? std::nullopt : maker.of(one);
            if (!session) {
                left.push_back(one);
                continue;
            }
            made.push_back(std::move(*session));
            for (const std::size_t i : one) {
                const store::Atom& atom = *all[i].atom;
                sent.push_back({.uuid = atom.uuid,
                                .squad = atom.squad,
                                .version = atom.version,
                                .revision = atom.trail.back().revision});
            }
        }
        if (made.empty())
            return;
        log::addSessions(log, std::move(made));
        log::putFirstSent(db, sent);
    });
    if (!sent.empty())
        footing.wrote(sent.back());
    return left;
}
} // namespace

std::vector<Places> wholeSessions(const std::vector<Arrived>& all) {
    struct Found {
        Places places{};
        bool itself = false, plain = true;
    };
    std::map<Sixteen, Found> found;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const store::Atom& atom = *all[i].atom;
        const auto session = sessionOf(atom, atom.parent);
        if (!session)
            continue;
        Found& one = found[*session];
        one.places.push_back(i);
        one.itself = one.itself || atom.kind == "session";
        one.plain =
            one.plain && atom.alive && !all[i].said.content.empty() &&
            (atom.kind == "session" || atom.kind == "set" || atom.kind == "lift conditions");
    }
    std::vector<Places> sessions;
    for (auto& [uuid, one] : found)
        if (one.itself && one.plain)
            sessions.push_back(std::move(one.places));
    return sessions;
}

std::vector<Places> takeWhole(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                              std::span<const Places> sessions) {
    try {
        return takeAtOnce(log, footing, all, sessions);
    } catch (const BadInput&) {
        if (sessions.size() == 1)
            return {sessions.front()};
    }
    const std::size_t middle = sessions.size() / 2;
    std::vector<Places> left = takeWhole(log, footing, all, sessions.first(middle));
    for (Places& one : takeWhole(log, footing, all, sessions.subspan(middle)))
        left.push_back(std::move(one));
    return left;
}

} // namespace slopebook::meetings
