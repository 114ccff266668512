// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/part.h"

#include "core/desks/sameones.h"
#include "core/log/impl.h"
#include "core/log/neighbours.h"
#include "core/log/speakers.h"
#include "core/model/errors.h"
#include "core/model/names.h"

#include <array>
#include <deque>
#include <map>
#include <utility>

namespace slopebook::desks {

namespace {
class Around {
public:
    Around(Slots& known, const log::Log& log, const Desk& coming, std::size_t most)
        : m_known(known), m_db(log.impl().db), m_coming(coming), m_most(most) {}

    /// Whether what was read is enough.
    bool read() {
        for (const char* kind :
             {"lift", "test", "device"}) { // there is one of a name: see sameones.h
            wantAll(log::uuidsOfKind(m_db, kind));
            log::visitRemoved(m_db, kind,
                              [&](const log::RemovedAtom& removed) { want(removed.atom.uuid); });
        }
        for (const auto& [slot, atom] : m_coming) {
            want(m_known.uuid(slot));
            if (atom.thing)
                lookAround(*atom.thing);
        }
        readWanted();
        for (std::size_t before = 0; before != m_seen.size();) { // what is read may matter to more
            before = m_seen.size();
            if (joins()) {
                wantAll(removedFromSessions());
                readWanted();
            }
            if (!readForNamed())
                return false;
        }
        return true;
    }
    ReadDesk take() { return std::move(m_read); }

private:
    void want(const Sixteen& uuid) {
        if (m_seen.insert(uuid).second)
            m_wanted.push_back(uuid);
    }
    void wantAll(const std::vector<Sixteen>& uuids) {
        for (const Sixteen& uuid : uuids)
            want(uuid);
    }

    void readWanted() {
        while (!m_wanted.empty()) {
            const Sixteen uuid = m_wanted.front();
            m_wanted.pop_front();
            readOne(uuid);
        }
    }

    void readOne(const Sixteen& uuid) {
        const auto carried = log::carried(m_db, uuid);
        if (!carried)
            return;
        putCarried(m_read, m_known, *carried);
        const Slot slot = m_known.find(uuid);
        if (const auto& thing = m_read.desk.at(slot).thing)
            lookAround(*thing);
        if (carried->kind != "session")
            return;
        wantAll(log::uuidsOfRemovedSessions(m_db, uuid)); // which may have become one with it
        if (carried->alive)
            wantAll(log::uuidsOfRepeats(m_db, SessionId{carried->place.one}));
        else // where it stands again what is written there would be taken for what was removed
             // there
            for (const char* kind : {"lift conditions", "test conditions", "attempt", "gap"})
                wantAll(log::uuidsRemovedAt(m_db, kind, carried->place.one));
    }

    /// The key in this log of what a thing speaks of, or that it had; nothing where it never was
    /// here.
    std::optional<std::int64_t> keyOf(Slot slot) {
        if (const auto atom = log::atomOf(m_db, m_known.uuid(slot)))
            return atom->key.one;
        const auto removed = log::removedAtomOf(m_db, m_known.uuid(slot));
        return removed ? std::optional(removed->atom.key.one) : std::nullopt;
    }

    void wantSpokenOf(const std::string& content) {
        try {
            for (const log::Reference& of : log::referencesOf(content))
                want(of.uuid);
        } catch (const BadInput&) { // nobody has it any more, or it cannot be shown
        }
    }

    void lookAround(const Thing& thing) {
        eachReference(thing, [&](Slot slot) { want(m_known.uuid(slot)); });
        if (const auto* session = std::get_if<log::SessionThing>(&thing)) {
            if (session->into)
                want(*session->into);
            if (const auto athlete = keyOf(raw(session->head.athlete)))
                wantAll(log::uuidsOfDay(m_db, AthleteId{*athlete}, session->head.date));
        } else if (const auto* load = std::get_if<log::CheckLoadThing>(&thing)) {
            if (const auto athlete = keyOf(raw(load->athlete)))
                wantAll(log::uuidsOfCheckLoads(m_db, AthleteId{*athlete}));
        } else if (const auto* conflict = std::get_if<log::ConflictThing>(&thing)) {
            want(conflict->about); // to be called by its name
            wantSpokenOf(conflict->content);
        } else if (const auto* turn = std::get_if<log::RosterThing>(&thing)) {
            if (const auto station = keyOf(raw(turn->station)))
                wantAll(log::uuidsOfRoster(m_db, StationId{*station}, turn->day));
        }
    }

