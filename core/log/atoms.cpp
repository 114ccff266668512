// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/atoms.h"

#include "core/log/contentat.h"
#include "core/log/query.h"
#include "core/log/storerows.h"
#include "core/model/errors.h"

#include <bit>
#include <limits>
#include <map>
#include <memory>

namespace slopebook::log {

namespace {
constexpr char atomColumns[] = "SELECT kind, one, two, three, uuid, hash, trail FROM atoms ";
constexpr char removedColumns[] =
    "SELECT kind, one, two, three, uuid, hash, trail, content FROM removed_atoms ";
constexpr auto oneAtom =
    joined(atomColumns, "WHERE kind = ? AND one = ? AND two = ? AND three = ?");
constexpr auto atomByUuid = joined(atomColumns, "WHERE uuid = ?");
constexpr auto atomsOfOne = joined(atomColumns, "WHERE kind = ? AND one = ? ORDER BY two, three");
constexpr auto removedAt =
    joined(removedColumns, "WHERE kind = ? AND one = ? AND two = ? AND three = ? LIMIT 1");
constexpr auto removedAlike =
    joined(removedColumns, "WHERE kind = ? AND one = ? AND hash = ? LIMIT 1");
constexpr auto removedByUuid = joined(removedColumns, "WHERE uuid = ?");

Atom readAtom(const Query& row) {
    return {.key = {row.text(0), row.integer(1), row.integer(2), row.integer(3)},
            .uuid = row.sixteen(4),
            .hash = row.sixteen(5),
            .trail = row.text(6)};
}

RemovedAtom readRemoved(const Query& row) {
    return {.atom = readAtom(row),
            .content = row.null(7) ? std::nullopt : std::optional(row.text(7))};
}

std::optional<Blob> blobOf(const std::string& bytes) {
    return bytes.empty() ? std::nullopt : std::optional(Blob{bytes});
}

/// A trail's bytes as an atom holds them.
std::string packed(const Trail& trail, const Sixteen& hash, bool alive) {
    return trail == shortTrail(hash, alive) ? std::string() : bytesOf(trail);
}

std::string extended(const Atom& held, bool lived, const Sixteen& hash, bool lives) {
    Trail trail = trailOf(held, lived);
    extend(trail, stepHash(hash, lives));
    return packed(trail, hash, lives);
}

void changeTally(Connection& db, const char* kind, const Tally& change) {
    Query(db,
          "UPDATE tallies SET things = things + ?, sum = plus(sum, ?) WHERE owner = 0 AND kind = ?",
          change.things, std::bit_cast<std::int64_t>(change.sum), std::string(kind))
        .run();
}

void add(Connection& db, const Atom& atom) {
    insertAtom(db, atom);
    Tally change;
    change.add(weightOf(atom));
    changeTally(db, "atom", change);
}

void erase(Connection& db, const Atom& atom) {
    Query(db, "DELETE FROM atoms WHERE kind = ? AND one = ? AND two = ? AND three = ?",
          atom.key.kind, atom.key.one, atom.key.two, atom.key.three)
        .run();
    Tally change;
    change.take(weightOf(atom));
    changeTally(db, "atom", change);
}

void replace(Connection& db, const Atom& held, const Atom& now, Tally* gathered = nullptr) {
    Query(db,
          "UPDATE atoms SET uuid = ?, hash = ?, trail = ? "
          "WHERE kind = ? AND one = ? AND two = ? AND three = ?",
          now.uuid, now.hash, blobOf(now.trail), held.key.kind, held.key.one, held.key.two,
          held.key.three)
        .run();
    Tally change;
    Tally& into = gathered == nullptr ? change : *gathered;
    into.take(weightOf(held));
    into.add(weightOf(now));
    if (gathered == nullptr)
        changeTally(db, "atom", change);
}

void insertRemoved(Connection& db, const RemovedAtom& removed) {
    const Atom& atom = removed.atom;
    Query(db,
          "INSERT INTO removed_atoms (kind, one, two, three, uuid, hash, trail, content) "
          "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
          atom.key.kind, atom.key.one, atom.key.two, atom.key.three, atom.uuid, atom.hash,
          blobOf(atom.trail),
          removed.content ? std::optional(Blob{*removed.content}) : std::nullopt)
        .run();
    Tally change;
    change.add(weightOf(removed));
    changeTally(db, "removed atom", change);
}

void eraseRemoved(Connection& db, const RemovedAtom& removed) {
    const AtomKey& key = removed.atom.key;
    Query(db,
          "DELETE FROM removed_atoms WHERE kind = ? AND one = ? AND two = ? AND three = ? AND "
          "uuid = ?",
          key.kind, key.one, key.two, key.three, removed.atom.uuid)
        .run();
    Tally change;
    change.take(weightOf(removed));
    changeTally(db, "removed atom", change);
}

/// Of one that no longer stands among the atoms. said: nothing where that is not what its hash
/// says, so that damage is not carried on as its word.
void bury(Connection& db, const Atom& held, const Content* said) {
    RemovedAtom removed{.atom = held};
    removed.atom.trail = extended(held, true, held.hash, false);
    if (said != nullptr && said->hash() == held.hash)
        removed.content = said->bytes();
    insertRemoved(db, removed);
    noteUnsent(db, held.uuid);
}

/// What comes back where the rows say it was, or is new.
Atom broughtBack(Connection& db, Query& rows, const AtomKey& key, const Sixteen& hash) {
    if (!rows.next())
        return {.key = key, .uuid = randomUuid(), .hash = hash};
    const RemovedAtom was = readRemoved(rows);
    eraseRemoved(db, was);
    return {.key = key,
            .uuid = was.atom.uuid,
            .hash = hash,
            .trail = extended(was.atom, false, hash, true)};
}
} // namespace

Trail trailOf(const Atom& atom, bool alive) {
    try {
        return atom.trail.empty() ? shortTrail(atom.hash, alive) : readTrail(atom.trail);
    } catch (const BadInput& error) {
        throw LogError(LogError::Kind::Damaged, error.words());
    }
}

std::string packedTrail(const Trail& trail, const Sixteen& hash) {
    return packed(trail, hash, true);
}

std::string placeOf(const AtomKey& key) {
    std::string text = key.kind + " " + std::to_string(key.one);
    for (const std::int64_t more : {key.two, key.three})
        if (more != 0)
            text += ", " + std::to_string(more);
    return text;
}

std::optional<Atom> atomOf(Connection& db, const AtomKey& key) {
    Query row(db, oneAtom.data(), key.kind, key.one, key.two, key.three);
    return row.next() ? std::optional(readAtom(row)) : std::nullopt;
}

std::optional<Atom> atomOf(Connection& db, const Sixteen& uuid) {
    Query row(db, atomByUuid.data(), uuid);
    return row.next() ? std::optional(readAtom(row)) : std::nullopt;
}

std::optional<RemovedAtom> removedAtomOf(Connection& db, const Sixteen& uuid) {
    Query row(db, removedByUuid.data(), uuid);
    return row.next() ? std::optional(readRemoved(row)) : std::nullopt;
}

void visitRemoved(Connection& db, const std::string& kind,
                  const std::function<void(const RemovedAtom&)>& visit) {
    // Of one kind along the key: a reader asks kind by kind, and none may read them all.
    static constexpr auto ofKind = joined(removedColumns, "WHERE kind = ?");
    Query rows = kind.empty() ? Query(db, removedColumns) : Query(db, ofKind.data(), kind);
    while (rows.next())
        visit(readRemoved(rows));
}

void visitRemovedInPieces(Connection& db, const std::string& kind, int most,
                          const std::function<void(const RemovedAtom&)>& visit) {
    static constexpr auto ofKind =
        joined(removedColumns, "WHERE kind = ? AND (one, two, three, uuid) > (?, ?, ?, ?) "
                               "ORDER BY one, two, three, uuid LIMIT ?");
    RemovedAtom last{
        .atom = {.key = {.kind = kind, .one = std::numeric_limits<std::int64_t>::min()}}};
    for (int read = most; read == most;) {
        read = 0;
        const Atom from = last.atom;
        for (Query rows(db, ofKind.data(), kind, from.key.one, from.key.two, from.key.three,
                        from.uuid, most);
             rows.next(); ++read) {
            last = readRemoved(rows);
            visit(last);
        }
    }
}

UuidOf uuidsIn(Connection& db) {
    return [&db](const char* kind, std::int64_t key) {
        const auto atom = atomOf(db, {.kind = kind, .one = key});
        return atom ? atom->uuid : Sixteen{};
    };
}

UuidOf rememberedUuidsIn(Connection& db) {
    auto known = std::make_shared<std::map<std::pair<std::string_view, std::int64_t>, Sixteen>>();
    return [known, look = uuidsIn(db)](const char* kind, std::int64_t key) {
        const auto [at, isNew] = known->try_emplace({kind, key});
        if (isNew)
            at->second = look(kind, key);
        return at->second;
    };
}

void insertAtom(Connection& db, const Atom& atom) {
    Query(db,
          "INSERT INTO atoms (kind, one, two, three, uuid, hash, trail) "
          "VALUES (?, ?, ?, ?, ?, ?, ?)",
          atom.key.kind, atom.key.one, atom.key.two, atom.key.three, atom.uuid, atom.hash,
          blobOf(atom.trail))
        .run();
}

void keepAtom(Connection& db, const AtomKey& key, const Sixteen& hash) {
    if (const auto held = atomOf(db, key)) {
        if (held->hash == hash)
            return;
        replace(db, *held,
                {.key = key,
                 .uuid = held->uuid,
                 .hash = hash,
                 .trail = extended(*held, true, hash, true)});
        noteUnsent(db, held->uuid);
        return;
    }
    const Atom now = [&] {
        Query removed(db, removedAt.data(), key.kind, key.one, key.two, key.three);
        return broughtBack(db, removed, key, hash);
    }();
    add(db, now);
    noteUnsent(db, now.uuid);
}

void dropAtom(Connection& db, const AtomKey& key) {
    const auto held = atomOf(db, key);
    if (!held)
        return;
    const auto said = contentAt(db, key);
    erase(db, *held);
    bury(db, *held, said ? &*said : nullptr);
}

void dropAtom(Connection& db, const AtomKey& key, const Content& said) {
    if (const auto held = atomOf(db, key)) {
        erase(db, *held);
        bury(db, *held, &said);
    }
}

void placeAtoms(Connection& db, const char* kind, std::int64_t of,
                const std::vector<Content>& before, const std::vector<Content>& now,
                const std::vector<int>& was) {
    std::map<std::int64_t, Atom> held; // by number
    for (Query rows(db, atomsOfOne.data(), std::string(kind), of); rows.next();) {
        const Atom atom = readAtom(rows);
        held.emplace(atom.key.two, atom);
    }
    struct Placed {
        Atom atom;
        bool changed = true;
    };
    std::vector<Placed> placed;
    for (const auto& [number, atom] : held)
        erase(db, atom);
    for (std::size_t i = 0; i < now.size(); ++i) {
        const AtomKey key{kind, of, static_cast<std::int64_t>(i) + 1};
        const Sixteen hash = now[i].hash();
        if (const auto known = held.find(was[i]); known != held.end()) {
            Atom atom = known->second;
            const bool changed = atom.hash != hash;
            if (changed)
                atom.trail = extended(atom, true, hash, true);
            atom.key = key;
            atom.hash = hash;
            placed.push_back({std::move(atom), changed});
            held.erase(known);
        } else {
            Query removed(db, removedAlike.data(), std::string(kind), of, hash);
            placed.push_back({broughtBack(db, removed, key, hash)});
        }
    }
    for (const auto& [number, atom] : held) {
        const auto at = static_cast<std::size_t>(number - 1);
        bury(db, atom, at < before.size() ? &before[at] : nullptr);
    }
    for (const Placed& one : placed) {
        add(db, one.atom);
        if (one.changed)
            noteUnsent(db, one.atom.uuid);
    }
}

void renameAtom(Connection& db, const AtomKey& key, const Sixteen& uuid, const Trail& trail) {
    if (const auto held = atomOf(db, key))
        rewriteAtom(db, *held, {.key = key, .uuid = uuid, .hash = held->hash}, trail);
}

void rewriteAtom(Connection& db, const Atom& held, const Atom& now, const Trail& trail,
                 Tally* gathered) {
    replace(db, held,
            {.key = held.key,
             .uuid = now.uuid,
             .hash = now.hash,
             .trail = packed(trail, now.hash, true)},
            gathered);
    if (!meetsStore(db))
        return;
    if (now.uuid != held.uuid)
        eraseUnsent(db, std::span(&held.uuid, 1)); // nobody knows that name
    noteUnsent(db, now.uuid);
}

void putRemoved(Connection& db, const RemovedAtom& removed) {
    if (const auto known = removedAtomOf(db, removed.atom.uuid))
        eraseRemoved(db, *known);
    RemovedAtom now = removed;
    now.atom.trail = packed(trailOf(now.atom, false), now.atom.hash, false);
    insertRemoved(db, now);
    noteUnsent(db, now.atom.uuid);
}

void forgetRemoved(Connection& db, const RemovedAtom& removed) {
    eraseRemoved(db, removed);
}

namespace {
/// Trails that are short and contents that were not kept add nothing: what was written before
/// there were any weighs what it weighed.
Checksum sumOf(const Atom& atom) {
    Checksum sum('a');
    sum.add(atom.key.kind).add(atom.key.one).add(atom.key.two).add(atom.key.three);
    sum.add(viewOf(atom.uuid)).add(viewOf(atom.hash));
    if (!atom.trail.empty())
        sum.add(std::string_view("trail")).add(std::string_view(atom.trail));
    return sum;
}
} // namespace

std::uint64_t weightOf(const Atom& atom) {
    return weight(sumOf(atom).value());
}

std::uint64_t weightOf(const RemovedAtom& removed) {
    Checksum sum = sumOf(removed.atom);
    if (removed.content)
        sum.add(std::string_view("content")).add(std::string_view(*removed.content));
    return weight(sum.value());
}

Tally tallyOfAtoms(Connection& db, const char* table) {
    Tally tally;
    if (table == std::string_view("atoms"))
        for (Query rows(db, atomColumns); rows.next();)
            tally.add(weightOf(readAtom(rows)));
    else
        visitRemoved(db, {}, [&](const RemovedAtom& removed) { tally.add(weightOf(removed)); });
    return tally;
}

std::int64_t dayNumber(Date day) {
    const auto month = static_cast<int>(static_cast<unsigned>(day.month()));
    const auto ofMonth = static_cast<int>(static_cast<unsigned>(day.day()));
    return (static_cast<int>(day.year()) * 100 + month) * 100 + ofMonth;
}

Date dayOfNumber(std::int64_t number) {
    return {std::chrono::year{static_cast<int>(number / 10000)},
            std::chrono::month{static_cast<unsigned>(number / 100 % 100)},
            std::chrono::day{static_cast<unsigned>(number % 100)}};
}

} // namespace slopebook::log
