// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/contentreader.h"

#include "core/log/contentcolumns.h"
#include "core/model/errors.h"
#include "core/model/phrases/log.h"

#include <algorithm>
#include <array>

namespace slopebook::log {

namespace {
/// Whether the reader's bytes are those of such a thing, which is read.
template <class Value>
bool readAs(ContentReader& reader, std::string_view bytes, Thing& thing) {
    if (reader.kind() != ThingColumns<Value>::kind)
        return false;
    Value value{};
    ThingColumns<Value>::visit(value, reader);
    // Words that are none, defaults that were said, numbers too long: seen when it is said again.
    const UuidOf uuids = [&](const char* kind, std::int64_t key) {
        return reader.uuidOf(kind, key);
    };
    Content again(uuids, ThingColumns<Value>::kind);
    ThingColumns<Value>::visit(std::as_const(value), again);
    if (!reader.atEnd() || again.bytes() != bytes)
        reader.refuse();
    thing = std::move(value);
    return true;
}

template <std::size_t... index>
bool readAny(ContentReader& reader, std::string_view bytes, Thing& thing,
             std::index_sequence<index...> /*all*/) {
    return (readAs<std::variant_alternative_t<index, Thing>>(reader, bytes, thing) || ...);
}

/// Which kinds belong to what.
struct Belongs {
    std::string_view kind;
    const char* to;
};
constexpr std::array belongs{
    Belongs{"session", "athlete"},         Belongs{"lift conditions", "session"},
    Belongs{"test conditions", "session"}, Belongs{"set", "session"},
    Belongs{"attempt", "session"},         Belongs{"gap", "session"},
    Belongs{"check load", "athlete"},      Belongs{"roster", "station"}};
} // namespace

Thing readContent(std::string_view bytes, const KeyOf& keyOf) {
    ContentReader reader(bytes, keyOf);
    Thing thing;
    if (!readAny(reader, bytes, thing, std::make_index_sequence<std::variant_size_v<Thing>>{}))
        reader.refuse();
    return thing;
}

std::vector<Reference> referencesOf(std::string_view bytes) {
    std::vector<Reference> all;
    readContent(bytes, [&](const char* kind, const Sixteen& uuid) {
        const Reference spoken{.kind = kind, .uuid = uuid};
        const auto known = std::ranges::find(all, spoken);
        const auto at = known - all.begin();
        if (known == all.end())
            all.push_back(spoken);
        return std::optional<std::int64_t>(at + 1);
    });
    return all;
}

namespace {
std::uint64_t littleEndian(std::string_view bytes) {
    std::uint64_t value = 0;
    int shift = 0;
    for (const char byte : bytes) {
        value |= std::uint64_t{static_cast<unsigned char>(byte)} << shift;
        shift += 8;
    }
    return value;
}

std::optional<std::int64_t> noKey(const char* /*kind*/, const Sixteen& /*uuid*/) {
    return 1;
}
} // namespace

std::string kindOfContent(std::string_view bytes) {
    const KeyOf none = noKey;
    return ContentReader(bytes, none).kind();
}

std::optional<Reference> parentOf(std::string_view bytes) {
    std::optional<Reference> parent;
    const KeyOf keyOf = [&](const char* kind, const Sixteen& uuid) {
        parent = {.kind = kind, .uuid = uuid};
        return noKey(kind, uuid);
    };
    ContentReader reader(bytes, keyOf);
    const auto found = std::ranges::find(belongs, reader.kind(), &Belongs::kind);
    if (found == belongs.end())
        return parent;
    const std::string_view to = found->to;
    if (AthleteId athlete{}; to == kindOf<AthleteId>)
        reader.of(athlete);
    else if (SessionId session{}; to == kindOf<SessionId>)
        reader.of(session);
    else if (StationId station{}; to == kindOf<StationId>)
        reader.of(station);
    return parent;
}

Sixteen ContentReader::uuidOf(const char* kind, std::int64_t key) const {
    const auto found = std::ranges::find_if(m_spoken, [&](const Spoken& spoken) {
        return spoken.key == key && std::string_view(spoken.of.kind) == kind;
    });
    return found == m_spoken.end() ? Sixteen{} : found->of.uuid;
}

void ContentReader::refuse() const {
    throw BadInput(say("what a thing says, cut off or not as Slopebook writes it"),
                   say("what a log of this version writes"));
}

bool ContentReader::next(std::string_view name) const {
    constexpr std::size_t length = 8;
    return m_rest.size() >= length + name.size() && m_rest.substr(length, name.size()) == name &&
           littleEndian(m_rest.substr(0, length)) == name.size();
}

void ContentReader::passName(std::string_view name) {
    if (text() != name)
        refuse();
}

std::string_view ContentReader::bytes(std::size_t count) {
    if (count > m_rest.size())
        refuse();
    const std::string_view taken = m_rest.substr(0, count);
    m_rest.remove_prefix(count);
    return taken;
}

std::uint64_t ContentReader::number() {
    return littleEndian(bytes(8));
}

std::string ContentReader::text() {
    return std::string(bytes(number()));
}

bool ContentReader::mark() {
    const std::uint64_t value = number();
    if (value > 1)
        refuse();
    return value == 1;
}

void ContentReader::take(Date& field) {
    const auto date = parseIsoDate(text());
    if (!date)
        refuse();
    field = *date;
}

void ContentReader::take(Sixteen& field) {
    std::ranges::transform(bytes(field.size()), field.begin(),
                           [](char byte) { return static_cast<unsigned char>(byte); });
}

std::int64_t ContentReader::key(const char* kind) {
    Spoken spoken{.of = {.kind = kind, .uuid = {}}};
    take(spoken.of.uuid);
    const auto found = m_keyOf(kind, spoken.of.uuid);
    if (!found)
        throw BadInput(say("a %1 that speaks of a %2 which is not here", m_kind, std::string(kind)),
                       say("what it speaks of beside it"));
    spoken.key = *found;
    m_spoken.push_back(spoken);
    return spoken.key;
}

} // namespace slopebook::log
