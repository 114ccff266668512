// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/units.h"

#include "core/log/carried.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

namespace slopebook::meetings {

namespace {
using store::Atom;
using store::Sixteen;
using Places = std::vector<std::size_t>;

bool livesHere(log::Connection& db, const Sixteen& uuid) {
    return log::atomOf(db, uuid).has_value();
}
bool isKnownHere(log::Connection& db, const Sixteen& uuid) {
    return livesHere(db, uuid) || log::removedAtomOf(db, uuid).has_value();
}

bool belongsToSession(const Atom& atom) {
    return atom.parent && atom.kind != "session" && atom.kind != "check load" &&
           atom.kind != "roster";
}

/// Whose an atom is: to which session it belongs or which it is, and to which athlete.
class Owners {
public:
    Owners(log::Connection& db, const std::vector<Atom>& atoms) : m_db(db) {
        for (const Atom& atom : atoms)
            if (atom.kind == "session" && atom.parent)
                m_athletes.emplace(atom.uuid, *atom.parent);
    }
    static std::optional<Sixteen> sessionOf(const Atom& atom) {
        if (atom.kind == "session")
            return atom.uuid;
        return belongsToSession(atom) ? atom.parent : std::nullopt;
    }
    std::optional<Sixteen> athleteOf(const Atom& atom) {
        if (atom.kind == "check load")
            return atom.parent;
        const auto session = sessionOf(atom);
        if (!session)
            return std::nullopt;
        const auto [at, isNew] = m_athletes.try_emplace(*session);
        if (isNew)
            at->second = athleteHere(*session);
        return at->second;
    }

private:
    /// Of a session that does not come itself; itself where nobody knows.
    Sixteen athleteHere(const Sixteen& session) {
        const auto held = log::carried(m_db, session);
        return held && held->parent ? held->parent->uuid : session;
    }
    log::Connection& m_db;
    std::map<Sixteen, Sixteen> m_athletes; ///< by session
};
} // namespace

std::vector<Places> unitsOf(log::Connection& db, const std::vector<Atom>& atoms) {
    Owners owners(db, atoms);
    Places first;
    std::map<Sixteen, Places> byAthlete;
    for (std::size_t i = 0; i < atoms.size(); ++i) {
        if (!atoms[i].alive && !atoms[i].parent && atoms[i].kind != "conflict" &&
            livesHere(db, atoms[i].uuid)) {
            Places all(atoms.size());
            for (std::size_t j = 0; j < all.size(); ++j)
                all[j] = j;
            return {all};
        }
        if (const auto athlete = owners.athleteOf(atoms[i]))
            byAthlete[*athlete].push_back(i);
        else
            first.push_back(i);
    }
    std::vector<Places> units{std::move(first)};
    Places gathered;
    const auto put = [&](const Places& more) {
        if (!gathered.empty() && gathered.size() + more.size() > mostAtOnce)
            units.push_back(std::exchange(gathered, {}));
        gathered.insert(gathered.end(), more.begin(), more.end());
    };
    for (const auto& [athlete, places] : byAthlete) {
        const bool stranger =
            places.size() > mostAtOnce && std::ranges::none_of(places, [&](std::size_t i) {
                return isKnownHere(db, atoms[i].uuid);
            });
        if (!stranger) {
            put(places);
            continue;
        }
        std::map<Sixteen, Places> bySession;
        for (const std::size_t i : places)
            bySession[Owners::sessionOf(atoms[i]).value_or(athlete)].push_back(i);
        for (const auto& [session, held] : bySession)
            put(held);
    }
    if (!gathered.empty())
        units.push_back(std::move(gathered));
    std::erase_if(units, [](const Places& unit) { return unit.empty(); });
    return units;
}

} // namespace slopebook::meetings
