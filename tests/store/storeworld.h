// SPDX-License-Identifier: GPL-3.0-or-later
// A store with two squads and who comes to it: cora writes in Rowing, dora in Judo, ana reads in
// Rowing, eve is let in and has no right to anything. And atoms by hand.
#pragma once

#include "core/store/setup.h"
#include "tests/support/postgres.h"

#include <QTest>

#include <algorithm>

namespace slopebook::test {

using store::Atom;
using store::Connection;
using store::Mark;
using store::Pushed;
using store::Sixteen;
using store::StoreError;

/// JSON with ' for its quotes: moc loses its way in raw strings.
inline std::string js(std::string text) {
    std::replace(text.begin(), text.end(), '\'', '"');
    return text;
}

inline Sixteen numbered(unsigned number) {
    Sixteen uuid{};
    uuid[0] = 0x70;
    uuid[6] = 0x40;
    uuid[8] = 0x80;
    for (std::size_t i = 0; i < 4; ++i)
        uuid[15 - i] = static_cast<unsigned char>(number >> (8 * i));
    return uuid;
}

inline store::Step newStep() {
    return {.revision = log::randomUuid(), .hash = log::randomUuid()};
}

inline Atom atom(std::string kind, const Sixteen& uuid, const Sixteen& squad,
                 std::optional<Sixteen> parent, std::string content) {
    return {.kind = std::move(kind),
            .uuid = uuid,
            .squad = squad,
            .parent = parent,
            .content = std::move(content),
            .trail = {newStep()}};
}

inline Atom edited(Atom before, std::string content) {
    before.content = std::move(content);
    before.trail.push_back(newStep());
    return before;
}

inline Atom removed(Atom before) {
    before.alive = false;
    before.trail.push_back(newStep());
    return before;
}

inline std::string named(const std::string& name) {
    return R"({"name":")" + name + R"("})";
}

inline Atom setOf(unsigned number, const Sixteen& squad, const Sixteen& session,
                  const Sixteen& lift, int ordinal, int grams, const std::string& velocities) {
    return atom("set", numbered(number), squad, session,
                R"({"lift":")" + store::uuidText(lift) + R"(","ordinal":)" +
                    std::to_string(ordinal) + R"(,"load_g":)" + std::to_string(grams) +
                    R"(,"velocities":[)" + velocities + "]}");
}

/// A lift of everybody's, an athlete, a session and three sets: 1.1, 0.9, 0.6 m/s at 40, 60, 80 kg.
inline std::vector<Atom> smallSquad(const Sixteen& squad, unsigned from, const std::string& name,
                                    const std::string& lift) {
    const Sixteen pull = numbered(from), who = numbered(from + 1), day = numbered(from + 2);
    return {atom("lift", pull, store::everybody, {}, named(lift)),
            atom("athlete", who, squad, {}, named(name)),
            atom("session", day, squad, who, R"({"day":"2026-03-14","ordinal":1})"),
            setOf(from + 3, squad, day, pull, 1, 40000, "1.1,1.05"),
            setOf(from + 4, squad, day, pull, 2, 60000, "0.88,0.9"),
            setOf(from + 5, squad, day, pull, 3, 80000, "0.6")};
}

class StoreWorld {
public:
    explicit StoreWorld(PostgresOptions options = {}) : server(options) {
        server.sql("CREATE DATABASE squad", "postgres");
        for (const char* login : {"cora", "dora", "ana", "eve"})
            server.addLogin(login);
        makeStore();
    }
    /// In the database "squad", which is empty.
    void makeStore() {
        const auto admin = store::Address::read(server.address("admin"));
        store::initialise(admin, {"Rowing", "Judo"});
        store::grant(admin, "cora", "Rowing", store::May::Write);
        store::grant(admin, "dora", "Judo", store::May::Write);
        store::grant(admin, "ana", "Rowing", store::May::Read);
        Connection asAdmin = as("admin");
        for (auto& [name, uuid] : {std::pair{"Rowing", &rowing}, std::pair{"Judo", &judo}})
            *uuid =
                asAdmin.ask("SELECT id FROM slopebook.squads WHERE name = $1", {name}).uuid(0, 0);
        begin = markOf(asAdmin);
    }
    Connection as(const std::string& login) const {
        return Connection::open(store::Address::read(server.address(login)));
    }
    static Mark markOf(Connection& connection) { return store::lookAt(connection, Mark{}).now; }
    std::int64_t count(const std::string& of) const {
        return std::stoll(server.sql("SELECT count(*) FROM " + of));
    }

    Postgres server;
    Sixteen rowing{}, judo{};
    Mark begin{};
};

/// What a connection refuses: the sentence; "done" where it does not.
template <class Work>
std::string refusal(const Work& work) {
    try {
        work();
    } catch (const Error& error) {
        return error.what();
    }
    return "done";
}

struct Pulled {
    store::Look look{};
    std::vector<Atom> atoms;
    std::vector<store::Departed> departed;
    const Atom* find(const Sixteen& uuid) const {
        for (const Atom& one : atoms)
            if (one.uuid == uuid)
                return &one;
        return nullptr;
    }
};
inline Pulled pulled(Connection& connection, const std::optional<Mark>& mark,
                     const std::vector<store::Cursor>& since) {
    Pulled all;
    all.look = store::pull(
        connection, mark, since, [&](Atom&& one) { all.atoms.push_back(std::move(one)); },
        [&](const store::Departed& one) { all.departed.push_back(one); });
    return all;
}

} // namespace slopebook::test
