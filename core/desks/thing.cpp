// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/thing.h"

#include "core/log/contentcolumns.h"
#include "core/log/contentreader.h"
#include "core/model/names.h"

#include <array>
#include <utility>

namespace slopebook::desks {

namespace {
constexpr std::array whyWords{
    std::pair{Why::BothChanged, std::string_view("both changed")},
    std::pair{Why::SameName, std::string_view("same name")},
    std::pair{Why::SameNumber, std::string_view("same number")},
    std::pair{Why::Joined, std::string_view("joined")},
    std::pair{Why::Revived, std::string_view("revived")},
    std::pair{Why::Repeat, std::string_view("repeat")},
};

/// Visits the columns of a thing and hands on those that are keys.
template <class Visit>
struct ReferenceVisitor {
    const Visit& visit;

    template <class Field>
    void operator()(const char* /*name*/, Field& field) {
        look(field);
    }
    template <class Field>
    void later(const char* /*name*/, Field& field) {
        look(field);
    }
    template <class Value, class Columns>
    void group(Value& field, const Columns& columns) {
        if (field)
            columns(*field, *this);
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, Value& field, const Columns& columns) {
        group(field, columns);
    }
    template <class Id>
    void of(Id& id) {
        look(id);
    }
    template <class Field>
    void always(const char* /*name*/, Field& /*field*/) {}
    template <class Parts, class Columns>
    void each(const char* /*first*/, Parts& parts, const Columns& columns) {
        for (auto& part : parts)
            columns(part, *this);
    }

private:
    template <class Field>
    void look(Field& field) {
        using Bare = std::remove_const_t<Field>;
        if constexpr (std::is_enum_v<Bare>) {
            if constexpr (log::kindOf<Bare>[0] != '\0')
                visit(field);
        } else if constexpr (requires {
                                 typename Bare::value_type;
                                 field.has_value();
                             }) {
            using Value = typename Bare::value_type;
            if constexpr (std::is_enum_v<Value>)
                if constexpr (log::kindOf<Value>[0] != '\0')
                    if (field)
                        visit(field);
        }
    }
};

template <class Held, class Visit>
void walk(Held& thing, const Visit& visit) {
    std::visit(
        [&](auto& value) {
            ReferenceVisitor<Visit> visitor{visit};
            log::ThingColumns<std::remove_cvref_t<decltype(value)>>::visit(value, visitor);
        },
        thing);
}

template <class Field>
auto& idOf(Field& field) {
    if constexpr (requires { field.has_value(); })
        return *field;
    else
        return field;
}

template <class... Parts>
std::string keyFrom(const Thing& thing, const Parts&... parts) {
    std::string key(kindOf(thing));
    const auto add = [&](const auto& part) {
        key += '\0'; // none runs into the next
        if constexpr (std::is_convertible_v<decltype(part), std::string>)
            key += part;
        else
            key += std::to_string(part);
    };
    (add(parts), ...);
    return key;
}

// What has no name of its own, kind by kind; all else goes by its name.
std::string keyOf(const Thing& thing, const Block& block) {
    return keyFrom(thing, nameKey(block.name), isoDate(block.first));
}
std::string keyOf(const Thing& thing, const log::SessionThing& session) {
    const SessionHead& head = session.head;
    return keyFrom(thing, raw(head.athlete), isoDate(head.date), head.ordinal);
}
std::string keyOf(const Thing& thing, const log::LiftConditionsThing& one) {
    return keyFrom(thing, raw(one.session), raw(one.lift));
}
std::string keyOf(const Thing& thing, const log::TestConditionsThing& one) {
    return keyFrom(thing, raw(one.session), raw(one.test));
}
std::string keyOf(const Thing& thing, const log::SetThing& one) {
    return keyFrom(thing, raw(one.session), raw(one.lift), one.ordinal);
}
std::string keyOf(const Thing& thing, const log::CheckLoadThing& one) {
    return keyFrom(thing, raw(one.athlete), raw(one.lift), one.load.grams);
}
std::string keyOf(const Thing& thing, const log::RosterThing& one) {
    return keyFrom(thing, raw(one.station), isoDate(one.day), raw(one.athlete));
}
template <class Value>
std::string keyOf(const Thing& thing, const Value& value) {
    if constexpr (requires { value.name; })
        return keyFrom(thing, nameKey(value.name));
    else
        return {}; // attempts and gaps are numbered anew (numbers.h); a conflict is what it is
                   // about
}

template <class Held>
auto numberIn(Held& thing) {
    using Number = std::conditional_t<std::is_const_v<Held>, const int*, int*>;
    return std::visit(
        [](auto& one) -> Number {
            if constexpr (requires { one.head.ordinal; })
                return &one.head.ordinal;
            else if constexpr (requires { one.ordinal; })
                return &one.ordinal;
            else
                return nullptr;
        },
        thing);
}

template <class Held>
auto nameIn(Held& thing) {
    using Name = std::conditional_t<std::is_const_v<Held>, const std::string*, std::string*>;
    return std::visit(
        [](auto& one) -> Name {
            if constexpr (requires { one.name; })
                return &one.name;
            else
                return nullptr;
        },
        thing);
}

log::UuidOf uuidsIn(const Slots& known) {
    return [&known](const char* /*kind*/, std::int64_t slot) { return known.uuid(slot); };
}
} // namespace

std::string_view word(Why why) {
    for (const auto& [one, text] : whyWords)
        if (one == why)
            return text;
    return {};
}

std::optional<Why> whyFromWord(std::string_view word) {
    for (const auto& [one, text] : whyWords)
        if (text == word)
            return one;
    return std::nullopt;
}

std::string_view kindOf(const Thing& thing) {
    return std::visit(
        [](const auto& value) -> std::string_view {
            return log::ThingColumns<std::remove_cvref_t<decltype(value)>>::kind;
        },
        thing);
}

std::string keyOf(const Thing& thing) {
    return std::visit([&](const auto& value) { return keyOf(thing, value); }, thing);
}

int* numberOf(Thing& thing) {
    return numberIn(thing);
}
const int* numberOf(const Thing& thing) {
    return numberIn(thing);
}
std::string* nameOf(Thing& thing) {
    return nameIn(thing);
}
const std::string* nameOf(const Thing& thing) {
    return nameIn(thing);
}

void visitKindedReferences(Thing& thing, const std::function<Slot(const char*, Slot)>& what) {
    walk(thing, [&](auto& field) {
        auto& id = idOf(field);
        using Id = std::remove_reference_t<decltype(id)>;
        const Slot now = what(log::kindOf<Id>, raw(id));
        if constexpr (requires { field.reset(); })
            if (now == 0) {
                field.reset();
                return;
            }
        id = static_cast<Id>(now);
    });
}

void visitReferences(Thing& thing, const std::function<Slot(Slot)>& what) {
    visitKindedReferences(thing, [&](const char* /*kind*/, Slot slot) { return what(slot); });
}

void eachReference(const Thing& thing, const std::function<void(Slot)>& what) {
    walk(thing, [&](const auto& field) { what(raw(idOf(field))); });
}

std::string bytesOf(const Slots& known, const Thing& thing) {
    const log::UuidOf uuids = uuidsIn(known);
    return log::contentOf(uuids, thing).bytes();
}

Sixteen hashOf(const Slots& known, const Thing& thing) {
    const log::UuidOf uuids = uuidsIn(known);
    return log::contentHash(uuids, thing);
}

Thing thingOf(Slots& known, std::string_view bytes) {
    return log::readContent(bytes, [&](const char* kind, const Sixteen& uuid) {
        return std::optional<std::int64_t>(known.of(kind, uuid));
    });
}

void extend(const Slots& known, Atom& atom) {
    log::extend(atom.trail, log::stepHash(hashOf(known, *atom.thing), atom.alive));
}

} // namespace slopebook::desks
