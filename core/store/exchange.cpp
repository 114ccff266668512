// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/exchange.h"

#include "core/model/phrases/store.h"

#include <array>

namespace slopebook::store {

namespace {
/// More than that goes by COPY, piece by piece: neither side then holds it twice.
constexpr std::size_t mostInOneStatement = 500;
constexpr std::size_t copiedAtOnce = 1 << 16;

std::string numbersText(const auto& all, auto number) {
    std::string text = "{";
    for (const auto& one : all)
        text += (text.size() > 1 ? "," : "") + std::to_string(number(one));
    return text + "}";
}

template <class Each, class UuidIn>
std::string listText(std::span<const Each> all, UuidIn uuid) {
    std::vector<Sixteen> uuids;
    for (const Each& one : all)
        uuids.push_back(one.*uuid);
    return uuidsText(uuids);
}

Atom atomFrom(const Rows& row) {
    Atom atom;
    atom.uuid = row.uuid(0, 0);
    atom.squad = row.uuid(0, 1);
    atom.kind = row.text(0, 2);
    if (!row.isNull(0, 3))
        atom.parent = row.uuid(0, 3);
    atom.alive = row.yes(0, 4);
    const auto revisions = row.uuids(0, 5), hashes = row.uuids(0, 6);
    if (revisions.empty() || revisions.size() != hashes.size())
        throw StoreError(StoreError::Kind::Refused,
                         say("The store answered '%1', which it never should. Nothing was changed.",
                             row.text(0, 5)));
    for (std::size_t i = 0; i < revisions.size(); ++i)
        atom.trail.push_back({.revision = revisions[i], .hash = hashes[i]});
    if (!row.isNull(0, 7))
        atom.content = row.text(0, 7);
    atom.version = row.integer(0, 8);
    return atom;
}

/// Into a temporary table of the connection's own, before the store is held for the push.
void layOut(Connection& store, std::span<const Atom> batch, const Progress& stop) {
    store.run("DROP TABLE IF EXISTS pg_temp.coming; "
              "CREATE TEMPORARY TABLE coming (id uuid, squad uuid, kind text, parent uuid, alive "
              "boolean, trail uuid[], hashes uuid[], content jsonb)",
              stop);
    auto next = batch.begin();
    store.copyIn(
        "COPY pg_temp.coming FROM STDIN",
        [&] {
            std::string lines;
            for (; next != batch.end() && lines.size() < copiedAtOnce; ++next)
                writeCopyLine(lines, *next);
            return lines;
        },
        stop);
    store.run("ANALYZE pg_temp.coming", stop);
}
} // namespace

void requireLayout(const Asked& asked, std::int64_t layout) {
    if (layout > storeLayout)
        throw StoreError(StoreError::Kind::OtherLayout,
                         say("The store at %1 is of a newer Slopebook than this one (layout %2, "
                             "this one knows %3). Nothing was changed. Update Slopebook.",
                             asked.place, layout, storeLayout));
    if (layout < storeLayout)
        throw StoreError(StoreError::Kind::OtherLayout,
                         say("The store at %1 is of an older Slopebook than this one (layout %2, "
                             "this one needs %3). Nothing was changed. Who manages it brings it up "
                             "to date with: slopebook store init",
                             asked.place, layout, storeLayout));
}

std::vector<Squad> squadsOf(Connection& store, const Progress& stop) {
    requireLayout(store.asked(),
                  store.ask("SELECT layout FROM slopebook.store", {}, stop).integer(0, 0));
    const Rows rows =
        store.ask("SELECT q.id, q.name, m.may = 'write' FROM slopebook.squads AS q "
                  "JOIN slopebook.members AS m ON m.squad = q.id AND m.role = current_user "
                  "WHERE q.id <> $1 ORDER BY q.name COLLATE \"C\"",
                  {uuidText(everybody)}, stop);
    std::vector<Squad> squads;
    for (int i = 0; i < rows.size(); ++i)
        squads.push_back({.uuid = rows.uuid(i, 0),
                          .name = std::string(rows.text(i, 1)),
                          .mayWrite = rows.yes(i, 2)});
    return squads;
}

Sixteen idOf(Connection& store, const Progress& stop) {
    const Rows row = store.ask("SELECT layout, id FROM slopebook.store", {}, stop);
    requireLayout(store.asked(), row.integer(0, 0));
    return row.uuid(0, 1);
}

Look lookAt(Connection& store, const Mark& highest, const Progress& stop) {
    const Rows row = store.ask(
        "SELECT s.layout, s.n, t.tag, EXISTS (SELECT FROM slopebook.ticks AS k WHERE k.n = $1 AND "
        "k.tag = $2) FROM slopebook.store AS s JOIN slopebook.ticks AS t ON t.n = s.n",
        {std::to_string(highest.n), uuidText(highest.tag)}, stop);
    requireLayout(store.asked(), row.integer(0, 0));
    return {.now = {.n = row.integer(0, 1), .tag = row.uuid(0, 2)}, .knowsMark = row.yes(0, 3)};
}

Look pull(Connection& store, const std::optional<Mark>& highest, std::span<const Cursor> since,
          const std::function<void(Atom&&)>& atom, const std::function<void(const Departed&)>& gone,
          const Progress& stop) {
    Moment moment(store, "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY", stop);
    Look look = lookAt(store, highest.value_or(Mark{}), stop);
    look.knowsMark = look.knowsMark || !highest;
    if (!look.knowsMark)
        return look;
    const std::array<Param, 2> values{
        listText(since, &Cursor::squad),
        numbersText(since, [](const Cursor& one) { return one.version; })};
    store.each(
        "SELECT a.id, a.squad, a.kind, a.parent, a.alive, a.trail, a.hashes, a.content, "
        "a.version FROM unnest($1::uuid[], $2::bigint[]) AS c (squad, version) "
        "JOIN slopebook.atoms AS a ON a.squad = c.squad AND a.version > c.version "
        "ORDER BY array_position('{athlete,lift,device,test,block,equipment,station,session,"
        "\"lift conditions\",\"test conditions\",set,attempt,gap,\"check load\",roster,"
        "conflict}'::text[], a.kind), a.version",
        values, [&](const Rows& row) { atom(atomFrom(row)); }, stop);
    store.each(
        "SELECT m.squad, m.athlete, m.version, EXISTS (SELECT FROM slopebook.atoms AS a "
        "WHERE a.id = m.athlete AND a.squad = m.squad) "
        "FROM unnest($1::uuid[], $2::bigint[]) AS c (squad, version) "
        "JOIN slopebook.moved AS m ON m.squad = c.squad AND m.version > c.version",
        values,
        [&](const Rows& row) {
            gone({.squad = row.uuid(0, 0),
                  .athlete = row.uuid(0, 1),
                  .version = row.integer(0, 2),
                  .isBack = row.yes(0, 3)});
        },
        stop);
    moment.keep(stop);
    return look;
}

std::optional<Mark> lastCommon(Connection& store, std::span<const Mark> marks,
                               const Progress& stop) {
    const Rows rows = store.ask(
        "SELECT t.n, t.tag FROM unnest($1::bigint[], $2::uuid[]) AS m (n, tag) "
        "JOIN slopebook.ticks AS t ON t.n = m.n AND t.tag = m.tag "
        "ORDER BY t.n DESC LIMIT 1",
        {numbersText(marks, [](const Mark& one) { return one.n; }), listText(marks, &Mark::tag)},
        stop);
    if (rows.empty())
        return std::nullopt;
    return Mark{.n = rows.integer(0, 0), .tag = rows.uuid(0, 1)};
}

Pushed push(Connection& store, const Mark& highest, std::span<const Atom> batch,
            const Progress& stop) {
    using Kind = StoreError::Kind;
    Param atoms;
    if (batch.size() > mostInOneStatement) {
        layOut(store, batch, stop);
    } else {
        std::string text = "[";
        for (const Atom& atom : batch) {
            if (text.size() > 1)
                text += ',';
            writeJson(text, atom);
        }
        atoms = text + "]";
    }
    Pushed pushed;
    try {
        const Rows row = store.ask(
            "SELECT answer, n, tag, stale, wrote FROM slopebook.push($1, $2, $3, $4)",
            {std::to_string(storeLayout), std::to_string(highest.n), uuidText(highest.tag), atoms},
            stop);
        const std::string_view answer = row.text(0, 0);
        pushed.stale = row.uuids(0, 3);
        pushed.wrote = row.integer(0, 4);
        pushed.answer = answer == "ok"      ? Pushed::Answer::Ok
                        : answer == "stale" ? Pushed::Answer::Stale
                                            : Pushed::Answer::WentBack;
        if (pushed.answer == Pushed::Answer::Ok)
            pushed.now = {.n = row.integer(0, 1), .tag = row.uuid(0, 2)};
    } catch (const StoreError& error) {
        switch (error.kind()) {
        case Kind::Taken:
            pushed.answer = Pushed::Answer::Taken;
            break;
        case Kind::Orphan:
            pushed.answer = Pushed::Answer::Orphan;
            break;
        case Kind::NotAllowed:
            pushed.answer = Pushed::Answer::NotOurs;
            break;
        default:
            throw;
        }
    }
    if (!atoms && store.open())
        store.run("DROP TABLE IF EXISTS pg_temp.coming", stop);
    return pushed;
}

void listen(Connection& store, const Progress& stop) {
    store.run("LISTEN slopebook", stop);
}

} // namespace slopebook::store