    const Atom* held(Slot slot) const {
        const auto at = m_read.desk.find(slot);
        return at == m_read.desk.end() ? nullptr : &at->second;
    }

    /// Whether sessions become one here, now or earlier: then what was removed from them counts.
    bool joins() const {
        std::map<std::string, Slot> keys;
        for (const Desk* desk : {&m_read.desk, &m_coming})
            for (const auto& [slot, atom] : *desk) {
                const auto* session =
                    atom.thing ? std::get_if<log::SessionThing>(&*atom.thing) : nullptr;
                if (session == nullptr)
                    continue;
                if (session->into)
                    return true;
                if (atom.alive &&
                    keys.emplace(desks::keyOf(*atom.thing), slot).first->second != slot)
                    return true;
            }
        return false;
    }
    std::vector<Sixteen> removedFromSessions() const {
        std::set<Sixteen> sessions;
        for (const Desk* desk : {&m_read.desk, &m_coming})
            for (const auto& [slot, atom] : *desk)
                if (atom.thing && std::holds_alternative<log::SessionThing>(*atom.thing))
                    sessions.insert(m_known.uuid(slot));
        return log::uuidsRemovedFrom(m_db, sessions);
    }

    /// What has a name of its own may be spoken of from anywhere, and any other may have its name.
    /// Whether it is not too much that speaks of what goes. It is one long transaction then, and
    /// cannot be several small ones: as long as some speak of the one and some of the other both
    /// must live, and only one can have the name. The other would need another until the last has
    /// followed, which is an edit, and where a meeting ended there everybody would be told of it.
    bool readForNamed() {
        for (const Slot slot : thoseThatMayGo()) {
            const log::AtomKey& place = m_read.places.at(slot);
            const auto speaking = log::uuidsSpeakingOf(m_db, place.kind, place.one, m_most);
            if (speaking.size() > m_most)
                return false;
            wantAll(speaking);
        }
        for (const std::string& kind : kindsWhoseNamesMatter())
            if (m_kinds.insert(kind).second)
                wantAll(log::uuidsOfKind(m_db, kind));
        readWanted();
        return true;
    }

    /// Of what lives here and has a name: what comes as removed, what says of itself or is said to
    /// be one with another (sameones.h), and what may become so by its name.
    std::set<Slot> thoseThatMayGo() const {
        std::set<Slot> all;
        std::map<Sixteen, Slot> notes;
        std::map<std::string, Slot> names;
        for (const auto& [slot, atom] : m_read.desk) {
            if (!atom.alive || nameOf(*atom.thing) == nullptr)
                continue;
            const auto coming = m_coming.find(slot);
            if (coming != m_coming.end() && !coming->second.alive)
                all.insert(slot);
            if (!isOneByName(*atom.thing))
                continue;
            notes.emplace(noteOf(m_known.uuid(slot)), slot);
            names.emplace(desks::keyOf(*atom.thing), slot);
        }
        for (const auto& [slot, atom] : m_coming) {
            if (!atom.thing || !isOneByName(*atom.thing))
                continue;
            for (const log::Step& step : atom.trail)
                if (const auto noted = notes.find(step.revision); noted != notes.end())
                    all.insert(noted->second);
            const auto same = names.find(desks::keyOf(*atom.thing));
            if (!atom.alive || same == names.end() || same->second == slot)
                continue;
            all.insert(same->second);
            if (held(slot) != nullptr && held(slot)->alive)
                all.insert(slot);
        }
        return all;
    }

