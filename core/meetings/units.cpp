// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/units.h"

#include "core/log/carried.h"
#include "core/store/thingjson.h"

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
/// Of a session that comes the one that it repeats.
std::optional<Sixteen> repeatedBy(const Atom& atom) {
    if (atom.kind == "session" && atom.content)
        for (const log::Reference& of : log::referencesOf(store::carriedOf(atom).content))
            if (std::string_view(of.kind) == "session")
                return of.uuid;
    return std::nullopt;
}

/// Whether it is new, or lives here and stays where it is: then no other session's number depends
/// on it.
bool staysInPlace(log::Connection& db, const Atom& atom) {
    const auto held = log::carried(db, atom.uuid);
    if (!held)
        return true;
    if (!held->alive || !atom.alive || held->content.empty() || !atom.content)
        return false;
    if (atom.kind != "session")
        return held->parent && atom.parent == held->parent->uuid;
    const auto head = [](const std::string& content) {
        const log::Thing thing = log::readContent(
            content, [](const char*, const Sixteen&) { return std::optional<std::int64_t>(1); });
        const SessionHead& of = std::get<log::SessionThing>(thing).head;
        return std::pair(of.date, of.ordinal);
    };
    const std::string coming = store::carriedOf(atom).content;
    return log::parentOf(coming) == held->parent && head(coming) == head(held->content);
}

/// Session by session, what is repeated with what repeats it.
std::vector<Places> bySession(const std::vector<Atom>& atoms, const Places& places,
                              const Sixteen& athlete) {
    std::map<Sixteen, Sixteen> repeats;
    for (const std::size_t i : places)
        if (const auto of = repeatedBy(atoms[i]))
            repeats.emplace(atoms[i].uuid, *of);
    const auto firstOf = [&](Sixteen session) {
        for (std::size_t steps = 0; steps <= repeats.size(); ++steps) {
            const auto at = repeats.find(session);
            if (at == repeats.end())
                return session;
            session = at->second;
        }
        return session; // they repeat one another: taking them says so
    };
    std::map<Sixteen, Places> all;
    for (const std::size_t i : places)
        all[firstOf(Owners::sessionOf(atoms[i]).value_or(athlete))].push_back(i);
    std::vector<Places> parts;
    for (auto& [session, held] : all)
        parts.push_back(std::move(held));
    return parts;
}
} // namespace

std::vector<Places> unitsOf(log::Connection& db, const std::vector<Atom>& atoms) {
    Owners owners(db, atoms);
    Places first, last;
    std::map<Sixteen, Places> byAthlete;
    for (std::size_t i = 0; i < atoms.size(); ++i) {
        if (!atoms[i].alive && !atoms[i].parent && atoms[i].kind != "conflict" &&
            livesHere(db, atoms[i].uuid)) {
            Places all(atoms.size());
            for (std::size_t j = 0; j < all.size(); ++j)
                all[j] = j;
            return {all};
        }
        if (atoms[i].kind == "conflict") // when what it is about has its name
            last.push_back(i);
        else if (const auto athlete = owners.athleteOf(atoms[i]))
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
        const bool parted =
            places.size() > mostAtOnce &&
            std::ranges::all_of(places, [&](std::size_t i) { return staysInPlace(db, atoms[i]); });
        if (!parted)
            put(places);
        else
            for (const Places& held : bySession(atoms, places, athlete))
                put(held);
    }
    if (!gathered.empty())
        units.push_back(std::move(gathered));
    units.push_back(std::move(last));
    std::erase_if(units, [](const Places& unit) { return unit.empty(); });
    return units;
}

} // namespace slopebook::meetings
