// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/carried.h"

#include "core/log/contentat.h"
#include "core/log/derive.h"
#include "core/log/impl.h"
#include "core/model/phrases/log.h"

namespace slopebook::log {

namespace {
std::optional<Sixteen> intoOf(const std::string& content) {
    const Thing thing = readContent(
        content, [](const char*, const Sixteen&) { return std::optional<std::int64_t>(1); });
    return std::get<SessionThing>(thing).into;
}

[[noreturn]] void notAsWritten(Connection& db, const AtomKey& key) {
    throw damagedLog(db.file(), say("%1 is not as its hash says", placeOf(key)));
}

Carried living(Connection& db, const Atom& atom, const Content& said) {
    if (said.hash() != atom.hash)
        notAsWritten(db, atom.key);
    return {.kind = atom.key.kind,
            .uuid = atom.uuid,
            .content = said.bytes(),
            .hash = atom.hash,
            .alive = true,
            .trail = trailOf(atom, true),
            .parent = parentOf(said.bytes()),
            .into = {},
            .place = atom.key};
}

Carried gone(Connection& db, const RemovedAtom& removed) {
    const Atom& atom = removed.atom;
    Carried one{.kind = atom.key.kind,
                .uuid = atom.uuid,
                .content = removed.content.value_or(std::string()),
                .hash = atom.hash,
                .alive = false,
                .trail = trailOf(atom, false),
                .parent = {},
                .into = {},
                .place = atom.key};
    if (!removed.content)
        return one;
    if (hashOf(one.content) != atom.hash)
        notAsWritten(db, atom.key);
    one.parent = parentOf(one.content);
    if (one.kind == "session")
        one.into = intoOf(one.content);
    return one;
}

void requireEnd(const Trail& trail, const Sixteen& hash, bool alive) {
    if (!isPastOf(trail, hash, alive))
        throw BadInput(say("a trail that does not end with what the thing says"),
                       say("the trail of that very thing"));
}
} // namespace

bool isPastOf(const Trail& trail, const Sixteen& hash, bool alive) {
    const std::size_t least = alive ? 1 : 2;
    return trail.size() >= least && trail.back().hash == stepHash(hash, alive) &&
           trail.front().revision == revisionAfter({}, trail.front().hash);
}

std::optional<Sixteen> aboutOf(const Carried& conflict) {
    if (conflict.kind != "conflict" || conflict.content.empty())
        return std::nullopt;
    return std::get<ConflictThing>(readContent(conflict.content,
                                               [](const char*, const Sixteen&) {
                                                   return std::optional<std::int64_t>(1);
                                               }))
        .about;
}

void visitLiving(Connection& db, const std::function<void(const Carried&)>& visit) {
    visitThings(db, rememberedUuidsIn(db),
                [&](const AtomKey& key, const Content& said, const auto& /*derived*/) {
                    const auto atom = atomOf(db, key);
                    if (!atom)
                        notAsWritten(db, key);
                    visit(living(db, *atom, said));
                });
}

void visitCarried(Connection& db, const std::function<void(const Carried&)>& visit) {
    visitLiving(db, visit);
    for (const std::string_view kind : kindsInOrder)
        visitRemoved(db, std::string(kind),
                     [&](const RemovedAtom& removed) { visit(gone(db, removed)); });
}

void visitCarried(const Log& log, const std::function<void(const Carried&)>& visit) {
    log.impl().settle();
    const ReadScope moment(log.impl().db);
    visitCarried(log.impl().db, visit);
}

std::optional<Carried> carried(Connection& db, const Sixteen& uuid) {
    if (const auto atom = atomOf(db, uuid)) {
        const auto said = contentAt(db, atom->key);
        if (!said)
            notAsWritten(db, atom->key);
        return living(db, *atom, *said);
    }
    const auto removed = removedAtomOf(db, uuid);
    return removed ? std::optional(gone(db, *removed)) : std::nullopt;
}

std::optional<Carried> carried(const Log& log, const Sixteen& uuid) {
    const ReadScope moment(log.impl().db);
    return carried(log.impl().db, uuid);
}

Trail trailHere(Connection& db, const Sixteen& uuid) {
    if (const auto atom = atomOf(db, uuid))
        return trailOf(*atom, true);
    const auto removed = removedAtomOf(db, uuid);
    return removed ? trailOf(removed->atom, false) : Trail();
}

void adopt(Connection& db, const AtomKey& place, const Sixteen& uuid, const Trail& trail) {
    const auto atom = atomOf(db, place);
    if (!atom)
        notAsWritten(db, place);
    requireEnd(trail, atom->hash, true);
    if (const auto removed = removedAtomOf(db, uuid))
        forgetRemoved(db, *removed);
    renameAtom(db, place, uuid, trail);
}

void adoptRemoved(Connection& db, const Carried& carried) {
    const Sixteen hash = carried.content.empty() ? carried.hash : hashOf(carried.content);
    requireEnd(carried.trail, hash, false);
    const auto known = removedAtomOf(db, carried.uuid);
    RemovedAtom now{.atom = {.key = known ? known->atom.key : carried.place,
                             .uuid = carried.uuid,
                             .hash = hash,
                             .trail = bytesOf(carried.trail)}};
    if (!carried.content.empty())
        now.content = carried.content;
    else if (known && known->atom.hash == hash)
        now.content = known->content;
    putRemoved(db, now);
}

} // namespace slopebook::log
