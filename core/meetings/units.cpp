// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/units.h"

#include "core/desks/sameones.h"
#include "core/log/neighbours.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace slopebook::meetings {

namespace {
using store::Sixteen;

/// It belongs to nothing and is known by its name.
bool isNamed(const Arrived& one) {
    static constexpr std::array<std::string_view, 7> kinds{"athlete", "device",    "lift",   "test",
                                                           "block",   "equipment", "station"};
    return std::ranges::find(kinds, one.atom->kind) != kinds.end();
}
/// What it belongs to; of what was removed before logs kept what such things said, as it is here.
std::optional<Sixteen> parentOf(const log::Log& log, const Arrived& one) {
    if (one.atom->parent || !one.said.content.empty() || isNamed(one))
        return one.atom->parent;
    const auto held = log::carried(log, one.atom->uuid);
    return held && held->parent ? std::optional(held->parent->uuid) : std::nullopt;
}
bool livesHere(const log::Log& log, const Sixteen& uuid) {
    return log::atomOf(log::connectionOf(log), uuid).has_value();
}
/// A named thing that is here and comes as removed goes once nothing speaks of it any more.
bool goesLast(const log::Log& log, const Arrived& one) {
    return isNamed(one) && !one.atom->alive && livesHere(log, one.atom->uuid);
}
/// What a content says of itself; what it speaks of has no keys here.
log::Thing withoutKeys(const std::string& content) {
    return log::readContent(
        content, [](const char*, const Sixteen&) { return std::optional<std::int64_t>(1); });
}

/// Whose a session is, and which hang on each other.
class Sessions {
public:
    Sessions(const log::Log& log, const std::vector<Arrived>& all) : m_log(log), m_all(all) {
        for (const Arrived& one : all)
            if (one.atom->kind == "session" && one.atom->parent)
                m_athletes.emplace(one.atom->uuid, *one.atom->parent);
    }
    /// Whose what came is; nothing of what is no athlete's.
    std::optional<Sixteen> athleteOf(const Arrived& one) {
        if (one.atom->kind == "check load")
            return parentOf(m_log, one);
        const auto session = sessionOf(one);
        if (!session)
            return std::nullopt;
        const auto [at, isNew] = m_athletes.try_emplace(*session);
        if (isNew)
            at->second = athleteHere(*session);
        return at->second;
    }

    /// Of one athlete's: those that can be taken one without the other. His check loads are one.
    std::vector<Places> parted(const Places& places, const Sixteen& athlete) {
        m_links.clear();
        for (const std::size_t i : places)
            link(m_all[i]);
        std::map<Sixteen, Places> all;
        for (const std::size_t i : places)
            all[rootOf(sessionOf(m_all[i]).value_or(athlete))].push_back(i);
        std::vector<Places> parts;
        for (auto& [root, held] : all)
            parts.push_back(std::move(held));
        return parts;
    }

private:
    std::optional<Sixteen> sessionOf(const Arrived& one) const {
        return meetings::sessionOf(*one.atom, parentOf(m_log, one));
    }
    /// Of a session that does not come itself; itself where nobody knows.
    Sixteen athleteHere(const Sixteen& session) {
        const auto held = log::carried(m_log, session);
        return held && held->parent ? held->parent->uuid : session;
    }

    void link(const Arrived& one) {
        const auto session = sessionOf(one);
        if (!session)
            return;
        const auto held = log::carried(m_log, one.said.uuid);
        for (const log::Carried* said : {&one.said, held ? &*held : nullptr})
            if (said != nullptr) {
                linkTo(*session, *said);
                if (said->kind == "session")
                    linkToHolder(*session, *said);
            }
    }
    /// What it belongs to here and there, what it became and what it repeats.
    void linkTo(const Sixteen& session, const log::Carried& said) {
        if (said.into)
            unite(session, *said.into);
        if (said.content.empty())
            return;
        for (const log::Reference& of : log::referencesOf(said.content))
            if (std::string_view(of.kind) == "session")
                unite(session, of.uuid);
    }
    /// Who has its number of the day here.
    void linkToHolder(const Sixteen& session, const log::Carried& said) {
        if (said.content.empty() || !said.parent)
            return;
        const auto athlete = log::atomOf(log::connectionOf(m_log), said.parent->uuid);
        if (!athlete)
            return;
        const log::Thing thing = withoutKeys(said.content);
        const SessionHead& head = std::get<log::SessionThing>(thing).head;
        if (const auto holder = log::uuidOfSession(
                log::connectionOf(m_log), AthleteId{athlete->key.one}, head.date, head.ordinal))
            unite(session, *holder);
    }

