// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/setup.h"

#include "core/model/few.h"
#include "core/model/letters.h"
#include "core/model/names.h"
#include "core/model/phrases/store.h"
#include "resources/embedded.h"

#include <charconv>

namespace slopebook::store {

namespace {
constexpr int oldestServer = 150000;

constexpr std::size_t longestName = 200; // letters; slopebook.squads

/// From here on as who manages the store: PostgreSQL's role for who owns the database. Who does not
/// is told so.
void manage(Connection& store, const Progress& stop) {
    try {
        store.run("SET LOCAL ROLE pg_database_owner", stop);
    } catch (const StoreError& error) {
        if (error.kind() != StoreError::Kind::NotAllowed)
            throw;
        const Asked& asked = store.asked();
        throw StoreError(StoreError::Kind::NotAllowed,
                         say("'%1' has no right to manage a store at %2: it is made and managed by "
                             "who owns the database '%3'. Nothing was changed.",
                             asked.login, asked.place, asked.database));
    }
}

int layoutThere(Connection& store, const Progress& stop) {
    const Rows there = store.ask("SELECT to_regclass('slopebook.store') IS NOT NULL", {}, stop);
    if (!there.yes(0, 0))
        return 0;
    return static_cast<int>(
        store.ask("SELECT layout FROM slopebook.store FOR UPDATE", {}, stop).integer(0, 0));
}

int layoutOf(const resources::File& file) {
    int layout = 0;
    std::from_chars(file.name.data(), file.name.data() + file.name.size(), layout);
    return layout;
}

/// As every name is kept.
std::string squadName(const std::string& typed) {
    auto name = tidyName(typed);
    if (!name || decoded(*name)->size() > longestName)
        throw BadInput(say("the name of a squad: '%1'", typed),
                       say("a name of at most 200 letters"));
    if (nameKey(*name) == nameKey("Everybody"))
        throw BadInput(say("the name of a squad: '%1'", typed),
                       say("another one: lifts, tests and devices, which are everybody's, stand "
                           "under that"));
    return *std::move(name);
}

May mayFrom(const Rows& rows) {
    if (rows.empty())
        return May::Nothing;
    return rows.text(0, 0) == "write" ? May::Write : May::Read;
}

/// Without everybody's, in the order of their names.
std::vector<std::pair<Sixteen, std::string>> squadsIn(Connection& store, const Progress& stop) {
    const Rows rows = store.ask("SELECT id, name FROM slopebook.squads WHERE id <> $1 ORDER BY "
                                "name COLLATE \"C\"",
                                {uuidText(everybody)}, stop);
    std::vector<std::pair<Sixteen, std::string>> squads;
    for (int i = 0; i < rows.size(); ++i)
        squads.emplace_back(rows.uuid(i, 0), rows.text(i, 1));
    return squads;
}

std::vector<std::string> namesOf(const std::vector<std::pair<Sixteen, std::string>>& squads) {
    std::vector<std::string> names;
    for (const auto& [id, name] : squads)
        names.push_back(name);
    return names;
}

std::pair<Sixteen, std::string> squadNamed(Connection& store, const std::string& name,
                                           const Progress& stop) {
    auto squads = squadsIn(store, stop);
    const std::vector<std::string> names = namesOf(squads);
    if (const auto found = findName(names, name))
        return std::move(squads[*found]);
    std::vector<Words> few;
    for (const std::string& one : names)
        few.push_back(asIs(one));
    throw BadInput(say("the squad '%1'", name),
                   names.empty()
                       ? say("one that is there; slopebook store init --squad NAME makes one")
                       : say("one of: %1", listed(std::move(few))));
}

/// What a login may in this store at all, by what it may in its squads now.
void admit(Connection& store, const std::string& role, const Progress& stop) {
    const Rows held = store.ask(
        "SELECT bool_or(may = 'write'), count(*) FROM slopebook.members WHERE role = $1 AND squad "
        "<> $2",
        {role, uuidText(everybody)}, stop);
    Param may;
    if (held.integer(0, 1) > 0)
        may = held.yes(0, 0) ? "write" : "read";
    store.ask("DELETE FROM slopebook.members WHERE role = $1 AND squad = $2",
              {role, uuidText(everybody)}, stop);
    if (may)
        store.ask("INSERT INTO slopebook.members VALUES ($1, $2, $3)",
                  {role, uuidText(everybody), may}, stop);
    store.ask("SELECT slopebook.admit($1, $2)", {role, may}, stop);
}

/// A newer layout has rights of its own to give.
void admitAll(Connection& store, const Progress& stop) {
    const Rows roles =
        store.ask("SELECT DISTINCT m.role FROM slopebook.members AS m JOIN pg_roles AS r ON "
                  "r.rolname = m.role",
                  {}, stop);
    for (int i = 0; i < roles.size(); ++i)
        admit(store, std::string(roles.text(i, 0)), stop);
}
} // namespace

Initialised initialise(const Address& address, const std::vector<std::string>& squads,
                       const Progress& stop) {
    std::vector<std::string> wanted;
    for (const std::string& name : squads)
        wanted.push_back(squadName(name));
    Connection store = Connection::open(address.byHand(), stop);
    if (store.serverVersion() < oldestServer)
        throw StoreError(StoreError::Kind::Refused,
                         say("The server at %1 is PostgreSQL %2; a store needs 15 or newer.",
                             store.asked().place, store.serverVersion() / 10000));
    Moment moment(store, "BEGIN ISOLATION LEVEL READ COMMITTED", stop);
    manage(store, stop);
    Initialised done;
    done.layoutBefore = layoutThere(store, stop);
    if (done.layoutBefore > storeLayout)
        requireLayout(store.asked(), done.layoutBefore);
    for (const resources::File& file : resources::storeLayouts())
        if (layoutOf(file) > done.layoutBefore)
            store.run(std::string(file.text).c_str(), stop);
    if (done.layoutBefore < storeLayout)
        admitAll(store, stop);
    std::vector<std::string> there = namesOf(squadsIn(store, stop));
    for (const std::string& name : wanted)
        if (!findName(there, name)) {
            store.ask("INSERT INTO slopebook.squads (name) VALUES ($1)", {name}, stop);
            there.push_back(name);
            done.squads.push_back(name);
        }
    moment.keep(stop);
    return done;
}

Granted grant(const Address& address, const std::string& role, const std::string& squad, May may,
              const Progress& stop) {
    Connection store = Connection::open(address.byHand(), stop);
    Moment moment(store, "BEGIN ISOLATION LEVEL READ COMMITTED", stop);
    manage(store, stop);
    const int layout = layoutThere(store, stop);
    if (layout == 0)
        throw serverFailure(store.asked(), "3F000", "");
    requireLayout(store.asked(), layout);
    const auto [id, name] = squadNamed(store, squad, stop);
    if (store.ask("SELECT FROM pg_roles WHERE rolname = $1 AND rolcanlogin", {role}, stop).empty())
        throw BadInput(say("the login '%1'", role),
                       say("one that the server knows; who runs it makes one in psql: CREATE ROLE "
                           "... LOGIN, then \\password"));
    Granted done{.role = role, .squad = name, .now = may};
    done.before = mayFrom(
        store.ask("DELETE FROM slopebook.members WHERE role = $1 AND squad = $2 RETURNING may",
                  {role, uuidText(id)}, stop));
    if (may != May::Nothing)
        store.ask("INSERT INTO slopebook.members VALUES ($1, $2, $3)",
                  {role, uuidText(id), may == May::Write ? "write" : "read"}, stop);
    admit(store, role, stop);
    moment.keep(stop);
    return done;
}

Status status(const Address& address, const Progress& stop) {
    Connection store = Connection::open(address.byHand(), stop);
    Status status{.asked = store.asked(),
                  .serverVersion = store.serverVersion(),
                  .encrypted = store.encrypted()};
    Moment moment(store, "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY", stop);
    const Rows row =
        store.ask("SELECT layout, id, n, pg_has_role(current_user, 'pg_database_owner', 'member'), "
                  "pg_total_relation_size('slopebook.atoms') FROM slopebook.store",
                  {}, stop);
    status.layout = row.integer(0, 0);
    requireLayout(store.asked(), status.layout);
    status.id = row.uuid(0, 1);
    status.writings = row.integer(0, 2);
    status.manages = row.yes(0, 3);
    status.bytes = row.integer(0, 4);
    const Rows squads = store.ask(
        "SELECT q.id, q.name, coalesce(m.may = 'write', false), "
        "count(*) FILTER (WHERE a.kind = 'athlete'), count(*) FILTER (WHERE a.kind = 'session'), "
        "count(*) FILTER (WHERE a.kind = 'set') FROM slopebook.squads AS q "
        "LEFT JOIN slopebook.members AS m ON m.squad = q.id AND m.role = current_user "
        "LEFT JOIN slopebook.atoms AS a ON a.squad = q.id AND a.alive "
        "WHERE q.id <> $1 GROUP BY q.id, q.name, m.may ORDER BY q.name COLLATE \"C\"",
        {uuidText(everybody)}, stop);
    for (int i = 0; i < squads.size(); ++i)
        status.squads.push_back({.squad = {.uuid = squads.uuid(i, 0),
                                           .name = std::string(squads.text(i, 1)),
                                           .mayWrite = squads.yes(i, 2)},
                                 .athletes = squads.integer(i, 3),
                                 .sessions = squads.integer(i, 4),
                                 .sets = squads.integer(i, 5)});
    moment.keep(stop);
    return status;
}

} // namespace slopebook::store
