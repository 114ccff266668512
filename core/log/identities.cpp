// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/identities.h"

#include "core/log/carried.h"
#include "core/log/derive.h"
#include "core/log/impl.h"

#include <algorithm>
#include <cstring>
#include <map>
#include <set>
#include <tuple>
#include <unordered_set>

namespace slopebook::log {

namespace {
/// Tells the place of each kind by its value; references by their number among those met.
struct Placing {
    ThingPlace& place;

    void operator()(const Block& block) const {
        place.name = block.name;
        place.day = isoDate(block.first);
    }
    void operator()(const SessionThing& session) const {
        place.day = isoDate(session.head.date);
        place.number = session.head.ordinal;
    }
    void operator()(const SetThing& set) const { place.number = set.ordinal; }
    void operator()(const AttemptThing& attempt) const { place.number = attempt.ordinal; }
    void operator()(const GapThing& gap) const { place.number = gap.ordinal; }
    void operator()(const CheckLoadThing& load) const { place.grams = load.load.grams; }
    void operator()(const RosterThing& roster) const { place.day = isoDate(roster.day); }
    void operator()(const LiftConditionsThing& /*held*/) const {}
    void operator()(const TestConditionsThing& /*held*/) const {}
    void operator()(const ConflictThing& /*conflict*/) const {}
    template <class Named>
    void operator()(const Named& named) const {
        place.name = named.name;
    }
};

bool hasPartner(std::string_view kind) {
    return kind == "set" || kind == "lift conditions" || kind == "test conditions" ||
           kind == "attempt" || kind == "check load" || kind == "roster";
}
} // namespace

ThingPlace thingPlace(std::string_view content) {
    std::vector<Sixteen> spoken; // of: the first, with: the second
    const Thing thing = readContent(content, [&](const char* /*kind*/, const Sixteen& uuid) {
        spoken.push_back(uuid);
        return std::optional(static_cast<std::int64_t>(spoken.size()));
    });
    ThingPlace place{.kind = kindOfContent(content)};
    if (const auto parent = parentOf(content)) {
        place.of = parent->uuid;
        if (hasPartner(place.kind) && spoken.size() > 1)
            place.with = spoken[1];
    }
    std::visit(Placing{place}, thing);
    return place;
}

void visitIdentities(const Log& log, const std::function<void(const Identity&)>& visit) {
    log.impl().settle();
    const ReadScope moment(log.impl().db);
    visitLiving(log.impl().db, [&](const Carried& one) {
        if (one.kind != "conflict" && one.kind != "roster")
            visit({.place = thingPlace(one.content), .uuid = one.uuid, .trail = one.trail});
    });
}

namespace {
/// The same for what is at the same place.
Sixteen namePlace(const ThingPlace& place) {
    std::string bytes = place.kind;
    bytes.append(1, '\0').append(viewOf(place.of)).append(viewOf(place.with));
    bytes.append(place.day).append(1, '\0');
    bytes.append(std::to_string(place.number)).append(1, ' ');
    bytes.append(std::to_string(place.grams)).append(1, ' ').append(place.name);
    return hashOf(bytes);
}
} // namespace

void Identities::add(const Identity& identity) {
    Held held{.place = namePlace(identity.place), .uuid = identity.uuid};
    if (identity.trail.empty()) {
        held.edited = unsaid;
    } else if (identity.trail.size() == 1) {
        held.hash = identity.trail[0].hash;
    } else {
        held.edited = static_cast<std::int32_t>(m_trails.size());
        m_trails.push_back(bytesOf(identity.trail));
    }
    m_held.push_back(held);
}

void Identities::sort() {
    std::ranges::stable_sort(m_held, {}, &Held::place);
}

std::optional<Identities::Found> Identities::at(const ThingPlace& place) const {
    const Sixteen name = namePlace(place);
    const auto held = std::ranges::lower_bound(m_held, name, {}, &Held::place);
    if (held == m_held.end() || held->place != name)
        return std::nullopt;
    Found found{.uuid = held->uuid};
    if (held->edited >= 0)
        found.trail = readTrail(m_trails[static_cast<std::size_t>(held->edited)]);
    else if (held->edited == never)
        found.trail = shortTrail(held->hash, true);
    return found;
}

std::vector<Sixteen> namesKnown(const Log& log) {
    std::vector<Sixteen> all;
    for (Query rows(log.impl().db, "SELECT uuid FROM atoms ORDER BY uuid"); rows.next();)
        all.push_back(rows.sixteen(0));
    return all;
}

std::optional<std::int64_t> livingKey(const Log& log, const std::string& kind,
                                      const Sixteen& uuid) {
    const auto atom = atomOf(log.impl().db, uuid);
    return atom && atom->key.kind == kind ? std::optional(atom->key.one) : std::nullopt;
}

namespace {
struct OfUuid {
    std::size_t operator()(const Sixteen& uuid) const {
        std::size_t part = 0;
        std::memcpy(&part, uuid.data() + uuid.size() - sizeof part, sizeof part);
        return part;
    }
};
using Uuids = std::unordered_set<Sixteen, OfUuid>;

class Taking {
public:
    Taking(Connection& db, const Identities& identities, const std::vector<Sixteen>& before)
        : m_db(db), m_before(before), m_identities(identities) {
        for (Query rows(db, "SELECT uuid FROM removed_atoms"); rows.next();)
            m_removed.insert(rows.sixteen(0));
    }

