// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/thingjson.h"

#include "core/log/contentreader.h"
#include "core/model/errors.h"
#include "core/model/phrases/store.h"
#include "core/store/thingvisitors.h"

#include <algorithm>
#include <array>

namespace slopebook::store {

namespace {
/// What is spoken of within one content, each with a number from 1 on.
class SpokenOf {
public:
    std::int64_t key(const Sixteen& uuid) {
        const auto known = std::find(m_uuids.begin(), m_uuids.end(), uuid);
        const auto at = known - m_uuids.begin();
        if (known == m_uuids.end())
            m_uuids.push_back(uuid);
        return at + 1;
    }
    Sixteen uuid(std::int64_t key) const { return m_uuids.at(static_cast<std::size_t>(key - 1)); }

private:
    std::vector<Sixteen> m_uuids;
};

/// Of a conflict what lost is bytes, not text.
log::Thing withHex(log::Thing thing) {
    if (auto* conflict = std::get_if<log::ConflictThing>(&thing))
        conflict->content = log::hexOf(conflict->content);
    return thing;
}

template <class Value>
bool readJsonAs(std::string_view kind, JsonReader& reader, log::Thing& thing) {
    if (kind != log::ThingColumns<Value>::kind)
        return false;
    Value value{};
    log::ThingColumns<Value>::visit(value, reader);
    thing = std::move(value);
    return true;
}

template <std::size_t... index>
bool readJsonAsAny(std::string_view kind, JsonReader& reader, log::Thing& thing,
                   std::index_sequence<index...> /*all*/) {
    return (readJsonAs<std::variant_alternative_t<index, log::Thing>>(kind, reader, thing) || ...);
}
} // namespace

void refuseJson(std::string_view name) {
    throw BadInput(say("an atom whose '%1' cannot be read", std::string(name)),
                   say("what a store of this version holds"));
}

std::string_view listName(std::string_view first) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 6> names{
        {{"velocity", "velocities"},
         {"bar", "bars"},
         {"plate", "plates"},
         {"fixed", "fixed"},
         {"test", "tests"},
         {"load_g", "ladder_g"}}};
    for (const auto& [one, many] : names)
        if (one == first)
            return many;
    return first;
}

std::string bytesOfHex(std::string_view hex) {
    auto bytes = log::parseHex(hex);
    if (!bytes)
        refuseJson("content");
    return *std::move(bytes);
}

std::string jsonOfContent(std::string_view bytes) {
    SpokenOf spoken;
    const log::Thing thing =
        withHex(log::readContent(bytes, [&](const char* /*kind*/, const Sixteen& uuid) {
            return std::optional(spoken.key(uuid));
        }));
    const log::UuidOf uuids = [&](const char* /*kind*/, std::int64_t key) {
        return spoken.uuid(key);
    };
    return std::visit(
        [&]<class Value>(const Value& value) {
            JsonWriter writer(uuids, hasParent(log::ThingColumns<Value>::kind));
            log::ThingColumns<Value>::visit(value, writer);
            return writer.json();
        },
        thing);
}

std::string contentOfJson(std::string_view kind, const std::optional<Sixteen>& parent,
                          std::string_view json, std::vector<log::Reference>* spokenOf) {
    if (hasParent(kind) != parent.has_value())
        refuseJson("parent");
    SpokenOf spoken;
    const KeyFor keys = [&](const char* of, const Sixteen& uuid) {
        if (spokenOf != nullptr)
            spokenOf->push_back({.kind = of, .uuid = uuid});
        return spoken.key(uuid);
    };
    const JsonValue object = readJson(json);
    JsonReader reader(object, keys, parent);
    log::Thing thing;
    if (!readJsonAsAny(kind, reader, thing,
                       std::make_index_sequence<std::variant_size_v<log::Thing>>{}))
        refuseJson("kind");
    if (auto* conflict = std::get_if<log::ConflictThing>(&thing))
        conflict->content = bytesOfHex(conflict->content);
    const log::UuidOf uuids = [&](const char* /*kind*/, std::int64_t key) {
        return spoken.uuid(key);
    };
    return log::contentOf(uuids, thing).bytes();
}

namespace {
[[noreturn]] void refuseOtherwise(const Atom& atom) {
    throw BadInput(say("%1 of the store that does not say what it was sent as", atom.kind),
                   say("what its last revision was made from"));
}

/// Of a removed thing what it said is known by its hash at a step before, from which the last one
/// is made. (Not always the one before: where two trails met others may stand between.)
log::Sixteen hashBeforeRemoval(const Atom& atom) {
    for (auto step = atom.trail.rbegin(); step != atom.trail.rend(); ++step)
        if (log::stepHash(step->hash, false) == atom.trail.back().hash)
            return step->hash;
    refuseOtherwise(atom);
}
} // namespace

Atom atomOf(const log::Carried& carried, const Sixteen& squad) {
    Atom atom{.kind = carried.kind,
              .uuid = carried.uuid,
              .squad = isEverybodys(carried.kind) ? everybody : squad,
              .alive = carried.alive};
    if (carried.parent)
        atom.parent = carried.parent->uuid;
    if (!carried.content.empty())
        atom.content = jsonOfContent(carried.content);
    for (const log::Step& step : carried.trail)
        atom.trail.push_back({.revision = step.revision, .hash = step.hash});
    return atom;
}

log::Carried carriedOf(const Atom& atom, std::vector<log::Reference>* spoken) {
    log::Carried carried{.kind = atom.kind, .uuid = atom.uuid, .alive = atom.alive};
    for (const Step& step : atom.trail)
        carried.trail.push_back({.revision = step.revision, .hash = step.hash});
    if (!atom.content) {
        if (atom.alive || atom.trail.empty())
            refuseOtherwise(atom);
        carried.hash = hashBeforeRemoval(atom);
        return carried;
    }
    carried.content = contentOfJson(atom.kind, atom.parent, *atom.content, spoken);
    carried.hash = log::hashOf(carried.content);
    if (atom.trail.empty() || log::stepHash(carried.hash, atom.alive) != atom.trail.back().hash)
        refuseOtherwise(atom);
    carried.parent = log::parentOf(carried.content);
    if (atom.kind != "session")
        return carried;
    const JsonValue said = readJson(*atom.content);
    if (const JsonValue* into = said.member("into"))
        carried.into = parseUuid(into->text);
    return carried;
}

} // namespace slopebook::store
