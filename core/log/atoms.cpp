// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/atoms.h"

#include "core/log/query.h"

#include <array>
#include <bit>
#include <map>
#include <memory>

namespace slopebook::log {

namespace {
constexpr char atomColumns[] = "SELECT kind, one, two, three, uuid, hash FROM ";
constexpr auto oneAtom =
    joined(atomColumns, "atoms WHERE kind = ? AND one = ? AND two = ? AND three = ?");
constexpr auto atomsOfOne =
    joined(atomColumns, "atoms WHERE kind = ? AND one = ? ORDER BY two, three");
constexpr auto removedAtom = joined(
    atomColumns, "removed_atoms WHERE kind = ? AND one = ? AND two = ? AND three = ? LIMIT 1");
constexpr auto removedAlike =
    joined(atomColumns, "removed_atoms WHERE kind = ? AND one = ? AND hash = ? LIMIT 1");

Atom readAtom(const Query& row) {
    return {.key = {row.text(0), row.integer(1), row.integer(2), row.integer(3)},
            .uuid = row.sixteen(4),
            .hash = row.sixteen(5)};
}

void changeTally(Connection& db, const char* kind, const Tally& change) {
    Query(db,
          "UPDATE tallies SET things = things + ?, sum = plus(sum, ?) WHERE owner = 0 AND kind = ?",
          change.things, std::bit_cast<std::int64_t>(change.sum), std::string(kind))
        .run();
}

void insertInto(Connection& db, const char* sql, const Atom& atom) {
    Query(db, sql, atom.key.kind, atom.key.one, atom.key.two, atom.key.three, atom.uuid, atom.hash)
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

void bury(Connection& db, const Atom& atom) {
    insertInto(db,
               "INSERT INTO removed_atoms (kind, one, two, three, uuid, hash) "
               "VALUES (?, ?, ?, ?, ?, ?)",
               atom);
    Tally change;
    change.add(weightOf(atom));
    changeTally(db, "removed atom", change);
}

/// The UUID that a thing had before it was removed.
std::optional<Sixteen> takeBack(Connection& db, Query& removed) {
    if (!removed.next())
        return std::nullopt;
    const Atom atom = readAtom(removed);
    Query(db,
          "DELETE FROM removed_atoms WHERE kind = ? AND one = ? AND two = ? AND three = ? AND "
          "uuid = ?",
          atom.key.kind, atom.key.one, atom.key.two, atom.key.three, atom.uuid)
        .run();
    Tally change;
    change.take(weightOf(atom));
    changeTally(db, "removed atom", change);
    return atom.uuid;
}
} // namespace

std::optional<Atom> atomOf(Connection& db, const AtomKey& key) {
    Query row(db, oneAtom.data(), key.kind, key.one, key.two, key.three);
    return row.next() ? std::optional(readAtom(row)) : std::nullopt;
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
    insertInto(db,
               "INSERT INTO atoms (kind, one, two, three, uuid, hash) VALUES (?, ?, ?, ?, ?, ?)",
               atom);
}

void keepAtom(Connection& db, const AtomKey& key, const Sixteen& hash) {
    if (const auto held = atomOf(db, key)) {
        if (held->hash == hash)
            return;
        const Atom now{.key = key, .uuid = held->uuid, .hash = hash};
        Query(db, "UPDATE atoms SET hash = ? WHERE kind = ? AND one = ? AND two = ? AND three = ?",
              hash, key.kind, key.one, key.two, key.three)
            .run();
        Tally change;
        change.take(weightOf(*held));
        change.add(weightOf(now));
        changeTally(db, "atom", change);
        return;
    }
    std::optional<Sixteen> before;
    {
        Query removed(db, removedAtom.data(), key.kind, key.one, key.two, key.three);
        before = takeBack(db, removed);
    }
    add(db, {.key = key, .uuid = before ? *before : randomUuid(), .hash = hash});
}

void dropAtom(Connection& db, const AtomKey& key) {
    if (const auto held = atomOf(db, key)) {
        erase(db, *held);
        bury(db, *held);
    }
}

void dropAtomsOf(Connection& db, const char* kind, std::int64_t of) {
    std::vector<Atom> held;
    for (Query rows(db, atomsOfOne.data(), std::string(kind), of); rows.next();)
        held.push_back(readAtom(rows));
    for (const Atom& atom : held)
        dropAtom(db, atom.key);
}

void placeAtoms(Connection& db, const char* kind, std::int64_t of, const std::vector<Sixteen>& now,
                const std::vector<int>& was) {
    std::map<std::int64_t, Atom> held; // by number
    for (Query rows(db, atomsOfOne.data(), std::string(kind), of); rows.next();) {
        const Atom atom = readAtom(rows);
        held.emplace(atom.key.two, atom);
    }
    for (const auto& [number, atom] : held)
        erase(db, atom);
    std::vector<Atom> placed;
    for (std::size_t i = 0; i < now.size(); ++i) {
        Atom atom{.key = {kind, of, static_cast<std::int64_t>(i) + 1}, .hash = now[i]};
        if (const auto before = held.find(was[i]); before != held.end()) {
            atom.uuid = before->second.uuid;
            held.erase(before);
        } else {
            Query removed(db, removedAlike.data(), std::string(kind), of, now[i]);
            atom.uuid = takeBack(db, removed).value_or(randomUuid());
        }
        placed.push_back(atom);
    }
    for (const auto& [number, atom] : held)
        bury(db, atom);
    for (const Atom& atom : placed)
        add(db, atom);
}

std::uint64_t weightOf(const Atom& atom) {
    Checksum sum('a');
    sum.add(atom.key.kind).add(atom.key.one).add(atom.key.two).add(atom.key.three);
    for (const Sixteen* bytes : {&atom.uuid, &atom.hash})
        sum.add(std::string_view(reinterpret_cast<const char*>(bytes->data()), bytes->size()));
    return weight(sum.value());
}

Tally tallyOfAtoms(Connection& db, const char* table) {
    static const std::string live = std::string(atomColumns) + "atoms";
    static const std::string removed = std::string(atomColumns) + "removed_atoms";
    Tally tally;
    for (Query rows(db, (table == std::string_view("atoms") ? live : removed).c_str());
         rows.next();)
        tally.add(weightOf(readAtom(rows)));
    return tally;
}

std::int64_t dayNumber(Date day) {
    const auto month = static_cast<int>(static_cast<unsigned>(day.month()));
    const auto ofMonth = static_cast<int>(static_cast<unsigned>(day.day()));
    return (static_cast<int>(day.year()) * 100 + month) * 100 + ofMonth;
}

} // namespace slopebook::log