    void all() {
        const UuidOf uuids = [this](const char* kind, std::int64_t key) {
            const auto [at, isNew] = m_uuids.try_emplace({kind, key});
            if (isNew)
                if (const auto atom = atomOf(m_db, {.kind = kind, .one = key}))
                    at->second = atom->uuid;
            return at->second;
        };
        visitThings(m_db, uuids,
                    [&](const AtomKey& key, const Content& said, const auto& /*derived*/) {
                        if (const auto atom = atomOf(m_db, key))
                            take(*atom, said);
                    });
        // A repeat may have been taken before what it repeats.
        static constexpr auto repeats = joined(headColumns, "WHERE repeat_of IS NOT NULL");
        for (Query rows(m_db, repeats.data()); rows.next();) {
            const auto session = readHead(rows);
            if (const auto atom = atomOf(m_db, {.kind = "session", .one = raw(session.id)});
                atom && (!wasBefore(atom->uuid) ||
                         m_given.contains(uuids("session", raw(*session.value.repeatOf)))))
                sayAnew(*atom, contentHash(uuids, session.value));
        }
    }
    const Tally& change() const { return m_change; }

private:
    void take(const Atom& atom, const Content& said) {
        const Sixteen hash = said.hash();
        if (wasBefore(atom.uuid)) {
            // Where it does not say what it said, and speaks of nothing that got another name just
            // now, that is damage: a new hash would hide it.
            if (hash != atom.hash && speaksOfRenamed(said.bytes()))
                sayAnew(atom, hash);
            return;
        }
        if (const auto found = m_identities.at(thingPlace(said.bytes()));
            found && isThat(atom, *found, hash) && adopt(atom, *found, hash))
            return;
        sayAnew(atom, hash);
    }

    bool wasBefore(const Sixteen& uuid) const { return std::ranges::binary_search(m_before, uuid); }

    /// Attempts and gaps are numbered by where they stand: in a table with its rows in another
    /// order, or with one left out, the number is another one's. They are known by what they say.
    static bool isThat(const Atom& atom, const Identities::Found& identity, const Sixteen& hash) {
        const bool numberedAnew = atom.key.kind == "attempt" || atom.key.kind == "gap";
        return !numberedAnew || (!identity.trail.empty() && identity.trail.back().hash == hash);
    }

    bool speaksOfRenamed(std::string_view content) const {
        bool renamed = false;
        readContent(content, [&](const char* /*kind*/, const Sixteen& uuid) {
            renamed = renamed || m_given.contains(uuid);
            return std::optional(std::int64_t{1});
        });
        return renamed;
    }

    /// What it speaks of has another name now, which the step of this very transaction says.
    void sayAnew(const Atom& atom, const Sixteen& hash) {
        if (hash == atom.hash)
            return;
        Trail trail = trailOf(atom, true);
        trail.pop_back();
        if (trail.empty() || trail.back().hash != hash)
            extend(trail, hash);
        rewriteAtom(m_db, atom, {.key = atom.key, .uuid = atom.uuid, .hash = hash}, trail,
                    &m_change);
    }

    bool adopt(const Atom& atom, const Identities::Found& identity, const Sixteen& hash) {
        if (wasBefore(identity.uuid) || !m_given.insert(identity.uuid).second)
            return false;
        if (identity.uuid == atom.uuid) { // back where it was removed: its trail went on here
            sayAnew(atom, hash);
            return true;
        }
        Trail trail = identity.trail;
        if (const auto removed = m_removed.contains(identity.uuid)
                                     ? removedAtomOf(m_db, identity.uuid)
                                     : std::nullopt) {
            const Trail here = trailOf(removed->atom, false);
            if (!holds(trail, revisionOf(here)))
                trail = here;
            forgetRemoved(m_db, *removed);
        }
        if (trail.empty() || trail.back().hash != hash)
            extend(trail, hash);
        rewriteAtom(m_db, atom, {.key = atom.key, .uuid = identity.uuid, .hash = hash}, trail,
                    &m_change);
        if (atom.key.two == 0) // may be spoken of
            m_uuids.insert_or_assign({kindFor(atom.key.kind), atom.key.one}, identity.uuid);
        return true;
    }

    /// The same text for as long as this lives.
    std::string_view kindFor(const std::string& kind) { return *m_kinds.insert(kind).first; }

    Connection& m_db;
    const std::vector<Sixteen>& m_before;
    const Identities& m_identities;
    Uuids m_given, m_removed;
    Tally m_change;
    std::map<std::pair<std::string_view, std::int64_t>, Sixteen> m_uuids;
    std::set<std::string> m_kinds;
};
} // namespace

void takeIdentities(const Log& log, const Identities& identities,
                    const std::vector<Sixteen>& before) {
    log.impl().write([&] {
        log.impl().settle();
        Taking taking(log.impl().db, identities, before);
        taking.all();
        log.impl().tally("atom", 0, taking.change());
    });
}

} // namespace slopebook::log