    Sixteen rootOf(Sixteen session) {
        for (auto at = m_links.find(session); at != m_links.end(); at = m_links.find(session))
            session = at->second;
        return session;
    }
    void unite(const Sixteen& one, const Sixteen& other) {
        const Sixteen a = rootOf(one), b = rootOf(other);
        if (a != b)
            m_links.emplace(std::max(a, b), std::min(a, b));
    }

    const log::Log& m_log;
    const std::vector<Arrived>& m_all;
    std::map<Sixteen, Sixteen> m_athletes; ///< by session
    std::map<Sixteen, Sixteen> m_links;    ///< of a session to one that it hangs on
};

/// Small ones are put together.
class Gathered {
public:
    void put(const Places& more) {
        if (!m_gathered.empty() && m_gathered.size() + more.size() > mostAtOnce)
            close();
        m_gathered.insert(m_gathered.end(), more.begin(), more.end());
    }
    void close() {
        if (!m_gathered.empty())
            m_units.push_back(std::exchange(m_gathered, {}));
    }
    void each(const Places& places) {
        for (const std::size_t i : places)
            put({i});
        close();
    }
    std::vector<Places> take() {
        close();
        return std::move(m_units);
    }

private:
    Places m_gathered;
    std::vector<Places> m_units;
};

/// The roster of a station's day: its turns are numbered through.
std::pair<Sixteen, std::string> rosterOf(const log::Log& log, const Arrived& one) {
    std::string day;
    const auto held = one.said.content.empty() ? log::carried(log, one.said.uuid) : std::nullopt;
    const std::string& content = held ? held->content : one.said.content;
    if (!content.empty())
        day = isoDate(std::get<log::RosterThing>(withoutKeys(content)).day);
    return {parentOf(log, one).value_or(Sixteen{}), day};
}
} // namespace

std::string nameKeyOf(const log::Carried& one) {
    desks::Slots slots;
    return one.content.empty() ? std::string() : desks::keyOf(desks::thingOf(slots, one.content));
}

bool hangsTogether(const log::Log& log, const std::vector<Arrived>& all) {
    std::set<std::string> names; // that fall free
    std::set<Sixteen> notes;     // of those that may be one with another
    for (const Arrived& one : all)
        if (isNamed(one) && !one.atom->alive)
            if (const auto held = log::carried(log, one.atom->uuid); held && held->alive) {
                names.insert(nameKeyOf(*held));
                notes.insert(desks::noteOf(one.atom->uuid));
            }
    if (notes.empty())
        return false;
    return std::ranges::any_of(all, [&](const Arrived& one) {
        return isNamed(one) && one.atom->alive &&
               (names.contains(nameKeyOf(one.said)) ||
                std::ranges::any_of(one.said.trail, [&](const log::Step& step) {
                    return notes.contains(step.revision);
                }));
    });
}

std::vector<Places> namedUnits(const log::Log& log, const std::vector<Arrived>& all,
                               const Places& places) {
    Places named;
    bool renames = false;
    for (const std::size_t i : places) {
        const Arrived& one = all[i];
        if (!isNamed(one) || goesLast(log, one))
            continue;
        named.push_back(i);
        const auto held = one.atom->alive ? log::carried(log, one.atom->uuid) : std::nullopt;
        renames = renames || (held && nameKeyOf(*held) != nameKeyOf(one.said));
    }
    if (named.empty())
        return {};
    if (renames) // of two that change their names one alone would find the other's taken
        return {named};
    Gathered units;
    units.each(named);
    return units.take();
}

std::vector<Places> otherUnits(const log::Log& log, const std::vector<Arrived>& all,
                               const Places& places) {
    Sessions sessions(log, all);
    Places going, choices;
    std::map<Sixteen, Places> athletes;
    std::map<std::pair<Sixteen, std::string>, Places> rosters;
    for (const std::size_t i : places) {
        const Arrived& one = all[i];
        if (one.atom->kind == "conflict") // when what it is about has its name
            choices.push_back(i);
        else if (one.atom->kind == "roster")
            rosters[rosterOf(log, one)].push_back(i);
        else if (const auto athlete = sessions.athleteOf(one))
            athletes[*athlete].push_back(i);
        else if (!isNamed(one) || goesLast(log, one))
            going.push_back(i);
    }
    Gathered units;
    for (const auto& [athlete, held] : athletes)
        if (held.size() <= mostAtOnce)
            units.put(held);
        else
            for (const Places& part : sessions.parted(held, athlete))
                units.put(part);
    for (const auto& [roster, held] : rosters)
        units.put(held);
    units.close();
    units.each(going);
    units.each(choices);
    return units.take();
}

} // namespace slopebook::meetings
