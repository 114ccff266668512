// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/conflicts.h"

#include "core/log/impl.h"
#include "core/model/phrases/log.h"

namespace slopebook::log {

namespace {
constexpr char conflictColumns[] =
    "SELECT id, about, revision, why, lived, content FROM conflicts ";
constexpr auto conflictById = joined(conflictColumns, "WHERE id = ?");
constexpr auto everyConflict = joined(conflictColumns, "ORDER BY id");

ConflictThing readConflict(const Query& row) {
    return {.about = row.sixteen(1),
            .revision = row.sixteen(2),
            .why = row.text(3),
            .lived = row.flag(4),
            .content = row.text(5)};
}

AtomKey keyOf(ConflictId id) {
    return {.kind = "conflict", .one = raw(id)};
}
} // namespace

void visitConflicts(Connection& db,
                    const std::function<void(ConflictId, const ConflictThing&)>& visit) {
    for (Query rows(db, everyConflict.data()); rows.next();)
        visit(rows.id<ConflictId>(0), readConflict(rows));
}

std::optional<Content> conflictAt(Connection& db, ConflictId id) {
    Query row(db, conflictById.data(), id);
    return row.next() ? std::optional(contentOf(uuidsIn(db), Thing(readConflict(row))))
                      : std::nullopt;
}

std::vector<Stored<ConflictId, ConflictThing>> conflictsIn(const Log& log) {
    std::vector<Stored<ConflictId, ConflictThing>> all;
    const ReadScope moment(log.impl().db);
    visitConflicts(log.impl().db, [&](ConflictId id, const ConflictThing& conflict) {
        all.push_back({id, conflict});
    });
    return all;
}

std::optional<ConflictId> noteConflict(const Log& log, const ConflictThing& conflict,
                                       std::optional<ConflictId> id) {
    Log::Impl& impl = log.impl();
    return impl.write([&]() -> std::optional<ConflictId> {
        const Sixteen uuid = conflictUuid(conflict.about, conflict.revision);
        if (atomOf(impl.db, uuid) || (!id && removedAtomOf(impl.db, uuid)))
            return std::nullopt;
        const ConflictId given = impl.key("conflict", id);
        Query(impl.db,
              "INSERT INTO conflicts (id, about, revision, why, lived, content) "
              "VALUES (?, ?, ?, ?, ?, ?)",
              given, conflict.about, conflict.revision, conflict.why, conflict.lived,
              Blob{conflict.content})
            .run();
        const Sixteen hash = contentHash(uuidsIn(impl.db), Thing(conflict));
        keepAtom(impl.db, keyOf(given), hash);
        if (atomOf(impl.db, keyOf(given))->uuid != uuid)
            renameAtom(impl.db, keyOf(given), uuid, shortTrail(hash, true));
        return given;
    });
}

void settleConflict(const Log& log, ConflictId id) {
    Log::Impl& impl = log.impl();
    impl.write([&] {
        if (!Query(impl.db, conflictById.data(), id).next())
            throw LogError(LogError::Kind::Conflict,
                           say("That choice is not in the log any more. Nothing was changed."));
        dropAtom(impl.db, keyOf(id));
        Query(impl.db, "DELETE FROM conflicts WHERE id = ?", id).run();
    });
}

} // namespace slopebook::log