    /// What comes under a name that is new for it may find it taken: by another that comes, or by
    /// one that is here, which may keep its name though it comes under another one. So may what
    /// comes back. Lifts, tests and devices are all read anyhow.
    std::set<std::string> kindsWhoseNamesMatter() {
        std::set<std::string> kinds, asked;
        std::map<std::string, Slot> names;
        for (const auto& [slot, atom] : m_coming) {
            if (!atom.alive || nameOf(*atom.thing) == nullptr || isOneByName(*atom.thing))
                continue;
            const std::string key = desks::keyOf(*atom.thing), kind(kindOf(*atom.thing));
            const Atom* mine = held(slot);
            if (mine != nullptr && mine->alive && desks::keyOf(*mine->thing) == key)
                continue;
            if (!names.emplace(key, slot).second)
                kinds.insert(kind);
            asked.insert(kind);
        }
        for (const std::string& kind : asked)
            if (!kinds.contains(kind) && !m_kinds.contains(kind) && isTaken(kind, names))
                kinds.insert(kind);
        addThoseThatComeBack(kinds);
        return kinds;
    }
    /// Whether one that is here has the key of one that comes: of its name first, which is quick.
    bool isTaken(const std::string& kind, const std::map<std::string, Slot>& keys) {
        std::set<std::string> names;
        for (const auto& [key, slot] : keys)
            names.insert(nameKey(*nameOf(*m_coming.at(slot).thing)));
        for (const auto& [id, name] : log::namesIn(m_db, kind)) {
            const auto one = names.contains(nameKey(name))
                                 ? log::atomOf(m_db, log::AtomKey{.kind = kind, .one = id})
                                 : std::nullopt;
            const auto said = one ? log::carried(m_db, one->uuid) : std::nullopt;
            if (!said)
                continue;
            const auto at = keys.find(desks::keyOf(thingOf(m_known, said->content)));
            if (at != keys.end() && at->second != m_known.find(one->uuid))
                return true;
        }
        return false;
    }

    /// What comes back may find its name taken: what is spoken of by what lives, and by what comes
    /// back for that in turn, as who was removed with a session that a set comes for.
    void addThoseThatComeBack(std::set<std::string>& kinds) const {
        std::set<Slot> spokenOf;
        std::vector<const Atom*> living;
        for (const Desk* desk : {&m_read.desk, &m_coming})
            for (const auto& [slot, atom] : *desk)
                if (atom.alive)
                    living.push_back(&atom);
        while (!living.empty()) {
            const Atom& one = *living.back();
            living.pop_back();
            if (!one.thing)
                continue;
            eachReference(*one.thing, [&](Slot of) {
                const Atom* mine = held(of);
                if (spokenOf.insert(of).second && mine != nullptr && !mine->alive &&
                    !m_coming.contains(of))
                    living.push_back(mine);
            });
        }
        static constexpr std::array<std::string_view, 4> named{"athlete", "block", "equipment",
                                                               "station"};
        for (const auto& [slot, atom] : m_read.desk) {
            const auto coming = m_coming.find(slot);
            const bool goes = coming != m_coming.end() && !coming->second.alive;
            const std::string& kind = m_read.places.at(slot).kind;
            if ((!atom.alive || goes) && spokenOf.contains(slot) &&
                std::ranges::find(named, kind) != named.end())
                kinds.insert(kind);
        }
    }

    Slots& m_known;
    log::Connection& m_db;
    const Desk& m_coming;
    const std::size_t m_most;
    ReadDesk m_read;
    std::deque<Sixteen> m_wanted;
    std::set<Sixteen> m_seen;
    std::set<std::string> m_kinds; ///< of which all is read
};
} // namespace

std::optional<ReadDesk> readAround(Slots& known, const log::Log& log, const Desk& coming,
                                   std::size_t most) {
    log.impl().settle();
    Around around(known, log, coming, most);
    return around.read() ? std::optional(around.take()) : std::nullopt;
}

ReadDesk readThings(Slots& known, const log::Log& log, const std::set<Slot>& slots) {
    log.impl().settle();
    ReadDesk read;
    for (const Slot slot : slots)
        if (const auto carried = log::carried(log.impl().db, known.uuid(slot)))
            putCarried(read, known, *carried);
    return read;
}

} // namespace slopebook::desks
